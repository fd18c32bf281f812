package draw

import (
	"strconv"

	"saywright/solver"
)

// under is a figure in the row below or above the wall, led to the place at (millimeters of paper).
type under struct {
	at    float64
	lines []string
}

func (u under) width(size float64) float64 {
	most := 0.0
	for _, s := range u.lines {
		most = max(most, widthOf(s, size, false))
	}
	return most
}

const (
	chainDrop = 9.0 // from the lowest floor to the chain of dimensions
	rowDrop   = 3.6 // from the chain to the row of figures that find no room on it
)

// lowerFigures are the chain of bays, posts and openings, and the span under it.
func (f *front) lowerFigures() {
	low := f.y(f.w.lowest())
	y := low + chainDrop
	from := low + 2
	for _, p := range f.w.chain {
		f.p.line(thin, f.x(p.lo), y, f.x(p.hi), y, attr{"data-part", "width of " + p.kind}, attr{"data-n", strconv.Itoa(p.n)})
		f.p.tick(f.x(p.lo), y, f.chainTick())
		f.p.line(thin, f.x(p.lo), from, f.x(p.lo), y+1.2)
	}
	f.p.tick(f.x(f.w.span), y, f.chainTick())
	f.p.line(thin, f.x(f.w.span), from, f.x(f.w.span), y+1.2)
	size, aside := f.onChain(y)
	rows := f.withPosts(aside)
	deep := f.row(rows, y, 1, size)
	if len(f.w.chain) < 2 {
		return
	}
	span := y + max(deep, 2.5) + 5.5
	for _, x := range []float64{0, f.w.span} {
		f.p.line(thin, f.x(x), y+1.2, f.x(x), span+1.2)
		f.p.tick(f.x(x), span, 0.9)
	}
	f.p.line(thin, f.x(0), span, f.x(f.w.span), span, attr{"data-part", "span"})
	f.p.text(text{x: (f.x(0) + f.x(f.w.span)) / 2, y: span - 0.9, size: normal, anchor: "middle", says: f.r.size(f.w.along.Span)})
}

func (f *front) chainTick() float64 {
	size := 0.9
	for _, p := range f.w.chain {
		size = min(size, max(0.4*p.size()*f.k, 0.35))
	}
	return size
}

// onChain writes the widths of bays and openings over their dimension lines, at the largest size at which all fit;
// where none does, those that do not fit are given back, to stand in the row below.
func (f *front) onChain(y float64) (float64, []under) {
	size := least
	for _, s := range sizes {
		if f.fitsChain(s) {
			size = s
			break
		}
	}
	if !f.fitsChain(size) {
		size = small
	}
	var aside []under
	for _, p := range f.w.chain {
		if p.kind == "post" {
			continue
		}
		says := f.chainText(p, size)
		mid := (f.x(p.lo) + f.x(p.hi)) / 2
		if says == "" {
			aside = append(aside, under{mid, []string{f.r.size(p.says)}})
			continue
		}
		f.p.text(text{x: mid, y: y - 0.9, size: size, anchor: "middle", says: says})
	}
	return size, aside
}

func (f *front) fitsChain(size float64) bool {
	for _, p := range f.w.chain {
		if p.kind != "post" && f.chainText(p, size) == "" {
			return false
		}
	}
	return true
}

// chainText is the fullest text that fits over the width of a part: "bay 1: 56", or "56", or nothing.
func (f *front) chainText(p part, size float64) string {
	bare := f.r.size(p.says)
	name := p.kind
	if len(f.w.of(f.w.chain, p.kind)) > 1 {
		name += " " + strconv.Itoa(p.n)
	}
	for _, s := range []string{name + ": " + bare, bare} {
		if widthOf(s, size, false)+1.6 <= p.size()*f.k {
			return s
		}
	}
	return ""
}

// withPosts adds the posts to what stands in the row below: name, and near face from the left end post.
func (f *front) withPosts(aside []under) []under {
	var out []under
	posts := f.w.of(f.w.chain, "post")
	for _, p := range posts {
		name := "post"
		if len(posts) > 1 {
			name += " " + strconv.Itoa(p.n)
		}
		out = append(out, under{(f.x(p.lo) + f.x(p.hi)) / 2, []string{name, "at " + f.r.place(p.at)}})
	}
	for _, a := range aside {
		i := 0
		for i < len(out) && out[i].at < a.at {
			i++
		}
		out = append(out[:i], append([]under{a}, out[i:]...)...)
	}
	return out
}

// row writes figures side by side below (1) or above (-1) a dimension line at y, each led to its place. Where they
// do not fit they shrink, then lose their second line, then all but each first of a kind, then all. It returns how
// deep the row is.
func (f *front) row(list []under, y, side, size float64) float64 {
	if len(list) == 0 {
		return 0
	}
	for i, some := range [][]under{list, onlyLast(list), firstOfKind(onlyLast(list))} {
		for _, s := range sizes {
			if s > size {
				continue
			}
			if at, ok := spreadAcross(some, s, run{f.x(0) + 0.8, f.x(f.w.span) - 0.8}); ok {
				f.omitted = f.omitted || i > 0
				return f.writeRow(some, at, y, side, s)
			}
		}
	}
	f.omitted = true
	return 0
}

func onlyLast(list []under) []under {
	out := make([]under, len(list))
	for i, u := range list {
		out[i] = under{u.at, u.lines[len(u.lines)-1:]}
	}
	return out
}

func firstOfKind(list []under) []under {
	seen := make(map[string]bool)
	var out []under
	for _, u := range list {
		if !seen[u.lines[0]] {
			out = append(out, u)
		}
		seen[u.lines[0]] = true
	}
	return out
}

func spreadAcross(list []under, size float64, within run) ([]float64, bool) {
	want, long := make([]float64, len(list)), make([]float64, len(list))
	for i, u := range list {
		want[i], long[i] = u.at, u.width(size)
	}
	return spread(want, long, within.lo, within.hi, 1.6)
}

func (f *front) writeRow(list []under, at []float64, y, side, size float64) float64 {
	deep := 0.0
	for i, u := range list {
		tip := y + (rowDrop-0.4)*side
		f.p.path(thin, "", u.at, y, u.at, y+1*side, at[i], tip-0.5*side, at[i], tip)
		first := y + rowDrop + ascent*size
		if side < 0 {
			first = y - rowDrop - descent*size - float64(len(u.lines)-1)*size*1.1
		}
		for k, s := range u.lines {
			f.p.text(text{x: at[i], y: first + float64(k)*size*1.1, size: size, anchor: "middle", says: s})
		}
		deep = max(deep, rowDrop+float64(len(u.lines))*size*1.1)
	}
	return deep
}

// upperFigures are the center lines of stiffeners, measured from the left of their bay; bays alike are told once.
func (f *front) upperFigures() {
	y, from := f.y(f.w.highest())-5.5, f.y(f.w.height)-1.5
	if f.w.up == nil {
		y, from = f.y(f.depth())-5.5, f.y(f.depth())-1.2
	}
	var list []under
	seen := make(map[string]bool)
	for i, b := range f.w.along.Bays {
		key := alike(b)
		if len(b.Stiffeners) == 0 || seen[key] {
			continue
		}
		seen[key] = true
		left := b.FromLeft.Float()
		last := left
		for k, at := range b.Stiffeners {
			last = f.w.stiffeners[i][k]
			f.p.line(center, f.x(last), from, f.x(last), y-1)
			f.p.tick(f.x(last), y, 0.9)
			list = append(list, under{f.x(last), []string{f.r.place(at)}})
		}
		f.p.line(thin, f.x(left), from, f.x(left), y-1)
		f.p.circle(thin, f.x(left), y, 0.8)
		f.p.line(thin, f.x(left), y, f.x(last), y)
	}
	f.row(list, y, -1, normal)
}

func alike(b solver.Stretch) string {
	key := b.Width.String()
	for _, s := range b.Stiffeners {
		key += " " + s.String()
	}
	return key
}
