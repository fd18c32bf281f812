package explain

import (
	"strings"

	"saywright/solver"
)

// assumed says what an answer leans on that nobody said.
func (v *voice) assumed() {
	var list []string
	for _, s := range v.a.Assumed {
		list = append(list, v.granted(s))
	}
	if len(list) > 0 {
		v.p.add(para{lead: "Taken for granted: ", text: strings.Join(list, "; ") + ".", ink: faint})
	}
}

// granted puts one default into words; a size tells what it measures where the layout knows it.
func (v *voice) granted(s string) string {
	f := read(s)
	l := v.a.Layout
	switch solver.Quantity(f.name) {
	case solver.RailSize:
		if l != nil && l.Up != nil && f.op == "=" {
			return size(f.value) + " rails, " + v.length(l.RailFace) + " on the face (hold a tape to yours)"
		}
	case solver.PostSize, solver.AddedPostSize:
		if l != nil && l.Along != nil && f.op == "=" {
			return v.phrase(s) + ", " + v.length(l.PostFace) + " on the face"
		}
	case solver.BottomGap:
		if f.op == ">=" {
			return "the bottom rail " + v.figureOf(f.value) + " or more off the floor"
		}
	case solver.Gap:
		if f.op == ">=" {
			return "brackets that need " + v.figureOf(f.value) + " between rails"
		}
	case solver.Opening:
		if f.op == ">=" {
			return "an opening of " + v.figureOf(f.value) + " or more to walk through"
		}
	case solver.StiffenerSpacing:
		if f.op == "<=" {
			return "stiffeners no more than " + v.figureOf(f.value) + " apart"
		}
	case solver.BaseHeight:
		if r, ok := length(f.value); ok && r.Sign() == 0 {
			return "the post stands right on the floor"
		}
	case solver.Fit:
		if r, ok := length(f.value); ok && r.Sign() == 0 {
			return "no play beyond the brackets"
		}
	case solver.Trim:
		if r, ok := length(f.value); ok && r.Sign() == 0 {
			return "boards square at both ends"
		}
	}
	return v.phrase(s)
}
