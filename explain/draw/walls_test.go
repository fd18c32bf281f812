package draw

import (
	"math/rand"
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/solver"
	"saywright/solver/exact"
)

func q(s string) exact.Rat { return exact.Must(s) }

func n(i int) exact.Rat { return exact.Int(i) }

// plot is a wall for the tests: what is put down, in the order of the chain; wallOf works the rest out by the
// geometry of a half wall (stack of rails from the floor, chain of bays, posts and openings from the left).
type plot struct {
	rails        int
	face, gap    exact.Rat
	bottom       exact.Rat
	gaps         []exact.Rat // where they differ
	chain        string      // "b" bay, "o" opening, a post between each two: "bo", "bob"
	widths       []exact.Rat // one each
	postFace     exact.Rat
	stiffeners   int // in each bay
	fall         exact.Rat
	base         exact.Rat
	metric       bool
	upOnly       bool
	alongOnly    bool
	railSize     string
	endPostFace  exact.Rat
	sectionKnown bool
}

func wallOf(p plot) *solver.Answer {
	a := &solver.Answer{Verdict: solver.Fits, Layout: &solver.Layout{}, Metric: p.metric, Tape: q("1/16")}
	if p.metric {
		a.Tape = q("1").Div(q("25.4"))
	}
	if !p.alongOnly {
		a.Layout.Up = p.up()
	}
	if !p.upOnly {
		a.Layout.Along = p.along()
		if up := a.Layout.Up; up != nil && len(a.Layout.Posts) > 0 {
			top := up.WallHeight.Add(n(2)) // added posts stand 2 in over the wall: common practice, no source
			a.Layout.PostHeight = &top
		}
	}
	if a.Layout.Up != nil && a.Layout.Along != nil {
		a.Marks = p.marks(a.Layout)
	}
	return a
}

func (p plot) up() *solver.Up {
	up := &solver.Up{Rails: p.rails, RailFace: p.face, RailSize: p.railSize, Gap: p.gap, Gaps: p.gaps, BottomGap: p.bottom,
		Fall: p.fall, Clearance: n(2), Ear: n(1), Reach: q("1/2")}
	if p.sectionKnown {
		up.RailThickness, up.BracketThickness = q("3/2"), q("3/32")
	}
	y := p.bottom
	for i := range p.rails {
		if i > 0 && p.gaps != nil {
			y = y.Add(p.gaps[i-1])
		} else if i > 0 {
			y = y.Add(p.gap)
		}
		y = y.Add(p.face)
		up.Tops = append(up.Tops, y)
		up.Marks = append(up.Marks, y.Add(up.Reach))
		if p.fall.Sign() != 0 {
			up.MarksAtRight = append(up.MarksAtRight, y.Add(up.Reach).Add(p.fall))
		}
	}
	up.WallHeight = y
	return up
}

func (p plot) along() *solver.Along {
	al := &solver.Along{PostFace: p.postFace, EndPostFace: p.endPostFace, BaseHeight: p.base, StiffenerSize: "1x4", StiffenerFace: q("7/2")}
	if p.sectionKnown {
		al.PostDepth, al.EndPostDepth, al.StiffenerThickness = p.postFace, p.endPostFace, q("3/4")
	}
	x := exact.Rat{}
	for i, kind := range p.chain {
		if i > 0 {
			al.Posts = append(al.Posts, solver.Place{FromLeft: x})
			x = x.Add(p.postFace)
		}
		s := solver.Stretch{FromLeft: x, Width: p.widths[i]}
		x = x.Add(p.widths[i])
		if kind == 'o' {
			al.Openings = append(al.Openings, s)
			continue
		}
		for k := 1; k <= p.stiffeners; k++ {
			s.Stiffeners = append(s.Stiffeners, s.Width.Mul(n(k)).Div(n(p.stiffeners+1)))
		}
		al.Bays = append(al.Bays, s)
	}
	al.Span = x
	return al
}

func (p plot) marks(l *solver.Layout) []solver.PostMark {
	names, at := []string{"left end post"}, []exact.Rat{{}}
	for i, place := range l.Posts {
		names = append(names, "post "+n(i+1).String())
		at = append(at, place.FromLeft)
	}
	names, at = append(names, "right end post"), append(at, l.Span)
	var out []solver.PostMark
	for i, name := range names {
		floor := p.fall.Mul(at[i]).Div(l.Span).Neg()
		m := solver.PostMark{Post: name, Floor: floor}
		for k, top := range l.Tops {
			m.Rows = append(m.Rows, solver.RailMark{Rail: k + 1, Underside: top.Sub(l.RailFace).Sub(floor), Top: top.Sub(floor), Hole: l.Marks[k].Sub(floor)})
		}
		out = append(out, m)
	}
	return out
}

// common is a wall of the defaults: 2x6 rails between 4x4 posts.
func common(rails int, gap, chain string, stiffeners int, widths ...exact.Rat) plot {
	return plot{rails: rails, face: q("11/2"), gap: q(gap), bottom: q(gap), chain: chain, widths: widths, postFace: q("7/2"),
		endPostFace: q("7/2"), stiffeners: stiffeners, railSize: "2x6", sectionKnown: true}
}

// walls are the walls that people look at: one of each kind that a drawing has to manage.
func walls() map[string]*solver.Answer {
	upstream := common(5, "5/2", "bo", 2, q("231/2"), n(30))
	upstream.base = n(1)
	metric := common(9, "5/2", "bob", 1, n(60), n(36), n(60))
	metric.face, metric.railSize, metric.metric = n(90).Div(q("25.4")), "90x45", true
	metric.gap, metric.bottom = n(55).Div(q("25.4")), n(60).Div(q("25.4"))
	metric.postFace, metric.endPostFace = n(90).Div(q("25.4")), n(90).Div(q("25.4"))
	metric.widths = []exact.Rat{n(1500).Div(q("25.4")), n(915).Div(q("25.4")), n(1500).Div(q("25.4"))}
	differ := common(6, "17/6", "b", 1, n(72))
	differ.bottom = q("45/16")
	differ.gaps = []exact.Rat{q("23/8"), q("45/16"), q("45/16"), q("23/8"), q("45/16")}
	offTape := common(6, "17/6", "bob", 2, q("257/2"), n(36), q("257/2")) // 50 high, 300 between the posts
	tiny := common(2, "2", "b", 0, n(24))
	tiny.face, tiny.railSize = q("7/2"), "2x4"
	long := common(6, "5/2", "bbbbobbbbobbb", 1)
	for _, kind := range long.chain {
		width := n(94)
		if kind == 'o' {
			width = n(48)
		}
		long.widths = append(long.widths, width)
	}
	falling := common(6, "5/2", "bo", 2, n(120), n(36))
	falling.fall = q("3/2")
	up := common(6, "5/2", "b", 0, n(96))
	up.upOnly = true
	along := common(6, "5/2", "bo", 2, n(110), n(36))
	along.alongOnly = true
	return map[string]*solver.Answer{
		"upstream":    wallOf(upstream), // 149 between the posts, an opening of 30 on the right
		"no-opening":  wallOf(common(6, "5/2", "b", 2, n(144))),
		"left":        wallOf(common(6, "5/2", "ob", 2, n(36), n(108))),
		"middle":      wallOf(common(6, "5/2", "bob", 1, n(66), n(36), n(66))),
		"two":         wallOf(common(7, "9/4", "bobob", 1, n(48), n(32), n(72), n(36), n(48))),
		"long":        wallOf(long),
		"tiny":        wallOf(tiny),
		"metric":      wallOf(metric),
		"gaps-differ": wallOf(differ),
		"falling":     wallOf(falling),
		"off-tape":    wallOf(offTape),
		"up-only":     wallOf(up),
		"along-only":  wallOf(along),
	}
}

// TestWallsOfTheTests holds the tests' own walls against figures worked out by hand.
func TestWallsOfTheTests(t *testing.T) {
	all := walls()
	a := all["upstream"].Layout // 40 high, 2-1/2 between, 12 ft 5 between the posts, 30 open on the right
	require.Equal(t, "40", a.WallHeight.String())
	require.Equal(t, "149", a.Span.String())
	require.Equal(t, "231/2", a.Posts[0].FromLeft.String())
	require.Equal(t, "119", a.Openings[0].FromLeft.String())
	require.Equal(t, []exact.Rat{q("77/2"), n(77)}, a.Bays[0].Stiffeners)
	require.Equal(t, "42", a.PostHeight.String())
	b := all["no-opening"].Layout // check values, common practice, no source
	require.Equal(t, []exact.Rat{q("17/2"), q("33/2"), q("49/2"), q("65/2"), q("81/2"), q("97/2")}, b.Marks)
	require.Equal(t, "48", b.WallHeight.String())
	c := all["gaps-differ"].Layout // 4 × 2-13/16 + 2 × 2-7/8 = 17, and 33 of wood
	require.Equal(t, "50", c.WallHeight.String())
	f := all["falling"].Layout
	require.Equal(t, "10", f.MarksAtRight[0].String()) // 8-1/2 and the fall of 1-1/2
}

// randomWall is a wall of a kind that a person could ask for, from tiny to absurd; the same for the same source.
func randomWall(r *rand.Rand) *solver.Answer {
	faces := []string{"7/2", "11/2", "29/4", "3/2", "45/8"}
	p := common(1+r.Intn(9), "5/2", "", r.Intn(4))
	if r.Intn(12) == 0 {
		p.rails = 1 + r.Intn(40)
	}
	p.face = q(faces[r.Intn(len(faces))])
	p.gap = sixteenths(r, 96)
	p.bottom = sixteenths(r, 96)
	if r.Intn(4) == 0 {
		p.gap = exact.New(int64(1+r.Intn(60)), int64(3+r.Intn(14)))
	}
	if r.Intn(5) == 0 {
		for range p.rails - 1 {
			p.gaps = append(p.gaps, sixteenths(r, 64))
		}
	}
	p.chain = randomChain(r)
	for _, kind := range p.chain {
		w := n(8).Add(sixteenths(r, 16*100))
		if kind == 'o' {
			w = n(24).Add(sixteenths(r, 16*24))
		}
		p.widths = append(p.widths, w)
	}
	if r.Intn(5) == 0 {
		p.fall = sixteenths(r, 48).Sub(n(1))
	}
	if r.Intn(3) == 0 {
		p.base = n(1)
	}
	p.metric = r.Intn(5) == 0
	p.sectionKnown = r.Intn(4) > 0
	p.upOnly = r.Intn(15) == 0
	p.alongOnly = !p.upOnly && r.Intn(15) == 0
	if r.Intn(3) == 0 {
		p.postFace = q("11/2")
	}
	return wallOf(p)
}

func randomChain(r *rand.Rand) string {
	chains := []string{"b", "bo", "ob", "bob", "bb", "bbo", "obb", "bobb", "bobob", "bobobob", "bbbbbbbb", "bobbbbobbbbb", "obo"}
	return chains[r.Intn(len(chains))]
}

func sixteenths(r *rand.Rand, most int) exact.Rat { return exact.New(int64(r.Intn(most+1)), 16) }

// randomWalls lists the walls that every random test draws.
func randomWalls(count int) []*solver.Answer {
	r := rand.New(rand.NewSource(20310504))
	out := make([]*solver.Answer, count)
	for i := range out {
		out[i] = randomWall(r)
	}
	return out
}
