package explain

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/solver"
	"saywright/solver/exact"
)

// stated turns a normal form into a statement. It reads the plain shapes that the walls below are said in; the whole
// language is package grammar's, which this package does not know.
func stated(t *testing.T, s string) solver.Statement {
	t.Helper()
	f := read(s)
	st := solver.Statement{Name: named(f.name), Op: solver.Op(f.op)}
	switch {
	case f.op == "":
		return solver.Statement{Name: solver.Name{Quantity: solver.Goal}, Value: solver.Value{Word: f.name}}
	case leans(f.value):
		factor, name, more := leaning(f.value)
		of := named(name)
		st.Value = solver.Value{Of: &of, Unit: solver.Inch}
		if factor != "" {
			r := exact.Must(factor)
			st.Value.Mult = &r
		}
		if more != "" {
			r, ok := length(strings.TrimLeft(more, "+- "))
			require.True(t, ok, s)
			if strings.HasPrefix(more, "-") {
				r = r.Neg()
			}
			st.Value.Num = r
		}
	case strings.Contains(f.value, ", "):
		for _, part := range strings.Split(f.value, ", ") {
			st.Value.List = append(st.Value.List, valued(t, part))
		}
	default:
		st.Value = valued(t, f.value)
		if f.upper != "" {
			st.Upper = valued(t, f.upper)
		}
	}
	return st
}

func valued(t *testing.T, s string) solver.Value {
	t.Helper()
	if isLength(s) {
		r, ok := length(s)
		require.True(t, ok, s)
		unit := solver.Inch
		if strings.HasSuffix(s, "mm") {
			unit = solver.Millimeter
		}
		return solver.Value{Num: r, Unit: unit}
	}
	if r, ok := mixed(s); ok {
		if strings.Contains(s, ".") {
			return solver.Value{Num: r, Unit: solver.Currency}
		}
		return solver.Value{Num: r}
	}
	return solver.Value{Word: s}
}

func named(s string) solver.Name {
	_, q, part := thingOf(s)
	words := strings.Fields(part)
	n := solver.Name{Quantity: q}
	if len(words) == 2 {
		k := int(words[1][0] - '0')
		switch words[0] {
		case "bay":
			n.Bay = k
		case "opening":
			n.Opening = k
		case "rail":
			n.Rail = k
		case "post":
			n.Post = k
		}
		return n
	}
	w := strings.Fields(s)
	switch {
	case q != "":
		return n
	case w[0] == "measured" && len(w) == 4:
		return solver.Name{Quantity: solver.Measured, Bay: int(w[2][0] - '0'), At: w[3]}
	case w[0] == "measured":
		return solver.Name{Quantity: solver.Measured, Bay: int(w[2][0] - '0'), Rail: int(w[4][0] - '0')}
	case w[0] == "rail":
		return solver.Name{Quantity: solver.RailTop, Rail: int(w[1][0] - '0')}
	case w[0] == "post":
		return solver.Name{Quantity: solver.PostFromLeft, Post: int(w[1][0] - '0')}
	}
	return solver.Name{Quantity: solver.Quantity(s)}
}

// conversation is what stands, said line by line; a line tries, asks or checks as its first words say.
type conversation struct {
	t    *testing.T
	book solver.Book
	base *solver.Answer
}

func talk(t *testing.T) *conversation {
	c := &conversation{t: t}
	c.base = solver.Solve(c.book)
	return c
}

func (c *conversation) statements(s string) (list []solver.Statement) {
	for _, part := range strings.Split(s, "; ") {
		list = append(list, stated(c.t, part))
	}
	return list
}

// line answers one line; it is not worded yet.
func (c *conversation) line(s string) *solver.Answer {
	c.t.Helper()
	a := c.answer(s)
	copied := *a
	copied.Said = s
	copied.Metric = c.book.Metric()
	return &copied
}

func (c *conversation) answer(s string) *solver.Answer {
	for _, verb := range []string{"what if ", "why not ", "check ", "ask ", "why ", "tolerance = "} {
		rest, ok := strings.CutPrefix(s, verb)
		if !ok {
			continue
		}
		switch verb {
		case "what if ":
			a, _ := solver.Try(c.book, c.base, c.statements(rest))
			return a
		case "why not ":
			return solver.WhyNot(c.book, c.base, c.statements(rest))
		case "check ":
			return solver.Hold(c.book, c.base, c.statements(rest))
		case "tolerance = ":
			return solver.Drift(c.book, c.base, exact.Must(rest))
		}
		topic, name := rest, (*solver.Name)(nil)
		if _, q, _ := thingOf(rest); q != "" {
			n := named(rest)
			topic, name = "", &n
		}
		if verb == "why " {
			full := strings.HasSuffix(topic, " in full")
			return solver.Why(c.book, c.base, name, strings.TrimSuffix(topic, " in full"), full)
		}
		return solver.Ask(c.book, c.base, topic, name)
	}
	list := c.statements(s)
	book, settled, told, err := c.book.WithAll(list, c.base.Layout)
	require.NoError(c.t, err, s)
	c.book, c.base = book, solver.Solve(book)
	a := *c.base
	a.To = solver.Reply{Kind: "state", Statements: settled}
	a.Replaced = told
	return &a
}

// conversations are walls of every kind, said in normal forms; "//" starts a new one.
var conversations = []string{
	"wall height = 40 in; gap = 2-1/2 in",
	"what if gap = 2 in",
	"what if rails = 5; gap = 3 in",
	"span = 149 in; opening = 30 in; opening side = right",
	"what if added posts = 2",
	"ask options", "ask marks", "ask posts", "ask cuts", "ask hardware", "ask shopping", "ask steps", "ask cautions", "ask anchors",
	"ask finish", "ask spacer", "ask story pole", "ask shrinkage", "ask rails", "ask gap", "ask span", "ask opening side",
	"ask rail size", "ask stiffeners", "ask post height", "ask bay", "ask layout", "ask drawing",
	"why rails", "why gap", "why bay", "why cuts", "why that in full", "why cuts in full", "why finish in full", "why not rails = 6", "why not gap = 2 in",
	"tolerance = 1/16",
	"measured bay 1 bottom = 115-1/2 in; measured bay 1 top = 115-3/16 in", "ask cuts", "fit = 1/8 in", "ask cuts", "same length", "ask cuts",
	"check rails = 5; gap = 2-3/8 in", "check gap = 2-1/2 in", "check bay = 119 in", "check marks = 8-1/2 in, 16-1/2 in", "check marks = 8 in, 16 in",
	"//",
	"wall height = 50 in; rail size = 2x6; rails = 7; bottom gap = gap", "check gap = 1-11/12 in", "why that in full", "rails = 6",
	"why not rails = 7; gap = 1-5/8 in", "what if rail size = 2x4; rails = 8", "why gap", "ask marks", "ask spacer", "ask options",
	"//", "wall height = 48 in; gap = 1-1/2 in",
	"//", "wall height = 47 in; gap = 2-1/2 in; bottom gap = gap", "why that in full",
	"//", "wall height = 48 in; rails = 5; gap <= 2-1/4 in; bottom gap <= 3 in",
	"//", "rails = 8; wall height = 43 in",
	"//", "span = 144 in; opening = 150 in",
	"//", "span = 144 in; opening = 30 in; added posts = 1; bay <= 96 in",
	"//", "span = 400 in; bays = 1; stock = 96 in, 192 in",
	"//", "drop = 40 in", "wall height = 30 in; rails = 4", "wall height = 48 in; gap = 4-1/2 in; bottom gap = gap", "ask cautions",
	"//", "pool = yes", "wall height = 40 in",
	"//", "wall height = 48 in; rails = 6; bottom gap = 1/2 in",
	"//", "opening >= 40 in; opening <= 30 in; span = 144 in",
	"//", "gap = 2-1/2 in; wall height = 47 in; rails = 7; bottom gap = gap; span = 144 in; opening = 120 in; bays = 2",
	"//", "opening >= 20 * gap; gap = 2 in; opening = 30 in; span = 100 in",
	"//", "wall height = 48 in; post height = 47 in; span = 144 in; opening = 36 in",
	"//", "span = 144 in; stiffener spacing <= 24 in; stiffeners = 2", "ask stiffener spacing", "centers = 150 in", "bays = 3", "post 1 from left = 40 in",
	"//", "wall height = 48 in; gap = 2-1/2 in; floor at right = -1-1/2 in; span = 200 in", "ask marks", "ask cuts", "what if tape = 1/8 in",
	"//", "units = metric", "wall height = 1219.2 mm; gap = 63.5 mm; span = 3657.6 mm; opening = 762 mm; post size = 90x90", "ask marks", "ask cuts",
	"ask options", "ask posts", "ask steps", "ask finish", "ask anchors", "why finish in full", "why not rails = 8", "what if gap = 50 mm", "check gap = 60 mm",
	"//", "rails = 6", "gap <= 3 in", "smallest gap", "wall height = 48 in", "most rails", "wall height = 4 in",
	"//", "wall height = 47-3/8 in; rails = 6; even gaps", "why gap", "ask gap", "rail 3 top = 24 in",
	"//", "slab thickness = 4 in; edge distance = 3 in; span = 120 in; opening = 36 in; wall height = 40 in", "ask anchors",
	"slab thickness = 6 in; edge distance = 12 in", "ask anchors", "base height = 1 in", "ask cuts",
	"//", "gap = 2 in", "kerf = 1/8 in; budget = 350.00", "wall height in 40 in..50 in", "gap ~ 2-1/4 in", "ask options",
	"//", "wall height = 200 in; rails = 20; gap < 4 in; gap > 3 in", "span = 1200 in", "ask options", "ask posts",
}

// eachAnswer words every answer of the conversations.
func eachAnswer(t *testing.T, o Options, see func(t *testing.T, a *solver.Answer)) {
	t.Helper()
	c := talk(t)
	for _, s := range conversations {
		if s == "//" {
			c = talk(t)
			continue
		}
		a := c.line(s)
		Say(a, o)
		see(t, a)
	}
}
