package exact

// Slide lets the right side of a row move: by By for each unit of a distance that all slides share.
type Slide struct {
	Row int
	By  Rat
}

// Slid returns the system with one unknown more, the distance t = unknown s.Vars, at least 0 by a background row at the
// end, and the right sides of the given rows moved by t·By. The least t says how far the rules must give so that all can
// hold, with the proof that no less will do; it is open where they must give more than that. A relation that is
// mended from either side, EQ, is asked twice, with By of either sign.
func Slid(s *System, slides ...Slide) *System {
	t := s.Vars
	out := &System{Vars: t + 1, Rows: make([]Row, len(s.Rows), len(s.Rows)+1)}
	copy(out.Rows, s.Rows)
	for _, m := range slides {
		row := &out.Rows[m.Row]
		terms := make([]Term, len(row.Terms), len(row.Terms)+1)
		copy(terms, row.Terms)
		row.Terms = append(terms, Term{t, m.By.Neg()})
	}
	out.Rows = append(out.Rows, Row{Terms: []Term{{t, Int(1)}}, Rel: GE, Rule: Background})
	return out
}
