package idiom

import (
	"slices"

	"saywright/grammar/chunk"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// askedOfMe are questions that begin with what one must, need not or may do. They ask whether it is so, or try it; none of them sets what
// it speaks of, and a "not" in them only hopes for a yes. Everyday speech, no source.
var askedOfMe = []phrase.Placed{
	// Whether it must be so: "mustn't the gap be under 4", "need the bays be equal".
	{Plain: "are $1", Where: figureOrEqual, Said: `
		^ [so|and|but|well] (must|need|ought|shall) not !((the|my|our|these|those) (bays|rails|boards|slats|gaps|posts|stiffeners)) [to|all] be
		^ [so|and|but|well] (must|need) !((the|my|our|these|those) (bays|rails|boards|slats|gaps|posts|stiffeners)) [all] be`},
	{Plain: "is $1", Where: figureOrEqual, Said: `
		^ [so|and|but|well] (must|need|ought|shall) not !((the|my|our|this|that|each|every) (_|(_ gap|height|size|spacing|rail|rails|post|bay))) [to] be
		^ [so|and|but|well] need !((the|my|our|this|that|each|every) (_|(_ gap|height|size|spacing|rail|rails|post|bay))) be`},
	{Plain: "do i have to", Where: figureAhead, Said: `
		^ [so|and|but|well] (do|did) not (i|we|you) (have|need) to
		^ [so|and|but|well] does not (one|a person) (have|need) to
		^ [so|and|but|well] is not (one|a person) (supposed|meant|obliged|required) to
		^ [so|and|but|well] have not (i|we|you) got to
		^ [so|and|but|well] (am|are) not (i|we|you) (supposed|meant|obliged|required) to
		^ [so|and|but|well] (need|must|ought) not (i|we|you)
		^ [so|and|but|well] need (i|we|you)`},
	// What one is doing, or has got.
	{Plain: "what if we had", Where: figureAhead, Said: "^ [so|and|but|well] (am i|are we) (good|ok|okay|alright|(all right)|set|covered|safe|fine) with"},
	{Plain: "can i", Where: figureAhead, Said: "^ [so|and|but|well] (am|are) (i|we) able to"},
	{Plain: "are we doing", Where: figureAhead, Said: "^ [so|and|but|well] (am i|are we) [still|just|really|now] ((stuck|left|stopping|ending up|coming out) with|(looking|stuck) at|getting|down to|up to|likely to (need|have|get|use))"},
	{Plain: "can i $1", Where: figureAhead, Said: "^ [so|and|but|well] (can|could) not (i|we) !(keep|hold|leave|have|use|make|set)"},
	{Plain: "do we end up at $1 high", Where: asksEnd, Said: "^ [so|and|but|well] (do|does|will|would) (i|we) come out at # (high|tall)"},
	{Plain: "are we $1", Where: figureAhead, Said: "^ [so|and|but|well] am i !(to|supposed|meant|allowed|required|going|gonna|keeping|doing|using|leaving|putting|setting|having|making|building|over|under|above|below|at|within|past)"},
	{Plain: "have we got", Where: figureOrSide, Said: "^ [so|and|but|well] have you got"},
	// Up or down to a figure.
	{Plain: "what if $2 is $1", Where: asksEnd, Said: "^ [so|and|but|well] (can|could|may|might|should|shall) [not] (i|we) [just|also|still|safely] (go|come|drop|get|climb|reach|stretch) [(all the way)|back] [up|down|out|over] to # (on|for|with|in) !((the|my|our) _ [_])"},
	{Plain: "what if $3 goes $1 by $2", Where: asksEnd, Said: "^ [so|and|but|well] (can|could|may|might|should|shall) [not] (i|we) [just|also|still|safely] (go|come) !(up|down) [by] # (on|for|with|in) !((the|my|our) _ [_])"},
	{Plain: "is it true that $2 is $1", Where: asksEnd, Said: `
		^ [so|and|but|well] (did|do|does) (i|we|you|they) [(have|need) to] go [(all the way)|back] [up|down|out|over] to # (on|for|with|in) !((the|my|our) _ [_])
		^ [so|and|but|well] must (i|we|you|they) go [(all the way)|back] [up|down|out|over] to # (on|for|with|in) !((the|my|our) _ [_])`},
	// How far one has to go ends nothing.
	{Plain: "do i need", Where: howBefore, Said: "(do|does|will|would|should|must|am|are) (i|we|you|one) [really|just|still] (have|need|got|want|going|supposed) to go [with|for|up|(up to)|to|down to] [\\?] $$"},
	// A change that one asks whether to make is tried; "can we increase" begs for it.
	{Plain: "what if i $1 $2", Where: changeAhead, Said: `
		^ [so|and|but|well] (can|could|may|might|should|shall|must) [not] i [just|also|still|safely|maybe] !(open|tighten|raise|lower|widen|narrow|close|lift|drop|shrink|reduce|increase|bump|stretch|lengthen|shorten|enlarge|loosen) !(the|my|our)
		^ [so|and|but|well] (can|could|may|might|should|shall|must) [not] we [just|also|still|safely|maybe] !(open|tighten|raise|lower|widen|narrow|close|lift|drop|shrink|bump|stretch|lengthen|shorten|enlarge|loosen) !(the|my|our)`},
	{Plain: "what if i $1 $2 $3", Where: changeAhead, Said: "^ [so|and|but|well] (can|could|may|might|should|shall|must) [not] (i|we) [just|also|still|safely|maybe] !(bring|cut|push|pull|take|move|let) !((the|my|our) (wall|gap|opening|doorway|height|(wall height)|(bottom gap))) !(up|down|out|in)"},
	{Plain: "can i skip $1", Where: asksEnd, Said: "^ [so|and|but|well] (can|could|may|might|should|shall|must) [not] (i|we) [just|also|still|safely|maybe] (take|leave|cut) !((the|my|our|all|those|these) (STIFF|OPENING)) out"},
	{Plain: "can i skip $1", Where: asksEnd, Said: "^ [so|and|but|well] (can|could|may|might|should|shall|must) [not] (i|we) [just|also|still|safely|maybe] (drop|lose|remove|ditch|(get rid of)|omit|(do without)|(go without)|(leave out)|(take out)) !((the|my|our|all|those|these) (STIFF|OPENING))"},
	// What is doubted is checked.
	{Plain: "is it true that $1 $2", Where: figureAhead, Said: `
		^ [so|and|but|well] not [so|too|quite|really|at all|entirely|that|yet] (sure|certain|convinced|positive|persuaded) [that|if|whether] !((the|my|our|this|each|every|both) _ [_]) !(is|'s|are|has|have|comes|come)
		^ [so|and|but|well] (i|we) would not [really|quite|exactly] (say|think|believe|bet|swear) [that] !((the|my|our|this|each|every|both) _ [_]) !(is|'s|are|has|have|comes|come)
		^ [so|and|but|well] (i|we) (am|are) not [so|too|quite|really|at all|entirely|that|yet] (sure|certain|convinced|positive|persuaded) [that|if|whether] !((the|my|our|this|each|every|both) _ [_]) !(is|'s|are|has|have|comes|come)
		^ [so|and|but|well] (i|we) (do|did) not [really|quite|at all] (think|believe|reckon|suppose|feel|buy) [that] !((the|my|our|this|each|every|both) _ [_]) !(is|'s|are|has|have|comes|come)
		^ [so|and|but|well] (i|we) (can|could) not [really|quite|yet] (say|believe|swear|tell|promise|guarantee|vouch) [that|if|whether] !((the|my|our|this|each|every|both) _ [_]) !(is|'s|are|has|have|comes|come)`},
	// A "right" behind what is told asks whether it is; before it, it only leads on.
	{Plain: ", is that right", Where: claimEnds, Said: `
		, right [.] $$
		, if (i am|i 'm|we are) (right|correct|not mistaken|not wrong) [about that] [.] $$`},
	{Plain: "so", Where: clauseNext, Said: "^^ right ,"},
	{Plain: "is it true that", Where: clauseNext, Said: "^^ [so|and|but|well] if (i am|i 'm|we are) (right|correct|not mistaken|not wrong) [,|then]"},
	// What the plan has, and is to be.
	{Plain: "make it $3 $2", Where: asksEnd, Said: `
		^ [so|and|but|well] (the|his|her|their|my|our|this|that) (plan|plans|drawing|drawings|sketch|sheet|print|blueprint) (calls for|says|shows|has|wants|asks for) ## !RAIL|STIFF [,] [so|and|then] [(let us|i will|we will|i am going to|we are going to|please)] [just] (do|use|have|make it|go with|put in|set|take|build) ## [of them]`},
	{Plain: "make the $2 $3", Where: asksEnd, Said: `
		^ [so|and|but|well] (the|his|her|their|my|our|this|that) (plan|plans|drawing|drawings|sketch|sheet|print|blueprint) (calls for|says|shows|has|wants|asks for) # !GAP|OPENING [,] [so|and|then] [(let us|i will|we will|i am going to|we are going to|please)] [just] (do|use|have|make it|go with|put in|set|take|build) #`},
	{Plain: "make it $3 $2", Where: asksEnd, Said: `
		^ [so|and|but|well] (he|she|they|(the|my|our) [_] _) (says|say|said) [(to have|to use|it is|it needs|use|go with)] ## !RAIL|STIFF [,] [so|and|then] [(let us|i will|we will|i am going to|we are going to|please)] [just] (do|use|have|make it|go with|put in|set|take|build) ## [of them]`},
	{Plain: "make $1 $3", Where: asksEnd, Said: `
		^ [so|and|but|well] (he|she|they|(the|my|our) [_] _) (says|say|said) !LENQ (is|'s|at|should be|has to be|must be|needs to be) # [,] (so|and) [then] [(let us|i will|we will|i am going to|we are going to|please)] [just] (do|use|have|make it|go with|put in|set|take|set it at) #`},
	{Plain: ", let us go with that", Where: planBefore, Said: `
		[,] and that is what (i|we) (want|need) [too|then|now] $
		[,] (and|so) that is what (i|we) (will|are going to|shall|want to) (do|have|use|build|go with|make) [too|then|now] $`},
}

// tryingLeads are words by which a line may begin with what is given, before it asks about it.
var tryingLeads = scan.WordSet("with using given having at for on in going running without")

// getsWords are what may be wanted at the beginning of a line ("to get a 3 inch gap"), asksWithin words that begin a question behind it, and
// askedWho what it may be of.
var (
	getsWords  = scan.WordSet("get have make keep leave hold reach hit")
	asksWithin = scan.WordSet("is are am could can would will does do might may should must shall")
	askedNoun  = scan.WordSet("gap gaps wall opening doorway bay bays span height spacing")
	askedWho   = scan.WordSet("the my our it that this they there i we you each every both all gap gaps")
	priceWords = scan.WordSet("dollars bucks $ each apiece budget money")
)

// oneLess are parts of which a wall without one has others.
var oneLess = scan.WordSet("rail board slat plank")

// TriedWithin reads what a line begins with as tried, where the rest asks about another figure: "with five rails, is the gap under 4"
// sets neither.
func TriedWithin(in []scan.Atom) []scan.Atom {
	i := 0
	for i < len(in) && (chunk.Joints[in[i].Text] || in[i].Text == ",") {
		i++
	}
	lead, made, bare := i, false, false
	switch {
	case i+2 < len(in) && in[i].Text == "to" && getsWords[in[i+1].Text]:
		i, made = i+2, true
	case i+1 < len(in) && tryingLeads[in[i].Text]:
		made = in[i].Text == "for" || in[i].Text == "at"
		i++
	case i+2 < len(in) && in[i].Text == "by" && (in[i+1].Text == "using" || in[i+1].Text == "going"):
		i += 2
	case i+4 < len(in) && chunk.Figured(in[i:i+1]):
		bare = true
	default:
		return in
	}
	if in[i].Text == "only" || in[i].Text == "just" {
		i++
	}
	for k := i; k+1 < len(in) && k < i+9; k++ {
		if in[k].Text == "?" || in[k].Text == "." || in[k].Text == ";" || in[k].Text == "if" || priceWords[in[k].Text] {
			return in
		}
		who := k + 1
		if in[who].Text == "not" {
			who++
		}
		asks := asksWithin[in[k].Text] && who+1 < len(in) && askedWho[in[who].Text] && (chunk.Figured(in[k:]) || HoldsWord(in[k:], "equal", "even"))
		if bare && (in[k].Text == "," || asks && !askedNoun[in[who+1].Text]) {
			return in // "six rails, is the gap under 4" sets the rails
		}
		if !asks && !(made && in[k].Text == "how" && in[k+1].Text == "many") {
			continue
		}
		given := in[i:k]
		if len(given) > 0 && given[len(given)-1].Text == "," {
			given = given[:len(given)-1]
		}
		if !chunk.Figured(given) && in[lead].Text != "without" && !(in[lead].Text == "with" && HoldsWord(given, "left", "right", "middle", "no")) {
			return in
		}
		at := in[lead]
		if in[lead].Text == "without" {
			one := len(given) > 1 && (given[0].Text == "a" || given[0].Text == "one") && oneLess[given[1].Text]
			given = slices.Concat([]scan.Atom{chunk.Worded(at, "no")}, given)
			if one { // "without a rail" is one fewer of them
				given = slices.Concat([]scan.Atom{chunk.Worded(at, "one"), chunk.Worded(at, "fewer")}, given[2:])
			}
			if len(given) > 2 && (given[1].Text == "the" || given[1].Text == "any") {
				given = slices.Delete(given, 1, 2)
			}
		}
		rest := in[k:]
		if asks && who > k+1 {
			rest = slices.Concat(in[k:k+1], in[who:])
		}
		rest = rest[withOnly(rest):]
		return slices.Concat(in[:lead], []scan.Atom{chunk.Worded(at, "what"), chunk.Worded(at, "if")}, given, []scan.Atom{{Kind: scan.Sign, Text: ",", At: at.At, End: at.End}}, rest)
	}
	return in
}

// withOnly returns how many words ask for something to be given along with the rest: "could I get by with 5".
func withOnly(in []scan.Atom) int {
	if len(in) < 4 || in[1].Text != "i" && in[1].Text != "we" || in[0].Text == "is" || in[0].Text == "are" || in[0].Text == "do" || in[0].Text == "does" {
		return 0
	}
	for k := 2; k < min(len(in)-1, 6); k++ {
		switch in[k].Text {
		case "just", "only", "still", "even":
		case "get", "make", "do", "go", "manage":
			for k++; k < min(len(in)-1, 6) && in[k].Text != "with"; k++ {
			}
			if k < len(in)-1 && in[k].Text == "with" {
				return k + 1
			}
			return 0
		case "have", "use":
			return k + 1
		default:
			return 0
		}
	}
	return 0
}

// figureAhead: a figure stands in what follows.
func figureAhead(_, after []scan.Atom) bool {
	return chunk.Figured(after) || HoldsWord(after, "quarter", "half", "eighth", "inch", "foot", "sixteenth")
}

// changeAhead: a figure of the wall's stands in what follows; a budget is another's to grant.
func changeAhead(before, after []scan.Atom) bool {
	return figureAhead(before, after) && !HoldsWord(after, "budget", "dollars", "bucks", "price", "cost")
}

// howBefore: how much of something there is to be was asked before it.
func howBefore(before, _ []scan.Atom) bool {
	return HoldsWord(before, "how", "what", "which") && !HoldsWord(before, "far", "long", "soon", "where")
}

// figureOrEqual: a figure stands in what follows, or how things compare.
func figureOrEqual(_, after []scan.Atom) bool {
	return chunk.Figured(after) || HoldsWord(after, "equal", "same", "alike", "even")
}

// figureOrSide: a figure of the wall's, or a side, stands in what follows.
func figureOrSide(_, after []scan.Atom) bool {
	return (chunk.Figured(after) || HoldsWord(after, "left", "right", "middle")) && HoldsWord(after, "the", "my", "our", "rails", "boards", "slats", "stiffeners", "posts") && !HoldsWord(after, "foot", "footers", "stock", "sale")
}

var (
	sidesNamed = scan.WordSet("left right side end hand")
	toldVerbs  = scan.WordSet("is 's are ends comes works leaves leave has have get gets got makes turns lands")
)

// claimEnds: what stands before it tells with a verb what something is, and ends in its figure. "It's on the left, right" names two sides.
func claimEnds(before, _ []scan.Atom) bool {
	n := len(before)
	return n > 2 && chunk.Figured(before[n-2:]) && phrase.SaidBeforeOf(toldVerbs)(before, nil) && !phrase.SaidBeforeOf(sidesNamed)(before, nil) && before[0].Text != "let" && before[0].Text != "leave" && !AsksAnything(before)
}

// clauseNext: a whole clause follows.
func clauseNext(_, after []scan.Atom) bool {
	return len(after) > 2 && (after[0].Text == "the" || after[0].Text == "so" || after[0].Text == "my" || after[0].Text == "our") && HoldsWord(after, "is", "'s", "are", "has") && !phrase.SaidBeforeOf(sidesNamed)(after, nil)
}

var plansNamed = scan.WordSet("plan plans drawing drawings sketch sheet print blueprint")

// planBefore: what a plan has was told before it.
func planBefore(before, _ []scan.Atom) bool {
	return phrase.SaidBeforeOf(plansNamed)(before, nil) && chunk.Figured(before) && !HoldsWord(before, "not", "but", "if")
}
