package grammar

// What was is told beside what is: "the span used to be 150, now it's 147". Only what is now stands.

// wasOnce are the turns that tell what was; those that need no "now" come first.
var (
	wasOnce   = [][]string{{"used", "to", "be"}, {"used", "to", "measure"}, {"was", "going", "to", "be"}, {"were", "going", "to", "be"}, {"was", "supposed", "to", "be"}, {"was", "meant", "to", "be"}, {"had", "been"}, {"would", "been"}, {"was"}, {"were"}}
	madeOnce  = [][]string{{"had", "made"}, {"would", "made"}, {"had", "set"}, {"would", "set"}, {"had", "put"}, {"would", "put"}, {"made"}}
	makesNow  = wordSet("made make making set setting put putting have has are am will is")
	isNowVerb = wordSet("is are measures measure runs reads comes stands")
)

// nowInstead leaves out what was where it is told what is now.
func nowInstead(atoms []atom) []atom {
	for i := 0; i < len(atoms); i++ {
		if i == 0 && !standAt(atoms, 0, "used", "to", "be") {
			continue
		}
		if standAt(atoms, i, "going", "to") {
			if out, ok := planThenUse(atoms, i); ok {
				return out
			}
		}
		for _, was := range wasOnce {
			if standAt(atoms, i, was...) {
				if out, ok := wasThenIs(atoms, i, i+len(was)); ok {
					return out
				}
				break
			}
		}
		for _, made := range madeOnce {
			if standAt(atoms, i, made...) && speakers[atoms[i-1].text] {
				if out, ok := madeThenMade(atoms, i-1, i+len(made)); ok {
					return out
				}
				break
			}
		}
	}
	return atoms
}

// figureEnd returns the atom after the value that stands at an atom.
func figureEnd(atoms []atom, i int) (int, bool) {
	r := reader{atoms}
	if _, next, ok := r.size(i); ok {
		return next, true
	}
	a, next, ok := r.length(i)
	return next, ok && a.bad == ""
}

// wasThenIs reads "… was A <behind>, now it is B": the verb stands at from, A at i.
func wasThenIs(atoms []atom, from, i int) ([]atom, bool) {
	i = pastAbout(atoms, i)
	end, ok := figureEnd(atoms, i)
	if !ok {
		return nil, false
	}
	stop := end
	for stop < len(atoms) && !breaksClause(atoms, stop) && !joints[atoms[stop].text] {
		stop++
	}
	now := false
	for k := stop; k < len(atoms); k++ {
		if atoms[k].text == "?" || atoms[k].kind == aDigits {
			return nil, false
		}
		now = now || atoms[k].text == "now"
		if !pronounNow[atoms[k].text] || k+2 >= len(atoms) || !isNowVerb[atoms[k+1].text] {
			continue
		}
		v := k + 2
		for v < len(atoms) && (atoms[v].text == "now" || atoms[v].text == "only" || atoms[v].text == "just" || atoms[v].text == "really") {
			now = now || atoms[v].text == "now"
			v++
		}
		last, ok := figureEnd(atoms, v)
		if !ok {
			continue
		}
		rest := last
		for rest < len(atoms) && !breaksClause(atoms, rest) {
			now = now || atoms[rest].text == "now"
			rest++
		}
		tail := withoutNow(atoms[last:rest])
		kept := atoms[end:stop]
		if len(kept) > 0 && len(tail) > 0 && tail[0].text != kept[0].text || !now {
			return nil, false
		}
		if len(kept) == 0 {
			kept = tail
		}
		out := append([]atom{}, atoms[:from]...)
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

var pronounNow = wordSet("it they that this those these")

// pastAbout steps over what only rounds a figure.
func pastAbout(atoms []atom, i int) int {
	for i < len(atoms) && (atoms[i].text == "about" || atoms[i].text == "only" || atoms[i].text == "just" || atoms[i].text == "roughly" || atoms[i].text == "at") {
		i++
	}
	return i
}

// withoutNow leaves out the "now" of a clause.
func withoutNow(in []atom) []atom {
	var out []atom
	for _, a := range in {
		if a.text != "now" && a.text != "again" {
			out = append(out, a)
		}
	}
	return out
}

// madeThenMade reads "we had made bay 1 sixty and now we have made it fifty eight": who did it stands at from, the part at i.
func madeThenMade(atoms []atom, from, i int) ([]atom, bool) {
	key, next := partKey(atoms, skipArticle(atoms, i))
	if key == "" {
		return nil, false
	}
	if next+1 < len(atoms) && atoms[next].kind == aDigits && startsLength(reader{atoms}, next+1) {
		next++ // "bay 1 sixty inches"
	}
	end, ok := figureEnd(atoms, pastAbout(atoms, next))
	if !ok {
		return nil, false
	}
	now, makes := false, false
	for k := end; k < len(atoms); k++ {
		w := atoms[k].text
		if (w == "it" || w == "them") && now && makes && k+1 < len(atoms) {
			v := pastAbout(atoms, k+1)
			if v < len(atoms) && atoms[v].text == "to" {
				v++
			}
			if _, ok := figureEnd(atoms, v); !ok {
				return nil, false
			}
			out := append([]atom{}, atoms[:from]...)
			head := atoms[from]
			head.text = "make"
			out = append(append(out, head), atoms[i:next]...)
			return append(out, atoms[v:]...), true
		}
		now, makes = now || w == "now", makes || makesNow[w]
		if w != "now" && w != "," && !joints[w] && !speakers[w] && !makesNow[w] {
			return nil, false
		}
	}
	return nil, false
}

// sumSaid sets "the overall is the span plus eleven inches" to "the overall is eleven inches more than the span".
func sumSaid(atoms []atom) []atom {
	for i := 3; i+1 < len(atoms); i++ {
		more := map[string]string{"plus": "more", "minus": "less", "less": "less"}[atoms[i].text]
		if more == "" {
			continue
		}
		end, ok := figureEnd(atoms, i+1)
		if !ok || !endsPart(atoms, end) && atoms[end].text != "and" && atoms[end].text != "with" {
			continue
		}
		for k := i - 2; k > 0 && k > i-7; k-- {
			switch atoms[k].text {
			case "is", "are", "be", "equals", "=", "to", "at":
			default:
				continue
			}
			if key, next := partKey(atoms, skipArticle(atoms, k+1)); key == "" || next != i && !(next == i-1 && atoms[next].kind == aDigits) {
				break
			}
			whole := append([]atom{}, atoms[:k+1]...)
			whole = append(whole, atoms[i+1:end]...)
			made := reworded(atoms[i:i+1], 0, 1, more, "than")
			whole = append(append(whole, made...), atoms[k+1:i]...)
			return append(whole, atoms[end:]...)
		}
	}
	return atoms
}

// addToBay sets "add three inches to bay 1" to "widen bay 1 by three inches".
func addToBay(atoms []atom) []atom {
	for i := 0; i+4 < len(atoms); i++ {
		if atoms[i].text != "add" && atoms[i].text != "give" {
			continue
		}
		end, ok := figureEnd(atoms, i+1)
		if !ok || end+2 >= len(atoms) || atoms[end].text != "to" && atoms[end].text != "onto" || !ofBay(atoms[end+1].text) || !endsPart(atoms, end+3) {
			continue
		}
		if _, next, ok := (reader{atoms}).whole(end + 2); !ok || next != end+3 {
			continue
		}
		out := append([]atom{}, atoms[:i+1]...)
		out[i].text = "widen"
		by := atoms[end]
		by.text = "by"
		out = append(append(out, atoms[end+1:end+3]...), by)
		return append(append(out, atoms[i+1:end]...), atoms[end+3:]...)
	}
	return atoms
}

// worked are verbs of what was done to the ground or to posts that are there, whose outcome is told behind "so".
var worked = wordSet("moved raised lowered shifted reset poured filled regraded dug hauled brought trucked dumped leveled levelled graded settled sank heaved straightened plumbed replumbed jacked shimmed")

// outcomeOnly leaves out what was done where its outcome is told: "they raised the lawn four inches so the drop is 26 now".
func outcomeOnly(atoms []atom) []atom {
	start, done := 0, false
	for i := 0; i < len(atoms); i++ {
		switch {
		case atoms[i].text == "." || atoms[i].text == "?" || atoms[i].text == ";":
			if breaksClause(atoms, i) {
				start, done = i+1, false
			}
		case worked[atoms[i].text] && i > start && i < start+5:
			done = true
		case atoms[i].text == "so" && done && i+3 < len(atoms):
			at := i + 1
			if atoms[at].text == "now" {
				at++
			}
			key, next := partKey(atoms, skipArticle(atoms, at))
			if standAt(atoms, at, "the", "drop") {
				key, next = "drop", at+2
			}
			if key == "" || next+1 >= len(atoms) || !isNowVerb[atoms[next].text] && atoms[next].text != "'s" {
				continue
			}
			if _, ok := figureEnd(atoms, pastAbout(atoms, skipNow(atoms, next+1))); ok && runs[key] {
				return cutOut(atoms, start, at)
			}
		}
	}
	return atoms
}

func skipNow(atoms []atom, i int) int {
	for i < len(atoms) && (atoms[i].text == "now" || atoms[i].text == "down" || atoms[i].text == "up" || atoms[i].text == "to") {
		i++
	}
	return i
}

// planThenUse reads "we were going to use 4x4 posts but now we're using 6x6" as "we use 6x6 posts"; "going" stands at i.
func planThenUse(atoms []atom, i int) ([]atom, bool) {
	if i < 2 || atoms[i-1].text != "was" && atoms[i-1].text != "were" || !speakers[atoms[i-2].text] || i+3 >= len(atoms) || !usesVerb[atoms[i+2].text] {
		return nil, false
	}
	end, ok := figureEnd(atoms, skipWith(atoms, i+3))
	if !ok {
		return nil, false
	}
	key, next := partKey(atoms, end)
	if key == "" && next == end {
		next = end
		for next < len(atoms) && next < end+2 && partOf(reader{atoms}, next, "POST") {
			next++
		}
	}
	now, uses := false, false
	for k := next; k < len(atoms); k++ {
		w := atoms[k].text
		if v := skipWith(atoms, k); now && uses {
			last, ok := figureEnd(atoms, v)
			if !ok {
				return nil, false
			}
			out := append([]atom{}, atoms[:i-2]...)
			use := atoms[i-2]
			use.text = "use"
			out = append(append(out, use), atoms[v:last]...)
			if endsPart(atoms, last) {
				out = append(out, atoms[end:next]...)
			}
			return append(out, atoms[last:]...), true
		}
		now, uses = now || w == "now", uses || usesVerb[w] || w == "using" || w == "having" || w == "at"
		if w != "now" && w != "," && !joints[w] && !speakers[w] && w != "are" && w != "am" && w != "will" && w != "have" && w != "going" && w != "to" && !usesVerb[w] && w != "using" && w != "having" {
			return nil, false
		}
	}
	return nil, false
}

var usesVerb = wordSet("use go have do make put set run")

// skipWith steps over "with" and "for" behind a verb of using.
func skipWith(atoms []atom, i int) int {
	for i < len(atoms) && (atoms[i].text == "with" || atoms[i].text == "for" || atoms[i].text == "in" || atoms[i].text == "at") {
		i++
	}
	return i
}
