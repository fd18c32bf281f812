package draw

import (
	"saywright/solver"
	"saywright/solver/exact"
)

// ladder is an ascending list of scales that a person can count with: steps of first up to last, then of the next.
type ladder []exact.Rat

func steps(of exact.Rat, rungs ...[2]exact.Rat) ladder {
	var l ladder
	at := exact.Rat{}
	for _, r := range rungs {
		for step, last := r[0], r[1]; at.Less(last); {
			at = at.Add(step)
			l = append(l, at.Mul(of))
		}
	}
	return l
}

var (
	inchLadder = steps(exact.Int(1),
		[2]exact.Rat{exact.New(1, 16), exact.New(1, 4)}, [2]exact.Rat{exact.New(1, 8), exact.Int(1)},
		[2]exact.Rat{exact.New(1, 4), exact.Int(4)}, [2]exact.Rat{exact.New(1, 2), exact.Int(12)},
		[2]exact.Rat{exact.Int(1), exact.Int(48)}, [2]exact.Rat{exact.Int(4), exact.Int(400)})
	millimeterLadder = steps(solver.PerInch.Inv(),
		[2]exact.Rat{exact.Int(1), exact.Int(10)}, [2]exact.Rat{exact.Int(5), exact.Int(200)},
		[2]exact.Rat{exact.Int(10), exact.Int(1000)}, [2]exact.Rat{exact.Int(100), exact.Int(10000)})
)

func ladderOf(metric bool) ladder {
	if metric {
		return millimeterLadder
	}
	return inchLadder
}

// up returns the least rung that is not under x, the last one where none is.
func (l ladder) up(x float64) exact.Rat {
	for _, rung := range l {
		if rung.Float() >= x-1e-9 {
			return rung
		}
	}
	return l[len(l)-1]
}

// down returns the greatest rung that is not over x, the first one where none is.
func (l ladder) down(x float64) exact.Rat {
	out := l[0]
	for _, rung := range l {
		if rung.Float() > x+1e-9 {
			break
		}
		out = rung
	}
	return out
}
