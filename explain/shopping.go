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
		v.blockedAgain()
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
	v.tooShort()
	v.ripped()
	v.hardwareTold()
	v.unpriced()
	v.notCounted()
	v.comesOff()
	v.p.lay(v.buySums())
	v.assumed()
	v.cautions()
}

// ripped tells by the list that its boards are wider than the rails that were told.
func (v *voice) ripped() {
	for _, c := range v.a.Cautions {
		if c.Key == "face off" && len(c.Facts) > 0 && len(c.Facts[0].Nums) > 2 && c.Facts[0].Nums[0].Less(c.Facts[0].Nums[1]) {
			v.p.note("Each rail is ripped out of a " + size(first(c.Facts[0].Names)) + ": " + v.onMarkOrExact(c.Facts[0].Nums[2]) + " comes off its face")
		}
	}
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
			boards = append(boards, count(b.Count)+" "+size(b.Item)+" at "+v.soldBy(*b.Length))
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
	} else if v.a.To.Topic == "cost" {
		v.noSum()
	}
}

// noSum tells why there is no sum, and how to say a price: of the first board on the list.
func (v *voice) noSum() {
	text := "No price was told yet, so there is no sum"
	for _, b := range v.a.Shopping {
		if b.Length != nil {
			text += ". Say one so: " + v.priceLine(b.Item, *b.Length)
			break
		}
	}
	v.p.say(text, noInk)
}

// priceLine is a line that tells a price, as it is heard.
func (v *voice) priceLine(item string, long exact.Rat) string {
	said := solver.Inches(long).String()
	if v.Metric {
		said = v.length(long)
	}
	return "`" + item + " of " + said + " for 9.50`"
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
			length = v.onMark(*b.Length)
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
		board := size(b.Size) + " " + v.onMark(b.Board)
		if b.Have {
			board += ", yours"
		}
		into := v.piecesIn(b.Pieces)
		if b.Have && len(b.Pieces) == 1 && b.Pieces[0].Eq(b.Board) {
			into = "as it is"
		}
		t.row(mark(plain, itoa(b.Times)), board, into, v.onMarkOrExact(b.Left))
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

// onTapeOrExact is onMarkOrExact with its unit.
func (v *voice) onTapeOrExact(r exact.Rat) string {
	if _, on := v.Near(r); on {
		return v.length(r)
	}
	return v.about(r)
}

// soldBy is the length that a board is sold by: in millimeters its nearest one, as nobody sells by tenths.
func (v *voice) soldBy(r exact.Rat) string {
	if v.Metric {
		return mark(nearest, r.String())
	}
	return v.onTapeOrExact(r)
}

// soldLengths is soldBy for a list of a normal form.
func (v *voice) soldLengths(s string) string {
	var list []string
	for _, one := range strings.Split(s, ", ") {
		r, ok := length(one)
		if !ok || !isLength(one) || !v.Metric {
			return v.shownOf(s)
		}
		list = append(list, v.soldBy(r))
	}
	return and(list)
}

func sizes(names []string) []string {
	out := make([]string, len(names))
	for i, n := range names {
		out[i] = size(n)
	}
	return out
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
