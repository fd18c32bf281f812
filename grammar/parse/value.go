package parse

import (
	"strconv"
	"strings"

	"saywright/grammar/chunk"
	"saywright/solver"
	"saywright/solver/exact"
)

func parseFalls(wall, s string) (solver.Statement, error) {
	by, run, ok := strings.Cut(s, " per ")
	v, err1 := parseAmount(by)
	u, err2 := parseAmount(run)
	if !ok || err1 != nil || err2 != nil {
		return solver.Statement{}, want("a fall such as 1/8 in per 12 in", s)
	}
	return solver.Statement{Name: solver.Name{Wall: wall, Quantity: solver.FloorFalls}, Value: v, Upper: u}, nil
}

func parseLeans(wall, post, s string) (solver.Statement, error) {
	st := solver.Statement{Name: solver.Name{Wall: wall, Quantity: solver.PostLeans}}
	by, run, ok := strings.Cut(s, " in ")
	for _, side := range []string{"left", "right"} {
		if v, found := strings.CutSuffix(by+" in", " in"); found && post == side+" post" {
			st.Name.At, by = side, v
		}
	}
	if n, err := strconv.Atoi(strings.TrimPrefix(post, "post ")); err == nil {
		st.Name.Post = n
	}
	if ok && strings.Contains(run, " in ") { // "3/8 in right in 48 in": the first " in " was the unit
		way, u, _ := strings.Cut(run, " in ")
		by, st.Value.Word, run = by+" in", way, u
	} else if i := strings.LastIndex(by, " "); ok && i > 0 { // "9 mm right in 1200 mm"
		by, st.Value.Word = by[:i], by[i+1:]
	}
	v, err1 := parseAmount(by)
	u, err2 := parseAmount(run)
	way := st.Value.Word
	if err1 != nil || err2 != nil || way != "left" && way != "right" || st.Name.At == "" && st.Name.Post == 0 {
		return solver.Statement{}, want("a lean such as left post leans 3/8 in right in 48 in", post+" leans "+s)
	}
	v.Word = way
	st.Value, st.Upper = v, u
	return st, nil
}

func parseValue(n solver.Name, s string) (solver.Value, error) {
	switch n.Quantity {
	case solver.Measured, solver.FixedRail, solver.Short, solver.CutOf, solver.Tolerance:
		return parseAmount(s)
	case solver.Price, solver.CostOf:
		return parseMoney(s)
	case solver.Have, solver.Extra, solver.Boards:
		return parseCount(s)
	}
	switch solver.KindOf(n.Quantity) {
	case solver.Size:
		if !chunk.IsSize(s) {
			return solver.Value{}, want("a lumber size such as 2x6", s)
		}
		return solver.Value{Word: s}, nil
	case solver.Side:
		if s != "left" && s != "right" && s != "middle" {
			return solver.Value{}, want("left, right or middle", s)
		}
		return solver.Value{Word: s}, nil
	case solver.Word:
		return solver.Value{Word: s}, nil
	case solver.Money:
		return parseMoney(s)
	case solver.Percent:
		if r, ok := strings.CutSuffix(s, "%"); ok {
			v, err := parseRat(r)
			return solver.Value{Num: v, Unit: solver.PercentOf}, err
		}
		return parseCount(s)
	}
	return parseRelative(s)
}

// parseRelative reads an amount, or one that leans on another quantity: "2 * gap", "wall height + 2 in".
func parseRelative(s string) (solver.Value, error) {
	if v, err := parseAmount(s); err == nil {
		return v, nil
	}
	v := solver.Value{}
	name := s
	if f, rest, ok := strings.Cut(s, " * "); ok {
		r, err := parseRat(f)
		if err != nil {
			return v, err
		}
		v.Mult, name = &r, rest
	}
	for _, sign := range []string{" + ", " - "} {
		if n, add, ok := strings.Cut(name, sign); ok {
			a, err := parseAmount(add)
			if err != nil {
				return v, err
			}
			if sign == " - " {
				a.Num = a.Num.Neg()
			}
			v.Num, v.Unit, name = a.Num, a.Unit, n
		}
	}
	n, err := parseName(name)
	if err != nil {
		return v, want("a value such as 2-1/2 in", s)
	}
	v.Of = &n
	return v, nil
}

func parseAmount(s string) (solver.Value, error) {
	unit, num := solver.None, s
	if n, ok := strings.CutSuffix(s, " in"); ok {
		unit, num = solver.Inch, n
	} else if n, ok := strings.CutSuffix(s, " mm"); ok {
		unit, num = solver.Millimeter, n
	}
	r, err := parseRat(num)
	if unit == solver.Millimeter {
		r = r.Div(solver.PerInch)
	}
	return solver.Value{Num: r, Unit: unit}, err
}

func parseCount(s string) (solver.Value, error) {
	r, err := parseRat(s)
	if err == nil && (!r.IsInt() || r.Sign() < 0) {
		err = want("a whole number", s)
	}
	return solver.Value{Num: r}, err
}

func parseMoney(s string) (solver.Value, error) {
	r, err := parseRat(s)
	return solver.Value{Num: r, Unit: solver.Currency}, err
}

// parseRat reads "5", "3/8", "2-1/2", "-1-1/2", "2.37".
func parseRat(s string) (exact.Rat, error) {
	if len(s) > 400 {
		return exact.Rat{}, want("a shorter number", s[:20]+"…")
	}
	body, neg := strings.CutPrefix(s, "-")
	whole, frac, mixed := strings.Cut(body, "-")
	for _, p := range []string{whole, frac} {
		if strings.Trim(p, "0123456789./") != "" {
			return exact.Rat{}, want("a number", s)
		}
	}
	r, err := exact.Parse(whole)
	if err == nil && mixed {
		var f exact.Rat
		if f, err = exact.Parse(frac); err == nil {
			r = r.Add(f)
		}
	}
	if err != nil {
		return exact.Rat{}, want("a number", s)
	}
	if neg {
		r = r.Neg()
	}
	return r, nil
}
