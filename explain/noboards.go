package explain

import (
	"slices"
	"strings"

	"saywright/solver"
)

// hardwareTold says where the screws go, and what is the base's own affair.
func (v *voice) hardwareTold() {
	var screws []string
	for _, f := range v.facts("screws") {
		if len(f.Names) > 0 && len(f.Nums) > 1 {
			screws = append(screws, number(f.Nums[0])+" at "+v.onTapeOrExact(f.Nums[1])+" "+quoted(f.Names[0]))
		}
	}
	if text := "Screws: " + and(screws) + "; rated for outdoors"; len(screws) > 0 && (v.a.To.Topic == "hardware" || v.first(text)) {
		v.p.note(text)
	}
	if _, ok := v.fact("anchors as the base asks"); ok && v.buys("post base") && v.first("anchors as the base asks") {
		v.p.note("Each post base takes the anchors that it asks for; they are not on the list")
	}
	if _, ok := v.fact("cap fasteners not counted"); ok {
		v.p.note("What holds the board on top is not counted")
	}
	for _, f := range v.facts("thickness unknown") {
		v.p.note("I don't know how thick " + and(sizes(f.Names)) + " are, so I could not hold the screw against them")
	}
}

// buys reports whether something is on the list.
func (v *voice) buys(item string) bool {
	return slices.ContainsFunc(v.a.Shopping, func(b solver.Buy) bool { return b.Item == item })
}

// noBoards says which pieces come out of no board, and what would do.
func (v *voice) noBoards() {
	told := map[string]bool{}
	once := func(s string) { // the same would do for several pieces
		if !told[s] {
			told[s] = true
			v.p.note(s)
		}
	}
	for _, f := range v.a.Facts {
		n := f.Nums
		name := quoted(first(f.Names))
		switch {
		case f.Key == "too long" && len(f.Names) > 1 && len(n) > 2:
			v.p.say("No board is long enough for a "+v.pieceOf(name)+": it is "+v.length(n[0])+", and the longest "+size(f.Names[1])+" is "+v.length(n[1]), bad)
		case f.Key == "bay that would do" && len(n) > 1:
			once("A bay of " + v.both(n[1]) + " or less would do")
		case f.Key == "board that would do" && len(n) > 0:
			v.p.note("A " + size(name) + " of " + v.length(n[0]) + " would do: the shortest common one")
		case f.Key == "no common board" && len(n) > 0:
			v.p.note("No common " + size(name) + " is " + v.length(n[0]) + " long: it wants a joint, or a special order")
		case f.Key == "price missing" && len(n) > 0:
			v.p.note("A " + size(name) + " of " + v.length(n[0]) + " would do, but has no price while others have one. Say it so: " + v.priceLine(name, n[0]))
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
			list = append(list, v.soldAs(n))
		}
		v.p.note("No price was told for " + and(list) + ": not in the sum")
	}
}

// soldAs says an item of the list that may have a length: "1x4 of 96", "bracket".
func (v *voice) soldAs(name string) string {
	item, long, _ := strings.Cut(name, " ")
	if r, ok := length(long); ok && isLength(long) {
		return size(item) + " of " + v.soldBy(r)
	}
	return quoted(name)
}
