package exact

import "testing"

// FuzzSolve builds a system from bytes and holds every answer against elimination and the checker.
func FuzzSolve(f *testing.F) {
	f.Add([]byte{2, 0, 1, 1, 10, 3, 1, 0, 250, 4, 0, 1, 5})
	f.Add([]byte{1, 3, 1, 1, 4, 4, 1, 1, 4})
	f.Add([]byte{3, 2, 1, 255, 0, 0, 2, 0, 1, 255, 0, 2, 255, 0, 1, 1})
	f.Add([]byte{})
	f.Fuzz(func(t *testing.T, data []byte) {
		s, obj := systemOf(data)
		agree(t, s, obj)
	})
}

// systemOf reads: unknowns; then row by row relation, factors, right side in halves; the first factors are the objective too.
func systemOf(data []byte) (*System, []Term) {
	next := func() int {
		if len(data) == 0 {
			return 0
		}
		b := data[0]
		data = data[1:]
		return int(int8(b))
	}
	s := &System{Vars: 1 + next()&1 + next()&1}
	var obj []Term
	for v := range s.Vars {
		obj = append(obj, Term{v, Int(next())})
	}
	for i := 0; i < 7 && len(data) > 0; i++ {
		r := Row{Rel: Rel(next() & 7 % 5), Rule: i - 1}
		for v := range s.Vars {
			if c := next(); c != 0 {
				r.Terms = append(r.Terms, Term{v, New(int64(c), int64(1+6*(c&1)))})
			}
		}
		r.RHS = New(int64(next()), 2)
		s.Rows = append(s.Rows, r)
	}
	return s, obj
}
