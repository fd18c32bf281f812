package solver

import (
	"strconv"
	"strings"

	"saywright/solver/exact"
	"saywright/solver/lumber"
)

// want is all pieces of one lumber size, in the order of the cut list.
type want struct {
	size   string // as it was first said
	pieces []Cut
}

// count is how many pieces there are.
func (w want) count() (n int) {
	for _, p := range w.pieces {
		n += p.Count
	}
	return n
}

// longest is the length of the longest piece.
func (w want) longest() (l exact.Rat) {
	for _, p := range w.pieces {
		l = exact.Max(l, p.Length)
	}
	return l
}

// wantsOf sorts a cut list by lumber size, sizes in the order in which they first come.
func wantsOf(cuts []Cut) (wants []want) {
	at := map[string]int{}
	for _, c := range cuts {
		key := sizeKey(c.Size)
		i, known := at[key]
		if !known {
			i = len(wants)
			at[key] = i
			wants = append(wants, want{size: c.Size})
		}
		wants[i].pieces = append(wants[i].pieces, c)
	}
	return wants
}

// sizeKey is the same for 2x6 and 6x2: what a size measures, or its own name where that is unknown.
func sizeKey(size string) string {
	found, err := lumber.Find(size)
	if err != nil {
		return strings.ToLower(strings.TrimSpace(size))
	}
	return found.Thickness.String() + "x" + found.Face.String()
}

func sameSize(a, b string) bool { return sizeKey(a) == sizeKey(b) }

// sizeOf turns "rails", "posts" and "stiffeners" into their size; a size stays as it was said.
func (s *Site) sizeOf(item string) string {
	switch item {
	case "rails", "rail":
		return s.RailSize
	case "posts", "post", "added posts":
		return s.AddedPostSize
	case "stiffeners", "stiffener":
		return s.StiffenerSize
	case "cap", "caps":
		return s.CapSize
	}
	return item
}

// dressed returns what a nominal size measures; a rail's own face, where it was measured, goes before the published one.
func (s *Site) dressed(size string) (thickness, face exact.Rat, ok bool) {
	found, err := lumber.Find(size)
	if err != nil {
		return thickness, face, false
	}
	thickness, face = found.Thickness, found.Face
	if up := s.up(); up != nil && size == s.RailSize && up.RailFace.Sign() > 0 {
		face = up.RailFace
	}
	return thickness, face, true
}

// extraCut turns "extra 2x6 45-1/2 in x 12" into a line of the cut list. It is not ok for parts, which have no length.
func (s *Site) extraCut(e Statement) (Cut, bool) {
	n, ok := howMany(e)
	if !ok || e.Name.Long == nil || e.Name.Long.Num.Sign() <= 0 {
		return Cut{}, false
	}
	long := e.Name.Long.Num
	return Cut{Piece: "extra", Wall: s.Wall, Size: s.sizeOf(e.Name.Item), Length: long, Exact: long, Count: n, Ends: "square"}, true
}

// howMany reads the count of "have" and "extra": a whole number, 1 or more.
func howMany(st Statement) (int, bool) {
	n, ok := st.Value.Num.Int64()
	return int(n), ok && n > 0 && n <= mostPieces
}

// mostPieces is more than any shop cuts; a count beyond it is no count.
const mostPieces = 1 << 20

// pieceName is a piece of the cut list in a few words of the vocabulary: "bay 1 rail 3", "stiffener", "post 2".
func pieceName(c Cut) string {
	name := c.Piece
	if c.Post > 0 {
		name += " " + strconv.Itoa(c.Post)
	}
	if c.Rail > 0 {
		name += " " + strconv.Itoa(c.Rail)
	}
	if c.Bay > 0 {
		name = "bay " + strconv.Itoa(c.Bay) + " " + name
	}
	return name
}
