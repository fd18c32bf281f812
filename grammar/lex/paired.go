package lex

import (
	"regexp"
	"strings"
	"sync"

	"saywright/grammar/lexicon"
	"saywright/grammar/scan"
)

// heldWay is a way to hold two plans against each other. Its names are what the first and the second group match; literal
// tells that they are names as they are told, even "mine".
type heldWay struct {
	way     *regexp.Regexp
	literal bool
}

// pairedWays are ways to hold two plans against each other without a command in front: "porch against shed, how do they stack
// up", "put plan a and plan b side by side", "I wonder how porch compares with the one called shed".
var pairedWays = sync.OnceValue(func() []heldWay {
	const (
		plan   = `(?:one|plan|version|design|layout|wall|job|sketch|setup)`
		called = `(?:saved|called|named|stored|filed|kept|labeled)(?: it)?(?: as| under)?`
		name   = `((?:(?:the|my|our|that) )?` + plan + `(?: that| which)?(?: i| we| you)?(?: have)? ` + called + ` [a-z][a-z0-9]*(?: [a-z0-9]+)??|[a-z][a-z0-9]*(?: [a-z][a-z0-9]*){0,2}?|[a-z][a-z0-9]* [0-9])`
		join   = `(?:and|with|against|vs|versus|or|next to|beside|alongside|up against)`
		beside = `(?:next to|beside|alongside|against|up against|side by side with)`
		tail   = `(?:how (?:do|would|will) (?:they|those|these|the two|both)(?: of them)? (?:compare|stack up|differ|measure up|line up|look)|(?:compare|cmp)(?: them| the two| both| those| these)?|` +
			`(?:which|what)(?: one)?(?: of (?:them|the two))? (?:is|comes out|works out|would be|costs) (?:the )?(?:cheaper|better|taller|longer|bigger|less|more|dearer|simpler|wider|tighter|cheapest|best)|` +
			`what is the difference|side by side|compared|next to each other|alongside each other|head to head|against each other|beside each other|together for comparison)`
		lead  = `(?:put|set|lay|hold|show|see|have|get|stack|line up|view|look at|want|run|compare)`
		plans = `(?:the |my |our |those |these )?(?:two |both |saved )*(?:plans|designs|versions|layouts|ones|walls|jobs|drawings|sketches|both|two)(?: (?:i|we) saved)?`
		apart = `(?:side by side|next to each other|alongside each other|head to head|against each other|beside each other|together)`
		end   = `(?:(?: ,)? (?:for (?:me|us|him|her|them|everybody)|please|again|now|then|and (?:compare|cmp)(?: them| the two| both| those| these)?|and (?:tell|show) (?:me|us) (?:how they (?:differ|compare|stack up|measure up)|the difference|the differences|what is different|which is (?:better|cheaper|best|cheapest))))*$`
	)
	var out []heldWay
	for _, way := range []string{
		name + ` ` + join + ` ` + name + `(?: ,)? ` + tail,
		lead + ` (?:me |us )?` + name + ` (?:and|with|` + beside + `) ` + name + `(?: ,)? ` + tail,
		`(?:put|set|lay|hold|stack|place) ` + name + ` (?:up )?` + beside + ` ` + name,
		name + ` (?:vs|versus) ` + name,
		`(?:which|what)(?: one)? (?:is|comes out|works out|would be|costs) (?:the )?(?:cheaper|better|taller|longer|bigger|less|more|dearer|simpler) ?,? ` + name + ` or ` + name,
		`(?:wonder(?:ing)? |curious |know |see |tell me |show me )?how ` + name + ` (?:compares|stacks up|measures up|differs|holds up|looks|squares up) (?:with|to|against|from|next to|beside|alongside) ` + name,
		`(?:would |will |is |does )` + name + ` or ` + name + ` (?:be |come out |work out |turn out |end up )?(?:the )?(?:cheaper|better|taller|longer|bigger|dearer|simpler)(?: one)?`,
		lead + ` (?:me |us )?` + plans + ` ` + apart + `(?: [,:])? ` + name + ` ` + join + ` ` + name,
		`(?:compare|cmp) ` + plans + ` [,:] ` + name + ` ` + join + ` ` + name,
	} {
		out = append(out, heldWay{regexp.MustCompile(`^(?:(?:please|now|ok|so|then|can|could|would|will|you|i|we|let|me|us|want|to|love|like|just|am) )*?` + way + end), false})
	}
	told := `([a-z][a-z0-9]*(?: [a-z0-9]+)?) (?:and|with|versus|vs) ([a-z][a-z0-9]*(?: [a-z0-9]+)?)`
	return append(out, heldWay{regexp.MustCompile(`^(?:please |can you |could you )?(?:compare|cmp) [a-z' ]+ , (?:(?:they are|those are|these are|which are|both are)(?: both)? )?` + called + ` ` + told + end), true})
})

// asTold marks a comparison of two names as they are told, even where one of them is "mine".
const asTold = "compare as told"

// holding are words without one of which no two plans are held against each other.
var holding = scan.WordSet("against side beside alongside next vs versus compare compares cmp compared comparison difference differ differs stack stacks measure measures which what head hold holds cheaper better dearer taller simpler bigger longer")

// pair reads two plans held against each other at the beginning of a sentence. It returns the atom after it, and i where
// there are none.
func (l *lexing) pair(i int) int {
	if t := l.last(); l.before != "" || t != nil && t.Kind != lexicon.Stop && t.Kind != lexicon.QMark {
		return i
	}
	end, holds := i, false
	for end < len(l.Atoms) && l.Word(end) != "." && l.Word(end) != "?" && l.Word(end) != "!" && end < i+26 {
		holds = holds || holding[l.Word(end)]
		end++
	}
	if !holds {
		return i
	}
	said := l.spaced(i, end)
	for _, w := range pairedWays() {
		m := MatchOf(w.way, said)
		if m == nil {
			continue
		}
		a, b := m[1], m[2]
		if !w.literal {
			a, b = comparand(a, pointedAt(a) || !endsNumbered(b)), comparand(b, pointedAt(b))
		}
		if a == "" || b == "" || strings.HasSuffix(b, " and") || !w.literal && (l.namesPart(a) || l.namesPart(b)) {
			continue
		}
		t := l.add(lexicon.Cmd, i, end)
		t.Found, t.Text = []lexicon.Found{{Entry: heldAgainst}}, "compare"
		l.add(lexicon.Name, end-1, end).Text = a + " with " + b
		if w.literal {
			l.last().Text, l.tokens[len(l.tokens)-2].Text = a+", "+b, asTold
		}
		return end
	}
	return i
}

// spaced writes out atoms with a space between any two, but before the digits of a name.
func (l *lexing) spaced(from, to int) string {
	var b strings.Builder
	b.Grow(8 * (to - from))
	for k := from; k < to; k++ {
		if k > from && !(l.Glued(k) && l.Kind(k) == scan.Digits) {
			b.WriteByte(' ')
		}
		b.WriteString(l.Word(k))
	}
	return b.String()
}
