package draw

import "saywright/solver/exact"

// sketch is a small picture of a conflict, made once and shown both in a terminal and as SVG.
// An upright one has heights in inches, and goes across from 0 to 1; one that lies has lengths in inches.
type sketch struct {
	upright bool
	see     run     // the inches shown
	datum   float64 // upright: the height that what is marked begins or ends at
	parts   []patch
	labels  []label // upright: beside it, at their heights
	bars    []bar   // lying: one under the other
	said    string  // the picture in words
}

// patch is a filled place of an upright sketch. A line is hot where what it bounds lies over it.
type patch struct {
	across run // 0 to 1
	up     run // inches
	what   material
	hot    bool
}

// bar is a length of a lying sketch, in pieces, with what it says at its end.
type bar struct {
	pieces []piece
	says   string
	hot    bool
}

type piece struct {
	run
	what material
	hot  bool
}

// sketchOf makes the picture of a clash.
func sketchOf(c clash, r reading) sketch {
	var s sketch
	switch c.kind {
	case bracketsMeet:
		s = meeting(c, r)
	case earMeetsFloor:
		s = atFloor(c, r)
	case earPastPost:
		s = pastPost(c, r)
	case overHeight, underHeight:
		s = stacked(c, r)
	case gapWide:
		s = tooWide(c, r)
	default:
		s = lying(c, r)
	}
	s.said = said(c, r)
	return s
}

// Where things stand across an upright sketch.
var (
	postAt    = run{0, 0.14}
	bracketAt = run{0.14, 0.24}
	railAt    = run{0.24, 1}
)

// meeting: the ears of two neighboring rails, drawn where they meet. Each has half the clearance.
func meeting(c clash, r reading) sketch {
	gap, ear := c.has.Float(), c.need.Float()/2
	edge := ear * 0.9
	s := sketch{upright: true, see: run{-edge, gap + edge}}
	s.add(postAt, s.see, post, false)
	s.add(railAt, run{s.see.lo, 0}, wood, false)
	s.add(railAt, run{gap, s.see.hi}, wood, false)
	s.add(bracketAt, run{s.see.lo, min(ear, gap)}, steel, false)
	s.add(bracketAt, run{max(gap-ear, 0), s.see.hi}, steel, false)
	both := run{max(gap-ear, 0), min(ear, gap)}
	s.add(bracketAt, both, steel, true)
	s.tell(s.see.hi-edge*0.3, "brackets need "+r.size(c.need), false)
	s.tell(both.mid(), r.size(c.off())+" overlap", true)
	s.tell(gap*0.08, "gap "+r.size(c.has), false)
	return s
}

// atFloor: the lowest ear against the floor.
func atFloor(c clash, r reading) sketch {
	under, ear := c.has.Float(), c.need.Float()
	s := sketch{upright: true, see: run{under - ear - 0.3*ear, under + ear}}
	s.add(postAt, run{0, s.see.hi}, post, false)
	s.add(railAt, run{under, s.see.hi}, wood, false)
	s.add(bracketAt, run{0, s.see.hi}, steel, false)
	s.add(run{0, 1}, run{s.see.lo, 0}, ground, false)
	s.add(bracketAt, run{under - ear, 0}, steel, true)
	s.tell(s.see.hi-0.3*ear, "ear needs "+r.size(c.need), false)
	s.tell(under/2, r.size(c.has)+" under", false)
	s.tell((under-ear)/2, r.size(c.off())+" short", true)
	return s
}

// pastPost: the highest ear over the top of an added post.
func pastPost(c clash, r reading) sketch {
	top, reach, wall := c.has.Float(), c.need.Float(), c.parts[0].Float()
	ear := max(reach-wall, (reach-top)/2)
	s := sketch{upright: true, see: run{min(wall, top) - 2*ear, reach + 0.4*ear}, datum: top}
	s.add(postAt, run{s.see.lo, top}, post, false)
	s.add(railAt, run{s.see.lo, wall}, wood, false)
	s.add(bracketAt, run{s.see.lo, min(reach, top)}, steel, false)
	s.add(bracketAt, run{max(top, s.see.lo), reach}, steel, true)
	s.tell(reach-0.2*ear, "ear reaches "+r.size(c.need), false)
	s.tell((top+reach)/2-0.3*ear, r.size(c.off())+" past it", true)
	s.tell(min(top, wall)-ear, "post "+r.size(c.has), false)
	return s
}

// stacked: rails and gaps against the line of the wall's height, near their tops where the difference is small.
func stacked(c clash, r reading) sketch {
	top, wall := c.need.Float(), c.has.Float()
	if c.kind == underHeight {
		top, wall = wall, top
	}
	off, face, gap := c.off().Float(), c.face.Float(), c.gap.Float()
	high := max(top, wall)
	low := max(high-max(6*off, 1.6*face+gap), 0)
	s := sketch{upright: true, see: run{low, high + 0.12*(high-low)}, datum: wall}
	s.add(postAt, run{low, s.see.hi}, post, false)
	across := run{postAt.hi, 1}
	at := top
	for range c.rails {
		if at <= low {
			break
		}
		s.add(across, run{max(at-face, low), at}, wood, false)
		if c.kind == overHeight && at > wall {
			s.add(across, run{max(at-face, wall), at}, wood, true)
		}
		at -= face + gap
	}
	if c.kind == underHeight {
		s.add(across, run{top, wall}, void, true)
	}
	s.labels = append(s.labels, label{wall, "wall " + r.size(c.wall()), false, c.kind == overHeight})
	switch c.kind {
	case overHeight:
		s.tell((top+wall)/2, r.size(c.off())+" too high", true)
		s.tell(low+(wall-low)*0.4, "takes "+r.size(c.need), false)
	default:
		s.tell((top+wall)/2, r.size(c.off())+" not filled", true)
		s.tell(low+(top-low)*0.6, "at most "+r.size(c.has), false)
	}
	s.parts = append(s.parts, patch{run{0, 1}, run{wall, wall}, line, c.kind == overHeight})
	return s
}

// wall is the wall's height in a clash of heights.
func (c *clash) wall() exact.Rat {
	if c.kind == underHeight {
		return c.need
	}
	return c.has
}

// tooWide: a gap against the limit that it must stay under.
func tooWide(c clash, r reading) sketch {
	gap, most := c.need.Float(), c.has.Float()
	edge := gap * 0.35
	s := sketch{upright: true, see: run{-edge, gap + edge}}
	across := run{postAt.hi, 1}
	s.add(postAt, s.see, post, false)
	s.add(across, run{-edge, 0}, wood, false)
	s.add(across, run{gap, s.see.hi}, wood, false)
	s.add(across, run{min(most, gap-0.01*gap), gap}, void, true)
	s.tell(gap+edge*0.5, "gap "+r.size(c.need), false)
	if c.off().Sign() > 0 {
		s.tell((most+gap)/2, r.size(c.off())+" too wide", true)
	}
	s.tell(most*0.4, "must stay under "+r.size(c.has), false)
	return s
}

func (s *sketch) add(across, up run, what material, hot bool) {
	if up.hi > up.lo {
		s.parts = append(s.parts, patch{across, up, what, hot})
	}
}

func (s *sketch) tell(y float64, text string, hot bool) {
	s.labels = append(s.labels, label{y, text, hot, false})
}

// lying: two lengths one under the other, the difference marked.
func lying(c clash, r reading) sketch {
	need, has := c.need.Float(), c.has.Float()
	edge := 0.04 * need
	s := sketch{see: run{-edge, need + edge}}
	long := []piece{{run{0, has}, wood, false}, {run{has, need}, wood, true}}
	short := []piece{{run{0, has}, wood, false}, {run{has, need}, void, true}}
	off := r.size(c.off())
	between := func(long float64) []piece { // what stands open between two posts
		return []piece{{run{-edge, 0}, post, false}, {run{0, long}, line, false}, {run{long, long + edge}, post, false}}
	}
	add := func(pieces []piece, says string, hot bool) { s.bars = append(s.bars, bar{pieces, says, hot}) }
	switch c.kind {
	case bayOverBoard:
		add(between(need), "to fill "+r.size(c.need), false)
		add(short, "a board fills "+r.size(c.has), false)
		add(nil, off+" short", true)
	case openingNarrow:
		add(between(has), "left "+r.size(c.has), false)
		add(long, "wanted "+r.size(c.need), false)
		add(nil, off+" too narrow", true)
	case overSpan:
		add(between(has), "span "+r.size(c.has), false)
		add(c.pieces(), "needed "+r.size(c.need), false)
		add(nil, off+" too long", true)
	case underSpan:
		add(between(need), "span "+r.size(c.need), false)
		add(short, "at most "+r.size(c.has), false)
		add(nil, off+" left over", true)
	default:
		add(between(has)[1:2], r.size(c.has), false)
		add(long, r.size(c.need), false)
		add(nil, off+" between them", true)
	}
	if c.off().Sign() == 0 {
		s.bars[2].says = "the limit itself is left out"
	}
	return s
}

// pieces are the terms of a sum end to end; what lies past the span is hot.
func (c *clash) pieces() []piece {
	var out []piece
	at, has := 0.0, c.has.Float()
	for i, p := range c.parts {
		end := at + p.Float()
		kind := wood
		if i%2 == 1 {
			kind = post
		}
		if cut := min(max(has, at), end); cut > at {
			out = append(out, piece{run{at, cut}, kind, false})
		}
		if from := max(has, at); from < end {
			out = append(out, piece{run{from, end}, kind, true})
		}
		at = end
	}
	if len(c.parts) == 0 || at > c.need.Float()+1e-9 || at < c.need.Float()-1e-9 {
		return []piece{{run{0, has}, wood, false}, {run{has, c.need.Float()}, wood, true}}
	}
	return out
}

// said is the picture in a line, for those who listen to it.
func said(c clash, r reading) string {
	need, has, off := r.size(c.need), r.size(c.has), r.size(c.off())
	switch c.kind {
	case bracketsMeet:
		return "Two brackets meet: the gap is " + has + ", they need " + need + ", and overlap by " + off + "."
	case earMeetsFloor:
		return "The lowest bracket meets the floor: it stands " + need + " past its rail, and " + has + " is left."
	case earPastPost:
		return "The highest bracket reaches " + need + ", past the top of the post at " + has + "."
	case overHeight:
		return "The rails and gaps take " + need + ", and the wall is " + has + " high."
	case underHeight:
		return "The rails and gaps fill " + has + " at most, and the wall is " + need + " high."
	case gapWide:
		return "The gap is " + need + ", and must stay under " + has + "."
	case bayOverBoard:
		return "A board fills " + has + ", and " + need + " is to be filled."
	case openingNarrow:
		return "The opening has " + has + ", and " + need + " is wanted."
	case overSpan:
		return "The parts need " + need + ", and the span is " + has + "."
	case underSpan:
		return "The parts fill " + has + " at most, and the span is " + need + "."
	}
	return "One side comes to " + need + ", the other to " + has + "."
}
