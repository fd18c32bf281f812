package stock

import (
	"fmt"

	"saywright/solver/exact"
)

// BadJob says what in a job is no figure to work with: a negative length, a count below 0, too many pieces.
type BadJob struct {
	What  string // "kerf", "trim", "board length", "board price", "board count", "piece length", "piece count", "pieces"
	Index int    // of the piece or board in its list, 0 otherwise
	Got   exact.Rat
}

func (e *BadJob) Error() string {
	want := "0 or more"
	switch e.What {
	case "board length", "piece length":
		want = "more than 0"
	case "pieces":
		want = fmt.Sprintf("%d at most", mostCount)
	}
	return fmt.Sprintf("%s: got %s, want %s", e.What, e.Got, want)
}

// NoBoards says that there is nothing to cut from: no board on sale (with a price, where any has one) or on hand.
type NoBoards struct{}

func (e *NoBoards) Error() string {
	return "no board on sale and none on hand: want one length at least"
}

// TooLong says that a piece comes out of no board. Piece is its index in Job.Pieces; of several, the longest. Longest
// is the longest board there is, 0 without any, and Needs the shortest that would do: the piece and the trim. Unpriced is
// a board on sale that would do and is not bought, as it has no price and others have one.
type TooLong struct {
	Piece    int
	Name     string
	Length   exact.Rat
	Longest  exact.Rat
	Needs    exact.Rat
	Unpriced *exact.Rat
}

func (e *TooLong) Error() string {
	s := fmt.Sprintf("a piece of %s is longer than any board: the longest is %s, want %s or more", e.Length, e.Longest, e.Needs)
	if e.Unpriced != nil {
		s += fmt.Sprintf(" (one of %s is on sale, without a price)", *e.Unpriced)
	}
	return s
}

// TooFew says that the boards on hand do not hold all pieces, and nothing long enough is on sale. Missing is how many more
// boards of Length the best plan found takes; Proven, that no plan takes fewer of that length.
type TooFew struct {
	Length  exact.Rat
	Missing int
	Proven  bool
}

func (e *TooFew) Error() string {
	return fmt.Sprintf("the boards on hand are too few: %d more of %s would do", e.Missing, e.Length)
}

// sane looks for figures that no job can have.
func sane(j Job) error {
	if j.Kerf.Sign() < 0 {
		return &BadJob{"kerf", 0, j.Kerf}
	}
	if j.Trim.Sign() < 0 {
		return &BadJob{"trim", 0, j.Trim}
	}
	for _, list := range [][]Board{j.OnSale, j.OnHand} {
		for i, b := range list {
			if b.Length.Sign() <= 0 {
				return &BadJob{"board length", i, b.Length}
			}
			if b.Price != nil && b.Price.Sign() < 0 {
				return &BadJob{"board price", i, *b.Price}
			}
			if b.Have < 0 || b.Have > mostCount {
				return &BadJob{"board count", i, exact.Int(b.Have)}
			}
		}
	}
	n := 0
	for i, q := range j.Pieces {
		if q.Length.Sign() <= 0 {
			return &BadJob{"piece length", i, q.Length}
		}
		if q.Count < 0 {
			return &BadJob{"piece count", i, exact.Int(q.Count)}
		}
		if n += min(q.Count, mostCount+1); n > mostCount {
			return &BadJob{"pieces", i, exact.Int(n)}
		}
	}
	return nil
}

// longEnough asks whether every piece comes out of some board.
func longEnough(j Job, onSale, onHand []board) error {
	worst := -1
	for i, q := range j.Pieces {
		if q.Count > 0 && (worst < 0 || j.Pieces[worst].Length.Less(q.Length)) {
			worst = i
		}
	}
	if worst < 0 {
		return nil
	}
	var longest exact.Rat
	for _, list := range [][]board{onSale, onHand} {
		for _, b := range list {
			longest = exact.Max(longest, b.length)
		}
	}
	q := j.Pieces[worst]
	needs := q.Length.Add(j.Trim)
	if needs.Cmp(longest) <= 0 {
		return nil
	}
	if len(onSale)+len(onHand) == 0 && len(j.OnSale)+len(j.OnHand) == 0 {
		return &NoBoards{}
	}
	e := &TooLong{Piece: worst, Name: q.Name, Length: q.Length, Longest: longest, Needs: needs}
	for _, b := range j.OnSale {
		if needs.Cmp(b.Length) <= 0 && (e.Unpriced == nil || b.Length.Less(*e.Unpriced)) {
			l := b.Length
			e.Unpriced = &l
		}
	}
	return e
}
