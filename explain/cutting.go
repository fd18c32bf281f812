package explain

import (
	"strings"

	"saywright/solver"
	"saywright/solver/exact"
)

// cuts says the lengths to cut: a sentence, the list, how each rail's length comes about, and what the tape did not show.
func (v *voice) cuts() {
	if len(v.a.Cuts) == 0 {
		v.noTable()
		return
	}
	v.cutsLead()
	v.cutTable()
	v.cutSums()
	v.asMeasured()
	v.shortPiece()
	v.notCounted()
	v.assumed()
	v.cautions()
}

// railsCut are the lines of the cut list that are rails.
func (v *voice) piecesOf(piece string) (list []solver.Cut) {
	for _, c := range v.a.Cuts {
		if c.Piece == piece {
			list = append(list, c)
		}
	}
	return list
}

func (v *voice) cutsLead() {
	rails := v.piecesOf("rail")
	switch {
	case len(rails) == 0:
		v.p.say(plural(len(v.a.Cuts), "line", "lines")+" to cut", good)
	case len(rails) == 1:
		v.p.say(v.cutWords(rails[0], "rail", "rails"), good)
	default:
		v.p.say(v.railsByBay(rails), good)
	}
	for _, c := range v.piecesOf("stiffener") {
		v.p.hear(sentence(v.cutWords(c, "stiffener", "stiffeners")))
		break
	}
}

func (v *voice) cutWords(c solver.Cut, one, many string) string {
	return plural(c.Count, one, many) + " at " + v.length(c.Length)
}

// railsByBay says rails that differ: of one bay from the shortest to the longest, of several bays bay by bay.
func (v *voice) railsByBay(rails []solver.Cut) string {
	byBay := map[int][]solver.Cut{}
	var bays []int
	for _, c := range rails {
		if byBay[c.Bay] == nil {
			bays = append(bays, c.Bay)
		}
		byBay[c.Bay] = append(byBay[c.Bay], c)
	}
	var parts []string
	for _, b := range bays {
		list := byBay[b]
		s := v.cutWords(list[0], "rail", "rails")
		if len(list) > 1 {
			n := 0
			for _, c := range list {
				n += c.Count
			}
			s = plural(n, "rail", "rails") + ", from " + v.length(list[0].Length) + " at the bottom to " + v.length(list[len(list)-1].Length) + " at the top"
		}
		if len(bays) > 1 {
			s += " in bay " + mark(plain, itoa(b))
		}
		parts = append(parts, s)
	}
	return strings.Join(parts, "; ")
}

func (v *voice) cutTable() {
	t := newTable("<piece", "<size", "length", "how many", "<ends")
	for _, c := range v.a.Cuts {
		ends := c.Ends
		if ends == "square" {
			ends = ""
		}
		t.row(v.pieceName(c), size(c.Size), v.bare(c.Length), mark(plain, itoa(c.Count)), endWords[ends])
	}
	v.p.add(*t)
}

var endWords = map[string]string{
	"bevel left": "left end beveled", "bevel right": "right end beveled", "bevel both": "both ends beveled",
}

// pieceName says which piece it is: "rail 3, bay 1", "post 2", "stiffeners, bay 1".
func (v *voice) pieceName(c solver.Cut) string {
	name := quoted(c.Piece)
	switch {
	case c.Rail > 0:
		name += " " + itoa(c.Rail)
	case c.Post > 0 && len(v.piecesOf("post")) > 1:
		name += " " + itoa(c.Post)
	case c.Count > 1 && c.Piece != "extra":
		name += "s"
	}
	if c.Bay > 0 && v.severalBays() {
		name += ", bay " + itoa(c.Bay)
	}
	if c.Wall != "" {
		name = quoted(c.Wall) + ": " + name
	}
	return name
}

func (v *voice) severalBays() bool {
	for _, c := range v.a.Cuts {
		if c.Bay > 1 {
			return true
		}
	}
	return false
}

// cutSums lays how the lengths come about, the piece in front of each sum.
func (v *voice) cutSums() {
	var s sums
	for _, w := range v.a.Work {
		if w.Note == "rail to rail" || w.Note == "width that counts" && !v.a.To.Full || aboutLayout(w) {
			continue
		}
		text := v.shown(w)
		if text == "" {
			continue
		}
		remark := v.remark(w)
		if w.Note == "rail to cut" || strings.HasSuffix(w.Note, " to cut") {
			remark = ""
		}
		s.add(sumRow{lead: v.cutLead(w), sum: text, remark: remark})
	}
	v.p.lay(s)
}

// aboutLayout reports whether a line belongs to the layout, not to the pieces.
func aboutLayout(w solver.Work) bool {
	switch w.Note {
	case "stiffener spacing", "closes", "opens", "closes each rail", "opens each rail", "along":
		return false
	}
	_, q, _ := thingOf(w.Of)
	return aspects[q] == aboutUp || aspects[q] == aboutAlong && w.Of != "stiffeners bay"
}

// cutLead names what a line is about: "rail 5", "bay 1 rail 5", "post", "bay 1".
func (v *voice) cutLead(w solver.Work) string {
	name := quoted(strings.TrimPrefix(w.Of, "cut "))
	switch {
	case name == "stiffeners bay":
		return "stiffeners"
	case v.severalBays() || w.Note == "closes" || w.Note == "opens":
	case name == "bay 1":
		if w.Note == "rail to cut" || w.Note == "width that counts" {
			return "each rail"
		}
	default:
		name = strings.TrimPrefix(name, "bay 1 ")
	}
	return name
}

// asMeasured tells what the tape in the bay said of its posts, and what it did not.
func (v *voice) asMeasured() {
	for _, f := range v.facts("measured bay") {
		if len(f.Nums) > 2 && !f.Nums[1].Eq(f.Nums[2]) {
			v.p.note("Bay " + mark(plain, f.Nums[0].String()) + " was planned " + v.both(f.Nums[1]) + "; what was measured counts")
		}
	}
	for _, f := range v.facts("span missed") {
		if len(f.Nums) > 2 {
			v.p.note("Along the wall that comes to " + v.both(f.Nums[0]) + ", and the span was told as " + v.both(f.Nums[1]))
		}
	}
	for _, f := range v.facts("measured opening") {
		if len(f.Nums) > 2 && !f.Nums[1].Eq(f.Nums[2]) {
			v.p.note("The opening was planned " + v.both(f.Nums[1]) + " and measures " + v.both(f.Nums[2]))
		}
	}
	if list := v.facts("rail is up"); len(list) > 0 {
		var up []exact.Rat
		for _, f := range list {
			up = append(up, f.Nums...)
		}
		v.p.note("Up already, so not cut: rail " + v.numbers(up))
	}
	v.slope()
	for _, f := range v.facts("width guessed") {
		if len(f.Nums) > 1 {
			v.p.note("Guessed, on the same straight line, for rails beyond what was measured: " + v.numbers(f.Nums[1:]))
		}
	}
	for _, f := range v.facts("taken as plumb") {
		if len(f.Names) > 0 {
			v.p.note("The " + quoted(f.Names[0]) + " post of bay " + mark(plain, f.Nums[0].String()) + " is taken as plumb")
		}
	}
	for _, f := range v.facts("bevel") {
		v.bevel(f)
	}
	v.playTold()
}

// slope tells where rails are tightest, and whether square ends do.
func (v *voice) slope() {
	for _, f := range v.facts("tightest at") {
		if len(f.Names) > 0 {
			v.p.note(tightWords[f.Names[0]])
		}
	}
	for _, f := range v.facts("ends square") {
		if len(f.Nums) > 2 {
			if f.Nums[1].Sign() == 0 {
				v.p.note("Ends square")
				continue
			}
			v.p.note("Ends square: over one face an end is out by less than a " + v.length(f.Nums[2]) + " mark")
		}
	}
}

var tightWords = map[string]string{
	"top":            "The width is that at each rail's top edge, its narrowest",
	"bottom":         "The width is that at each rail's bottom edge, its narrowest",
	"across":         "The posts lean the same way: a rail is held at one end above and at the other below, so it is cut shorter than either width",
	"here and there": "Some rails are narrowest at the top edge, some at the bottom; each is cut for its own",
}

func (v *voice) bevel(f solver.Fact) {
	if len(f.Names) == 0 || len(f.Nums) < 6 {
		return
	}
	way := "in"
	if f.Nums[5].Sign() > 0 {
		way = "out"
	}
	v.p.note("Rail " + mark(plain, f.Nums[1].String()) + ", bay " + mark(plain, f.Nums[0].String()) + ": bevel its " + quoted(f.Names[0]) + " end " +
		v.about(f.Nums[2]) + " over the face, leaning " + way + " toward the top" + forEye(" ("+solver.Decimal(f.Nums[4])+"°)"))
}

// playTold says how loose rails are that are all cut to one length.
func (v *voice) playTold() {
	list := v.facts("play")
	if len(list) < 2 {
		return
	}
	loosest := list[0]
	for _, f := range list {
		if len(f.Nums) > 3 && loosest.Nums[2].Less(f.Nums[2]) {
			loosest = f
		}
	}
	v.p.note("All cut to one length go in. Rail " + mark(plain, loosest.Nums[1].String()) + " is the loosest: " +
		v.length(loosest.Nums[2]) + " of play, " + v.length(loosest.Nums[3]) + " an end")
}

// shortPiece says what becomes of a piece that came out short.
func (v *voice) shortPiece() {
	for _, f := range v.a.Facts {
		switch {
		case f.Key == "short" && len(f.Nums) > 3:
			v.p.say("Rail "+mark(plain, f.Nums[1].String())+" is "+v.length(f.Nums[2])+" now, "+v.length(f.Nums[3])+" loose in its own place", noInk)
		case f.Key == "would serve" && len(f.Names) > 0 && len(f.Nums) > 1:
			text := "It would serve as " + v.pieceOf(f.Names[0])
			if f.Nums[1].Sign() > 0 {
				text += ", with " + v.length(f.Nums[1]) + " cut off"
			}
			v.p.note(text)
		case f.Key == "serves nothing":
			v.p.note("It fits no other place")
		case f.Key == "from a leftover" && len(f.Nums) > 2:
			v.p.note("A new one comes out of what is left of a board: " + v.length(f.Nums[2]) + " over")
		case f.Key == "new board" && len(f.Nums) > 0:
			v.p.note("A new one takes a board of " + v.length(f.Nums[0]))
		}
	}
}

func (v *voice) pieceOf(name string) string { return quoted(strings.TrimPrefix(name, "bay 1 ")) }

func (v *voice) numbers(list []exact.Rat) string {
	var words []string
	for _, r := range list {
		words = append(words, number(r))
	}
	return and(words)
}

// notCounted says what a list leaves out because nobody spoke of it, and what is common.
func (v *voice) notCounted() {
	var list []string
	for _, f := range v.facts("not counted") {
		if len(f.Names) == 0 || len(f.Nums) == 0 {
			continue
		}
		switch f.Names[0] {
		case "fit":
			list = append(list, "play ("+v.length(f.Nums[0])+" a rail is common)")
		case "trim":
			list = append(list, "squaring the ends ("+v.length(f.Nums[0])+" a board is common)")
		case "spare":
			list = append(list, "spare (a tenth more is common)")
		}
	}
	if len(list) > 0 {
		v.p.note("Not counted: " + and(list))
	}
}
