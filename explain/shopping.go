package explain

import (
	"strings"

	"saywright/solver"
	"saywright/solver/exact"
)

// shopping says what to buy, how to cut it, what it costs, and why no plan does better.
func (v *voice) shopping() {
	if v.a.Verdict == solver.Blocked {
		v.noBoards()
		v.blocked()
		v.buyingSoFar()
		return
	}
	if len(v.a.Shopping) == 0 && len(v.a.Plan) == 0 {
		v.noTable()
		return
	}
	v.shoppingLead()
	v.buyTable()
	v.planTable()
	v.planProof()
	v.noBoards()
	v.hardwareTold()
	v.unpriced()
	v.notCounted()
	v.p.lay(v.buySums())
	v.assumed()
	v.cautions()
}

// buyingSoFar shows the list that a budget blocks, so that it is seen where the money goes.
func (v *voice) buyingSoFar() {
	if len(v.a.Shopping) > 0 {
		v.p.add(blank{})
		v.buyTable()
	}
}

// shoppingLead says boards and total in a sentence or two.
func (v *voice) shoppingLead() {
	var boards []string
	for _, b := range v.a.Shopping {
		if b.Length != nil {
			boards = append(boards, count(b.Count)+" "+size(b.Item)+" at "+v.length(*b.Length))
		}
	}
	if len(boards) > 0 {
		v.p.say(and(boards), good)
	} else if len(v.a.Plan) > 0 {
		v.p.say("No board to buy: it all comes out of what you have", good)
	} else {
		v.p.say(v.itemsLead(), good)
	}
	if c := v.a.Cost; c != nil {
		text := "In all " + money(c.Total.Rat)
		if _, some := v.fact("no price"); some {
			text += " for what has a price"
		}
		v.p.say(text, good)
	}
}

// itemsLead lists what is bought by the piece.
func (v *voice) itemsLead() string {
	var list []string
	for _, b := range v.a.Shopping {
		if b.Length == nil {
			list = append(list, count(b.Count)+" "+itemName(b.Item, b.Count))
		}
	}
	return and(list)
}

func (v *voice) buyTable() {
	t := newTable("how many", "<what", "length", "each", "amount")
	t.title = "To buy:"
	for _, b := range v.a.Shopping {
		length, each, amount := "", "", ""
		if b.Length != nil {
			length = v.bare(*b.Length)
		}
		if b.Each != nil {
			each = money(b.Each.Rat)
		}
		if b.Amount != nil {
			amount = money(b.Amount.Rat)
		}
		t.row(mark(plain, itoa(b.Count)), itemName(b.Item, b.Count), length, each, amount)
	}
	if c := v.a.Cost; c != nil {
		t.row("", "in all", "", "", money(c.Total.Rat))
	}
	v.p.add(*t)
}

// itemName says an item of the list in the number it is bought in.
func itemName(item string, n int) string {
	if n != 1 {
		switch item {
		case "bracket", "anchor", "stiffener":
			return item + "s"
		case "post base", "post cap":
			return item + "s"
		}
	}
	if item == "finish" {
		return "finish, gallons"
	}
	return quoted(item)
}

// planTable says which board is cut how.
func (v *voice) planTable() {
	if len(v.a.Plan) == 0 {
		return
	}
	t := newTable("times", "<board", "<cut into", "left")
	t.title = "To cut:"
	for _, b := range v.a.Plan {
		board := size(b.Size) + " " + v.bare(b.Board)
		if b.Have {
			board += ", yours"
		}
		t.row(mark(plain, itoa(b.Times)), board, v.piecesIn(b.Pieces), v.onMarkOrExact(b.Left))
	}
	v.p.add(*t)
}

// piecesIn lists the pieces of a board in cutting order, like ones together: "3 × 60, 22-1/2".
func (v *voice) piecesIn(list []exact.Rat) string {
	var parts []string
	for i := 0; i < len(list); {
		n := 1
		for i+n < len(list) && list[i+n].Eq(list[i]) {
			n++
		}
		s := v.bare(list[i])
		if n > 1 {
			s = mark(plain, itoa(n)) + " at " + s
		}
		parts = append(parts, s)
		i += n
	}
	return strings.Join(parts, ", ")
}

func (v *voice) onMarkOrExact(r exact.Rat) string {
	if _, on := v.Near(r); on {
		return v.bare(r)
	}
	return v.about(r)
}

// hardwareTold says where the screws go, and what is the base's own affair.
func (v *voice) hardwareTold() {
	var screws []string
	for _, f := range v.facts("screws") {
		if len(f.Names) > 0 && len(f.Nums) > 1 {
			screws = append(screws, number(f.Nums[0])+" at "+v.length(f.Nums[1])+" "+quoted(f.Names[0]))
		}
	}
	if len(screws) > 0 {
		v.p.note("Screws: " + and(screws) + "; rated for outdoors")
	}
	if _, ok := v.fact("anchors as the base asks"); ok {
		v.p.note("Each post base takes the anchors that it asks for; they are not on the list")
	}
	if _, ok := v.fact("cap fasteners not counted"); ok {
		v.p.note("What holds the board on top is not counted")
	}
	for _, f := range v.facts("thickness unknown") {
		v.p.note("I don't know how thick " + and(sizes(f.Names)) + " are, so I could not hold the screw against them")
	}
}

func sizes(names []string) []string {
	out := make([]string, len(names))
	for i, n := range names {
		out[i] = size(n)
	}
	return out
}

// noBoards says which pieces come out of no board, and what would do.
func (v *voice) noBoards() {
	for _, f := range v.a.Facts {
		n := f.Nums
		name := quoted(first(f.Names))
		switch {
		case f.Key == "too long" && len(f.Names) > 1 && len(n) > 2:
			v.p.say("No board is long enough for "+v.pieceOf(name)+": it is "+v.length(n[0])+", and the longest "+size(f.Names[1])+" is "+v.length(n[1]), bad)
		case f.Key == "bay that would do" && len(n) > 1:
			v.p.note("A bay of " + v.both(n[1]) + " or less would do")
		case f.Key == "board that would do" && len(n) > 0:
			v.p.note("A " + size(name) + " of " + v.length(n[0]) + " would do: the shortest common one")
		case f.Key == "no common board" && len(n) > 0:
			v.p.note("No common " + size(name) + " is " + v.length(n[0]) + " long: it wants a joint, or a special order")
		case f.Key == "price missing" && len(n) > 0:
			v.p.note("A " + size(name) + " of " + v.length(n[0]) + " would do, and has no price while others have one")
		case f.Key == "boards missing" && len(n) > 1:
			v.p.say(plural(ints(n)[0], "board", "boards")+" of "+size(name)+" are missing, "+v.length(n[1])+" long", bad)
		case f.Key == "no spare on sale" && len(n) > 0:
			v.p.note("No spare " + size(name) + " is on sale that would hold the longest piece")
		case f.Key == "spare" && len(n) > 1 && n[0].Sign() > 0:
			v.p.note("Of these, to spare: " + plural(ints(n)[0], "board", "boards") + " of " + size(name) + " at " + v.length(n[1]))
		case f.Key == "within budget" && len(n) > 1:
			v.p.note("With " + v.phrase(f.Names[0]) + " it comes to " + money(n[0]) + ", " + money(n[1]) + " under the budget")
		}
	}
}

func (v *voice) unpriced() {
	if f, ok := v.fact("no price"); ok && len(f.Names) > 0 && v.a.Cost != nil {
		var list []string
		for _, n := range f.Names {
			list = append(list, quoted(n))
		}
		v.p.note("No price was told for " + and(list) + ": not in the sum")
	}
}

// hardware says brackets, screws, bases and caps, each with the sum of its count.
func (v *voice) hardware() {
	if len(v.a.Shopping) == 0 {
		v.noTable()
		return
	}
	v.p.say(v.itemsLead(), good)
	v.p.lay(v.buySums())
	v.hardwareTold()
	v.assumed()
	v.cautions()
}

// buySums are the sums of counts and money.
func (v *voice) buySums() sums {
	var list []solver.Work
	for _, w := range v.a.Work {
		if buySum[w.Note] || v.a.To.Full && proofSum[w.Note] {
			list = append(list, w)
		}
	}
	return v.work(list)
}

var buySum = map[string]bool{
	"brackets": true, "screws": true, "bracket screws": true, "stiffener screws": true, "post bases": true, "post caps": true,
	"as told": true, "less what is at hand": true, "spare share": true, "amount": true, "total": true, "within budget": true,
	"left of the budget": true, "over budget": true, "screw stays inside": true,
}

// finish says the area of all faces, and the stain that it takes.
func (v *voice) finish() {
	told := false
	for _, f := range v.a.Facts {
		if len(f.Nums) < 8 || f.Key != "smooth wood" && f.Key != "rough wood" && f.Key != "coverage told" {
			continue
		}
		if !told {
			v.p.say("About "+number(f.Nums[0].Add(exact.New(1, 2)).Floor())+" square feet, faces and ends", good)
		}
		told = true
		v.p.say(v.stain(f), noInk)
	}
	if !told {
		v.noTable()
		return
	}
	v.p.lay(v.work(v.finishSums()))
	for _, f := range v.facts("size not known") {
		v.p.note("What a " + and(sizes(f.Names)) + " measures is not known: its area is not counted")
	}
	if f, ok := v.fact("smooth wood"); ok && len(f.Names) > 0 && f.Names[0] != "" {
		v.p.note("Coverage: " + quoted(f.Names[0]))
	}
	v.assumed()
}

// stain says how much one kind of wood takes, least and most, to a tenth upward.
func (v *voice) stain(f solver.Fact) string {
	kind := map[string]string{"smooth wood": "On smooth wood ", "rough wood": "On rough or weathered wood ", "coverage told": "At that coverage "}[f.Key]
	least, most, unit := f.Nums[4], f.Nums[5], " gallons"
	if v.Metric {
		least, most, unit = f.Nums[6], f.Nums[7], " liters"
	}
	text := kind + plural(ints(f.Nums[1:2])[0], "coat takes ", "coats take ")
	if f.Key == "smooth wood" || f.Key == "rough wood" {
		return text + tenth(least) + " to " + tenth(most) + unit
	}
	return text + tenth(most) + unit
}

// tenth writes an amount rounded up to a tenth.
func tenth(r exact.Rat) string {
	return mark(decimal, r.Mul(exact.Int(10)).Ceil().Div(exact.Int(10)).String())
}

// finishSums are the sums of areas, where it was asked why; volumes, whose fractions nobody reads, only where all was.
func (v *voice) finishSums() (list []solver.Work) {
	for _, w := range v.a.Work {
		switch {
		case v.a.To.Kind == "why" && (w.Note == "faces and ends" || w.Note == "square feet"), v.a.To.Full && w.Of == "finish":
			list = append(list, w)
		}
	}
	return list
}
