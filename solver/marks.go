package solver

import (
	"sort"

	"saywright/solver/exact"
)

// Marks returns what to pencil on every post that carries rails: underside, top and bracket hole of each rail, above the
// floor at that post. Each is exact; a tape shows each to half a mark, by itself, so that nothing adds up.
func (s *Site) Marks() Findings {
	var f Findings
	if s.up() == nil {
		f.Ask = asking("layout first", Fact{Key: "missing", Names: []string{string(WallHeight)}})
		return f
	}
	for _, p := range s.railPosts() {
		f.Marks = append(f.Marks, s.postMark(p.name, s.floorAt(p.at)))
	}
	for i := range s.Layout.Tops {
		f.Work = append(f.Work, s.markSum(i))
	}
	if s.Layout.Fall.Sign() != 0 {
		f.Facts = append(f.Facts, s.fallUnder())
	} else {
		f.Facts = append(f.Facts, Fact{Key: "level floor"})
	}
	f.Facts = append(f.Facts, Fact{Key: "tape a board", Names: []string{s.RailSize}, Nums: []exact.Rat{s.Layout.RailFace}},
		Fact{Key: "worst mark", Nums: []exact.Rat{s.worstRounding(f.Marks)}})
	f.and(s.Spacer())
	f.Assumed = s.leaned(RailSize, BottomGap, BracketReach, Tape, FloorAtRight)
	return f
}

// fallUnder tells the gap underneath where the floor falls, at the first and the last of the posts that carry rails: beside an opening at an end there is no rail.
//
//	fact "floor falls": Names the two posts; Nums how much lower the floor lies at the right end post, and the gap underneath at each of the two
func (s *Site) fallUnder() Fact {
	low, fall := s.Layout.BottomGap, s.Layout.Fall
	posts := s.railPosts()
	if len(posts) < 2 {
		return Fact{Key: "floor falls", Names: []string{"left end post", "right end post"}, Nums: []exact.Rat{fall, low, low.Add(fall)}}
	}
	first, last := posts[0], posts[len(posts)-1]
	return Fact{Key: "floor falls", Names: []string{first.name, last.name}, Nums: []exact.Rat{fall, low.Sub(s.floorAt(first.at)), low.Sub(s.floorAt(last.at))}}
}

// postAt is a post by its name and the place along the wall at which its floor is taken.
type postAt struct {
	name string
	at   exact.Rat
}

// railPosts lists the posts that have a bay beside them, left to right; up the wall alone, just the left end post.
func (s *Site) railPosts() (posts []postAt) {
	along := s.along()
	if along == nil {
		return []postAt{{name: "left end post"}}
	}
	carries := map[int]bool{}
	last := len(along.Posts) + 1
	for _, b := range along.Bays {
		before, after := s.postsBeside(b)
		if after == 0 {
			after = last
		}
		carries[before], carries[after] = true, true
	}
	for i := 0; i <= last; i++ {
		if carries[i] {
			posts = append(posts, s.postNamed(i, last))
		}
	}
	return posts
}

func (s *Site) postNamed(i, last int) postAt {
	switch i {
	case 0:
		return postAt{name: "left end post"}
	case last:
		return postAt{"right end post", s.Layout.Span}
	}
	return postAt{Name{Quantity: "post", Post: i}.String(), s.postCenter(i - 1)}
}

func (s *Site) postMark(name string, floor exact.Rat) PostMark {
	up := s.Layout.Up
	m := PostMark{Post: name, Floor: floor}
	for i, top := range up.Tops {
		top = top.Sub(floor)
		m.Rows = append(m.Rows, RailMark{Rail: i + 1, Underside: top.Sub(up.RailFace), Top: top, Hole: top.Add(s.reach(i))})
	}
	return m
}

// reach is how far a rail's bracket hole stands above the rail.
func (s *Site) reach(rail int) exact.Rat {
	up := s.Layout.Up
	if rail < len(up.Marks) {
		return up.Marks[rail].Sub(up.Tops[rail])
	}
	return up.Reach
}

// markSum is where a bracket hole comes from: bottom gap, rails and gaps below it, its own rail, the bracket's reach.
func (s *Site) markSum(i int) Work {
	up := s.Layout.Up
	reach := Num(s.reach(i))
	sum := Sum(Num(up.Tops[i]), reach)
	if pitch := up.RailFace.Add(up.Gap); len(up.Gaps) == 0 && up.BottomGap.Add(pitch.Mul(exact.Int(i))).Add(up.RailFace).Eq(up.Tops[i]) {
		terms := []Expr{Num(up.BottomGap), Num(up.RailFace), reach}
		if i > 0 {
			terms = []Expr{Num(up.BottomGap), Product(Tally(i), Num(pitch)), Num(up.RailFace), reach}
		}
		sum = Sum(terms...)
	}
	return Line(Name{Quantity: RailTop, Rail: i + 1}.String(), "bracket hole", sum)
}

// worstRounding is how far the worst mark lies from the nearest mark of the tape.
func (s *Site) worstRounding(posts []PostMark) (worst exact.Rat) {
	for _, p := range posts {
		for _, r := range p.Rows {
			for _, m := range []exact.Rat{r.Underside, r.Top, r.Hole} {
				worst = exact.Max(worst, m.Sub(s.nearest(m)).Abs())
			}
		}
	}
	return worst
}

// nearest rounds to the tape, half a mark up.
func (s *Site) nearest(r exact.Rat) exact.Rat { return s.down(r.Add(s.mark().Mul(exact.New(1, 2)))) }

// Spacer returns the block to set between rails: its size to the tape, and how far the top rail is off when every rail
// is set on it and none is marked. Gaps that differ on purpose want a block each.
func (s *Site) Spacer() Findings {
	var f Findings
	up := s.up()
	if up == nil {
		f.Ask = asking("layout first", Fact{Key: "missing", Names: []string{string(Gap)}})
		return f
	}
	f.Facts = append(f.Facts, s.block("spacer under", up.BottomGap))
	if up.Rails < 2 {
		return f
	}
	if len(up.Gaps) > 0 {
		f.Facts = append(f.Facts, s.blocks(up.Gaps)...)
		return f
	}
	block := s.nearest(up.Gap)
	f.Facts = append(f.Facts, s.block("spacer", up.Gap))
	if off := up.Gap.Sub(block); off.Sign() != 0 {
		f.Work = append(f.Work, Line("spacer", "spacer errs", Product(Tally(up.Rails-1), Num(off.Abs()))))
	}
	return f
}

// block is a spacer: exact size, size to the tape, and how much too large (positive) or small it is.
func (s *Site) block(key string, size exact.Rat) Fact {
	near := s.nearest(size)
	return Fact{Key: key, Nums: []exact.Rat{size, near, near.Sub(size)}}
}

// blocks tells each size of gap, from the narrowest, and how many there are of it.
func (s *Site) blocks(gaps []exact.Rat) (facts []Fact) {
	sorted := append([]exact.Rat(nil), gaps...)
	sort.Slice(sorted, func(i, j int) bool { return sorted[i].Less(sorted[j]) })
	for i := 0; i < len(sorted); {
		n := 1
		for i+n < len(sorted) && sorted[i+n].Eq(sorted[i]) {
			n++
		}
		b := s.block("spacer of several", sorted[i])
		b.Nums = append(b.Nums, exact.Int(n))
		facts = append(facts, b)
		i += n
	}
	return facts
}

// StoryPole returns every mark of one post in one column, from the floor up, for a pole that is held to each post. Where
// the floor falls, each post has a pole of its own, or one pole is held level to a line.
func (s *Site) StoryPole() Findings {
	f := s.Marks()
	if len(f.Marks) == 0 {
		return f
	}
	for _, p := range f.Marks {
		for _, r := range p.Rows {
			rail := exact.Int(r.Rail)
			f.Facts = append(f.Facts,
				Fact{Key: "pole", Names: []string{p.Post, "underside"}, Nums: []exact.Rat{rail, r.Underside, s.nearest(r.Underside)}},
				Fact{Key: "pole", Names: []string{p.Post, "top"}, Nums: []exact.Rat{rail, r.Top, s.nearest(r.Top)}},
				Fact{Key: "pole", Names: []string{p.Post, "hole"}, Nums: []exact.Rat{rail, r.Hole, s.nearest(r.Hole)}})
		}
		if s.Layout.Fall.Sign() == 0 {
			return f
		}
	}
	return f
}
