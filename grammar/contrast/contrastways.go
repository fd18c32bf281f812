package contrast

import (
	"slices"
	"strings"

	"saywright/grammar/aside"
	"saywright/grammar/chunk"
	"saywright/grammar/hear"
	"saywright/grammar/idiom"
	"saywright/grammar/lex"
	"saywright/grammar/measure"
	"saywright/grammar/paraphrase"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// What is wanted may lean on what is told beside it, for the part ("it was five boards, now it's six"), for the unit ("their wall is four feet
// high, ours is three and a half"), for the words behind the figure, or for the figure itself ("ours has to be wider than that").

// Ways are what is wanted in words of its own, the plainest first.
func (x Contrast) Ways() (ways [][]scan.Atom) {
	told := othersLeftOut(aside.WithoutJoint(x.Told))
	from, to := idiom.LastFigure(told)
	wanted := nowLeftOut(aside.WithoutJoint(x.Wanted))
	if from >= 0 {
		wanted = thanTold(wanted, told[from:to])
	}
	if len(wanted) == 0 {
		return nil
	}
	wanted = withDimension(wanted, told)
	at, end := idiom.LastFigure(wanted)
	n := pronounWords(wanted)
	named := PartNamed(wanted[n:]) // "the new one" of a wall is no added post
	subject := plainSubject(told, from)
	if at < 0 || from < 0 {
		switch {
		case named || n == 0 && at < 0:
			return [][]scan.Atom{wanted}
		case n > 0 && len(subject) > 0:
			return [][]scan.Atom{paraphrase.InARow(subject, wanted[n:])}
		}
		return nil
	}
	with, behind := withUnit(wanted, at, end, told[to-1]), wanted[end:]
	tail := told[to:]
	for len(tail) > 0 && tail[len(tail)-1].Kind == scan.Sign {
		tail = tail[:len(tail)-1]
	}
	if len(behind) > 0 {
		tail = nil
	}
	if named {
		ways = append(ways, paraphrase.InARow(with, behind))
		if len(tail) > 0 && lex.Dims[tail[0].Text] != nil {
			ways = append(ways, paraphrase.InARow(with, tail[:1]))
		}
		if len(behind) == 0 && len(tail) > 0 {
			ways = append(ways, paraphrase.InARow(with, tail))
		}
	}
	if n > 0 {
		if otherThings[told[0].Text] || len(told) > 1 && otherThings[told[1].Text] && !PartNamed(told[2:]) {
			subject = wallNamed(told[0])
			if gateTold(told) {
				subject = []scan.Atom{chunk.Worded(told[0], "the"), chunk.Worded(told[0], "opening")}
			}
		}
		if len(subject) == 0 {
			subject = partToldOf(told)
		}
		if len(subject) > 0 {
			ways = append(ways, paraphrase.InARow(subject, with[n:], behind, tail), paraphrase.InARow(subject, with[n:], behind))
		}
	} else if it := slices.IndexFunc(with, func(a scan.Atom) bool { return a.Text == "it" || a.Text == "them" }); it > 0 && len(subject) > 0 {
		ways = append(ways, paraphrase.InARow(with[:it], subject, with[it+1:], behind, told[to:]), paraphrase.InARow(with[:it], subject, with[it+1:], behind))
	}
	if named {
		return ways
	}
	ways = append(ways, paraphrase.InARow(with, behind, tail))
	if at == 0 || figureOnly(wanted, at, end) {
		ways = append(ways, paraphrase.InARow(told[:from], with[at:], behind, tail))
		if len(subject) > 0 {
			ways = append(ways, paraphrase.InARow(subject, with[at:]))
		}
		if part := partToldOf(told); part != nil {
			ways = append(ways, paraphrase.InARow(part, with[at:]), paraphrase.InARow(with[at:], part))
		}
	}
	return ways
}

// withDimension gives what is wanted the word behind the first figure that was told, where more follows its own: "theirs is 42 high with three inch gaps,
// mine's 46 with two inch gaps".
func withDimension(wanted, told []scan.Atom) []scan.Atom {
	n := pronounWords(wanted)
	if n == 0 || n+2 >= len(wanted) || wanted[n].Text != "is" && wanted[n].Text != "'s" {
		return wanted
	}
	_, end, ok := (measure.Reader{Atoms: wanted}).Length(n + 1)
	if !ok || end >= len(wanted) || wanted[end].Text != "with" {
		return wanted
	}
	for i := range told {
		if !phrase.StartsLength(measure.Reader{Atoms: told}, i) {
			continue
		}
		_, behind, _ := (measure.Reader{Atoms: told}).Length(i)
		if behind < len(told) && lex.Dims[told[behind].Text] != nil {
			return paraphrase.InARow(wanted[:end], told[behind:behind+1], wanted[end:])
		}
		break
	}
	return wanted
}

// partToldOf are the words of the part that is named last before the figure, or else first behind it.
func partToldOf(told []scan.Atom) (part []scan.Atom) {
	from, _ := idiom.LastFigure(told)
	for i, a := range told {
		if a.Text == "hundred" || (a.Text == "bay" || a.Text == "rail") && i+1 < len(told) && told[i+1].Kind == scan.Digits {
			return nil // of one bay, or of so many: more than a part is told
		}
	}
	for i := 0; i < len(told); i++ {
		if key, next := chunk.PartKey(told, i); key != "" {
			if i > from && part != nil {
				break
			}
			part = told[i:next]
		}
	}
	return part
}

// wallNamed is the word for the wall, in the place of another thing that is built.
func wallNamed(at scan.Atom) []scan.Atom {
	return []scan.Atom{chunk.Worded(at, "the"), chunk.Worded(at, "wall")}
}

// gateTold reports whether a gate is what was told of.
func gateTold(told []scan.Atom) bool {
	return slices.ContainsFunc(told[:min(2, len(told))], func(a scan.Atom) bool { return a.Text == "gate" })
}

// pronounWords is how many words at the beginning stand for the part that was told of: "ours", "this one".
func pronounWords(wanted []scan.Atom) int {
	switch next := (measure.Reader{Atoms: wanted}).Word(1); {
	case wanted[0].Text == "this" && next == "one", wanted[0].Text == "the" && next == "one":
		return 2
	case wanted[0].Text == "the" && next == "new" && (measure.Reader{Atoms: wanted}).Word(2) == "one":
		return 3
	case ourWord[wanted[0].Text]:
		return 1
	}
	return 0
}

// withUnit is what is wanted up to its figure, with the unit of what was told where it has none: of feet only where it is no more than nine.
func withUnit(wanted []scan.Atom, at, end int, unit scan.Atom) []scan.Atom {
	out := slices.Clone(wanted[:end])
	if unitSaid[unit.Text] && !slices.ContainsFunc(wanted[at:end], func(a scan.Atom) bool { return unitSaid[a.Text] }) && (!strings.HasPrefix(unit.Text, "f") || !twoDigits(wanted[at:end])) {
		out = append(out, unit)
	}
	return out
}

// thanTold sets the figure that was told in the place of the word that stands for it: "wider than that".
func thanTold(wanted, figure []scan.Atom) []scan.Atom {
	for i := 1; i < len(wanted); i++ {
		if w := wanted[i].Text; (w == "that" || w == "those" || w == "theirs") && (wanted[i-1].Text == "than" || wanted[i-1].Text == "under" || wanted[i-1].Text == "over") {
			return paraphrase.InARow(wanted[:i], figure, wanted[i+1:])
		}
	}
	return wanted
}

// twoDigits reports whether a figure is of ten or more, so that it is hardly in feet.
func twoDigits(figure []scan.Atom) bool {
	return len(figure[0].Text) > 1 && figure[0].Kind == scan.Digits || strings.HasSuffix(figure[0].Text, "ty") || strings.HasSuffix(figure[0].Text, "teen")
}

// PartNamed reports whether a part of the wall is named.
func PartNamed(part []scan.Atom) bool {
	for i := range part {
		if key, _ := chunk.PartKey(part, i); key != "" {
			return true
		}
	}
	return false
}

// plainSubject are the words before the verb of what was told: "the gap", "top of bay 1". Of a wall no more is kept than that.
func plainSubject(told []scan.Atom, from int) []scan.Atom {
	if from < 0 {
		from = len(told)
	}
	for i, a := range told[:from] {
		if i == 1 && lex.Speakers[told[0].Text] {
			return nil
		}
		if pastIs[a.Text] || a.Text == "is" || a.Text == "are" || a.Text == "'s" || a.Text == "has" || a.Text == "have" {
			if i > 0 && told[i-1].Text == "wall" {
				return told[i-1 : i]
			}
			return told[:i]
		}
	}
	return nil
}

// figureOnly reports whether nothing but who wants it now stands before a figure, and nothing behind it.
func figureOnly(part []scan.Atom, at, end int) bool {
	return end == len(part) && !slices.ContainsFunc(part[:at], func(a scan.Atom) bool { return !nowOnly[a.Text] })
}

// nowLeftOut leaves out the words that only say that something is of now and of this wall.
func nowLeftOut(part []scan.Atom) []scan.Atom {
	for again := true; again && len(part) > 1; {
		again = false
		for _, w := range nowWorded {
			if scan.StandAt(part, 0, w...) && len(part) > len(w) {
				part, again = part[len(w):], true
			}
			if n := len(part) - len(w); n > 0 && scan.StandAt(part, n, w...) {
				part, again = part[:n], true
			}
		}
		for len(part) > 1 && part[0].Kind == scan.Sign {
			part, again = part[1:], true
		}
		for _, w := range endsWish {
			if n := len(part) - len(w); n > 0 && scan.StandAt(part, n, w...) {
				part, again = part[:n], true
			}
		}
		for n := len(part); n > 1 && part[n-1].Kind == scan.Sign; n = len(part) {
			part, again = part[:n-1], true
		}
	}
	return part
}

// endsWish are words behind a figure by which somebody settles on it.
var endsWish = hear.WordRows(`is what i want
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
func othersLeftOut(part []scan.Atom) []scan.Atom {
	var out []scan.Atom
	for i := 0; i < len(part); i++ {
		if n := toldWhen(part, i); n > 0 {
			i += n - 1
			continue
		}
		switch t := part[i].Text; {
		case t == "old" || t == "last" || t == "previous" || t == "other" || t == "former":
			continue
		case whoseElse[t] && i+1 < len(part) && (part[i+1].Text == "'s" || part[i+1].Text == "'"):
			i++
			continue
		case t == "their" || t == "his" || t == "her":
			out = append(out, chunk.Worded(part[i], "the"))
			continue
		}
		out = append(out, part[i])
	}
	return out
}
