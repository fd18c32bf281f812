package grammar

import (
	"slices"
	"strings"

	"saywright/solver"
	"saywright/solver/exact"
)

// spendings are words of what may be spent, of what it all comes to, and of spending little.
var spendings = []entry{
	{kind: kPart, key: "budget", sense: meaning("budget"), ways: `
		not (a|one|a single|one single) [red] (dime|penny|cent|dollar|nickel|buck|pound|euro) (over|more than|above|past|beyond)
		[without (going|spending)] [(a|one)] (dime|penny|cent|dollar|buck) (over|more than|above|past|beyond)
		(PERSON|ORG|i|we|he|she|they|it) MUSTNOT not [(want|like|care|wish|plan|intend|mean|have)] [to] (SPEND|part with|shell out|fork out|fork over|cough up|put in|lay out|afford) [to (SPEND)] [any] (more than|over|above|upwards of|past|beyond)
		(PERSON|ORG|i|we|he|she|they) (refuse|refuses) to (SPEND) [any] (more than|over|above)
		(PERSON|ORG|i|we|he|she|they) (can|could) [ONLYWORD] (afford|manage to pay|swing|scrape together|come up with|put up) [to (SPEND)]
		(PERSON|ORG|i|we|he|she|they) (has|have|had|is|are) [(put|set|laid)] (set aside|put aside|put by|laid aside|earmarked|allotted|allocated|budgeted|approved|saved up|scraped together)
		to spend on (LUMBER|materials|it|this|everything|all of it|the job|the wall|parts|hardware)
		(i|we|he|she|they|PERSON) (do|does|would|will) not (want|like|need|wish) (it|this|that|everything|it all|the whole thing|the job|the wall|the material|the lumber|the timber|the wood) to (cost|run|come to|run to|set me back|go|total) [any] (more than|over|above|past|upwards of)
		[(i am|we are|am|are)] prepared to SPEND [up to]
		(i|we) MUSTNOT not go (over|above|past|beyond|higher than) [(a total of|the sum of)]
		(it|this|that|whole thing|whole business) MUSTNOT not [have to] (come to|cost|run to|total|amount to|add up to) [any] (more than|over|above|past|beyond|higher than)
		(whole lot|lot|whole job|everything|it all|all of it|total|bill|grand total|final bill|material|materials|lumber|wood|timber|timbers|cost|price) MUSTNOT not [have to] (come to|cost|run to|go|be|total|amount to|add up to|end up|come out at|run) [any] (more than|over|above|past|beyond|higher than)
		(whole lot|lot|whole job|everything|it all|all of it|total|bill|grand total|final bill|material|materials|lumber|wood|timber|timbers|cost|price) MUSTNOT not (exceed|top|pass|go past)
		(whole lot|lot|whole thing|whole job|whole business|everything|it all|all of it|total|bill|grand total|final bill|material|materials|lumber|wood|timber|timbers|cost|price) (must|should|has to|have to|needs to) (stay|come in|be|remain|keep|end up) (under|below|within|inside)
		do not [ever] let (whole lot|lot|whole job|everything|it all|all of it|total|bill|tab|price|grand total|total bill|total cost|final bill|material|materials|lumber|wood|timber|timbers|cost|boards and brackets|wood and hardware|timber and hardware|lumber and hardware) [ever] (come to|cost|run to|total|amount to|add up to|come out at|end up at|come in at) [any] (more than|over|above|past|beyond|higher than)
		do not [ever] let (bill|tab|price|grand total|total bill|total cost|final bill|cost) [ever] (be|go|get|run|creep|climb|end up|come in|rise|grow) [up] [any] (more than|over|above|past|beyond|higher than)
		(keep|hold|have|want|get|bring) [my|our|his|her|their] (bill|tab|price|grand total|total bill|total cost|final bill|outlay|expense|expenses) [down] (under|below|within|inside|beneath)
		(boards and brackets|wood and hardware|timber and hardware|lumber and hardware|bill|tab|grand total|total bill|total cost|final bill) MUSTNOT not [ever] (be|go|get|run|creep|climb|end up|come in|rise|come to|total|cost|add up to|amount to|run to|come out at) [up] [any] (more than|over|above|past|beyond|higher than)`},
	{kind: kQuest, key: "cost", loose: true, ways: `
		(add|tot|sum|total) up [the] (cost|price|bill|total|costs|prices|damage|material|materials|money|dollars)
		(figure|number|sum|amount|total) in (dollars|money|cash|euros|pounds)
		(dollar|cash|money) (figure|amount|total|number|sum|value)
		how many dollars [(is|will|would|does)] [(it|this|that|everything|the whole thing|all of it|the whole lot)] [(come to|cost|run|be|take|make)]
		what [kind of] money (is|are) (we|i|you) (talking|looking at|talking about)
		what [does] (it|that|this|everything|the lot|all of it|the whole lot) [all] (adds|add|totals|total) up to [in (dollars|money|all)]`},
	{kind: kGoal, key: "cheapest", loose: true, ways: `
		[(i|we|he|she|they|PERSON|ORG)] [(want|wants|would like|need|needs|wish|hope|prefer|mean|intend|plan|am trying|are trying|have|has|can|could)] (spend|spends|spending|pay|pays|part with|shell out|lay out|fork out) (as little|the least|least|the smallest amount) [(money|cash)] [(on (it|this|material|materials|lumber|wood|the wall))] as (possible|i can|we can|you can|i have to|we have to|i must|need be|i can get away with|we can get away with)
		[(i|we|he|she|they|PERSON|ORG)] [(want|wants|would like|need|needs|wish|hope|prefer|mean|intend|plan|am trying|are trying|have|has|can|could)] (spend|spends|spending|pay|pays|part with|shell out|lay out|fork out) (the least|least) [(amount of)] (money|cash|possible|we can|i can) [(possible|we can|i can)]
		(cheapest|least costly|least expensive|most economical|most affordable|most inexpensive|lowest cost|lowest priced|thriftiest|most frugal|economical|most budget friendly|budget friendly) [possible] (version|way|one|option|solution|design|plan|layout|variant|build|choice|arrangement|possibility|alternative|wall) [possible] [(money wise|moneywise|price wise|cost wise|there is|you can find|you can come up with|you have got|of all)]
		most (economical|affordable|inexpensive|frugal|thrifty)
		(least costly|thriftiest)`},
	{kind: kGoal, key: "least waste", loose: true, ways: `
		(i|we|he|she|they|PERSON) [(really|just)] (hate|hates|dislike|dislikes) (throwing|to throw|tossing) [(good|so much|any)] LUMBER (away|out) [so] [(please|just)] [(go for|pick|choose|take|find|want|give me|use)] [the] [(least|fewest|smallest)] [(scrap|scraps|waste|offcuts|leftovers)]
		(fewest|smallest|least|as few|as little) (leftovers|leftover|offcuts|offcut|scraps|scrap|waste|cutoffs|remnants) (of|in) (LUMBER|it|stock)
		(leave|leaves|leaving) (the fewest|the least|fewest|least|as few|as little) (leftovers|leftover|offcuts|scraps|scrap|waste|cutoffs|remnants) [of (LUMBER|stock)]`},
}

// spentInAll drops the "in all" of what is to be spent: "I can spend three hundred in all".
func (l *lexing) spentInAll() {
	for i := 1; i+1 < len(l.tokens); i++ {
		budget := l.tokens[i-1].kind == kPart && l.tokens[i-1].key() == "budget"
		if budget && l.tokens[i].kind == kNum && l.tokens[i+1].kind == kLoc && l.tokens[i+1].key() == "in all" {
			l.drop(i + 1)
		}
	}
}

// spokenFirst joins two number words before what they are to be spent on: "we've got four twenty five to spend".
func (l *lexing) spokenFirst() {
	for i := 0; i+2 < len(l.tokens); i++ {
		if !l.spokenPair(i) {
			continue
		}
		a, b, t := &l.tokens[i], &l.tokens[i+1], &l.tokens[i+2]
		if exact.Int(9).Less(a.amt.val) || b.amt.val.Less(exact.Int(20)) || t.kind != kPart || t.key() != "budget" || !spendsIn(t.text) || i > 0 && l.tokens[i-1].kind == kNum {
			continue
		}
		joined := *b.amt
		joined.val, joined.plain = a.amt.val.Mul(exact.Int(100)).Add(b.amt.val), ""
		a.amt, a.end = &joined, b.end
		l.tokens = append(l.tokens[:i+1], l.tokens[i+2:]...)
	}
}

// spent asks back where a limit that is said of money is followed by none: "it must not be over 48".
func (l *lexing) spent() {
	for i := range l.tokens {
		t := &l.tokens[i]
		if t.kind == kHave && endsIn(t.text, "aside") && i+1 < len(l.tokens) && l.tokens[i+1].kind == kNum && l.tokens[i+1].amt.unit == money {
			t.kind, t.found = kPart, budgetNoun // "he has set aside $450"
			continue
		}
		if t.kind == kHead && (endsIn(t.text, "me") || endsIn(t.text, "us")) && (i+1 == len(l.tokens) || l.tokens[i+1].kind != kNum || l.tokens[i+1].amt.unit != money) {
			t.found = slices.DeleteFunc(slices.Clone(t.found), func(f found) bool { return f.entry.kind != kHead }) // "the clerk gave me eight two by sixes"
		}
		if t.kind != kPart || t.key() != "budget" || !limited[lastWord(t.text)] {
			continue
		}
		if i+1 < len(l.tokens) && l.tokens[i+1].kind == kNum && (l.tokens[i+1].amt.unit == money || spendsIn(t.text) && l.tokens[i+1].amt.unit == bare) {
			continue
		}
		t.kind, t.found = kUnknown, nil
	}
}

// overMoney takes a bare limit on money for what may be spent: "don't go over $400".
func (l *lexing) overMoney() {
	for i := 0; i+4 < len(l.tokens); i++ {
		do, not, goes, over, num := &l.tokens[i], &l.tokens[i+1], &l.tokens[i+2], &l.tokens[i+3], &l.tokens[i+4]
		if do.text != "do" || not.kind != kNot || goes.text != "go" || over.kind != kOver || num.kind != kNum || num.amt.unit != money || i > 0 && !l.tokens[i-1].breaksOff() || i+5 < len(l.tokens) && !l.tokens[i+5].breaksOff() {
			continue
		}
		over.kind, over.found, over.before = kPart, budgetNoun, ""
		l.tokens = append(l.tokens[:i], l.tokens[i+3:]...)
	}
}

// hatesWaste reports whether waste is hated first, and the least of it asked for then: "we hate throwing wood away so go for the
// least scrap".
func hatesWaste(list []solver.Statement, said string) bool {
	hate, so := strings.Index(said, "hate"), strings.LastIndex(said, " so ")
	return len(list) == 1 && list[0].Value.Word == "least waste" && hate >= 0 && so > hate && !strings.Contains(said, "would hate")
}

// limited are words in which a limit on money may end.
var limited = wordSet("over than above past beyond exceed top pass under below within inside me us")

// spendsIn reports whether words speak of spending, or of what is paid for.
func spendsIn(text string) bool {
	if strings.Contains(text, " come to ") || strings.Contains(text, " comes to ") {
		return true // "don't let the timber come to more than 420"
	}
	return oneIsIn(spendWords, text)
}

var spendWords = wordSet("spend pay part shell fork cough lay afford dime penny cent dollar nickel buck bill tab total cost price lot material materials outlay expense expenses brackets hardware amount add")

// changesBudget reports whether a stretch puts the budget up or down by so much: whoever speaks sets it, and tries nothing.
func changesBudget(list []item) bool {
	budget, changed, by := false, false, false
	for _, it := range list {
		if it.value() {
			by = !it.lim.to
			continue
		}
		budget = budget || it.kind == kPart && it.key() == "budget"
		changed = changed || it.kind == kMove || it.kind == kChange
	}
	return budget && changed && by
}

// toldToStay takes what somebody was told to stay within for what may be spent: "we were told to stay within $310".
func (l *lexing) toldToStay() {
	for i := 0; i+2 < len(l.tokens); i++ {
		t, rel, num := &l.tokens[i], &l.tokens[i+1], &l.tokens[i+2]
		told := endsIn(t.text, "told") && firstWord(rel.before) == "to"
		if t.kind != kHead || t.key() != string(Check) || !told && !(oneIsIn(insisting, t.text) && setsLimits(t.text) && rel.before == "") || rel.kind != kRel && rel.kind != kUnder && rel.kind != kOver || num.kind != kNum || num.amt.unit != money {
			continue
		}
		t.kind, t.found = kPart, budgetNoun
		rel.before = ""
	}
}

var insisting = wordSet("says said say insists wants")

// setsLimits reports whether words name somebody whose money it is: "my husband says no more than $400".
func setsLimits(text string) bool {
	return !onPaper(text) && (isOneOf("KIN", text) || oneIsIn(payers, text))
}

var payers = wordSet("boss owner client customer landlord landlady principal committee school")
