package lex

import (
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
	"saywright/solver/exact"
)

// purchases settles what is bought, given or told by its number by what stands beside it.
func (l *lexing) purchases() {
	l.soldAs()
	l.crossedOff()
	l.spent()
	l.givenBoards()
	l.dashedLength()
	l.lengthsOfSize()
	l.pricedApart()
	l.countedBox()
	l.figuredOn()
	l.spentInAll()
	l.overMoney()
	l.spokenFirst()
	l.lengthsDropped()
	l.fromStock()
	l.quotedFor()
	l.toldToStay()
	l.howListed()
	l.boughtAtAll()
	l.formerPrice()
	l.putDown()
	l.stepsFor()
	l.toTheList()
	l.lumberOf()
}

// givenBoards takes boards that somebody near gave for boards at hand, and no claim: "my father gave me eight 2x6 fourteen footers".
func (l *lexing) givenBoards() {
	for i := 0; i+1 < len(l.tokens); i++ {
		t := &l.tokens[i]
		if t.Kind != lexicon.Head || t.Key() != string(act.Check) || !EndsIn(t.Text, "me") && !EndsIn(t.Text, "us") || !OneIsIn(givers, t.Text) || !setsLimits(t.Text) {
			continue
		}
		n := &l.tokens[i+1]
		if n.Kind == lexicon.Num && n.Amt.Unit == measure.Money {
			t.Kind, t.Found = lexicon.Part, budgetNoun // "my mother gave me $300"
			continue
		}
		if n.Kind != lexicon.Num || n.Amt.Unit != measure.Bare || !n.Amt.Val.IsInt() {
			continue
		}
		for k := i + 2; k < len(l.tokens) && k < i+4; k++ {
			if l.tokens[k].Kind == lexicon.Size {
				t.Kind, t.Found = lexicon.Have, []lexicon.Found{{Entry: havesIt}}
			}
		}
	}
}

var (
	givers  = scan.WordSet("gave gives handed passed brought left lent")
	havesIt = &lexicon.Entry{Kind: lexicon.Have, Key: "have"}
)

// isOneOf reports whether a word of a text is a member of a class.
func isOneOf(class, text string) bool {
	id := lexicon.Vocab().Ids[class]
	for _, w := range strings.Fields(text) {
		for _, c := range lexicon.Vocab().Classes[w] {
			if c == id {
				return true
			}
		}
	}
	return false
}

// dashedLength reads the length behind a size and a dash: "2x6-16 17.85 ea".
func (l *lexing) dashedLength() {
	for i := 0; i+3 < len(l.tokens); i++ {
		size, dash, num := &l.tokens[i], &l.tokens[i+1], &l.tokens[i+2]
		if size.Kind != lexicon.Size || dash.Text != "-" || num.Kind != lexicon.Num || num.Amt.Unit != measure.Bare || !num.Amt.Val.IsInt() || dash.At != size.End || num.At != dash.End {
			continue
		}
		if num.Amt.Val.Less(exact.Int(6)) || exact.Int(24).Less(num.Amt.Val) || !l.priceNext(i+3) && l.tokens[i+3].Kind != lexicon.PriceVerb {
			continue
		}
		inFeet(num)
		l.drop(i + 1)
	}
}

// inFeet makes a bare number one of feet.
func inFeet(t *Token) {
	a := *t.Amt
	a.Val, a.Unit, a.Footer, a.Per = a.Val.Mul(measure.Twelve), measure.Feet, true, measure.Twelve
	t.Amt = &a
}

// lengthsOfSize takes the lengths of a size for those on sale: "your 4x4 lengths: 8, 10, 16 feet".
func (l *lexing) lengthsOfSize() {
	for i := 0; i+2 < len(l.tokens); i++ {
		size, t, next := &l.tokens[i], &l.tokens[i+1], &l.tokens[i+2]
		if size.Kind != lexicon.Size || t.Kind != lexicon.Dim || t.Text != "lengths" || i > 0 && l.tokens[i-1].Kind == lexicon.Num {
			continue
		}
		if next.Text == ":" || next.Kind == lexicon.Num && (LastWord(next.Before) == "are" || LastWord(next.Before) == "is") {
			t.Kind, t.Found = lexicon.StockWord, []lexicon.Found{{Entry: lengthsSold}}
		}
	}
}

var lengthsSold = &lexicon.Entry{Kind: lexicon.StockWord, Key: "stock", Sense: lexicon.Meaning("stock | price, have")}

// pricedApart drops the sign between what is bought and its price: "anchors, $1.75 apiece", "screws, 100 ct, 8.75".
func (l *lexing) pricedApart() {
	for i := 0; i+2 < len(l.tokens); i++ {
		t, sign, num := &l.tokens[i], &l.tokens[i+1], &l.tokens[i+2]
		if t.As(lexicon.Item) == nil || i > 0 && l.tokens[i-1].Kind != lexicon.Comma && l.tokens[i-1].Kind != lexicon.Stop && l.tokens[i-1].Kind != lexicon.And || sign.Kind != lexicon.Comma || num.Kind != lexicon.Num || num.Before != "" {
			continue
		}
		if num.Amt.Unit == measure.Money && (i+3 == len(l.tokens) || l.tokens[i+3].Kind == lexicon.Each || l.tokens[i+3].Kind == lexicon.Comma || l.tokens[i+3].Kind == lexicon.Stop) || num.Amt.Money2 && i+3 < len(l.tokens) && l.tokens[i+3].Kind == lexicon.Each {
			l.drop(i + 1)
		}
	}
}

// countedBox drops the signs in "screws, 100 ct, 8.75".
func (l *lexing) countedBox() {
	for i := 0; i+4 < len(l.tokens); i++ {
		t, sign, num, count := &l.tokens[i], &l.tokens[i+1], &l.tokens[i+2], &l.tokens[i+3]
		if item := t.As(lexicon.Item); item == nil || item.Key != "screws" || num.Kind != lexicon.Num || num.Amt.Unit != measure.Bare || count.Text != "count" && count.Kind != lexicon.BoxOf || sign.Kind != lexicon.Comma {
			continue
		}
		if price := &l.tokens[i+4]; price.Kind == lexicon.Comma && i+5 < len(l.tokens) && l.priceNext(i+5) {
			l.drop(i + 4)
		} else if !l.priceNext(i + 4) {
			continue
		}
		l.drop(i + 1)
	}
}

// figuredOn drops the "figure" that only leads to so much of something: "figure twenty percent spare".
func (l *lexing) figuredOn() {
	for i := 0; i+2 < len(l.tokens); i++ {
		t, num := &l.tokens[i], &l.tokens[i+1]
		if t.Kind == lexicon.Wh && t.Text == "figure" && num.Kind == lexicon.Num && num.Amt.Unit == measure.Percent && num.Before == "" && (i == 0 || l.tokens[i-1].Kind == lexicon.Comma || l.tokens[i-1].Kind == lexicon.Stop || EndsIn(t.Before, "so")) {
			l.drop(i)
		}
	}
}

// formerPrice drops what something cost before: "brackets used to be 2.99 but now they're 3.39", "9.30, up from eight".
func (l *lexing) formerPrice() {
	for i := 1; i+1 < len(l.tokens); i++ {
		t, num := &l.tokens[i], &l.tokens[i+1]
		if num.Kind != lexicon.Num {
			continue
		}
		if t.Kind == lexicon.Unclear && strings.HasSuffix(t.Text, "used to be") && (l.tokens[i-1].As(lexicon.Item) != nil || l.tokens[i-1].Kind == lexicon.Num && l.tokens[i-1].Amt.Footer) {
			end := i + 2
			for end < len(l.tokens) && (l.tokens[end].breaksOff() || l.tokens[end].Kind == lexicon.Each) {
				end++
			}
			if end < len(l.tokens) && end > i+2 && l.tokens[end].Kind == lexicon.Num && OneIsIn(nowadays, l.tokens[end].Before) {
				l.tokens = append(l.tokens[:i], l.tokens[end:]...)
			}
			continue
		}
		if t.Kind != lexicon.From || i < 3 || l.tokens[i-1].Kind != lexicon.Up && l.tokens[i-1].Kind != lexicon.Down || i+2 < len(l.tokens) && !l.tokens[i+2].breaksOff() {
			continue
		}
		start := i - 1
		if l.tokens[start-1].Kind == lexicon.Comma {
			start--
		}
		if was := &l.tokens[start-1]; was.Kind == lexicon.Num && (was.Amt.Unit == measure.Money || was.Amt.Money2) || was.Kind == lexicon.Each {
			l.tokens = append(l.tokens[:start], l.tokens[i+2:]...)
		}
	}
}

var nowadays = scan.WordSet("now today currently")

// putDown takes what is put down at a figure for what it costs: "put anchors down as two sixty apiece".
func (l *lexing) putDown() {
	for i := 1; i+1 < len(l.tokens); i++ {
		t := &l.tokens[i]
		if t.Kind != lexicon.Rel || t.Text != "down as" && t.Text != "down for" && t.Text != "down at" || l.tokens[i-1].As(lexicon.Item) == nil || l.tokens[i+1].Kind != lexicon.Num {
			continue
		}
		for k := i + 2; k < len(l.tokens); k++ {
			if l.tokens[k].Kind == lexicon.Each {
				t.Kind, t.Found = lexicon.PriceVerb, []lexicon.Found{{Entry: costs}}
			}
		}
	}
}

// stepsFor steps over steps that more pieces are for: "for the steps we want two extra two by sixes".
func (l *lexing) stepsFor() {
	for i := 0; i+3 < len(l.tokens); i++ {
		t := &l.tokens[i]
		if t.Kind != lexicon.Quest || !EndsIn(t.Text, "steps") || !strings.HasPrefix(t.Before, "for") || i > 0 && !l.tokens[i-1].breaksOff() {
			continue
		}
		for k := i + 1; k < len(l.tokens) && k < i+5; k++ {
			if w := l.tokens[k].Text; w == "extra" || w == "more" || w == "additional" || l.tokens[k].Kind == lexicon.Extra {
				if t.Before = ""; l.tokens[i+1].Kind == lexicon.Comma {
					l.drop(i + 1)
				}
				l.drop(i)
				break
			}
		}
	}
}

// toTheList drops the list that pieces are added to: "add six more 2x6 pieces at 22 to the list".
func (l *lexing) toTheList() {
	n := len(l.tokens)
	for n > 0 && l.tokens[n-1].Kind == lexicon.Stop {
		n--
	}
	if n < 5 || l.tokens[n-2].Kind != lexicon.To || l.tokens[n-1].Text != "list" || l.tokens[0].Text != "add" && l.tokens[0].Kind != lexicon.Extra {
		return
	}
	size := false
	for i := range l.tokens[:n-2] {
		size = size || l.tokens[i].Kind == lexicon.Size
	}
	if size {
		l.tokens = append(l.tokens[:n-2], l.tokens[n:]...)
	}
}

// lumberOf drops the lumber behind its size, where it is told next what is sold of it: "as for the 4x4 lumber, they sell it in …".
func (l *lexing) lumberOf() {
	for i := 0; i+3 < len(l.tokens); i++ {
		t := &l.tokens[i+1]
		if l.tokens[i].Kind == lexicon.Size && t.Kind == lexicon.Part && t.Key() == "size" && !t.Plural() && l.tokens[i+2].Kind == lexicon.Comma && l.tokens[i+3].Kind == lexicon.Sell {
			l.drop(i + 1)
		}
	}
}

// quotedFor makes money of a figure before what it is for: "fourteen ninety for each sixteen foot rail board", "14.90 for a
// sixteen foot 2x6".
func (l *lexing) quotedFor() {
	for i := 0; i+2 < len(l.tokens); i++ {
		last := i
		if l.spokenPair(i) {
			last++
		} else if num := &l.tokens[i]; num.Kind != lexicon.Num || !num.Amt.Money2 || num.Amt.Unit != measure.Bare {
			continue
		}
		next := last + 1
		per := next < len(l.tokens) && l.tokens[next].Kind == lexicon.Per
		if per {
			next++
		}
		if next+1 >= len(l.tokens) || !per && !strings.HasPrefix(l.tokens[next].Before, "for") {
			continue
		}
		long, of := &l.tokens[next], &l.tokens[next+1]
		if long.Kind != lexicon.Num || long.Amt.Unit != measure.Feet || of.Kind != lexicon.Size && !(of.Kind == lexicon.Part && of.Key() == "rail" && of.Index == 0) {
			continue
		}
		cash := measure.Amount{Number: measure.Number{Val: l.tokens[i].Amt.Val}, Unit: measure.Money}
		if last > i {
			cash.Val = cash.Val.Add(l.tokens[last].Amt.Val.Div(exact.Int(100)))
			l.tokens[i].End = l.tokens[last].End
			l.tokens = append(l.tokens[:last], l.tokens[last+1:]...)
		}
		l.tokens[i].Amt = &cash
	}
}

// howListed takes "how" before a list that was worked out for the asking after a reason: "show me how the shopping list was worked
// out".
func (l *lexing) howListed() {
	for i := 0; i+2 < len(l.tokens); i++ {
		how, list, tail := &l.tokens[i], &l.tokens[i+1], &l.tokens[i+2]
		if how.Kind != lexicon.Wh || how.Text != "how" || list.Kind != lexicon.Quest || list.Key() != "shopping" || tail.Kind != lexicon.Tail || tail.Key() != "why" {
			continue
		}
		how.Kind, how.Found = lexicon.Head, []lexicon.Found{{Entry: &lexicon.Entry{Kind: lexicon.Head, Key: string(act.Why)}}}
		if i > 0 && l.tokens[i-1].Kind == lexicon.Wh {
			l.drop(i - 1)
		}
	}
}
