package parse

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/chunk"
	"saywright/grammar/lexicon"
	"saywright/solver"
)

// goals are statements that stand by their name alone.
var goals = []string{"equal bays", "same length", "even gaps", "smallest gap", "largest gap", "smallest opening", "largest opening",
	"smallest bottom gap", "largest bottom gap", "lowest wall", "highest wall",
	"fewest rails", "most rails", "fewest posts", "fewest stiffeners", "fewest bays", "cheapest", "least waste"}

var plainKinds = []act.Kind{act.TakeThat, act.Undo, act.Redo, act.StartOver, act.Recap, act.Quit, act.Next, act.ShowAll}

// Parse reads one line of normal forms: one act, or several put apart by semicolons. It takes exactly what
// Act.String writes, at any size: whether a value is plausible is for Read to ask.
// The error says what was got and what was wanted.
func Parse(normal string) ([]act.Act, error) {
	var acts []act.Act
	for _, part := range strings.Split(normal, ";") {
		a, err := parseAct(strings.TrimSpace(part))
		if err != nil {
			return nil, err
		}
		acts = append(acts, a)
	}
	return acts, nil
}

func parseAct(s string) (act.Act, error) {
	for _, k := range plainKinds {
		if s == string(k) {
			return act.Act{Kind: k}, nil
		}
	}
	if rest, ok := strings.CutPrefix(s, "forget all but "); ok {
		return parseKeep(rest)
	}
	for _, k := range []act.Kind{act.WhatIf, act.WhyNot, act.Check} {
		if rest, ok := strings.CutPrefix(s, string(k)+" "); ok {
			list, err := parseStatements(rest)
			return act.Act{Kind: k, Statements: list}, err
		}
	}
	for _, k := range []act.Kind{act.Save, act.Open, act.Compare, act.SameAs, act.DrawTo, act.PrintTo} {
		if rest, ok := strings.CutPrefix(s, string(k)+" "); ok {
			return parseWords(k, rest)
		}
	}
	for _, k := range []act.Kind{act.Ask, act.Why, act.Teach, act.SetAside, act.HelpMe, act.Forget} {
		if rest, ok := strings.CutPrefix(s, string(k)+" "); ok {
			return parseOf(k, rest)
		}
	}
	if s == string(act.HelpMe) {
		return act.Act{Kind: act.HelpMe}, nil
	}
	if rest, ok := strings.CutPrefix(s, "take "); ok {
		n, err := strconv.Atoi(rest)
		if err != nil || n < 1 || strconv.Itoa(n) != rest {
			return act.Act{}, want("the number of a way out", rest)
		}
		return act.Act{Kind: act.Take, N: n}, nil
	}
	if rest, ok := strings.CutPrefix(s, "figure "); ok {
		return parseFigures(rest)
	}
	st, err := parseStatement(s)
	if err != nil {
		return act.Act{}, err
	}
	if st.Name.Quantity == solver.Tolerance {
		return act.Act{Kind: act.Tolerance, Statements: []solver.Statement{st}}, nil
	}
	return act.Act{Kind: act.State, Statements: []solver.Statement{st}}, nil
}

func want(what, got string) error { return fmt.Errorf("got %q, want %s", got, what) }

func parseKeep(s string) (act.Act, error) {
	a := act.Act{Kind: act.ForgetAllBut}
	for _, part := range strings.Split(s, ", ") {
		n, err := parseName(part)
		if err != nil {
			return act.Act{}, err
		}
		a.Names = append(a.Names, n)
	}
	return a, nil
}

func parseWords(k act.Kind, s string) (act.Act, error) {
	words := strings.Split(s, ", ")
	for _, w := range words {
		if strings.TrimSpace(w) == "" {
			return act.Act{}, want("a name", s)
		}
	}
	if k == act.Compare && len(words) != 2 || k != act.Compare && len(words) != 1 {
		return act.Act{}, want("a name", s)
	}
	return act.Act{Kind: k, Words: words}, nil
}

func parseOf(k act.Kind, s string) (act.Act, error) {
	a := act.Act{Kind: k}
	if rest, ok := strings.CutSuffix(s, " as csv"); ok && k == act.Ask {
		a.As, s = "csv", rest
	}
	if wall, rest := cutWall(s); wall != "" && (k == act.Ask || k == act.Why) && slices.Contains(lexicon.Tables, rest) {
		a.Wall, s = wall, rest
	}
	for _, t := range lexicon.Tables {
		if s == t && (k == act.Ask || k == act.Why || k == act.HelpMe || k == act.Teach) {
			a.Topic = s
			return a, nil
		}
	}
	if s == "that" && k == act.Why || s == "guard" && k == act.SetAside || k == act.HelpMe && isTopic(s) {
		a.Topic = s
		return a, nil
	}
	if k == act.SetAside {
		return act.Act{}, want("guard", s)
	}
	if st, err := parseStatement(s); err == nil && k == act.Forget {
		a.Statements = []solver.Statement{st}
		return a, nil
	}
	n, err := parseName(s)
	if err != nil {
		return act.Act{}, err
	}
	a.Name = &n
	return a, nil
}

func parseFigures(s string) (act.Act, error) {
	a := act.Act{Kind: act.Figure}
	for _, part := range strings.Split(s, ", ") {
		v, err := parseAmount(part)
		if err != nil {
			return act.Act{}, err
		}
		a.Figures = append(a.Figures, v)
	}
	return a, nil
}

// parseStatements reads statements put apart by commas; a part without a relation continues the list before it.
func parseStatements(s string) ([]solver.Statement, error) {
	var list []solver.Statement
	for _, part := range strings.Split(s, ", ") {
		st, err := parseStatement(part)
		if err == nil {
			list = append(list, st)
			continue
		}
		v, bad := parseAmount(part)
		if bad != nil || len(list) == 0 || list[len(list)-1].Value.List == nil {
			return nil, err
		}
		last := &list[len(list)-1]
		last.Value.List = append(last.Value.List, v)
	}
	return list, nil
}

// ops are tried in this order: the longer sign before the shorter that it begins with.
var ops = []solver.Op{solver.Plus, solver.Minus, solver.Times, solver.LE, solver.GE, solver.Eq, solver.LT, solver.GT, solver.Near, solver.In, solver.Each}

func parseStatement(s string) (solver.Statement, error) {
	wall, rest := cutWall(s)
	for _, g := range goals {
		if rest == g {
			st := solver.Statement{Name: solver.Name{Wall: wall, Quantity: solver.Goal}, Value: solver.Value{Word: g}}
			return st, nil
		}
	}
	if f, ok := strings.CutPrefix(rest, "floor falls "); ok {
		return parseFalls(wall, f)
	}
	if i := strings.Index(rest, " leans "); i > 0 {
		return parseLeans(wall, rest[:i], rest[i+len(" leans "):])
	}
	at, op := -1, solver.Op("")
	for _, o := range ops {
		if o == solver.In && !strings.Contains(rest, "..") {
			continue // the unit
		}
		if i := strings.Index(rest, " "+string(o)+" "); i > 0 && (at < 0 || i < at) {
			at, op = i, o
		}
	}
	if at < 0 {
		return solver.Statement{}, want("a statement such as gap = 2 in", s)
	}
	name, err := parseName(rest[:at])
	if err != nil {
		return solver.Statement{}, err
	}
	name.Wall = wall
	st := solver.Statement{Name: name, Op: op}
	return st, fillValue(&st, rest[at+len(op)+2:])
}

func fillValue(st *solver.Statement, s string) (err error) {
	if st.Op == solver.In {
		lo, hi, ok := strings.Cut(s, "..")
		if !ok {
			return want("two ends, such as 2 in..3 in", s)
		}
		if st.Value, err = parseValue(st.Name, lo); err == nil {
			st.Upper, err = parseValue(st.Name, hi)
		}
		return err
	}
	if st.Op == solver.Times {
		r, err := parseRat(s)
		st.Value = solver.Value{Num: r}
		return err
	}
	if q := st.Name.Quantity; q == solver.Stock || q == solver.MarksOf {
		for _, part := range strings.Split(s, ", ") {
			v, err := parseAmount(part)
			if err != nil {
				return err
			}
			st.Value.List = append(st.Value.List, v)
		}
		return nil
	}
	st.Value, err = parseValue(st.Name, s)
	return err
}

func cutWall(s string) (wall, rest string) {
	if i := strings.Index(s, ": "); i > 0 && !strings.ContainsAny(s[:i], "=<>~") { // "gap = north wall: gap" names no wall in front
		return s[:i], s[i+2:]
	}
	return "", s
}

// goodsNamed reports whether words are the name of what is bought, as a normal form writes it.
func goodsNamed(item string) bool {
	switch item {
	case "rails", "bracket", "post base", "post cap", "anchor", "screws":
		return true
	}
	return chunk.IsSize(item)
}

// Normal writes acts in their normal forms, put apart by semicolons.
func Normal(acts []act.Act) string {
	parts := make([]string, len(acts))
	for i, a := range acts {
		parts[i] = a.String()
	}
	return strings.Join(parts, "; ")
}
