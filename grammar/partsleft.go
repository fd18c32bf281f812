package grammar

import (
	"regexp"
	"slices"
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/grammar/chunk"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/scan"
	"saywright/solver/exact"
)

// What a line names by a word that can mean nothing else is in what was heard of it, as is every figure (figuresleft.go), or there is a reason why it is not:
// it is to stay, it is known, it is of another wall.

// namedPart is a part by its key in the vocabulary, with the words that name it and nothing else, and what tells of it in what was heard.
type namedPart struct {
	words  map[string]bool // of the token; any where there are none
	told   []string
	beside bool           // it counts only with a figure or a change beside it, as "wall 48", "six rails" and "another board"
	unless *regexp.Regexp // words by which it is told otherwise
}

var namedParts = map[string]namedPart{
	"gap":          {words: scan.WordSet("gap gaps spacing"), told: []string{"gap", "clearance", "options", "spacing", "opening = ", "combinations"}},
	"bottom gap":   {told: []string{"bottom gap"}},
	"opening":      {words: scan.WordSet("opening openings doorway doorways walkthrough walkway passage"), told: []string{"opening"}},
	"stiffener":    {words: scan.WordSet("stiffener stiffeners uprights"), told: []string{"stiffener"}},
	"span":         {words: scan.WordSet("span"), told: []string{"span", "overall", "centers", "bay"}},
	"bay":          {words: scan.WordSet("bay bays"), told: []string{"bay", "measured"}},
	"budget":       {words: scan.WordSet("budget"), told: []string{"budget", "cost", "cheapest"}},
	"kerf":         {words: scan.WordSet("kerf"), told: []string{"kerf"}},
	"drop":         {words: scan.WordSet("drop"), told: []string{"drop", "floor"}},
	"spare":        {words: scan.WordSet("spare spares"), told: []string{"spare"}},
	"cap":          {words: scan.WordSet("cap caps"), told: []string{"cap"}},
	"bracket":      {words: scan.WordSet("bracket brackets"), told: []string{"bracket", "marks", "price", "steps", "cautions"}},
	"screw length": {words: scan.WordSet("screw screws"), told: []string{"screw"}},
	"wall height":  {words: scan.WordSet("height"), told: []string{"height"}},
	"post height":  {told: []string{"post height"}},
	"wall":         {words: scan.WordSet("wall"), told: []string{"wall height", "overall", "rails +=", "rails -=", "most rails", "drop", "centers", "span"}, beside: true, unless: buildSaid},
	"rail":         {words: scan.WordSet("rail rails board boards slat slats plank planks"), told: []string{"rail", "board", "have", "stock", "price", "extra", "tolerance", "fit", "spare", "cut"}, beside: true, unless: apartSaid},
	"added post":   {words: scan.WordSet("post posts"), told: []string{"post", "opening", "price", "centers", "span", "overall"}, beside: true},
}

// apartSaid are words of what lies between rails, beside them or under them.
var apartSaid = regexp.MustCompile(`\b(?:apart|asunder|between|room|up|above|off|closer|nearer|play|spaced|spacing|from|start|sits?|rides?|clear)\b`)

// buildSaid are words that only tell what is built: "we're putting up a low wall".
var buildSaid = regexp.MustCompile(`\b(?:putting up|building|planning|making|doing|want to build|going to build)\b`)

// staysSaid tells that what is named behind it is to stay, is known, or is not what is asked after.
var staysSaid = regexp.MustCompile(`\b(?:keep|keeps|keeping|kept|leave|leaves|leaving|know|happy|fine|same|hold|holding|without|for|given|with|within|aside from|apart from|besides|touching|changing|of|from|between|under|above|over|below|in|at|on|to)\b[^,;.0-9]{0,30}$`)

// partOfWord are the parts by the words that may name them: a first look, before the line is cut into tokens.
var partOfWord = func() map[string]string {
	out := map[string]string{"bottom": "bottom gap", "lowest": "bottom gap", "underneath": "bottom gap"}
	for key, p := range namedParts {
		for w := range p.words {
			out[w] = key
		}
	}
	return out
}()

// partMissed reports whether a word of a line may name a part that is in nothing of what was heard.
func partMissed(atoms []scan.Atom, told string) bool {
	for i := range atoms {
		key, ok := partOfWord[atoms[i].Text]
		if ok && namedParts[key].beside && !slices.ContainsFunc(atoms[max(0, i-2):min(len(atoms), i+4)], mayTell) {
			continue
		}
		if ok && !slices.ContainsFunc(namedParts[key].told, func(w string) bool { return strings.Contains(told, w) }) {
			return true
		}
	}
	return false
}

// mayTell reports whether an atom may be part of a figure, or of a word that changes: see besides.
func mayTell(a scan.Atom) bool {
	return a.Kind == scan.Digits || a.Kind == scan.Vulgar || chunk.SpelledNumber(a.Text) || countedMore[a.Text] || changesWord[a.Text]
}

var changesWord = scan.WordSet("another up down off raise lower lift drop higher taller lowered raised shorter a an take bring put add go goes come comes")

// namedIn is all that acts name, as it is shown.
func namedIn(acts []act.Act) string {
	var told strings.Builder
	for _, a := range acts {
		told.WriteString(a.String() + ";" + a.Topic + ";")
		if a.Name != nil {
			told.WriteString(a.Name.String() + ";")
		}
	}
	return told.String()
}

// partLeft asks back what is to be of a part that is in nothing of what was heard.
func partLeft(r act.Reading, line, said, told string, tokens []lex.Token) act.Reading {
	runes := []rune(line)
	for i := range tokens {
		t := &tokens[i]
		if t.Kind != lexicon.Part {
			continue
		}
		p, ok := namedParts[t.Key()]
		if !ok || p.words != nil && !p.words[strings.ToLower(t.Text)] {
			continue
		}
		figure, change := besides(tokens, i)
		if p.beside && !figure && !change || !change && p.unless != nil && p.unless.MatchString(said) || slices.ContainsFunc(p.told, func(w string) bool { return strings.Contains(told, w) }) {
			continue
		}
		if t.At < len(runes) && staysSaid.MatchString(lastClause(strings.ToLower(string(runes[:t.At])))) {
			continue
		}
		return askback.AskedBack(t.At, "And the "+strings.ToLower(t.Text)+"? Please say that by itself.", "gap 2, bottom gap 3")
	}
	return r
}

// besides reports whether a figure, and whether a word that changes, stands right before or behind a token.
func besides(tokens []lex.Token, i int) (figure, change bool) {
	for _, k := range []int{i - 1, i + 1} {
		if k < 0 || k >= len(tokens) {
			continue
		}
		switch t := &tokens[k]; t.Kind {
		case lexicon.Num:
			figure = figure || t.Amt != nil && t.Amt.Val.Less(exact.Int(1000))
		case lexicon.Another:
			change = true
		case lexicon.Up, lexicon.Down, lexicon.Move, lexicon.Change, lexicon.More: // "wall up an inch", "one more board", but "nudge the slats closer"
			change = change || tokens[i].Key() == "wall" || countedMore[strings.ToLower(t.Text)]
		}
	}
	return figure, change
}

// lastClause is what of a text stands behind its last "and", "but" or "then".
func lastClause(text string) string {
	for _, w := range []string{" and ", " but ", " then "} {
		if at := strings.LastIndex(text, w); at >= 0 {
			text = text[at+len(w):]
		}
	}
	return text
}

// countedMore are words that add parts, or take some away.
var countedMore = scan.WordSet("more extra additional less fewer")
