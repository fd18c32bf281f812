package grammar

import (
	"strings"
	"sync"

	"github.com/alecthomas/participle/v2"
	"github.com/alecthomas/participle/v2/lexer"

	"saywright/solver"
)

// The syntax of a line: values with what limits them, and all other words one by one. Which quantity a value
// belongs to is found by meaning, not by order: see clause.go.

// lineSyntax is a line.
type lineSyntax struct {
	Phrases []*phraseSyntax `parser:"@@*"`
}

// phraseSyntax is a value, or a word by itself. Words that begin no value come first, for they are most of a line, and nothing needs to be tried for them.
type phraseSyntax struct {
	Plain   []lexer.Token  `parser:"  @(Word|Part|Loc|Dim|Ordinal|Index|Lim|Bound|And|Dots|Dash|Comma)"`
	Between *betweenSyntax `parser:"| @@"`
	FromTo  *fromToSyntax  `parser:"| @@"`
	Beyond  *beyondSyntax  `parser:"| @@"`
	Value   *valueSyntax   `parser:"| @@"`
	Word    []lexer.Token  `parser:"| @(Rel|Under|Over|About|Between|From|To|Num|Size)"`
}

// betweenSyntax is "between two and three".
type betweenSyntax struct {
	Lead []lexer.Token `parser:"@Between"`
	Low  lexer.Token   `parser:"@Num"`
	Dims []lexer.Token `parser:"@(Dim*)"`
	Mid  lexer.Token   `parser:"@(And|To|Dash)"`
	High lexer.Token   `parser:"@Num"`
	Tail []lexer.Token `parser:"@(Dim*)"`
}

// fromToSyntax is "2 to 3", "from 2 to 3", "2-3", "2..3".
type fromToSyntax struct {
	Lead []lexer.Token `parser:"@(From|Rel)?"`
	Low  lexer.Token   `parser:"@Num"`
	Dims []lexer.Token `parser:"@(Dim*)"`
	Mid  lexer.Token   `parser:"@(To|Dash|Dots)"`
	High lexer.Token   `parser:"@Num"`
	Tail []lexer.Token `parser:"@(Dim*)"`
}

// beyondSyntax is "two inches over the wall".
type beyondSyntax struct {
	Lead []lexer.Token `parser:"@((Rel|About|To|Over|Under)*)"`
	By   lexer.Token   `parser:"@Num"`
	Dims []lexer.Token `parser:"@(Dim*)"`
	Way  lexer.Token   `parser:"@(Over|Under|Rel)"`
	Of   lexer.Token   `parser:"@Part"`
}

// valueSyntax is "at least 24 wide", "about 3", "36 min", "no more than 30 inches apart", "2x6".
type valueSyntax struct {
	Lead  []lexer.Token `parser:"@((Rel|About|To|Over|Under)*)"`
	Value lexer.Token   `parser:"@(Num|Size)"`
	Tail  []lexer.Token `parser:"@((Dim|Bound|About)*)"`
}

var parser = sync.OnceValue(func() *participle.Parser[lineSyntax] {
	return participle.MustBuild[lineSyntax](participle.Lexer(definition{}), participle.UseLookahead(12))
})

// limit is a value of the line with what limits it.
type limit struct {
	lead, tail []*token // relations before and after, dimensions
	lo, hi     *amount  // hi only in a range
	loTok      *token
	to         bool // "to" stands before it
	goes       bool // "go down to"
	way        *token
	of         *token // "two inches over the wall": over, wall
}

// item is a value, or a word, of a line.
type item struct {
	*token // the word; of a value, its number
	lim    *limit
}

// value reports whether the item is a value.
func (it item) value() bool { return it.lim != nil }

// items parses tokens. Words that begin no value are items as they are; only what stands from a word that may begin one up to a word
// that no value holds is parsed.
func items(tokens []token) ([]item, error) {
	out := make([]item, 0, len(tokens))
	for i := 0; i < len(tokens); {
		if !mayBeginValue[tokens[i].kind] {
			out = append(out, item{&tokens[i], nil})
			i++
			continue
		}
		end := i + 1
		for end < len(tokens) && mayStandInValue[tokens[end].kind] {
			end++
		}
		phrases, err := phrasesOf(tokens[i:end])
		if err != nil {
			return nil, err
		}
		b := itemBuilder{tokens[i:end]}
		for _, p := range phrases {
			out = append(out, b.item(p))
		}
		i = end
	}
	return out, nil
}

// phrasesParsed are the phrases of tokens that were parsed before, by the classes of the tokens: nothing else of them tells how they are
// parsed. People say the same few hundred in all they say.
var phrasesParsed sync.Map // string → []*phraseSyntax

// mostRemembered is the most tokens of which it is remembered how they are parsed.
const mostRemembered = 8

// phrasesOf parses tokens that may hold a value.
func phrasesOf(tokens []token) ([]*phraseSyntax, error) {
	classes := make([]byte, len(tokens))
	for i := range tokens {
		classes[i] = byte(tokens[i].kind)
	}
	if known, ok := phrasesParsed.Load(string(classes)); ok {
		return known.([]*phraseSyntax), nil
	}
	lex, err := lexer.Upgrade(&tokenStream{tokens: tokens})
	if err != nil {
		return nil, err
	}
	ast, err := parser().ParseFromLexer(lex)
	if err != nil {
		return nil, err
	}
	if len(tokens) <= mostRemembered {
		phrasesParsed.Store(string(classes), ast.Phrases)
	}
	return ast.Phrases, nil
}

type itemBuilder struct{ tokens []token }

func (b itemBuilder) tok(t lexer.Token) *token { return &b.tokens[t.Pos.Offset] }

func (b itemBuilder) toks(list ...[]lexer.Token) []*token {
	var out []*token
	for _, l := range list {
		for _, t := range l {
			out = append(out, b.tok(t))
		}
	}
	return out
}

func (b itemBuilder) item(p *phraseSyntax) item {
	switch {
	case p.Between != nil:
		return b.rangeOf(p.Between.Lead, p.Between.Low, p.Between.High, p.Between.Dims, p.Between.Tail)
	case p.FromTo != nil:
		return b.rangeOf(p.FromTo.Lead, p.FromTo.Low, p.FromTo.High, p.FromTo.Dims, p.FromTo.Tail)
	case p.Beyond != nil:
		v := b.tok(p.Beyond.By)
		l := &limit{lead: b.toks(p.Beyond.Lead), tail: b.toks(p.Beyond.Dims), lo: v.amt, loTok: v, way: b.tok(p.Beyond.Way), of: b.tok(p.Beyond.Of)}
		return item{v, l.takeTo()}
	case p.Value != nil:
		v := b.tok(p.Value.Value)
		l := &limit{lead: b.toks(p.Value.Lead), tail: b.toks(p.Value.Tail), lo: v.amt, loTok: v}
		if l.saysApart() {
			l.tail = append(l.tail, apart)
		}
		return item{v, l.takeTo()}
	case p.Plain != nil:
		return item{b.tok(p.Plain[0]), nil}
	}
	return item{b.tok(p.Word[0]), nil}
}

// apart is the dimension of "no farther apart than".
var apart = &token{kind: kDim, text: "apart", found: []found{{entry: &entry{kind: kDim, key: "apart", sense: meaning("| gap, stiffener spacing, span, centers, bay")}}}}

// saysApart reports whether a limit is one of how far things are apart: "no farther apart than 30".
func (l *limit) saysApart() bool {
	for _, t := range l.lead {
		if t.kind == kRel && strings.Contains(t.text, " apart") {
			return true
		}
	}
	return false
}

func (b itemBuilder) rangeOf(lead []lexer.Token, low, high lexer.Token, dims, tail []lexer.Token) item {
	v := b.tok(low)
	l := &limit{lead: b.toks(lead), tail: b.toks(dims, tail), lo: v.amt, hi: b.tok(high).amt, loTok: v}
	return item{v, l}
}

// takeTo takes "to" out of the relations: "tighten it to two".
func (l *limit) takeTo() *limit {
	kept := l.lead[:0]
	for _, t := range l.lead {
		if t.kind == kTo {
			l.to = true
			l.goes = l.goes || strings.HasPrefix(t.text, "go") || strings.HasPrefix(t.text, "went")
		} else {
			kept = append(kept, t)
		}
	}
	l.lead = kept
	return l
}

// end is where the value ends in the line.
func (it item) endAt() int {
	end := it.end
	if it.lim != nil {
		for _, t := range it.lim.tail {
			end = max(end, t.end)
		}
		if it.lim.of != nil {
			end = max(end, it.lim.of.end)
		}
	}
	return end
}

// startAt is where the value begins in the line, its relation included.
func (it item) startAt() int {
	at := it.at
	if it.lim != nil && len(it.lim.lead) > 0 {
		at = min(at, it.lim.lead[0].at)
	}
	return at
}

// relation reads the relation of a limit: its sign, whether it is strict, and what it may not be. ok is false
// where two relations stand that do not go together.
func (l *limit) relation() (op solver.Op, ok bool) {
	op = solver.Eq
	if l.hi != nil {
		op = solver.In
	}
	set := false
	for _, t := range append(append([]*token{}, l.lead...), l.tail...) {
		var o solver.Op
		switch t.kind {
		case kRel, kUnder, kOver, kBound, kLim:
			o = solver.Op(t.relKey())
		case kAbout:
			o = solver.Near
		default:
			continue
		}
		if l.hi != nil {
			if o == solver.Near || t.kind == kRel {
				return op, false
			}
			continue
		}
		if o == solver.Eq && set || o == op {
			continue
		}
		if set && o == solver.Near {
			continue // "no more than about 3": a limit stays one
		}
		if set && op == solver.Near {
			op = o
			continue
		}
		if set && op != solver.Eq {
			return op, false
		}
		op, set = o, true
	}
	return op, true
}

// relKey is the sign of a relation; "min" and "max" carry theirs in the tables.
func (t *token) relKey() string {
	for _, f := range t.found {
		switch f.entry.kind {
		case kRel, kUnder, kOver, kBound, kLim:
			return f.entry.key
		}
	}
	return "="
}
