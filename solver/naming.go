package solver

import (
	"slices"
	"strconv"
)

// copiesOf is how many bays an unknown stands for.
func (s *sheet) copiesOf(v int) int {
	for _, pc := range s.pieces {
		if pc.v == v && pc.opening == 0 {
			return pc.bays
		}
	}
	return 1
}

// nameOf is what an unknown measures, as the normal form names it.
func (s *sheet) nameOf(v int) string {
	if v < vFree {
		return string([]Quantity{WallHeight, Gap, BottomGap, RailFace, PostHeight, BracketClearance, BracketEar, FloorAtRight,
			Span, EndPostSize, AddedPostSize, Opening, Bay, Bay}[v])
	}
	for i, o := range s.open {
		switch v {
		case o:
			return "opening " + strconv.Itoa(i+1)
		case s.dl[i]:
			return s.place(OpeningFromLeft, i)
		case s.dr[i]:
			return s.place(OpeningFromRight, i)
		}
	}
	for _, pc := range s.pieces {
		if pc.v == v && pc.bays == 1 && s.c.bays.hi > 1 {
			return "bay " + strconv.Itoa(pc.first)
		} else if pc.v == v {
			return "bays"
		}
	}
	if slices.Contains(s.segs, v) {
		return string(Gap)
	}
	for q, u := range s.part {
		if u == v {
			return string(q)
		}
	}
	for _, l := range s.lone {
		if l.v == v {
			return "bay " + strconv.Itoa(l.bay)
		}
	}
	for j, at := range s.at {
		switch v {
		case at[0]:
			return Name{Quantity: PostFromLeft, Post: j}.String()
		case at[1]:
			return Name{Quantity: PostFromRight, Post: j}.String()
		}
	}
	for _, x := range s.spacing {
		if x == v {
			return string(StiffenerSpacing)
		}
	}
	return "the rest"
}

func (s *sheet) place(q Quantity, i int) string {
	n := Name{Quantity: q}
	if len(s.open) > 1 {
		n.Opening = i + 1
	}
	return n.String()
}

// noteOf is the key under which words speak of a part of the whole.
func (s *sheet) noteOf(v int) string {
	switch v {
	case vFace:
		return "wood"
	case vGap:
		return "gaps"
	case vBottom:
		return "underneath"
	case vOpening:
		return "openings"
	case vPost:
		return "posts"
	}
	if slices.Contains(s.segs, v) {
		return "gaps"
	}
	if slices.Contains(s.open, v) {
		return "openings"
	}
	for _, pc := range s.pieces {
		if pc.v == v {
			return "bays"
		}
	}
	return "rest"
}
