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
	"saywright/grammar/measure"
	"saywright/grammar/paraphrase"
	"saywright/grammar/scan"
	"saywright/solver"
	"saywright/solver/exact"
)

// Every figure of a line is told by what was heard of it, or there is a reason why it is not: it was taken back, it is of another wall, of a thing that has
// to pass, of the time of day. A figure that is in nothing, without such a reason, was lost, and it is asked what it is of. This is the last look at a line:
// it knows nothing of how the line was read, and so it finds what the reading itself cannot see. Plain English, no source.

// reasonLeft tells why a figure is not in what was heard.
var reasonLeft = regexp.MustCompile(`\b(?:` + strings.Join([]string{
	// Taken back, or changed.
	`no|not|nope|nah|naw|na|isnae|wait|sorry|scratch|scrub|scrap|actually|rather|instead|mean|meant|correction|forget|strike|hang on|hold on|haud on|pardon|mistake|never ?mind|excuse|oops|whoops|uh|um|er|hm+|changed?|wrong|belay|s ?/ ?b|did i|oh|you know what|or wait|call it|make (?:that|it|her)|what the heck|don|liked|than|too [a-z]+|(?:piece|board|rail|stick|cut) or two|from [^,;]* to|from the (?:bottom|top)`,
	`(?:isn|aren|ain|wasn|weren|don|doesn|didn|can|couldn|won|wouldn)'? ?t`,
	`my (?:bad|error|fault|goof|blunder|slip|flub)|apologies|hold (?:up|your horses|the phone|the line|everything)|whoa|stand corrected|slip of|duh|doh|da(?:ng|rn)|drat|rats|nuts|fat finger(?:s|ed)|fat-fingered|brain (?:fart|freeze|cramp)|senior moment|mis(?:heard|typed|wrote|judged|measured|read|counted)|back up|(?:nix|cancel|check|erase|delete|void|undo) that|bad read|(?:one|a) (?:sec|second|moment|tick)|amend|revise|shy of|short of`,
	// Of another wall, or of another time.
	`next door|neighbou?rs?|other|old|previous|before|they|them|their|theirs|he|his|him|she|her|hers|ours|ourselves|mine|this one|dad|mom|mother|father|brother|sister|uncle|aunt|cousin|boss|guy|folks|people|house|had|was|were|wanted|asked|thought|expected|figured|would have|used to|last|yesterday|earlier|nearly|almost|at first|once`,
	`go on then|let ?(?:'? ?s|us) say|let's say|better|originally|guessed|planned|tell a lie|lied?|typo|forgive|should|shoot|half a (?:mind|sec|minute)|i said|came (?:this|so) close|look again|wish|in fact|really`,
	// Of a thing that has to pass, to stand beside it, or to be seen over.
	`deck rail|pool|porch|carport|kitchen|shed|mower|barrow|wheelbarrow|handcart|cart|walker|wheelchair|chair|stroller|pram|dog|cat|goat|sheep|cow|horse|hedge|sill|window|bench|table|shelf|shelves|closet|bed|truck|trailer|gate|child|kid|kids|boy|girl|sofa|grill|tank|counter|tall i am|i am|i'm`,
	// Of time, weather, people and trips.
	`hours?|minutes?|days?|weeks?|months?|years?|o'?clock|degrees|miles|delivery|half past|quarter (?:to|past)|a\.?m|p\.?m|of us|all three|all (?:two|four|five|both)|first \w+ marks`,
}, "|") + `)\b`)

// figureLeft asks back what a figure is of that is in nothing of what was heard.
func figureLeft(r act.Reading, line, said string, atoms []scan.Atom, c act.Context) act.Reading {
	if r.Ask != nil || c.Deep || c.Part || len(c.Settled) > 0 || slices.ContainsFunc(r.Acts, leavesFigures) {
		return r
	}
	if r = whyLeft(orderLeft(questionLeft(r, said), said), said); r.Ask != nil {
		return r
	}
	told := figuresTold(r.Acts)
	fewer := groupsOf(atoms) > told.count
	named := namedIn(r.Acts)
	if !fewer && !partMissed(atoms, named) {
		return r
	}
	reason := reasonLeft.MatchString(strings.ToLower(said))
	if reason && (!fewer || len(clauseCut.FindAllStringIndex(said, 3)) < 3) {
		return r // of so few clauses each is near the others
	}
	tokens := lex.Tokens(paraphrase.SetPlain(atoms), c)
	if !fewer {
		return partLeft(r, line, said, named, tokens)
	}
	for _, t := range tokens {
		if t.Kind == lexicon.Num && t.Amt != nil && !told.tell(t) && !(reason && reasonLeft.MatchString(strings.ToLower(nearBy(line, t.At, t.End)))) {
			return askback.AskedBack(t.At, "What is "+t.Text+" for? Please name it with its figure.", "gap 2, bottom gap 3")
		}
	}
	if reason {
		return r
	}
	return partLeft(r, line, said, named, tokens)
}

// nearBy is the clause that a place of a line is in, with two before it and two behind it.
func nearBy(line string, at, end int) string {
	runes := []rune(line)
	at = min(at, len(runes))
	end = max(at, min(end, len(runes))) // what was put in for a phrase may end before it begins
	cuts := clauseCut.FindAllStringIndex(string(runes[:at]), -1)
	from := 0
	if len(cuts) > 2 {
		from = cuts[len(cuts)-3][0]
	}
	behind := string(runes[end:])
	to := len(behind)
	if cuts := clauseCut.FindAllStringIndex(behind, 3); len(cuts) > 2 {
		to = cuts[2][0]
	}
	return string(runes[:at])[from:] + string(runes[at:end]) + behind[:to]
}

var clauseCut = regexp.MustCompile(`[,;.?!:](?: |$)| - | -- |\b(?:and|but|so|then|because)\b`)

// leavesFigures reports whether an act asks after what stands, whose figure need not be told again: "why is it five rails".
func leavesFigures(a act.Act) bool { return a.Kind == act.Why || a.Topic == "shopping" }

// withinFigure are what may stand within one figure: "2-1/2", "12 ft 6", "two and a half", "2 by 6".
var withinFigure = scan.WordSet(`- / ' " ft foot feet x by and a`)

// groupsOf counts the figures of a line, rather too few than too many.
func groupsOf(atoms []scan.Atom) (n int) {
	in := false
	for i := range atoms {
		switch {
		case atoms[i].Kind == scan.Digits || atoms[i].Kind == scan.Vulgar || atoms[i].Kind == scan.Word && chunk.SpelledNumber(atoms[i].Text):
			if !in {
				n++
			}
			in = true
		case in && !withinFigure[atoms[i].Text]:
			in = false
		}
	}
	return n
}

// toldFigures are the figures of acts.
type toldFigures struct {
	values []exact.Rat
	words  []string // names and sizes, as they are shown
	count  int
	prices bool
}

func figuresTold(acts []act.Act) *toldFigures {
	t := &toldFigures{}
	for _, a := range acts {
		for _, st := range a.Statements {
			if st.Op != solver.Set || st.Value.Num.Sign() != 0 {
				t.value(st.Value)
			}
			if st.Upper.Num.Sign() != 0 {
				t.value(st.Upper)
			}
			t.name(st.Name)
		}
		if a.Name != nil {
			t.name(*a.Name)
		}
		for _, n := range a.Names {
			t.name(n)
		}
		for _, f := range a.Figures {
			t.value(f)
		}
		if a.N > 0 {
			t.add(exact.Int(a.N))
		}
		t.words = append(t.words, a.Words...)
	}
	return t
}

func (t *toldFigures) name(n solver.Name) {
	t.words = append(t.words, n.String())
	if n.Long != nil {
		t.value(*n.Long)
	}
}

func (t *toldFigures) value(v solver.Value) {
	t.prices = t.prices || v.Unit == solver.Currency
	if v.Unit != solver.None || v.Num.Sign() != 0 || v.Word == "" && v.Of == nil && v.Mult == nil && len(v.List) == 0 {
		t.add(v.Num)
	}
	if v.Mult != nil {
		t.add(*v.Mult)
	}
	for _, w := range v.List {
		t.value(w)
	}
	if v.Word != "" {
		t.words = append(t.words, v.Word)
		t.count++
	}
}

// add takes in a figure.
func (t *toldFigures) add(v exact.Rat) {
	t.count++
	t.values = append(t.values, v)
}

// has reports whether a figure was told: itself, without its sign, or as what is more or less than the whole, in hundredths too.
func (t *toldFigures) has(v exact.Rat) bool {
	return slices.ContainsFunc(t.values, func(w exact.Rat) bool {
		share := w.Sub(exact.Int(1))
		for _, told := range []exact.Rat{w, share, share.Mul(exact.Int(100))} {
			if told.Cmp(v) == 0 || told.Mul(exact.Int(-1)).Cmp(v) == 0 {
				return true
			}
		}
		return false
	})
}

// tell reports whether a figure of the line is among those told, as it is or in inches.
func (t *toldFigures) tell(tk lex.Token) bool {
	v := tk.Amt.Val
	if tk.Text == "one" || t.prices && v.IsInt() && tk.Amt.Unit == measure.Bare { // "one bracket is three ninety five"
		return true
	}
	if t.has(v) || t.has(v.Mul(exact.Int(12))) || t.has(v.Mul(exact.Int(2))) {
		return true
	}
	if tk.Amt.Per.Sign() != 0 && t.has(v.Mul(tk.Amt.Per)) || t.has(v.Mul(measure.Mm(1))) {
		return true
	}
	return slices.ContainsFunc(t.words, func(w string) bool {
		return tk.Amt.Size != "" && strings.Contains(w, tk.Amt.Size) || tk.Amt.Size == "" && (strings.Contains(w, strings.ToLower(tk.Text)) || v.IsInt() && slices.Contains(strings.FieldsFunc(w, notDigit), v.String()))
	})
}

func notDigit(r rune) bool { return r < '0' || r > '9' }
