package solver

import "math"

// AnchorGroup is a group of anchors in concrete, for its breakout in tension after ACI 318-19 17.6.2. Lengths are inches.
// Wide and Deep are between the outermost anchors; Edges are the distances from the outermost anchors to the concrete's
// edges (left, right, front, back), 0 for an edge that is far away. A single anchor has Wide and Deep 0.
type AnchorGroup struct {
	Depth      float64 // effective embedment
	Wide, Deep float64
	Edges      [4]float64
}

// BasicBreakout is the basic strength of one anchor in pounds: k · √fc · depth^1.5, with k 17 for an anchor drilled in
// (24 for one cast in; product tests may allow up to 24), fc in pounds per square inch, in concrete of normal weight.
func BasicBreakout(k, fc, depth float64) float64 { return k * math.Sqrt(fc) * math.Pow(depth, 1.5) }

// reach is how far the cone of concrete reaches on a side: one and a half depths, or to the edge.
func (g AnchorGroup) reach(side int) float64 {
	full := 1.5 * g.Depth
	if e := g.Edges[side]; e > 0 && e < full {
		return e
	}
	return full
}

// Area is the projected area of the group's cone, in square inches.
func (g AnchorGroup) Area() float64 {
	return (g.reach(0) + g.Wide + g.reach(1)) * (g.reach(2) + g.Deep + g.reach(3))
}

// SingleArea is that of one anchor far from every edge: 9 · depth².
func (g AnchorGroup) SingleArea() float64 { return 9 * g.Depth * g.Depth }

// EdgeFactor lessens the strength near an edge: 0.7 + 0.3 · edge / (1.5 · depth), 1 where no edge is that near.
func (g AnchorGroup) EdgeFactor() float64 {
	least := 1.5 * g.Depth
	for side := range g.Edges {
		least = math.Min(least, g.reach(side))
	}
	return 0.7 + 0.3*least/(1.5*g.Depth)
}

// Breakout is the nominal strength of the group in pounds, loaded through its center in concrete that may crack. It is
// no safe load: factors for safety, load and qualification are still to be applied, and a professional decides.
func (g AnchorGroup) Breakout(k, fc float64) float64 {
	return g.Area() / g.SingleArea() * g.EdgeFactor() * BasicBreakout(k, fc, g.Depth)
}
