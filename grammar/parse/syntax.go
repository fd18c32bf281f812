package parse

import (
	"strings"
	"sync"

	"github.com/alecthomas/participle/v2"
	"github.com/alecthomas/participle/v2/lexer"

	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
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
	return participle.MustBuild[lineSyntax](participle.Lexer(lex.Definition{}), participle.UseLookahead(12))
})

// limit is a value of the line with what limits it.
type limit struct {
	lead, tail []*lex.Token    // relations before and after, dimensions
	lo, hi     *measure.Amount // hi only in a range
	loTok      *lex.Token
	to         bool // "to" stands before it
	goes       bool // "go down to"
	way        *lex.Token
	of         *lex.Token // "two inches over the wall": over, wall
}

// Item is a value, or a word, of a line.
type Item struct {
	*lex.Token // the word; of a value, its number
	lim        *limit
}

// value reports whether the item is a value.
func (it Item) value() bool { return it.lim != nil }

// Items parses tokens. Words that begin no value are items as they are; only what stands from a word that may begin one up to a word
// that no value holds is parsed.
func Items(tokens []lex.Token) ([]Item, error) {
	out := make([]Item, 0, len(tokens))
	for i := 0; i < len(tokens); {
		if !lexicon.MayBeginValue[tokens[i].Kind] {
			out = append(out, Item{&tokens[i], nil})
			i++
			continue
		}
		end := i + 1
		for end < len(tokens) && lexicon.MayStandInValue[tokens[end].Kind] {
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
func phrasesOf(tokens []lex.Token) ([]*phraseSyntax, error) {
	classes := make([]byte, len(tokens))
	for i := range tokens {
		classes[i] = byte(tokens[i].Kind)
	}
	if known, ok := phrasesParsed.Load(string(classes)); ok {
		return known.([]*phraseSyntax), nil
	}
	lex, err := lexer.Upgrade(&lex.TokenStream{Tokens: tokens})
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

type itemBuilder struct{ tokens []lex.Token }

func (b itemBuilder) tok(t lexer.Token) *lex.Token { return &b.tokens[t.Pos.Offset] }

func (b itemBuilder) toks(list ...[]lexer.Token) []*lex.Token {
	var out []*lex.Token
	for _, l := range list {
		for _, t := range l {
			out = append(out, b.tok(t))
		}
	}
	return out
}

func (b itemBuilder) item(p *phraseSyntax) Item {
	switch {
	case p.Between != nil:
		return b.rangeOf(p.Between.Lead, p.Between.Low, p.Between.High, p.Between.Dims, p.Between.Tail)
	case p.FromTo != nil:
		return b.rangeOf(p.FromTo.Lead, p.FromTo.Low, p.FromTo.High, p.FromTo.Dims, p.FromTo.Tail)
	case p.Beyond != nil:
		v := b.tok(p.Beyond.By)
		l := &limit{lead: b.toks(p.Beyond.Lead), tail: b.toks(p.Beyond.Dims), lo: v.Amt, loTok: v, way: b.tok(p.Beyond.Way), of: b.tok(p.Beyond.Of)}
		return Item{v, l.takeTo()}
	case p.Value != nil:
		v := b.tok(p.Value.Value)
		l := &limit{lead: b.toks(p.Value.Lead), tail: b.toks(p.Value.Tail), lo: v.Amt, loTok: v}
		if l.saysApart() {
			l.tail = append(l.tail, apart)
		}
		return Item{v, l.takeTo()}
	case p.Plain != nil:
		return Item{b.tok(p.Plain[0]), nil}
	}
	return Item{b.tok(p.Word[0]), nil}
}

// apart is the dimension of "no farther apart than".
var apart = &lex.Token{Kind: lexicon.Dim, Text: "apart", Found: []lexicon.Found{{Entry: &lexicon.Entry{Kind: lexicon.Dim, Key: "apart", Sense: lexicon.Meaning("| gap, stiffener spacing, span, centers, bay")}}}}

// saysApart reports whether a limit is one of how far things are apart: "no farther apart than 30".
func (l *limit) saysApart() bool {
	for _, t := range l.lead {
		if t.Kind == lexicon.Rel && strings.Contains(t.Text, " apart") {
			return true
		}
	}
	return false
}

func (b itemBuilder) rangeOf(lead []lexer.Token, low, high lexer.Token, dims, tail []lexer.Token) Item {
	v := b.tok(low)
	l := &limit{lead: b.toks(lead), tail: b.toks(dims, tail), lo: v.Amt, hi: b.tok(high).Amt, loTok: v}
	return Item{v, l}
}

// takeTo takes "to" out of the relations: "tighten it to two".
func (l *limit) takeTo() *limit {
	kept := l.lead[:0]
	for _, t := range l.lead {
		if t.Kind == lexicon.To {
			l.to = true
			l.goes = l.goes || strings.HasPrefix(t.Text, "go") || strings.HasPrefix(t.Text, "went")
		} else {
			kept = append(kept, t)
		}
	}
	l.lead = kept
	return l
}

// end is where the value ends in the line.
func (it Item) endAt() int {
	end := it.End
	if it.lim != nil {
		for _, t := range it.lim.tail {
			end = max(end, t.End)
		}
		if it.lim.of != nil {
			end = max(end, it.lim.of.End)
		}
	}
	return end
}

// startAt is where the value begins in the line, its relation included.
func (it Item) startAt() int {
	at := it.At
	if it.lim != nil && len(it.lim.lead) > 0 {
		at = min(at, it.lim.lead[0].At)
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
	for _, t := range append(append([]*lex.Token{}, l.lead...), l.tail...) {
		var o solver.Op
		switch t.Kind {
		case lexicon.Rel, lexicon.Under, lexicon.Over, lexicon.Bound, lexicon.Lim:
			o = solver.Op(t.RelKey())
		case lexicon.About:
			o = solver.Near
		default:
			continue
		}
		if l.hi != nil {
			if o == solver.Near || t.Kind == lexicon.Rel {
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
