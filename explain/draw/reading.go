package draw

import (
	"saywright/explain/figure"
	"saywright/solver/exact"
)

// reading writes figures into a picture.
type reading struct {
	figure.Style
	near string // what leads a figure that is only the nearest mark: "≈", or "about " in plain ASCII
}

// size writes how large a part is: exactly where the tape shows it or the fraction is a simple one (2-5/6),
// else the nearest mark and said to be that.
func (r reading) size(v exact.Rat) string {
	if _, exactly := r.Near(v); exactly {
		return r.Length(v)
	}
	if !r.Metric && simple(v) {
		return r.Length(v)
	}
	return r.place(v)
}

// simple holds for fractions that are read at a glance: 2-5/6, and halves of halves down to 1/64.
func simple(v exact.Rat) bool {
	_, den := v.Frac()
	if !den.IsInt64() {
		return false
	}
	d := den.Int64()
	return d <= 16 || d == 32 || d == 64
}

// place writes where a mark goes: what a tape can show, led by ≈ where the exact place lies beside it.
func (r reading) place(v exact.Rat) string {
	text, exactly := r.Near(v)
	if exactly {
		return text
	}
	return r.near + text
}

// places writes several of them.
func (r reading) places(at []exact.Rat) []string {
	out := make([]string, len(at))
	for i, v := range at {
		out[i] = r.place(v)
	}
	return out
}

func (r reading) unit() string {
	if r.Metric {
		return "millimeters"
	}
	return "inches"
}
