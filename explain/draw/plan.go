package draw

import (
	"strconv"

	"saywright/solver"
	"saywright/solver/exact"
)

// plan is one post cut through and seen from above, on its center lines, with the bays' rails and brackets beside it,
// its base and the base's holes where those are known.
type plan struct {
	sight
	p      *paper
	w      *wall
	r      reading
	zone   box
	face   float64
	depth  float64
	name   string
	left   bool // a bay meets the post at its left
	right  bool
	at     string // where its near face is
	center string // where its base's center is, where the answer tells it
}

// hasPlan reports whether the answer tells what a plan of a post shows: how deep it is, and how thick the rails are.
func hasPlan(w *wall) bool {
	if w.along == nil {
		return false
	}
	if len(w.along.Posts) > 0 {
		return w.along.PostDepth.Sign() > 0
	}
	return w.along.EndPostDepth.Sign() > 0
}

const reachOut = 3.0 // how much of a rail is shown beside the post, inches

func newPlan(p *paper, a *solver.Answer, w *wall, r reading, zone box) *plan {
	v := &plan{p: p, w: w, r: r, zone: zone}
	al := w.along
	if posts := w.of(w.chain, "post"); len(posts) > 0 {
		v.face, v.depth, v.name = al.PostFace.Float(), al.PostDepth.Float(), "post 1"
		if len(posts) == 1 {
			v.name = "the added post"
		}
		v.at, v.center = r.place(posts[0].at), baseCenter(a, r)
		for i, c := range w.chain {
			if c.kind == "post" && c.n == 1 {
				v.left = i > 0 && w.chain[i-1].kind == "bay"
				v.right = i+1 < len(w.chain) && w.chain[i+1].kind == "bay"
			}
		}
	} else {
		v.face, v.depth, v.name, v.right = al.EndPostFace.Float(), al.EndPostDepth.Float(), "the left end post", true
	}
	v.sight = sightOf(fitScale(r.Metric, v.wide(), v.high(), zone.w-24, zone.h-30))
	v.x0 = zone.x + zone.w/2 - 6
	v.y0 = zone.y + 5 + (zone.h-30)/2
	return v
}

// baseCenter is the place of the first added post's base center from the left end post, "" where nobody worked it out.
func baseCenter(a *solver.Answer, r reading) string {
	for _, f := range a.Facts {
		if f.Key == "base center" && len(f.Nums) > 1 && f.Nums[0].Eq(exact.Int(1)) {
			return r.place(f.Nums[1])
		}
	}
	return ""
}

// wide and high are the inches drawn around the post's center.
func (v *plan) wide() float64 { return v.face + 2*reachOut }

func (v *plan) high() float64 {
	if b := v.w.along.Base; b != nil {
		return max(v.depth, b.Wide.Float()) + 2
	}
	return v.depth + 2
}

func (v *plan) draw() {
	v.p.raw(`<g data-view="plan" data-scale="` + strconv.Itoa(v.scale) + `">` + "\n")
	f, d := v.face/2, v.depth/2
	v.base()
	post := v.box(run{-f, f}, run{-d, d})
	v.p.rect(cutLine, post, "#fff", attr{"data-part", "post"})
	v.p.line(thin, post.x, post.y, post.right(), post.bottom())
	v.p.line(thin, post.x, post.bottom(), post.right(), post.y)
	if v.left {
		v.rail(-1)
	}
	if v.right {
		v.rail(1)
	}
	v.p.line(center, v.x(-f-reachOut)-2, v.y0, v.x(f+reachOut)+2, v.y0)
	v.p.line(center, v.x0, v.y(v.high()/2), v.x0, v.y(-v.high()/2))
	v.holes()
	v.figures()
	v.p.raw("</g>\n")
}

// rail is the end of a rail at the post's left (-1) or right (1), a bracket between them.
func (v *plan) rail(side float64) {
	if v.w.up == nil || v.w.up.RailThickness.Sign() <= 0 {
		return
	}
	t := v.w.up.RailThickness.Float() / 2
	plate := v.w.up.BracketThickness.Float()
	from, to := side*(v.face/2+plate), side*(v.face/2+reachOut)
	lo, hi := min(from, to), max(from, to)
	b := v.box(run{lo, hi}, run{-t, t})
	v.p.path(fineOut, "", v.x(to), b.y, v.x(from), b.y, v.x(from), b.bottom(), v.x(to), b.bottom())
	y := v.y0
	v.p.path(thin, "", v.x(to), b.y-1.2, v.x(to), y-1.4, v.x(to)-0.9, y-0.5, v.x(to)+0.9, y+0.5, v.x(to), y+1.4, v.x(to), b.bottom()+1.2)
	if plate > 0 {
		face := side * v.face / 2
		v.p.rect(noPen, v.box(run{min(face, from), max(face, from)}, run{-t, t}), "#000", attr{"data-part", "bracket"})
	}
}

// base is the outline of the base's plate, under the post.
func (v *plan) base() {
	b := v.w.along.Base
	if b == nil || len(v.w.along.Posts) == 0 || b.Long.Sign() <= 0 || b.Wide.Sign() <= 0 {
		return
	}
	l, w := b.Long.Float()/2, b.Wide.Float()/2
	v.p.rect(hidden, v.box(run{-l, l}, run{-w, w}), "", attr{"data-part", "base"})
}

func (v *plan) holes() {
	b := v.w.along.Base
	if len(v.w.along.Posts) == 0 {
		return
	}
	if b == nil || len(b.Holes) == 0 { // the holes are marked through the base, which is set on this center
		v.p.circle(fineOut, v.x0, v.y0, 1.2, attr{"data-part", "base center"})
		return
	}
	radius := max(b.Anchor.Float()/2, 0.15)
	for i, h := range b.Holes {
		x, y := v.x(h.Right.Float()), v.y(h.Back.Float())
		v.p.circle(outline, x, y, radius*v.k, attr{"data-part", "hole"}, attr{"data-n", strconv.Itoa(i + 1)})
		v.p.line(fineOut, x-radius*v.k-1, y, x+radius*v.k+1, y)
		v.p.line(fineOut, x, y-radius*v.k-1, x, y+radius*v.k+1)
	}
}

// figures are the post's face below it, its depth at the right, and how far it is from the left end post.
func (v *plan) figures() {
	al := v.w.along
	f, d := v.face/2, v.depth/2
	face, depth := al.EndPostFace, al.EndPostDepth
	if len(al.Posts) > 0 {
		face, depth = al.PostFace, al.PostDepth
	}
	y := v.y(-v.high()/2) + 6
	v.p.measure(v.x(-f), v.x(f), y, v.r.size(face))
	for _, x := range []float64{-f, f} {
		v.p.line(thin, v.x(x), v.y(-d)+0.8, v.x(x), y+1)
	}
	x := v.x(f+reachOut) + 6.5
	v.p.measureUp(v.y(-d), v.y(d), x, v.r.size(depth))
	for _, h := range []float64{-d, d} {
		v.p.line(thin, v.x(f)+0.8, v.y(h), x+1, v.y(h))
	}
	if v.at == "" {
		return
	}
	y += 7
	from := v.x(-f-reachOut) - 2
	v.p.line(thin, from, y, v.x(-f), y)
	v.p.tick(v.x(-f), y, 0.8)
	v.p.line(thin, v.x(-f), y-6, v.x(-f), y+1)
	v.p.path(noPen, "#000", from, y, from+2.6, y-0.6, from+2.6, y+0.6)
	says := []string{v.at + " to the left end post’s face"}
	if v.center != "" {
		says = append(says, v.center+" from there to the base’s center")
	}
	for i, line := range says {
		v.p.text(text{x: from, y: y + ascent*small + 1.4 + float64(i)*small*1.25, size: small, says: line})
	}
}
