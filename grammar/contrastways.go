package grammar

import (
	"slices"
	"strings"
)

// What is wanted may lean on what is told beside it, for the part ("it was five boards, now it's six"), for the unit ("their wall is four feet
// high, ours is three and a half"), for the words behind the figure, or for the figure itself ("ours has to be wider than that").

// ways are what is wanted in words of its own, the plainest first.
func (x contrast) ways() (ways [][]atom) {
	told := othersLeftOut(withoutJoint(x.told))
	from, to := lastFigure(told)
	wanted := nowLeftOut(withoutJoint(x.wanted))
	if from >= 0 {
		wanted = thanTold(wanted, told[from:to])
	}
	if len(wanted) == 0 {
		return nil
	}
	wanted = withDimension(wanted, told)
	at, end := lastFigure(wanted)
	n := pronounWords(wanted)
	named := partNamed(wanted[n:]) // "the new one" of a wall is no added post
	subject := plainSubject(told, from)
	if at < 0 || from < 0 {
		switch {
		case named || n == 0 && at < 0:
			return [][]atom{wanted}
		case n > 0 && len(subject) > 0:
			return [][]atom{inARow(subject, wanted[n:])}
		}
		return nil
	}
	with, behind := withUnit(wanted, at, end, told[to-1]), wanted[end:]
	tail := told[to:]
	for len(tail) > 0 && tail[len(tail)-1].kind == aSign {
		tail = tail[:len(tail)-1]
	}
	if len(behind) > 0 {
		tail = nil
	}
	if named {
		ways = append(ways, inARow(with, behind))
		if len(tail) > 0 && dims[tail[0].text] != nil {
			ways = append(ways, inARow(with, tail[:1]))
		}
		if len(behind) == 0 && len(tail) > 0 {
			ways = append(ways, inARow(with, tail))
		}
	}
	if n > 0 {
		if otherThings[told[0].text] || len(told) > 1 && otherThings[told[1].text] && !partNamed(told[2:]) {
			subject = wallNamed(told[0])
			if gateTold(told) {
				subject = []atom{worded(told[0], "the"), worded(told[0], "opening")}
			}
		}
		if len(subject) == 0 {
			subject = partToldOf(told)
		}
		if len(subject) > 0 {
			ways = append(ways, inARow(subject, with[n:], behind, tail), inARow(subject, with[n:], behind))
		}
	} else if it := slices.IndexFunc(with, func(a atom) bool { return a.text == "it" || a.text == "them" }); it > 0 && len(subject) > 0 {
		ways = append(ways, inARow(with[:it], subject, with[it+1:], behind, told[to:]), inARow(with[:it], subject, with[it+1:], behind))
	}
	if named {
		return ways
	}
	ways = append(ways, inARow(with, behind, tail))
	if at == 0 || figureOnly(wanted, at, end) {
		ways = append(ways, inARow(told[:from], with[at:], behind, tail))
		if len(subject) > 0 {
			ways = append(ways, inARow(subject, with[at:]))
		}
		if part := partToldOf(told); part != nil {
			ways = append(ways, inARow(part, with[at:]), inARow(with[at:], part))
		}
	}
	return ways
}

// withDimension gives what is wanted the word behind the first figure that was told, where more follows its own: "theirs is 42 high with three inch gaps,
// mine's 46 with two inch gaps".
func withDimension(wanted, told []atom) []atom {
	n := pronounWords(wanted)
	if n == 0 || n+2 >= len(wanted) || wanted[n].text != "is" && wanted[n].text != "'s" {
		return wanted
	}
	_, end, ok := (reader{wanted}).length(n + 1)
	if !ok || end >= len(wanted) || wanted[end].text != "with" {
		return wanted
	}
	for i := range told {
		if !startsLength(reader{told}, i) {
			continue
		}
		_, behind, _ := (reader{told}).length(i)
		if behind < len(told) && dims[told[behind].text] != nil {
			return inARow(wanted[:end], told[behind:behind+1], wanted[end:])
		}
		break
	}
	return wanted
}

// partToldOf are the words of the part that is named last before the figure, or else first behind it.
func partToldOf(told []atom) (part []atom) {
	from, _ := lastFigure(told)
	for i, a := range told {
		if a.text == "hundred" || (a.text == "bay" || a.text == "rail") && i+1 < len(told) && told[i+1].kind == aDigits {
			return nil // of one bay, or of so many: more than a part is told
		}
	}
	for i := 0; i < len(told); i++ {
		if key, next := partKey(told, i); key != "" {
			if i > from && part != nil {
				break
			}
			part = told[i:next]
		}
	}
	return part
}

// wallNamed is the word for the wall, in the place of another thing that is built.
func wallNamed(at atom) []atom { return []atom{worded(at, "the"), worded(at, "wall")} }

// gateTold reports whether a gate is what was told of.
func gateTold(told []atom) bool {
	return slices.ContainsFunc(told[:min(2, len(told))], func(a atom) bool { return a.text == "gate" })
}

// pronounWords is how many words at the beginning stand for the part that was told of: "ours", "this one".
func pronounWords(wanted []atom) int {
	switch next := (reader{wanted}).word(1); {
	case wanted[0].text == "this" && next == "one", wanted[0].text == "the" && next == "one":
		return 2
	case wanted[0].text == "the" && next == "new" && (reader{wanted}).word(2) == "one":
		return 3
	case ourWord[wanted[0].text]:
		return 1
	}
	return 0
}

// withUnit is what is wanted up to its figure, with the unit of what was told where it has none: of feet only where it is no more than nine.
func withUnit(wanted []atom, at, end int, unit atom) []atom {
	out := slices.Clone(wanted[:end])
	if unitSaid[unit.text] && !slices.ContainsFunc(wanted[at:end], func(a atom) bool { return unitSaid[a.text] }) && (!strings.HasPrefix(unit.text, "f") || !twoDigits(wanted[at:end])) {
		out = append(out, unit)
	}
	return out
}

// thanTold sets the figure that was told in the place of the word that stands for it: "wider than that".
func thanTold(wanted, figure []atom) []atom {
	for i := 1; i < len(wanted); i++ {
		if w := wanted[i].text; (w == "that" || w == "those" || w == "theirs") && (wanted[i-1].text == "than" || wanted[i-1].text == "under" || wanted[i-1].text == "over") {
			return inARow(wanted[:i], figure, wanted[i+1:])
		}
	}
	return wanted
}

// inARow puts parts one behind another.
func inARow(parts ...[]atom) (out []atom) {
	for _, p := range parts {
		out = append(out, p...)
	}
	return out
}

// twoDigits reports whether a figure is of ten or more, so that it is hardly in feet.
func twoDigits(figure []atom) bool {
	return len(figure[0].text) > 1 && figure[0].kind == aDigits || strings.HasSuffix(figure[0].text, "ty") || strings.HasSuffix(figure[0].text, "teen")
}

// partNamed reports whether a part of the wall is named.
func partNamed(part []atom) bool {
	for i := range part {
		if key, _ := partKey(part, i); key != "" {
			return true
		}
	}
	return false
}

// plainSubject are the words before the verb of what was told: "the gap", "top of bay 1". Of a wall no more is kept than that.
func plainSubject(told []atom, from int) []atom {
	if from < 0 {
		from = len(told)
	}
	for i, a := range told[:from] {
		if i == 1 && speakers[told[0].text] {
			return nil
		}
		if pastIs[a.text] || a.text == "is" || a.text == "are" || a.text == "'s" || a.text == "has" || a.text == "have" {
			if i > 0 && told[i-1].text == "wall" {
				return told[i-1 : i]
			}
			return told[:i]
		}
	}
	return nil
}

// lastFigure finds the last figure of a clause, -1 where there is none.
func lastFigure(part []atom) (at, end int) {
	at = -1
	for i := 0; i < len(part); {
		if e, ok := figureEnd(part, i); ok && (part[i].text != "a" && part[i].text != "an" || e > i+1) {
			if part[max(i-1, 0)].text != "bay" && part[max(i-1, 0)].text != "rail" {
				at, end = i, e
			}
			i = e
			continue
		}
		i++
	}
	return at, end
}

// figureOnly reports whether nothing but who wants it now stands before a figure, and nothing behind it.
func figureOnly(part []atom, at, end int) bool {
	return end == len(part) && !slices.ContainsFunc(part[:at], func(a atom) bool { return !nowOnly[a.text] })
}

// nowLeftOut leaves out the words that only say that something is of now and of this wall.
func nowLeftOut(part []atom) []atom {
	for again := true; again && len(part) > 1; {
		again = false
		for _, w := range nowWorded {
			if standAt(part, 0, w...) && len(part) > len(w) {
				part, again = part[len(w):], true
			}
			if n := len(part) - len(w); n > 0 && standAt(part, n, w...) {
				part, again = part[:n], true
			}
		}
		for len(part) > 1 && part[0].kind == aSign {
			part, again = part[1:], true
		}
		for _, w := range endsWish {
			if n := len(part) - len(w); n > 0 && standAt(part, n, w...) {
				part, again = part[:n], true
			}
		}
		for n := len(part); n > 1 && part[n-1].kind == aSign; n = len(part) {
			part, again = part[:n-1], true
		}
	}
	return part
}

// endsWish are words behind a figure by which somebody settles on it.
var endsWish = wordRows(`is what i want
	is what we want
	is what we settled on
	is what i settled on
	is what we have
	is enough
	is plenty
	will do
	please
	thanks`)

var nowWorded = [][]string{{"now"}, {"today"}, {"this", "time"}, {"here"}, {"nowadays"}, {"for", "this", "one"}, {"on", "this", "one"}, {"with", "this", "one"}, {"at", "this", "point"}, {"for", "us"}, {"for", "me"}, {"on", "this", "job"}, {"for", "this", "job"}, {"instead"}, {"these", "days"}, {"now", "then"}, {"on", "ours"}, {"turns", "out"}}

// othersLeftOut leaves out whose something else is, and when it was so.
func othersLeftOut(part []atom) []atom {
	var out []atom
	for i := 0; i < len(part); i++ {
		if n := toldWhen(part, i); n > 0 {
			i += n - 1
			continue
		}
		switch t := part[i].text; {
		case t == "old" || t == "last" || t == "previous" || t == "other" || t == "former":
			continue
		case whoseElse[t] && i+1 < len(part) && (part[i+1].text == "'s" || part[i+1].text == "'"):
			i++
			continue
		case t == "their" || t == "his" || t == "her":
			out = append(out, worded(part[i], "the"))
			continue
		}
		out = append(out, part[i])
	}
	return out
}
