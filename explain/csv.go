package explain

import (
	"encoding/csv"
	"strconv"
	"strings"

	"saywright/explain/figure"
	"saywright/solver"
	"saywright/solver/exact"
)

// CSV writes the table of a topic (cuts, shopping, plan, cost, hardware, marks, steps, options, story pole) for a
// spreadsheet: RFC 4180, a head line first, lengths as a person reads them with their unit in the head. It is "" where
// the answer has no such table.
func CSV(a *solver.Answer, topic string) string {
	s := figure.Of(a)
	switch topic {
	case "cuts":
		return lines(cutRows(a, s))
	case "shopping", "cost", "hardware":
		return lines(buyRows(a, s))
	case "plan":
		return lines(planRows(a, s))
	case "marks", "story pole":
		return lines(markRows(a, s))
	case "steps":
		return lines(stepRows(a))
	case "options":
		return lines(optionRows(a, s))
	}
	return ""
}

// lines writes rows; a table of a head alone is none.
func lines(rows [][]string) string {
	if len(rows) < 2 {
		return ""
	}
	var b strings.Builder
	w := csv.NewWriter(&b)
	for _, r := range rows {
		for i := range r {
			r[i] = harmless(r[i])
		}
		if err := w.Write(r); err != nil {
			return ""
		}
	}
	w.Flush()
	return strings.TrimRight(b.String(), "\n")
}

// harmless keeps a spreadsheet from taking a person's own words for a formula.
func harmless(s string) string {
	s = quoted(s)
	if s != "" && strings.ContainsRune("=+@", rune(s[0])) || strings.HasPrefix(s, "-") && len(s) > 1 && (s[1] < '0' || s[1] > '9') {
		return "'" + s
	}
	return s
}

func cutRows(a *solver.Answer, s figure.Style) [][]string {
	rows := [][]string{{"wall", "piece", "bay", "rail", "post", "size", "length " + s.Unit(), "count", "ends"}}
	for _, c := range a.Cuts {
		rows = append(rows, []string{c.Wall, c.Piece, orNone(c.Bay), orNone(c.Rail), orNone(c.Post), c.Size, s.Length(c.Length),
			strconv.Itoa(c.Count), c.Ends})
	}
	return rows
}

func orNone(n int) string {
	if n == 0 {
		return ""
	}
	return strconv.Itoa(n)
}

func buyRows(a *solver.Answer, s figure.Style) [][]string {
	rows := [][]string{{"item", "length " + s.Unit(), "count", "each", "amount"}}
	for _, b := range a.Shopping {
		length, each, amount := "", "", ""
		if b.Length != nil {
			length = s.Length(*b.Length)
		}
		if b.Each != nil {
			each = solver.Cents(b.Each.Rat)
		}
		if b.Amount != nil {
			amount = solver.Cents(b.Amount.Rat)
		}
		rows = append(rows, []string{b.Item, length, strconv.Itoa(b.Count), each, amount})
	}
	return rows
}

func planRows(a *solver.Answer, s figure.Style) [][]string {
	rows := [][]string{{"size", "board " + s.Unit(), "times", "pieces " + s.Unit(), "left " + s.Unit(), "have"}}
	for _, b := range a.Plan {
		var pieces []string
		for _, p := range b.Pieces {
			pieces = append(pieces, s.Length(p))
		}
		have := "no"
		if b.Have {
			have = "yes"
		}
		rows = append(rows, []string{b.Size, s.Length(b.Board), strconv.Itoa(b.Times), strings.Join(pieces, "; "), s.Length(b.Left), have})
	}
	return rows
}

func markRows(a *solver.Answer, s figure.Style) [][]string {
	rows := [][]string{{"post", "rail", "underside " + s.Unit(), "top " + s.Unit(), "bracket hole " + s.Unit()}}
	near := func(r exact.Rat) string {
		text, _ := s.Near(r)
		return text
	}
	for _, p := range a.Marks {
		for _, r := range p.Rows {
			rows = append(rows, []string{p.Post, strconv.Itoa(r.Rail), near(r.Underside), near(r.Top), near(r.Hole)})
		}
	}
	return rows
}

func stepRows(a *solver.Answer) [][]string {
	rows := [][]string{{"step", "do", "caution"}}
	for i, st := range a.Steps {
		rows = append(rows, []string{strconv.Itoa(i + 1), st.Do, st.Caution})
	}
	return rows
}

func optionRows(a *solver.Answer, s figure.Style) [][]string {
	rows := [][]string{{"rails", "posts", "bays", "gap from", "gap to", "underneath from", "underneath to", "wall from", "wall to",
		"bay from", "bay to", "opening from", "opening to"}}
	if a.Options == nil {
		return rows
	}
	ends := func(r solver.Range) []string { return []string{endText(r[0], s), endText(r[1], s)} }
	for _, u := range a.Options.Up {
		row := []string{strconv.Itoa(u.Rails), "", ""}
		row = append(append(append(row, ends(u.Gap)...), ends(u.BottomGap)...), ends(u.WallHeight)...)
		rows = append(rows, append(row, "", "", "", ""))
	}
	for _, al := range a.Options.Along {
		row := append([]string{"", strconv.Itoa(al.AddedPosts), strconv.Itoa(al.Bays), "", "", "", "", "", ""}, ends(al.Bay)...)
		open := []string{"", ""}
		if al.Opening != nil {
			open = ends(*al.Opening)
		}
		rows = append(rows, append(row, open...))
	}
	return rows
}

// endText writes an end of a range; one that is not reached is led by "over" or "under".
func endText(e solver.End, s figure.Style) string {
	switch {
	case e.None:
		return ""
	case e.Open && e.Lower:
		return "over " + s.Length(e.Val)
	case e.Open:
		return "under " + s.Length(e.Val)
	}
	return s.Length(e.Val)
}
