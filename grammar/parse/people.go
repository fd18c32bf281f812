package parse

import (
	"strings"

	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/scan"
)

// owner reports whether a claim tells what boards somebody has: "he has six twelve-foot 2x6s", with no doubt about it.
func (s *Speech) owner(head *lex.Token) bool {
	if head == nil || head.Kind != lexicon.Head || s.verified || lex.OnPaper(head.Text) {
		return false
	}
	f := strings.Fields(head.Text)
	switch f[len(f)-1] {
	case "has", "got", "have", "had":
		for _, w := range f {
			if w == "they" || w == "it" || selling[w] {
				return false
			}
		}
		return len(f) < 5
	}
	return false
}

// onlyTo reports whether nothing stands in a stretch but the "to" of an order that is passed on: "the boss says to …".
func onlyTo(list []Item) bool {
	for _, it := range list {
		if it.value() || it.Kind != lexicon.To && it.Kind != lexicon.It && !it.breaks() {
			return false
		}
	}
	return true
}

// ownsBoards reports whether "he has" tells of boards and of no lengths on sale: a count stands before their length.
func (k *clause) ownsBoards() bool {
	t := k.has(lexicon.Sell)
	return t != nil && (strings.HasPrefix(t.Text, "he ") || strings.HasPrefix(t.Text, "she ")) && (strings.HasSuffix(t.Text, " has") || strings.HasSuffix(t.Text, " got")) && !k.s.verified
}

// ClientNouns name those who are served; each may have its place and what they have with them behind it.
var ClientNouns = scan.WordSet(`customer customers client clients fella fellow fellas lady ladies gentleman gentlemen gent gents couple buyer shopper guy gal gals chap bloke man woman family folks homeowner
		homeowners owner gal dude pair kid lad girl son daughter grandpa contractor builder framer dad mom mother father grandmother grandfather neighbor landlord handyman retiree newlyweds`)
