package parse

import (
	"strings"
	"unicode/utf8"

	"saywright/grammar/act"
	"saywright/grammar/lex"
	"saywright/grammar/measure"
	"saywright/solver"
)

// A line may be said in normal form already.

// ReadNormal takes a line that is in normal form already, where its values can be meant.
func ReadNormal(line string, c act.Context) ([]act.Act, bool) {
	acts, err := Parse(strings.TrimSpace(line))
	if err != nil {
		return nil, false
	}
	s := Speech{C: c, Metric: c.Metric}
	for i := range acts {
		a := &acts[i]
		if a.Kind == act.Why && a.Topic == "that" && !c.Answered && i == 0 {
			return nil, false
		}
		if len(a.Words) > 0 && (a.Kind != act.DrawTo && a.Kind != act.PrintTo || strings.ContainsAny(a.Words[0], " !?") || strings.HasSuffix(a.Words[0], ".")) {
			return nil, false // a name in somebody's own words is read with care
		}
		if a.Name != nil && a.Name.Item != "" && !goodsNamed(a.Name.Item) {
			return nil, false // "why have you put the post there"
		}
		a.End = utf8.RuneCountInString(line)
		for _, st := range a.Statements {
			if strings.Contains(st.Name.Wall, ",") || strings.Count(st.Name.Wall, " ") > 2 {
				return nil, false // "oh, one more thing: fewest posts" names no wall
			}
			if st.Op == solver.Each && st.Name.Quantity != solver.Have && st.Name.Quantity != solver.Extra && st.Name.Quantity != solver.Boards {
				return nil, false // "opening 2 x gap" counts no pieces
			}
			if st.Name.Quantity == solver.PostLeans && st.Upper.Unit == solver.None {
				return nil, false // "leans 3/8 in right in 48" lacks a unit
			}
			if loosely(st) && Normal(acts) != strings.TrimSpace(line) {
				return nil, false // `extra 4x4 40" x 2` is read with care
			}
			if st.Name.Item != "" && (st.Name.Quantity == solver.Boards || st.Name.Quantity == solver.Extra) && !goodsNamed(st.Name.Item) {
				return nil, false // "boards are 45 x 140" tells of a size
			}
			if solver.KindOf(st.Name.Quantity) == solver.Length && st.Op != solver.Times && st.Value.Of == nil && st.Value.Unit == solver.None && len(st.Value.List) == 0 && a.Kind != act.Forget {
				return nil, false // "bay 1 = 58" lacks its unit
			}
			m := made{st: st, kind: solver.KindOf(st.Name.Quantity)}
			if m.kind == 0 {
				m.kind = kindOfValue(st.Value)
			}
			if a.Kind != act.Forget && s.doubt(m, said(st.Value), said(st.Upper)) != nil {
				return nil, false
			}
		}
	}
	return acts, true
}

// said is a value of a normal form as an amount: it has its unit.
func said(v solver.Value) measure.Amount {
	a := measure.Amount{Number: measure.Number{Val: v.Num}}
	switch v.Unit {
	case solver.Inch:
		a.Unit, a.Per = measure.Inches, lex.OneRat
	case solver.Millimeter:
		a.Unit, a.Per = measure.Metric, measure.Mm(1)
	}
	return a
}

// loosely reports whether a statement of a normal form may hold lengths that are not written as a normal form writes them.
func loosely(st solver.Statement) bool {
	switch st.Name.Quantity {
	case solver.Have, solver.Extra, solver.Price, solver.PostLeans, solver.FloorFalls, solver.Boards:
		return true
	}
	return false
}
