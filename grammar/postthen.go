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
	for i := 1; i < len(atoms); i++ {
		for _, was := range wasOnce {
			if wordsAt(atoms, i, was) {
				if out, ok := wasThenIs(atoms, i, i+len(was)); ok {
					return out
				}
				break
			}
		}
		for _, made := range madeOnce {
			if wordsAt(atoms, i, made) && speakers[atoms[i-1].text] {
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
