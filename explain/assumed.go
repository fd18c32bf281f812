package explain

import (
	"slices"
	"strings"

	"saywright/solver"
)

// assumed says what an answer leans on that nobody said: of what it told, and what the words need. The data has it all.
func (v *voice) assumed() {
	var list []string
	var weights []int
	for _, s := range v.a.Assumed {
		if v.leansOn(s) && !v.inSources(s) {
			said := v.granted(s)
			if v.brief() && v.before[heldBack+said] {
				continue
			}
			if v.first("taken for granted: " + said) {
				list, weights = append(list, said), append(weights, weightOf(s))
			}
		}
	}
	rest := ""
	if n := len(list) - mostGranted; n > 2 && v.brief() {
		all := list
		list = weightiest(all, weights, mostGranted)
		v.holdBack(all, list)
		rest = "; and " + count(n) + " more" + forEye(" (`show it all` tells them)")
	}
	if len(list) > 0 {
		v.p.add(para{lead: "Taken for granted: ", text: strings.Join(list, "; ") + rest + ".", ink: faint})
	}
}

// inSources reports whether the table of sources tells a default, in the same words.
func (v *voice) inSources(s string) bool {
	said := v.granted(s)
	return v.a.To.Full && slices.ContainsFunc(v.facts("source"), func(f solver.Fact) bool {
		return len(f.Names) > 0 && (f.Names[0] == s || v.granted(f.Names[0]) == said)
	})
}

// mostGranted is how many defaults an answer tells by itself: the weightiest of them. Who asks for a table hears all that it leans on, and "show it all"
// tells every one.
const mostGranted = 4

// heldBack leads what was only counted: a table that leans on it tells it yet.
const heldBack = "held back: "

func (v *voice) holdBack(all, told []string) {
	for _, s := range all {
		if v.before != nil && !slices.Contains(told, s) {
			delete(v.before, "taken for granted: "+s)
			v.before[heldBack+s] = true
		}
	}
}

// brief reports whether an answer is to stay short: not where somebody asks for a table, or for all of it.
func (v *voice) brief() bool {
	return !v.a.To.Full && (v.a.To.Kind != "ask" || v.a.To.Name != nil || v.a.To.Topic == "" || v.a.To.Topic == "layout")
}

// grantedFirst are the defaults that the figures of a wall hang on, the weightiest first: what it is made of, and what it stands on. What the first sentences
// show anyway, such as the side of the opening or that the posts are the fewest, comes last.
var grantedFirst = []solver.Quantity{
	solver.RailSize, solver.FloorAtRight, solver.PostSize, solver.AddedPostSize, solver.EndPostSize, solver.BracketReach, solver.BracketClearance, solver.Gap,
	solver.BottomGap, solver.StiffenerSpacing, solver.StiffenerSize, solver.PostHeight,
}

// weightOf is the place of a default among those, behind all of them where it is none.
func weightOf(s string) int {
	if i := slices.Index(grantedFirst, solver.Quantity(read(s).name)); i >= 0 {
		return i
	}
	return len(grantedFirst)
}

// weightiest keeps the n of a list that weigh most, in the order that they stand.
func weightiest(list []string, weights []int, n int) []string {
	order := make([]int, len(list))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(a, b int) int { return weights[a] - weights[b] })
	kept := slices.Clone(order[:n])
	slices.Sort(kept)
	out := make([]string, n)
	for i, k := range kept {
		out[i] = list[k]
	}
	return out
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
		return "boards of " + v.soldLengths(f.value) + " on sale"
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
