package draw

import "strconv"

// fromAbove draws the wall in plan where its height is not known.
func (f *front) fromAbove() {
	d := f.depth()
	mid := d / 2
	for _, b := range f.w.bays() {
		f.p.rect(fineOut, f.box(b.run, run{mid - d/6, mid + d/6}), "#fff", attr{"data-part", "bay"}, attr{"data-n", strconv.Itoa(b.n)})
		for i, at := range f.w.stiffeners[b.n-1] {
			f.p.line(center, f.x(at), f.y(d)-1, f.x(at), f.y(0)+1, attr{"data-part", "stiffener"},
				attr{"data-bay", strconv.Itoa(b.n)}, attr{"data-n", strconv.Itoa(i + 1)}, attr{"data-at", mm(f.x(at))})
		}
	}
	square := func(x run, tags ...attr) {
		b := f.box(x, run{0, d})
		f.p.rect(cutLine, b, "#fff", tags...)
		f.p.line(thin, b.x, b.y, b.right(), b.bottom())
		f.p.line(thin, b.x, b.bottom(), b.right(), b.y)
	}
	for _, p := range f.w.of(f.w.chain, "post") {
		square(p.run, attr{"data-part", "post"}, attr{"data-n", strconv.Itoa(p.n)})
	}
	square(run{-f.w.endFace, 0})
	square(run{f.w.span, f.w.span + f.w.endFace})
}
