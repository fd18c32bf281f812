package explain

import (
	"strings"

	"saywright/solver"
	"saywright/solver/exact"
)

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

// notAsMeasured tells, as soon as it is so, that what the tape found is not the wall that was told.
func (v *voice) notAsMeasured() {
	f, ok := v.fact("not as measured")
	if !ok || len(f.Names) == 0 {
		return
	}
	text := v.askMeasured(f.Names[0], solver.Fact{Names: f.Names[1:], Nums: f.Nums})
	if _, rest := v.fact("others as planned"); rest && text != "" {
		text = "With the other bays as planned it comes" + strings.TrimPrefix(text, "As measured it comes")
	}
	if text != "" && v.first("not as measured: "+text) {
		v.p.say(text, warning)
	}
}

// slope tells where rails are tightest, and whether square ends do: once where it is the same in all bays that were measured.
func (v *voice) slope() {
	var tight, square []inBay
	for _, f := range v.facts("tightest at") {
		if len(f.Names) > 0 && len(f.Nums) > 0 {
			tight = append(tight, inBay{tightWords[f.Names[0]], f.Nums[0]})
		}
	}
	for _, f := range v.facts("ends square") {
		switch {
		case len(f.Nums) < 3:
		case f.Nums[1].Sign() == 0:
			square = append(square, inBay{"Ends square", f.Nums[0]})
		default:
			square = append(square, inBay{"Ends square: over one face an end is out by less than a " + v.length(f.Nums[2]) + " mark", f.Nums[0]})
		}
	}
	v.byBay(tight, len(tight))
	v.byBay(square, len(tight))
}

// inBay is what is true of the rails of one bay.
type inBay struct {
	text string
	bay  exact.Rat
}

// byBay says each text once, with its bays where it is not that of all.
func (v *voice) byBay(list []inBay, all int) {
	said := map[string]bool{}
	for _, first := range list {
		if said[first.text] {
			continue
		}
		said[first.text] = true
		var bays []string
		for _, o := range list {
			if o.text == first.text {
				bays = append(bays, number(o.bay))
			}
		}
		switch {
		case len(bays) == max(all, len(list)):
			v.p.note(first.text)
		case len(bays) == 1:
			v.p.note("Bay " + bays[0] + ": " + lower(first.text))
		default:
			v.p.note("Bays " + and(bays) + ": " + lower(first.text))
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
