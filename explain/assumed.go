package explain

import (
	"strings"

	"saywright/solver"
)

// assumed says what an answer leans on that nobody said: of what it told, and what the words need. The data has it all.
func (v *voice) assumed() {
	var list []string
	if v.a.To.Full && len(v.facts("source")) > 0 {
		return // the table of sources has them all
	}
	for _, s := range v.a.Assumed {
		if v.leansOn(s) {
			if said := v.granted(s); v.first("taken for granted: " + said) {
				list = append(list, said)
			}
		}
	}
	if len(list) > 0 {
		v.p.add(para{lead: "Taken for granted: ", text: strings.Join(list, "; ") + ".", ink: faint})
	}
}

// granted puts one default into words; a size tells what it measures where the layout knows it.
func (v *voice) granted(s string) string {
	f := read(s)
	l := v.a.Layout
	zero := false
	if r, ok := length(f.value); ok {
		zero = r.Sign() == 0
	}
	switch q := solver.Quantity(f.name); {
	case q == solver.RailSize && f.op == "=" && l != nil && l.Up != nil:
		if v.narrow {
			return size(f.value) + " rails, " + v.length(l.RailFace) + " on the face"
		}
		return size(f.value) + " rails, " + v.length(l.RailFace) + " on the face (hold a tape to yours)"
	case (q == solver.PostSize || q == solver.AddedPostSize) && f.op == "=" && l != nil && l.Along != nil:
		face := l.PostFace
		if q == solver.PostSize && !face.Eq(l.EndPostFace) && l.EndPostFace.Sign() > 0 {
			face = l.EndPostFace
		}
		return v.phrase(s) + ", " + v.length(face) + " on the face"
	case q == solver.BottomGap && f.op == ">=":
		return "the bottom rail " + v.figureOf(f.value) + " or more off the floor"
	case q == solver.Gap && f.op == ">=":
		return "brackets that need " + v.figureOf(f.value) + " between rails"
	case q == solver.Opening && f.op == ">=":
		return "an opening of " + v.figureOf(f.value) + " or more to walk through"
	case q == solver.StiffenerSpacing && f.op == "<=":
		return "stiffeners no more than " + v.figureOf(f.value) + " apart"
	case q == solver.BracketEar && f.value == "1/2 * bracket clearance":
		return "brackets that stand past their rail by half of that"
	case q == solver.BracketReach:
		return "bracket holes " + v.figureOf(f.value) + " above the rail"
	case q == solver.BracketThickness && !leans(f.value):
		return "brackets " + v.figureOf(f.value) + " thick"
	case q == solver.Stock:
		return "boards of " + v.shownOf(f.value) + " on sale"
	case q == solver.Kerf && !leans(f.value):
		return "a saw cut of " + v.shownOf(f.value)
	case q == solver.ScrewLength && !leans(f.value):
		return "screws of " + v.shownOf(f.value)
	case q == solver.BaseHeight && zero:
		return "the post right on the floor"
	case q == solver.Fit && zero:
		return "no play beyond the brackets"
	case q == solver.Trim && zero:
		return "boards square at both ends"
	}
	return v.phrase(s)
}
