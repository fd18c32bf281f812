package hear

import (
	"slices"
	"strings"

	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
)

// plusJoins turns a "plus" that only joins two clauses into a comma: "gap two inches plus bay max six feet" adds nothing to the gap. It adds
// where a value follows it ("gap plus a quarter"), and between names that nothing was told of ("the wall plus the cap is 44"). An "also" that
// adds no length to those on sale ends a sentence, but for one that claims, tries or takes back: that may go on over it.
func plusJoins(in []lex.Token) []lex.Token {
	told, goesOn, changes := false, false, false // before in the sentence stands more than names; a word that may turn what follows; one that adds or takes back
	for i := range in {
		switch t := &in[i]; {
		case t.Kind == lexicon.Stop || t.Kind == lexicon.QMark:
			told, goesOn, changes = false, false, false
		case i == 0 || i+1 == len(in):
			told = told || tells(t)
			goesOn = goesOn || t.Kind == lexicon.Head || t.Kind == lexicon.Cmd && t.Key() == "forget"
		case t.Kind == lexicon.Change && (t.Text == "plus" || t.Text == "+") && (joinsClauses(in[i+1:], told) || !changes && countsAnew(in, i)):
			t.Kind, t.Found, t.Text = lexicon.Comma, nil, ","
			told = false
		case t.Kind == lexicon.SellMore && t.Text == "also" && !goesOn && !mayBeSold[in[i+1].Kind]:
			t.Kind, t.Found, t.Text = lexicon.Stop, nil, "."
			told = false
		default:
			told = told || tells(t)
			goesOn = goesOn || t.Kind == lexicon.Head || t.Kind == lexicon.Cmd && t.Key() == "forget"
			changes = changes || t.Kind == lexicon.Change || t.Kind == lexicon.Cmd && t.Key() == "forget"
		}
	}
	return in
}

// tells reports whether a token is more than a name or a break.
func tells(t *lex.Token) bool {
	return t.Kind != lexicon.Part && t.Kind != lexicon.Loc && t.Kind != lexicon.Comma
}

// mayBeSold are the classes of what follows where an "also" adds to the lengths on sale.
var mayBeSold = map[lexicon.Kind]bool{lexicon.Num: true, lexicon.Size: true, lexicon.Sell: true, lexicon.SellMore: true, lexicon.StockWord: true, lexicon.Have: true, lexicon.Head: true, lexicon.Only: true, lexicon.Comma: true, lexicon.Stop: true, lexicon.QMark: true}

// countsAnew reports whether behind the "plus" at token i something is counted that was not spoken of: "stiffener spacing 32 plus 5 rails".
func countsAnew(in []lex.Token, i int) bool {
	if i+2 >= len(in) || in[i+1].Kind != lexicon.Num || in[i+2].Kind != lexicon.Part || !countsOrGaps(in, i) || strings.HasPrefix(in[i+2].Text, "board") || strings.HasPrefix(in[i+2].Text, "plank") {
		return false
	}
	switch kindAt(in, i+3) {
	case 0, lexicon.Bound, lexicon.Lim, lexicon.Comma, lexicon.Stop, lexicon.And, lexicon.QMark, lexicon.GoesIn:
	default:
		return false // "wall 40 plus 3 rails higher"
	}
	key := in[i+2].Key()
	return !slices.ContainsFunc(in[:i], func(t lex.Token) bool { return t.Kind == lexicon.Part && t.Key() == key })
}

// countsOrGaps reports whether behind token i parts are counted, or a gap is told beside parts that were counted: "6 rails + 2 in gap".
func countsOrGaps(in []lex.Token, i int) bool {
	if key := in[i+2].Key(); key == "gap" {
		return i > 0 && in[i-1].Kind == lexicon.Part && countedParts[in[i-1].Key()]
	} else {
		return in[i+1].Amt.Unit == measure.Bare && countedParts[key]
	}
}

// countedParts are parts that are set by how many there are.
var countedParts = scan.WordSet("rail stiffener bay")

// ordersFigure are verbs that ask for the figure behind them.
var ordersFigure = scan.WordSet("leave make keep set put have give allow want need")

// kindAt is the class of token i, 0 past the end.
func kindAt(in []lex.Token, i int) lexicon.Kind {
	if i >= len(in) {
		return 0
	}
	return in[i].Kind
}

// joinsClauses reports whether what stands behind a "plus" is a clause of its own.
func joinsClauses(behind []lex.Token, told bool) bool {
	switch behind[0].Kind {
	case lexicon.Part, lexicon.Loc:
		for i := 1; told && i < len(behind); i++ {
			switch behind[i].Kind {
			case lexicon.Num, lexicon.Size:
				return true
			case lexicon.Stop, lexicon.QMark:
				return false
			}
		}
		return false
	case lexicon.Num:
		if w := strings.Fields(behind[0].Before); len(w) > 0 && (ordersFigure[w[0]] || w[0] == "tape" && len(w) > 1) {
			return told // "bay 7 feet at most plus leave 4.5 cm under the bottom board", "plus tape says 157"
		}
		if k := kindAt(behind, 1); k == lexicon.Size || k == lexicon.StockWord || k == lexicon.Part || k == lexicon.Loc {
			return told && (behind[0].Amt.Unit == measure.Feet || behind[0].Amt.Unit == measure.Metric) // "gap 2 plus 14 foot 2x6s are 13.20"
		}
		return false
	case lexicon.Factor, lexicon.It:
		return false
	case lexicon.Quest:
		return told && behind[0].Key() != "posts" // "overall 12 feet plus the posts"
	}
	return told
}
