package grammar

// looksLike reports whether a clause only tells how something looks or feels to somebody: "my father-in-law thinks it looks bare", "the
// boss says it looks like a fort", "it feels heavy". It names no figure and no part, and denies nothing.
func looksLike(w []string) bool {
	for len(w) > 1 && (joints[w[0]] || causes[w[0]]) {
		w = w[1:]
	}
	i := 0
	for i < len(w) && i < 5 && !looking[w[i]] && !pointing[w[i]] && w[i] != "they" {
		i++ // "my wife says"
	}
	if i > 0 {
		if i >= len(w) || !voices[w[i-1]] && w[i-1] != "that" || i < 2 {
			return false
		}
	}
	for i < len(w) && (pointing[w[i]] || w[i] == "they" || w[i] == "thing") {
		i++
	}
	for i < len(w) && (w[i] == "just" || w[i] == "still" || w[i] == "would" || w[i] == "will" || w[i] == "really" || w[i] == "all" || w[i] == "kind" || w[i] == "sort" || w[i] == "of") {
		i++
	}
	if i >= len(w) || !looking[w[i]] || i == 0 || i+1 == len(w) {
		return false
	}
	for _, v := range w[i+1:] {
		if turning[v] && v != "off" || v == "not" || v == "no" || v == "never" || v == "if" || v == "with" || units[v] > 0 || tens[v] > 0 {
			return false
		}
		if f := vocab().match([]atom{{text: v, kind: aWord}}, 0); len(f) > 0 {
			switch f[0].entry.kind {
			case kVague, kDim, kSide, kUp, kDown, kOff, kWhyFill, kMore:
			default:
				if !judging[v] && !vocab().neutral[v] {
					return false
				}
			}
		}
	}
	return true
}

var (
	voices  = wordSet("say says said think thinks thought feel feels felt reckon reckons complain complains complained insist insists swear swears find finds argues")
	looking = wordSet("look looks looked feel feels felt seem seems seemed")
	judging = wordSet("like a an the too so very bare closed open crowded cluttered cramped empty heavy light busy plain top bottom cheap naked thin thick tight loose stingy skimpy squat stubby goofy odd funny fort prison jail cage fence wall box bit little right good nice better best ugly wrong off and up in out kind sort of way")
)

// runsOn reports whether a clause of its own begins at an atom without a sign before it: "raise it half a foot the boss says it looks like
// a box", "lose a rail we're short on lumber".
func runsOn(atoms []atom, i int) bool {
	if i < 3 || atoms[i-1].kind != aWord && atoms[i-1].kind != aDigits && atoms[i-1].kind != aVulgar || outsiders[atoms[i].text] && !otherOnes[atoms[i].text] || !subjectAt(atoms, i) {
		return false
	}
	w := wordsAhead(atoms[i:min(len(atoms), i+longestRunOn)])
	return len(w) > 2 && len(w) < longestRunOn && (pleads(w) || looksLike(w)) && endsThought(atoms, i-1)
}

// longestRunOn is more words than a clause has that runs on without a break.
const longestRunOn = 30

// endsThought reports whether what is said may end at an atom: with a figure, a unit, a part or a direction.
func endsThought(atoms []atom, i int) bool {
	w := atoms[i].text
	return atoms[i].kind == aDigits || atoms[i].kind == aVulgar || inchWords[w] || footWords[w] || units[w] > 0 || w == "half" || w == "please" || w == "higher" || w == "lower" || w == "apart" || fractionWords[w] || namesPart(atoms, i)
}

var fractionWords = wordSet("quarter quarters eighth eighths sixteenth sixteenths half mm cm rails boards slats bay bays floor ground wall gap gaps now")

// keepsThem reports whether a clause only tells what something does for those round the wall: "that keeps the puppy in".
func keepsThem(w []string) bool {
	if len(w) < 4 || !pointing[w[0]] && w[0] != "which" {
		return false
	}
	i := 1
	for i < len(w) && (w[i] == "will" || w[i] == "would" || w[i] == "should" || w[i] == "just" || w[i] == "also" || w[i] == "still" || w[i] == "ought" || w[i] == "to") {
		i++
	}
	if i >= len(w) || !keeping[w[i]] {
		return false
	}
	them := false
	for _, v := range w[i+1:] {
		if !outsiders[v] && !pleaLinks[v] && !pleaActs[v] && !pleaStates[v] || v == "not" || v == "never" {
			return false
		}
		them = them || outsiders[v]
	}
	return them
}

var keeping = wordSet("keep keeps stop stops let lets help helps give gives save saves hold holds please pleases suit suits block blocks")
