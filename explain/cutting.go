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
			list = append(list, "play"+v.common(v.onTapeOrExact(f.Nums[0])+" a rail"))
		case "trim":
			list = append(list, "squaring the ends"+v.common(v.onTapeOrExact(f.Nums[0])+" a board"))
		case "spare":
			list = append(list, "spare"+v.common("a tenth more"))
		}
	}
	if len(list) > 0 {
		v.p.note("Not counted: " + and(list))
	}
}

// common tells how much of something is usual, once a conversation.
func (v *voice) common(much string) string {
	if !v.first("common: " + much) {
		return ""
	}
	return " (" + much + " is common)"
}
