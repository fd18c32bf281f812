package grammar

import (
	"regexp"
	"slices"
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/solver/exact"
)

// What a line names by a word that can mean nothing else is in what was heard of it, as is every figure (figuresleft.go), or there is a reason why it is not:
// it is to stay, it is known, it is of another wall.

// namedPart is a part by its key in the vocabulary, with the words that name it and nothing else, and what tells of it in what was heard.
type namedPart struct {
	words  string // of the token, parted by blanks; all where it is empty
	told   []string
	beside bool // it counts only with a figure beside it, as "wall 48" and "six rails"
}

var namedParts = map[string]namedPart{
	"gap":          {words: "gap gaps spacing", told: []string{"gap", "clearance", "options", "spacing", "opening = ", "combinations"}},
	"bottom gap":   {told: []string{"bottom gap"}},
	"opening":      {words: "opening openings doorway doorways walkthrough walkway passage", told: []string{"opening"}},
	"stiffener":    {words: "stiffener stiffeners uprights", told: []string{"stiffener"}},
	"span":         {words: "span", told: []string{"span", "overall", "centers", "bay"}},
	"bay":          {words: "bay bays", told: []string{"bay", "measured"}},
	"budget":       {words: "budget", told: []string{"budget", "cost", "cheapest"}},
	"kerf":         {words: "kerf", told: []string{"kerf"}},
	"drop":         {words: "drop", told: []string{"drop", "floor"}},
	"spare":        {words: "spare spares", told: []string{"spare"}},
	"cap":          {words: "cap caps", told: []string{"cap"}},
	"bracket":      {words: "bracket brackets", told: []string{"bracket", "marks", "price", "steps", "cautions"}},
	"screw length": {words: "screw screws", told: []string{"screw"}},
	"wall height":  {words: "height", told: []string{"height"}},
	"post height":  {told: []string{"post height"}},
	"wall":         {words: "wall", told: []string{"wall height", "overall", "rails", "drop", "centers", "span"}, beside: true},
	"rail":         {words: "rail rails board boards slat slats plank planks", told: []string{"rail", "board", "have", "stock", "price", "extra", "gap", "tolerance", "fit", "spare", "cut"}, beside: true},
	"added post":   {words: "post posts", told: []string{"post", "opening", "price", "centers", "span", "overall"}, beside: true},
}

// staysSaid tells that what is named behind it is to stay, is known, or is not what is asked after.
var staysSaid = regexp.MustCompile(`\b(?:keep|keeps|keeping|kept|leave|leaves|leaving|know|happy|fine|same|hold|holding|without|for|given|with|within|aside from|apart from|besides|touching|changing|of|from|between|under|above|over|below|in|at|on|to)\b[^,;.0-9]{0,30}$`)

// partLeft asks back what is to be of a part that is in nothing of what was heard.
func partLeft(r act.Reading, said string, tokens []lex.Token) act.Reading {
	if r.Ask != nil {
		return r
	}
	told := ""
	for _, a := range r.Acts {
		told += a.String() + ";" + a.Topic + ";"
		if a.Name != nil {
			told += a.Name.String() + ";"
		}
	}
	runes := []rune(said)
	for i := range tokens {
		t := &tokens[i]
		if t.Kind != lexicon.Part {
			continue
		}
		p, ok := namedParts[t.Key()]
		if !ok || p.words != "" && !slices.Contains(strings.Fields(p.words), strings.ToLower(t.Text)) {
			continue
		}
		if p.beside && !figureBeside(tokens, i) || slices.ContainsFunc(p.told, func(w string) bool { return strings.Contains(told, w) }) {
			continue
		}
		if t.At < len(runes) && staysSaid.MatchString(strings.ToLower(string(runes[:t.At]))) {
			continue
		}
		return askback.AskedBack(t.At, "What is to be with the "+strings.ToLower(t.Text)+"? Please say it by itself.", "gap 2, bottom gap 3")
	}
	return r
}

// figureBeside reports whether a whole figure stands right before or behind a token.
func figureBeside(tokens []lex.Token, i int) bool {
	count := func(k int) bool {
		return k >= 0 && k < len(tokens) && tokens[k].Kind == lexicon.Num && tokens[k].Amt != nil && tokens[k].Amt.Val.Less(exact.Int(1000))
	}
	return count(i-1) || count(i+1)
}
