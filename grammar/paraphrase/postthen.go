package paraphrase

import (
	"saywright/grammar/chunk"
	"saywright/grammar/idiom"
	"saywright/grammar/lex"
	"saywright/grammar/measure"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// What was is told beside what is: "the span used to be 150, now it's 147". Only what is now stands.

// wasOnce are the turns that tell what was; those that need no "now" come first.
var (
	wasOnce   = [][]string{{"used", "to", "be"}, {"used", "to", "measure"}, {"was", "going", "to", "be"}, {"were", "going", "to", "be"}, {"was", "supposed", "to", "be"}, {"was", "meant", "to", "be"}, {"had", "been"}, {"would", "been"}, {"was"}, {"were"}}
	madeOnce  = [][]string{{"had", "made"}, {"would", "made"}, {"had", "set"}, {"would", "set"}, {"had", "put"}, {"would", "put"}, {"made"}}
	makesNow  = scan.WordSet("made make making set setting put putting have has are am will is")
	isNowVerb = scan.WordSet("is are measures measure runs reads comes stands")
)

// nowInstead leaves out what was where it is told what is now.
func nowInstead(atoms []scan.Atom) []scan.Atom {
	for i := 0; i < len(atoms); i++ {
		if i == 0 && !scan.StandAt(atoms, 0, "used", "to", "be") {
			continue
		}
		if scan.StandAt(atoms, i, "going", "to") {
			if out, ok := planThenUse(atoms, i); ok {
				return out
			}
		}
		for _, was := range wasOnce {
			if scan.StandAt(atoms, i, was...) {
				if out, ok := wasThenIs(atoms, i, i+len(was)); ok {
					return out
				}
				break
			}
		}
		for _, made := range madeOnce {
			if scan.StandAt(atoms, i, made...) && lex.Speakers[atoms[i-1].Text] {
				if out, ok := madeThenMade(atoms, i-1, i+len(made)); ok {
					return out
				}
				break
			}
		}
	}
	return atoms
}

// wasThenIs reads "… was A <behind>, now it is B": the verb stands at from, A at i.
func wasThenIs(atoms []scan.Atom, from, i int) ([]scan.Atom, bool) {
	i = pastAbout(atoms, i)
	end, ok := idiom.FigureEnd(atoms, i)
	if !ok {
		return nil, false
	}
	stop := end
	for stop < len(atoms) && !chunk.BreaksClause(atoms, stop) && !chunk.Joints[atoms[stop].Text] {
		stop++
	}
	now := false
	for k := stop; k < len(atoms); k++ {
		if atoms[k].Text == "?" || atoms[k].Kind == scan.Digits {
			return nil, false
		}
		now = now || atoms[k].Text == "now"
		if !pronounNow[atoms[k].Text] || k+2 >= len(atoms) || !isNowVerb[atoms[k+1].Text] {
			continue
		}
		v := k + 2
		for v < len(atoms) && (atoms[v].Text == "now" || atoms[v].Text == "only" || atoms[v].Text == "just" || atoms[v].Text == "really") {
			now = now || atoms[v].Text == "now"
			v++
		}
		last, ok := idiom.FigureEnd(atoms, v)
		if !ok {
			continue
		}
		rest := last
		for rest < len(atoms) && !chunk.BreaksClause(atoms, rest) {
			now = now || atoms[rest].Text == "now"
			rest++
		}
		tail := withoutNow(atoms[last:rest])
		kept := atoms[end:stop]
		if len(kept) > 0 && len(tail) > 0 && tail[0].Text != kept[0].Text || !now {
			return nil, false
		}
		if len(kept) == 0 {
			kept = tail
		}
		out := append([]scan.Atom{}, atoms[:from]...)
		if from == 0 {
			out = append(out, atoms[k])
		}
		out = append(out, atoms[k+1])
		out = append(out, atoms[v:last]...)
		out = append(out, kept...)
		return append(out, atoms[rest:]...), true
	}
	return nil, false
}

var pronounNow = scan.WordSet("it they that this those these")

// pastAbout steps over what only rounds a figure.
func pastAbout(atoms []scan.Atom, i int) int {
	for i < len(atoms) && (atoms[i].Text == "about" || atoms[i].Text == "only" || atoms[i].Text == "just" || atoms[i].Text == "roughly" || atoms[i].Text == "at") {
		i++
	}
	return i
}

// withoutNow leaves out the "now" of a clause.
func withoutNow(in []scan.Atom) []scan.Atom {
	var out []scan.Atom
	for _, a := range in {
		if a.Text != "now" && a.Text != "again" {
			out = append(out, a)
		}
	}
	return out
}

// madeThenMade reads "we had made bay 1 sixty and now we have made it fifty eight": who did it stands at from, the part at i.
func madeThenMade(atoms []scan.Atom, from, i int) ([]scan.Atom, bool) {
	key, next := chunk.PartKey(atoms, chunk.SkipArticle(atoms, i))
	if key == "" {
		return nil, false
	}
	if next+1 < len(atoms) && atoms[next].Kind == scan.Digits && phrase.StartsLength(measure.Reader{Atoms: atoms}, next+1) {
		next++ // "bay 1 sixty inches"
	}
	end, ok := idiom.FigureEnd(atoms, pastAbout(atoms, next))
	if !ok {
		return nil, false
	}
	now, makes := false, false
	for k := end; k < len(atoms); k++ {
		w := atoms[k].Text
		if (w == "it" || w == "them") && now && makes && k+1 < len(atoms) {
			v := pastAbout(atoms, k+1)
			if v < len(atoms) && atoms[v].Text == "to" {
				v++
			}
			if _, ok := idiom.FigureEnd(atoms, v); !ok {
				return nil, false
			}
			out := append([]scan.Atom{}, atoms[:from]...)
			head := atoms[from]
			head.Text = "make"
			out = append(append(out, head), atoms[i:next]...)
			return append(out, atoms[v:]...), true
		}
		now, makes = now || w == "now", makes || makesNow[w]
		if w != "now" && w != "," && !chunk.Joints[w] && !lex.Speakers[w] && !makesNow[w] {
			return nil, false
		}
	}
	return nil, false
}

// sumSaid sets "the overall is the span plus eleven inches" to "the overall is eleven inches more than the span".
func sumSaid(atoms []scan.Atom) []scan.Atom {
	for i := 3; i+1 < len(atoms); i++ {
		more := map[string]string{"plus": "more", "minus": "less", "less": "less"}[atoms[i].Text]
		if more == "" {
			continue
		}
		end, ok := idiom.FigureEnd(atoms, i+1)
		if !ok || !chunk.EndsPart(atoms, end) && atoms[end].Text != "and" && atoms[end].Text != "with" {
			continue
		}
		for k := i - 2; k > 0 && k > i-7; k-- {
			switch atoms[k].Text {
			case "is", "are", "be", "equals", "=", "to", "at":
			default:
				continue
			}
			if key, next := chunk.PartKey(atoms, chunk.SkipArticle(atoms, k+1)); key == "" || next != i && !(next == i-1 && atoms[next].Kind == scan.Digits) {
				break
			}
			whole := append([]scan.Atom{}, atoms[:k+1]...)
			whole = append(whole, atoms[i+1:end]...)
			made := scan.Reworded(atoms[i:i+1], 0, 1, more, "than")
			whole = append(append(whole, made...), atoms[k+1:i]...)
			return append(whole, atoms[end:]...)
		}
	}
	return atoms
}

// addToBay sets "add three inches to bay 1" to "widen bay 1 by three inches".
func addToBay(atoms []scan.Atom) []scan.Atom {
	for i := 0; i+4 < len(atoms); i++ {
		if atoms[i].Text != "add" && atoms[i].Text != "give" {
			continue
		}
		end, ok := idiom.FigureEnd(atoms, i+1)
		if !ok || end+2 >= len(atoms) || atoms[end].Text != "to" && atoms[end].Text != "onto" || !measure.OfBay(atoms[end+1].Text) || !chunk.EndsPart(atoms, end+3) {
			continue
		}
		if _, next, ok := (measure.Reader{Atoms: atoms}).Whole(end + 2); !ok || next != end+3 {
			continue
		}
		out := append([]scan.Atom{}, atoms[:i+1]...)
		out[i].Text = "widen"
		by := atoms[end]
		by.Text = "by"
		out = append(append(out, atoms[end+1:end+3]...), by)
		return append(append(out, atoms[i+1:end]...), atoms[end+3:]...)
	}
	return atoms
}

// worked are verbs of what was done to the ground or to posts that are there, whose outcome is told behind "so".
var worked = scan.WordSet("moved raised lowered shifted reset poured filled regraded dug hauled brought trucked dumped leveled levelled graded settled sank heaved straightened plumbed replumbed jacked shimmed")

// outcomeOnly leaves out what was done where its outcome is told: "they raised the lawn four inches so the drop is 26 now".
func outcomeOnly(atoms []scan.Atom) []scan.Atom {
	start, done := 0, false
	for i := 0; i < len(atoms); i++ {
		switch {
		case atoms[i].Text == "." || atoms[i].Text == "?" || atoms[i].Text == ";":
			if chunk.BreaksClause(atoms, i) {
				start, done = i+1, false
			}
		case worked[atoms[i].Text] && i > start && i < start+5:
			done = true
		case atoms[i].Text == "so" && done && i+3 < len(atoms):
			at := i + 1
			if atoms[at].Text == "now" {
				at++
			}
			key, next := chunk.PartKey(atoms, chunk.SkipArticle(atoms, at))
			if scan.StandAt(atoms, at, "the", "drop") {
				key, next = "drop", at+2
			}
			if key == "" || next+1 >= len(atoms) || !isNowVerb[atoms[next].Text] && atoms[next].Text != "'s" {
				continue
			}
			if _, ok := idiom.FigureEnd(atoms, pastAbout(atoms, skipNow(atoms, next+1))); ok && idiom.Runs[key] {
				return scan.CutOut(atoms, start, at)
			}
		}
	}
	return atoms
}

func skipNow(atoms []scan.Atom, i int) int {
	for i < len(atoms) && (atoms[i].Text == "now" || atoms[i].Text == "down" || atoms[i].Text == "up" || atoms[i].Text == "to") {
		i++
	}
	return i
}

// planThenUse reads "we were going to use 4x4 posts but now we're using 6x6" as "we use 6x6 posts"; "going" stands at i.
func planThenUse(atoms []scan.Atom, i int) ([]scan.Atom, bool) {
	if i < 2 || atoms[i-1].Text != "was" && atoms[i-1].Text != "were" || !lex.Speakers[atoms[i-2].Text] || i+3 >= len(atoms) || !usesVerb[atoms[i+2].Text] {
		return nil, false
	}
	end, ok := idiom.FigureEnd(atoms, skipWith(atoms, i+3))
	if !ok {
		return nil, false
	}
	key, next := chunk.PartKey(atoms, end)
	if key == "" && next == end {
		next = end
		for next < len(atoms) && next < end+2 && measure.PartOf(measure.Reader{Atoms: atoms}, next, "POST") {
			next++
		}
	}
	now, uses := false, false
	for k := next; k < len(atoms); k++ {
		w := atoms[k].Text
		if v := skipWith(atoms, k); now && uses {
			last, ok := idiom.FigureEnd(atoms, v)
			if !ok {
				return nil, false
			}
			out := append([]scan.Atom{}, atoms[:i-2]...)
			use := atoms[i-2]
			use.Text = "use"
			out = append(append(out, use), atoms[v:last]...)
			if chunk.EndsPart(atoms, last) {
				out = append(out, atoms[end:next]...)
			}
			return append(out, atoms[last:]...), true
		}
		now, uses = now || w == "now", uses || usesVerb[w] || w == "using" || w == "having" || w == "at"
		if w != "now" && w != "," && !chunk.Joints[w] && !lex.Speakers[w] && w != "are" && w != "am" && w != "will" && w != "have" && w != "going" && w != "to" && !usesVerb[w] && w != "using" && w != "having" {
			return nil, false
		}
	}
	return nil, false
}

var usesVerb = scan.WordSet("use go have do make put set run")

// skipWith steps over "with" and "for" behind a verb of using.
func skipWith(atoms []scan.Atom, i int) int {
	for i < len(atoms) && (atoms[i].Text == "with" || atoms[i].Text == "for" || atoms[i].Text == "in" || atoms[i].Text == "at") {
		i++
	}
	return i
}
