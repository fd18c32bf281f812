package grammar

import "slices"

// A value that is said alone, and what it is of behind it.

// valueBefore returns where the value begins that ends before an atom and stands alone; end where there is none.
func valueBefore(in []atom, end int) int {
	from := end
	for from > 0 && ofValue(in, from-1) {
		from--
	}
	for from < end && (in[from].text == "," || in[from].text == "and" || in[from].text == "to" && !sidesNamed[in[end-1].text]) {
		from++
	}
	value := in[from:end]
	if from == end || from > 0 && !clauseBeginsAt(in, from) && !leadIns[in[from-1].text] {
		return end
	}
	if from > 0 && in[from-1].text == "," && figured(in[sentenceBegin(in, from):from]) {
		return end // a list of figures
	}
	if figured(value) || slices.ContainsFunc(value, func(a atom) bool { return inchWords[a.text] || orderFractions[a.text] }) && len(value) > 1 {
		return from
	}
	first := value[0].text
	if len(value) == 1 {
		_, metric := metricWords[first]
		if metric || inchWords[first] || footWords[first] {
			return from // "millimeters, that's what I work in"
		}
	}
	if first == "level" || first == "flush" || len(value) > 1 && (first == "the" || first == "as") && (value[1].text == "same" || value[1].text == "high") || len(value) > 1 && sidesNamed[value[len(value)-1].text] {
		return from
	}
	return end
}

// sentenceBegin returns where the sentence begins that an atom stands in.
func sentenceBegin(in []atom, i int) int {
	for i > 0 && !endsSentence(in, i-1) {
		i--
	}
	return i
}

// ofValue reports whether an atom may stand in a value that is said alone.
func ofValue(in []atom, i int) bool {
	a := in[i]
	switch {
	case a.kind == aDigits, a.kind == aVulgar, units[a.text] > 0, tens[a.text] > 0, inchWords[a.text], footWords[a.text], valueWords[a.text], sizedWord(a.text):
		return true
	case a.kind == aSign:
		switch a.text {
		case "'", "\"", "/", "-", "$", "%", "x":
			return true
		case ".":
			return !breaksClause(in, i)
		case ",":
			return i+1 < len(in) && boundBegins[in[i+1].text]
		}
		return false
	}
	_, metric := metricWords[a.text]
	return metric || a.text == "x" || a.text == "by" || a.text == "s" && a.glued
}

// likened returns where a value goes on that is only like the gap: "as high as the gaps between the boards"; 0 for others.
func likened(value []atom) int {
	for k := 0; k+1 < len(value) && k < 4; k++ {
		if value[k].text == "as" && (value[k+1].text == "between" || vocab().articles[value[k+1].text] && k+2 < len(value) && (value[k+2].text == "gap" || value[k+2].text == "gaps")) {
			for k++; value[k].text != "between" && k+1 < len(value); k++ {
			}
			if value[k].text != "between" {
				k++
			}
			return k
		}
	}
	return 0
}

func endsInFigure(value []atom) bool {
	last := value[len(value)-1]
	_, metric := metricWords[last.text]
	return last.kind == aDigits || last.kind == aVulgar || last.text == "\"" || last.text == "'" || units[last.text] > 0 || tens[last.text] > 0 || inchWords[last.text] || footWords[last.text] || metric || orderFractions[last.text]
}

// withoutOf drops "of them" behind a count.
func withoutOf(value []atom) []atom {
	n := len(value)
	if n > 2 && value[n-2].text == "of" && (value[n-1].text == "them" || value[n-1].text == "em" || value[n-1].text == "those" || value[n-1].text == "these") {
		return value[:n-2]
	}
	return value
}

// valueWords may stand in a value that is said alone: bounds, what it is over or below, and for each of what.
var valueWords = wordSet(`sixes eights fours tens twelves twos threes ones fives a an the one at least most very all no more less fewer than under over above below beneath off from between and to or of
		them em those these each every per section bay wider narrower higher lower taller shorter tighter longer closer further smaller bigger apart high tall wide long thick deep
		about around roughly exactly just only maybe wall deck floor patio slab ground top up down level flush with on in left right middle same as half quarter quarters eighth eighths
		sixteenth sixteenths hundred dollars dollar bucks cents thirty-second clear end post
		apiece ea percent extra stiffener stiffeners post posts added gap gaps rails slats boards planks board rail slat plank lengths length pieces foot-long hand side doorway center centre bottom underneath`)
