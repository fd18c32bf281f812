package main

import (
	"fmt"
	"math/big"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/solver"
)

// The evaluator below reads arithmetic as a person reads it off the page, and works it out with math/big. It shares no
// code with what wrote it.

// token is a number, a sign or a word of a written sum.
type token struct {
	kind byte // 'n' number, 'w' word, or the sign itself: + - * / ( ) =
	num  *big.Rat
	text string
}

var pieces = regexp.MustCompile(`\d+(?:,\d{3})*(?:\.\d+|-\d+/\d+|/\d+)?|[a-zA-Z]+|[-+*/()=×÷−]|\S`)

// tokens takes a line apart. Signs of their own width count only with room around them: "2-1/2" is a number.
func tokens(line string) []token {
	var list []token
	for _, at := range pieces.FindAllStringIndex(line, -1) {
		s := line[at[0]:at[1]]
		switch {
		case s[0] >= '0' && s[0] <= '9':
			list = append(list, token{kind: 'n', num: written(s), text: s})
		case strings.Contains("+-*/()=×÷−", s):
			list = append(list, token{kind: map[string]byte{"×": '*', "÷": '/', "−": '-'}[s], text: s})
			if last := &list[len(list)-1]; last.kind == 0 {
				last.kind = s[0]
			}
		default:
			list = append(list, token{kind: 'w', text: s})
		}
	}
	return list
}

// written reads 38, 2,011, 2.5, 5/6 and 2-5/6.
func written(s string) *big.Rat {
	s = strings.ReplaceAll(s, ",", "")
	whole, part, mixed := strings.Cut(s, "-")
	r, ok := new(big.Rat).SetString(whole)
	if !ok {
		return nil
	}
	if mixed {
		p, ok := new(big.Rat).SetString(part)
		if !ok {
			return nil
		}
		r.Add(r, p)
	}
	return r
}

// sum is one written equation: both sides worked out.
type sum struct {
	text        string
	left, right *big.Rat
}

// sumsIn finds every equation of a text with a sign of arithmetic on its left, and works out both sides. A line that
// says "about" gives rounded figures and is left out.
func sumsIn(text string) []sum {
	var found []sum
	for _, line := range strings.Split(text, "\n") {
		list := tokens(line)
		for i, t := range list {
			if t.kind != '=' {
				continue
			}
			from := leftOf(list, i)
			left, signs := value(list[from:i])
			to := rightOf(list, i+1)
			right, _ := value(list[i+1 : to])
			if left == nil || right == nil || signs == 0 || i+1 < len(list) && list[i+1].text == "about" {
				continue
			}
			var words []string
			for _, w := range list[from:to] {
				words = append(words, w.text)
			}
			found = append(found, sum{strings.Join(words, " "), left, right})
		}
	}
	return found
}

// leftOf goes back from an equals sign over all that belongs to its left side: numbers and signs in turn, with one
// word allowed behind a number ("6 rails × 5-1/2").
func leftOf(list []token, at int) int {
	depth, from := 0, at
	wantNumber := true
	for i := at - 1; i >= 0; i-- {
		t := list[i]
		switch {
		case t.kind == ')' && wantNumber:
			depth++
			continue
		case t.kind == '(' && !wantNumber && depth > 0:
			depth--
		case t.kind == 'n' && wantNumber:
			wantNumber = false
		case t.kind == 'w' && wantNumber && i > 0 && list[i-1].kind == 'n' && from < at:
			continue
		case t.kind == 'w' && wantNumber && i > 0 && list[i-1].kind == 'n' && (t.text == "in" || t.text == "mm"):
			continue
		case strings.IndexByte("+-*/", t.kind) >= 0 && !wantNumber:
			wantNumber = true
			continue
		default:
			return from
		}
		if depth == 0 {
			from = i
		}
	}
	return from
}

// rightOf goes on from an equals sign over a value, or a sum.
func rightOf(list []token, at int) int {
	i := at
	wantNumber := true
	for ; i < len(list); i++ {
		t := list[i]
		switch {
		case wantNumber && (t.kind == 'n'):
			wantNumber = false
		case wantNumber && t.kind == '(':
		case wantNumber && t.kind == '-' && i == at:
		case !wantNumber && strings.IndexByte("+-*/", t.kind) >= 0 && i+1 < len(list) && list[i+1].kind == 'n':
			wantNumber = true
		case !wantNumber && t.kind == ')' && strings.Count(textOf(list[at:i]), "(") > strings.Count(textOf(list[at:i]), ")"):
		default:
			return i
		}
	}
	return i
}

func textOf(list []token) string {
	var b strings.Builder
	for _, t := range list {
		b.WriteString(t.text)
	}
	return b.String()
}

// value works out a run of tokens; words are passed over. signs counts the operators; nil where it is no sum.
func value(list []token) (r *big.Rat, signs int) {
	p := &page{}
	for _, t := range list {
		if t.kind != 'w' {
			p.list = append(p.list, t)
		}
		if strings.IndexByte("+-*/", t.kind) >= 0 {
			signs++
		}
	}
	r = p.sum()
	if p.at != len(p.list) {
		return nil, 0
	}
	return r, signs
}

type page struct {
	list []token
	at   int
}

func (p *page) sign(of string) byte {
	if p.at < len(p.list) && strings.IndexByte(of, p.list[p.at].kind) >= 0 {
		p.at++
		return p.list[p.at-1].kind
	}
	return 0
}

func (p *page) sum() *big.Rat {
	left := p.product()
	for s := p.sign("+-"); s != 0 && left != nil; s = p.sign("+-") {
		right := p.product()
		if right == nil {
			return nil
		}
		if s == '+' {
			left = new(big.Rat).Add(left, right)
		} else {
			left = new(big.Rat).Sub(left, right)
		}
	}
	return left
}

func (p *page) product() *big.Rat {
	left := p.factor()
	for s := p.sign("*/"); s != 0 && left != nil; s = p.sign("*/") {
		right := p.factor()
		switch {
		case right == nil || s == '/' && right.Sign() == 0:
			return nil
		case s == '*':
			left = new(big.Rat).Mul(left, right)
		default:
			left = new(big.Rat).Quo(left, right)
		}
	}
	return left
}

func (p *page) factor() *big.Rat {
	if p.sign("-") != 0 {
		r := p.factor()
		if r == nil {
			return nil
		}
		return new(big.Rat).Neg(r)
	}
	if p.sign("(") != 0 {
		r := p.sum()
		if p.sign(")") == 0 {
			return nil
		}
		return r
	}
	if p.at < len(p.list) && p.list[p.at].kind == 'n' {
		p.at++
		return p.list[p.at-1].num
	}
	return nil
}

// figures is a line without its words.
func figures(line string) string {
	var b strings.Builder
	for _, t := range tokens(line) {
		if t.kind != 'w' {
			b.WriteString(t.text)
		}
	}
	return b.String()
}

// checkSums evaluates again every sum that an answer shows or carries, and returns how many there were.
func checkSums(t *testing.T, a *solver.Answer) int {
	t.Helper()
	n := 0
	said := figures(a.Said)
	for _, s := range sumsIn(a.Text) {
		if strings.Contains(said, figures(s.text)) {
			continue // the person's own, shown back
		}
		require.Zero(t, s.left.Cmp(s.right), "%q says %s: %s is not %s", a.Said, s.text, s.left.RatString(), s.right.RatString())
		n++
	}
	for _, w := range a.Work {
		require.NoError(t, checkWork(w), "%q", a.Said)
		n++
	}
	return n
}

// checkWork evaluates a line of work as data: an expression, or a comparison that is true or false.
func checkWork(w solver.Work) error {
	text := w.Expr.String()
	for _, rel := range []string{"<=", ">=", "!=", "<", ">", "="} {
		l, r, ok := strings.Cut(text, " "+rel+" ")
		if !ok {
			continue
		}
		left, _ := value(tokens(l))
		right, _ := value(tokens(r))
		if left == nil || right == nil {
			return fmt.Errorf("%q cannot be read", text)
		}
		c := left.Cmp(right)
		holds := map[string]bool{"<=": c <= 0, ">=": c >= 0, "!=": c != 0, "<": c < 0, ">": c > 0, "=": c == 0}[rel]
		if w.Equals != fmt.Sprint(holds) {
			return fmt.Errorf("%s is %v, and it says %s", text, holds, w.Equals)
		}
		return nil
	}
	got, _ := value(tokens(text))
	want, ok := new(big.Rat).SetString(w.Equals)
	if got == nil || !ok || got.Cmp(want) != 0 {
		return fmt.Errorf("%s is %v, and it says %s", text, got, w.Equals)
	}
	return nil
}

// The sums are those of a wall worked out by hand; the false ones must be found.
func TestTheEvaluatorReadsSums(t *testing.T) {
	for _, c := range []struct {
		line string
		n    int
	}{
		{"6 rails × 5-1/2 = 33", 1},
		{"5 × 5-1/2 = 27-1/2              wood", 1},
		{"27-1/2 + 12-1/2 = 40", 1},
		{"40 − 27-1/2 − 4 × 2 = 4-1/2", 1},
		{"Even gaps of 2 want a wall of 37-1/2 or 45: 5 × 7-1/2 = 37-1/2, 6 × 7-1/2 = 45 (they touch).", 2},
		{"115-1/2 ÷ 3 = 38-1/2, 48 allowed (with one: 115-1/2 ÷ 2 = 57-3/4)", 2},
		{"Rails 55-13/16 in place of 115-5/16 (56 − 3/16 = 55-13/16, 115-1/2 − 3/16 = 115-5/16): an 8-footer", 2},
		{"rail 5   115-3/16 − 3/16 = 115", 1},
		{"Screws 10 × 4 + 2 × 5 × 2 = 60. One post base.", 1},
		{"38-1/2 + 12 = 50-1/2, and the wall is 50", 1},
		{"2-1/2 + 6 × 5-1/2 + 5 × 2-1/2 = 48 in", 1},
		{"4 * 2-13/16 + 2 * 2-7/8 = 17", 1},
		{"(3 + 4) × 2 = 14", 1},
		{"2 in + 3 in = 5 in", 1},
		{"12 ÷ 7 = about 1-3/4", 0},
		{"gap = 2-1/2 in; bay 1 = 60 in", 0},
	} {
		got := sumsIn(c.line)
		require.Len(t, got, c.n, c.line)
		for _, s := range got {
			require.Zero(t, s.left.Cmp(s.right), "%s", s.text)
		}
	}
	for _, wrong := range []string{"5 × 5-1/2 = 27", "38-1/2 + 12 = 50", "17 ÷ 6 = 2-5/7", "rail 5   115-3/16 − 3/16 = 115-1/16", "40 − 2-1/2 = 37"} {
		got := sumsIn(wrong)
		require.Len(t, got, 1, wrong)
		require.NotZero(t, got[0].left.Cmp(got[0].right), wrong)
	}
}
