package grammar

// A claim is made by whoever is named: "Pete says no gap can be over four". A name is a word that no table knows.

// claimHead is the beginning of a claim.
var claimHead = &entry{kind: kHead, key: string(Check)}

// namedClaim reads a name and its verb of saying at the beginning of a part of the line. It returns the atom after them, and i
// where nobody's name stands there.
func (l *lexing) namedClaim(i int) int {
	if t := l.last(); l.before != "" && l.before != "and" || t != nil && !l.breaks(*t) || l.kind(i) != aWord || len(l.word(i)) < 3 || vocab().known[l.word(i)] || words().numberish(l.word(i)) || len(words().near(l.word(i))) > 0 {
		return i
	}
	j := i + 1
	switch l.word(j) {
	case "says", "said", "thinks", "claims", "reckons", "figures", "insists", "swears", "believes", "told", "tells", "maintains", "claimed", "figured", "reckoned":
		j++
	default:
		return i
	}
	if (l.word(j-1) == "told" || l.word(j-1) == "tells") != (l.word(j) == "me" || l.word(j) == "us") {
		return i
	}
	if l.word(j) == "me" || l.word(j) == "us" {
		j++
	}
	if l.word(j) == "that" {
		j++
	}
	if j >= len(l.atoms) {
		return i
	}
	l.add(kHead, i, j).found = []found{{entry: claimHead}}
	return j
}
