package grammar

import "strings"

// bench are more words of people at their work: of what holds a post up, what lies about, what is received and what is looked at.
var bench = []entry{
	{kind: kPart, key: "base height", sense: meaning("base height"), loose: true, ways: `
		[POST] (base|bases|foot|standoff) (is going to|are going to|will|would|should|has to|needs to|is supposed to|ought to|must|is meant to) (hold|lift|carry|keep|raise|stand|set|prop|put) [(that|this|its)] [(added|new)] POST [up]
		[POST] (base|bases|foot|standoff) (is going to|are going to|will|would|should|has to|needs to|is supposed to|ought to|must|is meant to) (hold|lift|carry|keep|raise|stand|set|prop|put) (it|them) [up]`},
	{kind: kHaveTail, key: "have", ways: `
		(lying|laying|leaning|stacked|standing|sitting|piled|stashed|stored|propped|resting|leaned|leant) [(up|around|about|out)] (on|along|atop|at|by|over by|out by|next to|up against|against|out at) [(the|my|our|a|one)] [(far|back|garage|shed|barn|shop|garden|side|old)] (fence|wall|house|garage|shed|barn|truck|rack|sawhorses|porch|driveway|woodpile|workbench|bench|side|gate|tree)`},
	{kind: kHaveTail, key: "have", ways: `
		[,] (which|that) (we|i) (would (like|love|prefer|want) to|want to|hope to|need to|have to|plan to|mean to|should|ought to|could|can|might as well|would (rather|sooner)|am hoping to|are hoping to) (use|get rid of|put to use|get through|burn through|make use of|work in|use first) [up] [(first|here|too|if possible|if we can|if i can|on this|on it|somewhere|for this)]`},
	{kind: kFill, key: "fill", ways: `
		(saw|chop saw|miter saw|table saw) (stop|stop block) [(just|only)] once [(so|and|and then|then)]
		(set|setting|use|using|clamp|fix|put) [(up|on)] [(the|a|my|one)] [(saw|chop saw|miter saw)] (stop|stop block) [(just|only)] once [(so|and|and then|then)]
		(set|setting|use|using|clamp|fix|put) [(up|on)] [(the|a|my|one)] (saw|chop saw|miter saw) (stop|stop block) [(so|and|and then|then)]`},
	{kind: kHead, key: "check", loose: true, ways: `
		PAPER [that] (i|we) [(just|finally)] (received|solicited|obtained|collected|requested|asked for|picked up|brought home|came home with|took home|have in hand|was handed|were handed) [(back|in|today|yesterday|this morning|last week|this week)] [from PERSON] (is|was|comes to|came to|comes in at|came in at|runs to|amounts to|totals|adds up to|says|shows|has|reads)
		(other|first|second|old|young|next|last|same|same old) PERSON 's (saying|claiming|telling ME|insisting|of the opinion|certain|convinced|quoting|proposing|suggesting|reporting|showing|sure|positive|swearing) [that]
		(other|first|second|old|young|next|last|same) PERSON (is|are|was) (saying|claiming|telling ME|insisting|of the opinion|certain|convinced|quoting|proposing|suggesting|reporting|showing|sure|positive|swearing) [that]`},
	{kind: kCmd, key: "take that", loose: true, ways: `
		(keep|use|go with|adopt|accept|run with|apply|stick with|take|stay with|choose|pick) (one|version|trial|that|that one|way|layout|what) [that] (we|you|i) [just] (tried|tested|ran|worked|figured|drew|laid|mocked|sketched) (out|up)`},
	{kind: kCmd, key: "show it all", loose: true, ways: `
		[,] (i|we) (want|would like|need|like|have|would love) to (see|look at|check|follow|have|know) (every|each|all) [(the|of the|single|last|one of the)] (number|numbers|figure|figures|sum|sums)
		[(in|with)] (every|each) [(single|last)] (number|figure) in it`},
	{kind: kGoal, key: "same length", loose: true, ways: `
		(cut|saw|make|chop|trim) [(them|it|those|these)] all [to] [one and] (same|one|single|equal|identical) LENGTH [each]
		all (same|one|equal|identical) (LENGTH|length)`},
	{kind: kCmd, key: "draw to", loose: true, ways: `
		(can|could|may|might) (i|we) [please] (have|get) (drawing|picture|sketch|elevation|diagram|image) [file] (put|saved|stored|written|exported|sent|done|printed) (to|in|into|as|onto)
		(have|get|want|need|like) (drawing|picture|sketch|elevation|diagram|image) [file] (put|saved|stored|written|exported|sent) (to|in|into|as|onto)`},
	{kind: kPart, key: "opening from left", sense: meaning("opening from left"), loose: true, ways: `
		from [(face|inside|edge) of] LEFT [END] [POST] [(face|edge|side)] [(over|out)] to (near|nearest|closest|close|facing|inner|first|nearer) (edge|side|jamb|end|start|beginning) of OPENING
		(near|nearest|closest|facing|nearer) (edge|side|jamb) of OPENING from LEFT [END] POST`},
	{kind: kPart, key: "opening from right", sense: meaning("opening from right"), loose: true, ways: `
		from [(face|inside|edge) of] RIGHT [END] [POST] [(face|edge|side)] [(over|out)] to (near|nearest|closest|close|facing|inner|first|nearer) (edge|side|jamb|end|start|beginning) of OPENING
		(near|nearest|closest|facing|nearer) (edge|side|jamb) of OPENING from RIGHT [END] POST`},
	{kind: kWayOut, key: "way", loose: true, ways: `
		(of|from|out of|among) [(those|the|your|these|all the)] [(two|three|four|five|six)] (alternatives|ways|remedies|options|choices|fixes|suggestions|solutions|possibilities|ideas|ones|answers) [that] [you] [(just|have|had)] (listed|gave|offered|showed|suggested|proposed|named|mentioned|came up with|found|put up|put to me|laid out|told) [(me|us)]`},
	{kind: kUnclear, key: "unclear", ways: "where (can|could|do|should|would|might|to) [(i|we|you|one)] (buy|purchase|order|shop for|source|pick up)"},
	{kind: kTailFill, key: "rest", ways: `
		[,] (but|and) (leave|keep|let) (rest|the rest|everything else|all else|the others|the other ones|all the rest|all the others) [(alone|be|as is|as it is|as they are|in|there|standing|the same|like it is|how it is|as it was|in place|on|unchanged|untouched|of it|of them|please)]`},
}

// asCloseTo reads "as close to 34 as you can" for about that much. It returns the atom after "to", and i where no length follows.
func (l *lexing) asCloseTo(i int) int {
	if l.word(i) != "as" {
		return i
	}
	switch l.word(i + 1) {
	case "close", "near", "nearly", "closely":
	default:
		return i
	}
	to := i + 2
	if l.word(to) == "as" {
		for to++; nearing[l.word(to)]; to++ {
		}
	}
	if _, _, ok := l.length(to + 1); !ok || l.word(to) != "to" {
		return i
	}
	l.add(kAbout, i, to+1).found = []found{{entry: closeTo}}
	return to + 1
}

// nearing are the words between "as close as" and "to 34".
var nearing = wordSet("possible you we i it they can could will get come comes go goes be make manage is practical practicable may might")

var closeTo = &entry{kind: kAbout, key: "~"}

// closeAsCanBe drops the end of "as close to 34 as you can".
func (l *lexing) closeAsCanBe() {
	for i := 0; i+2 < len(l.tokens); i++ {
		if t := &l.tokens[i]; t.kind != kAbout || !strings.HasPrefix(t.text, "as ") || l.tokens[i+1].kind != kNum {
			continue
		}
		for j := i + 2; j < len(l.tokens) && j < i+4; j++ {
			if l.tokens[j].kind == kBestTail {
				l.drop(j)
			}
		}
	}
}

// whateverIs drops the word between "ten times" and what it is that many times of: "ten times whatever the gap is".
func (l *lexing) whateverIs() {
	for i := 1; i+1 < len(l.tokens); i++ {
		t, prev, next := &l.tokens[i], &l.tokens[i-1], &l.tokens[i+1]
		if t.text != "whatever" && t.text != "what" || next.kind != kPart {
			continue
		}
		if prev.kind == kNum && prev.amt.times || prev.kind == kFactor || prev.kind == kTimes || prev.kind == kSame {
			l.drop(i)
		}
	}
}

// everyPiece drops "everything" where a bay follows, whose boards are told: "everything in bay 1 gets cut at 58".
func (l *lexing) everyPiece() {
	for i := 0; i+2 < len(l.tokens); i++ {
		t, next := &l.tokens[i], &l.tokens[i+1]
		if t.kind != kUnknown || t.text != "everything" || next.key() != "per bay" && next.key() != "bay" {
			continue
		}
		for j := i + 2; j < len(l.tokens) && l.tokens[j].kind != kStop; j++ {
			if l.tokens[j].kind == kCutWord {
				l.drop(i)
				break
			}
		}
	}
}
