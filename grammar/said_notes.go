package grammar

import "slices"

// notePhrases are turns of notes written on the job: few words, no verbs, points behind shortened words.
var notePhrases = []setPhrase{
	{"HEIGHT ?is|: # to top ?of ?WALL|RAIL $", "wall height $1"},
	{"HEIGHT|WALL to top ?of ?WALL|RAIL ?is|: # $", "wall height $1"},
	{"# clear ?, ?from END ?POST face to ?face ?of END|other|opposite ?POST ?face $", "span $1"},
	{"field|site !meas|measured|measurement|measures|measurements", "$1"},
	{"ea . !pc|piece|bd|board|rail|post|bay|stiff|stiffener|opening", "each $1"},
	{"min . waste|scrap|wastage|offcuts|cutoffs", "least waste"},
	{"min . !post|posts|psts|rail|rails|bds|boards|bays|stiffs|stiffeners $", "min $1"},
	{"^ ?please ?can|could|would|will ?you school|educate|coach|tutor|enlighten me|us ?up on|in|about", "teach me"},
	{"^ can|could|may|might|shall i|we go with|take|use|have|pick|choose your", "i will take your"},
	{"^ this|it ?one|wall|side is|'s|will|should|shall|has ?going ?to be ?just|exactly|all same as", "make this one the same as"},
	{"^ this|it ?one|wall|side is|'s|will|should|shall|has ?going ?to be ?just|exactly like", "make this one just like"},
	{"^ WALL is|'s|will ?going ?to be ?just|exactly|all same as", "make this one the same as"},
	{"?, ?so|and|because i|we do not ?really want|need|like|care ?to ?have ?to think|worry|fuss|fret ?any ?more about|over it|that|them|this ?again|later|anymore $", ""},
	{"^ do|does|would i|we|you|it ?really|still|even need|require ?to ?add|set another|a ?extra|more ?added|new POST ?at ?all", "how many added posts do i need"},
	{"^ do|does|would i|we|you|it ?really|still|even need|require ?any STIFF ?at ?all if", "how many stiffeners do i need if"},
	{"do|should|shall|must|can|am i|we ?to load|grab|fetch|haul ?home $", "do i buy"},
	{"what did|have|had i|we|you ?just ?say|said|tell|told ?you|me about|on|regarding !GAP|OPENING|POST|STIFF|BRACKET|RAIL|WALL|BAY ?so ?far ?yet ?now ?please $", "what have i told you"},
	{"what|whatever did|have|had i|we ?just ?say|said|tell|told ?you about|on|regarding *", "what have i told you"},
	{"# aff to ?very top ?of ?RAIL|WALL $", "wall height $1"},
	{"# < !(_ ?_) < #", "$2 > $1 and $2 < $3"},
	{"# <= !(_ ?_) <= #", "$2 >= $1 and $2 <= $3"},
	{"# > !(_ ?_) > #", "$2 < $1 and $2 > $3"},
	{"# >= !(_ ?_) >= #", "$2 <= $1 and $2 >= $3"},
	{"# < !(_ ?_) <= #", "$2 > $1 and $2 <= $3"},
	{"# <= !(_ ?_) < #", "$2 >= $1 and $2 < $3"},
	{"^^ # < !(_ ?_) $$", "$2 > $1"},
	{"^^ # <= !(_ ?_) $$", "$2 >= $1"},
	{"^^ # > !(_ ?_) $$", "$2 < $1"},
	{"^^ # >= !(_ ?_) $$", "$2 <= $1"},
	{"ftf|ff", "face to face"},
	{"oto|oo", "outside to outside"},
	{"sv", "save"},
	{"print|export all of this|it|that to|in|into", "print this to"},
	{"?, ?and|because|since that|which|it is ?about ?all as close|fine|near|good|tight as my|our|i|we ?old|tired|bad|poor ?eyes|eye|eyesight|hands|tape|saw|pencil ?can|will|ever ?go|goes|see|read|reads|get|gets|work|cut|measure|manage|are|is ?good ?for|to|it $", ""},
	{"?, ?and|because|since that|which|it is all my|our|i|we ?old|tired|bad|poor ?eyes|eye|eyesight|hands|tape|saw|pencil ?can|will|ever go|goes|see|read|reads|get|gets|work|cut|measure|manage|are|is|do ?good ?for|to|it|down $", ""},
}

// jobNotes are the steps that set what such notes hold plain.
var jobNotes = []func([]atom) []atom{equalsWhat, voidBehind, feetThenPrice, topOfPost, openingsByNumber, aboveAndBelow, clearOfBays, calledMate}

// notedPlainly sets the notes of a job plain.
func notedPlainly(atoms []atom) []atom {
	for _, step := range jobNotes {
		atoms = step(atoms)
	}
	return atoms
}

// equalsWhat sets "gap = ?", at the end of a line, to "what is the gap".
func equalsWhat(atoms []atom) []atom {
	n := len(atoms)
	if n < 3 || atoms[n-1].text != "?" || atoms[n-2].text != "=" {
		return atoms
	}
	from := n - 2
	for from > 0 && atoms[from-1].kind == aWord && atoms[from-1].text != "and" && n-from < 6 {
		from--
	}
	if from == n-2 || !namesPart(atoms, from) {
		return atoms
	}
	out := reworded(atoms[:n-2:n-2], from, from+1, "what", "is", atoms[from].text)
	return append(out, atoms[n-1])
}

// voided are words behind a limit that take it back.
var voided = wordSet("void voided cancel cancelled canceled scratch scratched deleted delete scrapped struck dead")

// voidBehind sets `old 3" gap max - void` to "forget old 3" gap max".
func voidBehind(atoms []atom) []atom {
	n := len(atoms)
	for n > 0 && atoms[n-1].text == "." {
		n--
	}
	if n < 4 || !voided[atoms[n-1].text] || atoms[n-2].kind != aSign || atoms[n-2].glued {
		return atoms
	}
	limited := slices.ContainsFunc(atoms[:n-2], func(a atom) bool { return limits[a.text] })
	figure := slices.ContainsFunc(atoms[:n-2], func(a atom) bool { return a.kind == aDigits || spelledNumber(a.text) })
	parted := slices.ContainsFunc(atoms[:n-2], func(a atom) bool {
		return a.kind == aSign && (a.text == "," || a.text == "." || a.text == ";" || a.text == "?")
	})
	if !limited || !figure || parted {
		return atoms
	}
	out := atoms[: n-2 : n-2]
	if words := out[0].text; out[0].kind == aWord {
		return reworded(out, 0, 1, "forget", words)
	}
	forget := out[0]
	forget.text, forget.kind, forget.glued = "forget", aWord, false
	return append([]atom{forget}, out...)
}

// sidesByLetter are the sides of a wall by the letters that notes have for them.
var sidesByLetter = map[string]string{"l": "left", "r": "right", "are": "right", "lh": "left", "rh": "right", "left": "left", "right": "right", "lft": "left", "rt": "right", "mid": "middle", "middle": "middle", "m": "middle", "ctr": "middle", "center": "middle"}

// openingsByNumber sets "2 opngs: #1 L, #2 R" to "2 openings: opening 1 left, opening 2 right".
func openingsByNumber(atoms []atom) []atom {
	if !slices.ContainsFunc(atoms, func(a atom) bool { return a.text == "#" }) {
		return atoms
	}
	opening := false
	for i := 0; i < len(atoms); i++ {
		if key, next := partKey(atoms, i); key != "" && next > i {
			opening = key == "opening"
		}
		if !opening || atoms[i].text != "#" || i+2 >= len(atoms) || atoms[i+1].kind != aDigits || !endsPart(atoms, i+3) {
			continue
		}
		side := sidesByLetter[atoms[i+2].text]
		if side == "" {
			continue
		}
		atoms = reworded(reworded(atoms, i+2, i+3, side), i, i+1, "opening")
		opening = true
	}
	return atoms
}

// aboveAndBelow sets "five eighths above the board and five eighths below it" to "five eighths past the board": an ear stands as far out on both sides.
func aboveAndBelow(atoms []atom) []atom {
	if !slices.ContainsFunc(atoms, func(a atom) bool { return a.text == "above" || a.text == "over" }) || !slices.ContainsFunc(atoms, func(a atom) bool { return a.text == "below" || a.text == "under" || a.text == "beneath" }) {
		return atoms
	}
	bracket := false
	for i := range atoms {
		bracket = bracket || partOf(reader{atoms}, i, "BRACKET") || atoms[i].text == "ears" || atoms[i].text == "ear"
		_, next, ok := reader{atoms}.length(i)
		if !bracket || !ok || next <= i || next >= len(atoms) || atoms[next].text != "above" && atoms[next].text != "over" {
			continue
		}
		and := pastRailOrIt(atoms, next+1)
		if and >= len(atoms) || atoms[and].text != "and" && atoms[and].text != "," {
			continue
		}
		again := and + 1
		end := again + next - i
		if end >= len(atoms) || !sameWords(atoms[i:next], atoms[again:end]) || atoms[end].text != "below" && atoms[end].text != "under" && atoms[end].text != "beneath" {
			continue
		}
		return reworded(atoms, next, pastRailOrIt(atoms, end+1), "past", "the", "board", "above", "and", "below")
	}
	return atoms
}

// pastRailOrIt steps over "the board" or "it".
func pastRailOrIt(atoms []atom, i int) int {
	j := skipArticle(atoms, i)
	if j < len(atoms) && (atoms[j].text == "it" || partOf(reader{atoms}, j, "RAIL")) {
		return j + 1
	}
	return i
}

// sameWords reports whether two stretches are the same word by word.
func sameWords(a, b []atom) bool {
	return slices.EqualFunc(a, b, func(x, y atom) bool { return x.text == y.text })
}

// clearOfBays sets "bay one is 63 in the clear" to "bay one is 63 clear".
func clearOfBays(atoms []atom) []atom {
	for i := 1; i+2 < len(atoms); i++ {
		if atoms[i].text != "in" || atoms[i+1].text != "the" || atoms[i+2].text != "clear" || !endsPart(atoms, i+3) && atoms[i+3].text != "and" {
			continue
		}
		for j := i - 1; j >= 0 && !(atoms[j].kind == aSign && (atoms[j].text == "," || atoms[j].text == ".")); j-- {
			if key, _ := partKey(atoms, j); key == "opening" || key == "bay" {
				return cutOut(atoms, i, i+2)
			}
		}
	}
	return atoms
}

// mates are words by which somebody is spoken to; nameLeads have a name behind them instead.
var (
	mates     = wordSet("mate mates pal bud dude bro chief fella man boss partner pardner buddy friend amigo sonny kiddo")
	nameLeads = wordSet("save call called name named open load compare same like as under store keep file said says say than with to and of for by or not no is are was")
	mateNext  = wordSet("what how where why which can could would will do does is are i we you let give show make put set tell it that there my our")
)

// calledMate leaves out the "mate" to whom a line is said: "we're in metric on this job mate gap's 65".
func calledMate(atoms []atom) []atom {
	for i := range atoms {
		if !mates[atoms[i].text] || len(atoms) < 3 {
			continue
		}
		if i > 0 && (vocab().articles[atoms[i-1].text] || atoms[i-1].text == "saw" || owned[atoms[i-1].text] || nameLeads[atoms[i-1].text]) || slices.ContainsFunc(atoms[:i], func(a atom) bool { return nameLeads[a.text] && len(a.text) > 3 }) {
			continue
		}
		next := atoms[i+1:]
		switch {
		case i == 0 && len(next) > 1 && (next[0].text == "," || vocab().articles[next[0].text] || mateNext[next[0].text] && next[0].text != "is" && next[0].text != "are" || namesPart(next, 0)):
			if next[0].text == "," {
				return cutOut(atoms, 0, 2)
			}
			return cutOut(atoms, 0, 1)
		case i > 0 && mateNext[textOfFirst(next)] && !slices.ContainsFunc(atoms[:i], func(a atom) bool { return !leadWords[a.text] }):
			return cutOut(atoms, i, i+1) // "alright partner I want …"
		case i > 1 && endsPart(atoms, i+1):
			if atoms[i-1].text == "," {
				return cutOut(atoms, i-1, i+1)
			}
			return cutOut(atoms, i, i+1)
		case i > 1 && namesPart(next, 0):
			out := append([]atom{}, atoms...)
			out[i].text, out[i].kind = ",", aSign
			return out
		}
	}
	return atoms
}

// textOfFirst is the text of the first of some atoms, nothing where there is none.
func textOfFirst(atoms []atom) string {
	if len(atoms) == 0 {
		return ""
	}
	return atoms[0].text
}

// topOfPost sets "the top of it", behind the added post and nothing else that has a top, to the height of that post.
func topOfPost(atoms []atom) []atom {
	for i := 2; i+3 < len(atoms); i++ {
		if !standAt(atoms, i, "top", "of", "it") {
			continue
		}
		last := ""
		for j := 0; j < i; j++ {
			switch key, next := partKey(atoms, j); key {
			case "added post", "rail", "wall", "end post", "post", "bay", "opening", "stiffener":
				last, j = key, next-1
			}
		}
		if last == "added post" {
			return reworded(atoms, i, i+3, "top", "of", "added", "post")
		}
	}
	return atoms
}
