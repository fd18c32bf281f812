package draw

import "strconv"

// sight maps inches of wall to millimeters of paper: k millimeters to the inch, (x0, y0) where the left end post's
// inner face meets the floor.
type sight struct {
	k, x0, y0 float64
	scale     int // 1 : scale
}

const perInch = 25.4

func sightOf(scale int) sight { return sight{k: perInch / float64(scale), scale: scale} }

func (s sight) x(in float64) float64 { return s.x0 + in*s.k }
func (s sight) y(in float64) float64 { return s.y0 - in*s.k }

// box is a rectangle of the wall on paper.
func (s sight) box(x, y run) box {
	return box{s.x(x.lo), s.y(y.hi), x.size() * s.k, y.size() * s.k}
}

// Scales that rulers have: for inches those of an architect's scale (1:24 is 1/2 in to the foot), for millimeters
// ISO 5455 with 1:25 added, which scale rulers carry (both from memory).
var (
	inchScales       = []int{1, 2, 4, 8, 12, 16, 24, 32, 48, 64, 96, 128, 192, 384, 768, 1536}
	millimeterScales = []int{1, 2, 5, 10, 20, 25, 50, 100, 200, 500, 1000, 2000}
)

func scales(metric bool) []int {
	if metric {
		return millimeterScales
	}
	return inchScales
}

// fitScale is the largest drawing scale at which so many inches fit into so many millimeters both ways.
func fitScale(metric bool, wide, high, width, height float64) int {
	list := scales(metric)
	for _, s := range list {
		if k := perInch / float64(s); wide*k <= width && high*k <= height {
			return s
		}
	}
	return list[len(list)-1]
}

// scaleText is "1:24", with what it means on an inch rule where that is a whole step.
func scaleText(scale int, metric bool) string {
	s := "1:" + strconv.Itoa(scale)
	if metric {
		return s
	}
	if foot, ok := toTheFoot[scale]; ok {
		return s + " (" + foot + " in = 1 ft)"
	}
	return s
}

var toTheFoot = map[int]string{2: "6", 4: "3", 8: "1-1/2", 12: "1", 16: "3/4", 24: "1/2", 32: "3/8", 48: "1/4", 64: "3/16", 96: "1/8", 128: "3/32", 192: "1/16"}
