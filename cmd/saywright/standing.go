package main

import (
	"slices"

	"saywright/solver"
)

// standing is what stands in a conversation: a book for each wall spoken of, and which wall is at hand.
// It never changes; each step returns a new one. The zero value is the wall without a name, and nothing said of it.
type standing struct {
	books []solver.Book // in the order first spoken of
	hand  string        // name of the wall at hand
}

// book returns the book of a wall; that of a wall not spoken of yet holds only the units.
func (s standing) book(wall string) solver.Book {
	if i := s.at(wall); i >= 0 {
		return s.books[i]
	}
	b := solver.Book{Wall: wall}
	if u, ok := s.units(); ok {
		b, _, _, _ = b.With(u, nil)
	}
	return b
}

func (s standing) at(wall string) int {
	return slices.IndexFunc(s.books, func(b solver.Book) bool { return b.Wall == wall })
}

// with puts a book in the place of that of the same wall, and takes that wall to hand.
func (s standing) with(b solver.Book) standing {
	next := standing{books: slices.Clone(s.books), hand: b.Wall}
	if i := s.at(b.Wall); i >= 0 {
		next.books[i] = b
	} else {
		next.books = append(next.books, b)
	}
	return next
}

// sayOfAll says a statement of every wall: units are the person's, not the wall's.
func (s standing) sayOfAll(u solver.Statement) standing {
	next := s.with(s.book(s.hand))
	for i, b := range next.books {
		next.books[i], _, _, _ = b.With(u, nil)
	}
	return next
}

func (s standing) units() (solver.Statement, bool) {
	for _, b := range s.books {
		for _, st := range b.Standing() {
			if st.Name.Quantity == solver.Units {
				return st, true
			}
		}
	}
	return solver.Statement{}, false
}

func (s standing) metric() bool {
	u, ok := s.units()
	return ok && u.Value.Word == "metric"
}

// metered reports whether lengths stand, and each of them was said in a metric unit.
func (s standing) metered() bool {
	found := false
	for _, b := range s.books {
		for _, st := range b.Standing() {
			switch st.Value.Unit {
			case solver.Inch:
				return false
			case solver.Millimeter:
				found = true
			}
		}
	}
	return found
}

// inMillimeters reports whether lengths are shown in millimeters: units were said, or nothing of them and every length in metric ones.
func (s standing) inMillimeters() bool {
	if _, said := s.units(); said {
		return s.metric()
	}
	return s.metered()
}

func (s standing) empty() bool {
	return !slices.ContainsFunc(s.books, func(b solver.Book) bool { return !b.Empty() })
}

// walls lists the names of the walls that have one.
func (s standing) walls() []string {
	var names []string
	for _, b := range s.books {
		if b.Wall != "" {
			names = append(names, b.Wall)
		}
	}
	return names
}

// forms writes one book as normal forms: what stands, then which limits were set aside.
func forms(b solver.Book) []string {
	var list []string
	for _, st := range b.Standing() {
		list = append(list, st.String())
	}
	for _, limit := range b.Aside() {
		list = append(list, "set aside "+limit)
	}
	return list
}

// same reports whether nothing differs between two standings.
func (s standing) same(o standing) bool {
	return s.hand == o.hand && slices.EqualFunc(s.books, o.books, func(a, b solver.Book) bool {
		return a.Wall == b.Wall && slices.Equal(forms(a), forms(b))
	})
}
