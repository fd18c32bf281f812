package stock

import "math"

// blend is tables taken together for one box: rates and total, and for a second goal what is spent, each so many times.
type blend struct {
	rate  []float64
	total float64
	any   bool
}

// blended takes the tables that are tight at the corner last found, each as often as it counts there.
func (c *corner) blended() blend {
	m := blend{rate: make([]float64, c.n)}
	for k, t := range c.tight {
		if t < 0 || c.y[k] <= 0 {
			continue
		}
		m.any = true
		for i, r := range c.rows[t] {
			m.rate[i] += c.y[k] * r
		}
		m.total += c.y[k] * c.least[t]
	}
	return m
}

// reachWork bounds the work of one look at outOfReach, after which it does not know.
const reachWork = 50000

// outOfReach reports whether no basket of a box that is cheaper than the cutoff holds enough by the tables that bind it,
// taken together. It is a knapsack over money: what is the most that boards for so much money can hold?
func (s *search) outOfReach(b *box) bool {
	m := s.corner.blended()
	if !m.any {
		return false
	}
	f := math.Exp2(50) / math.Max(1, float64(s.bestAt))
	for i, r := range m.rate {
		f = math.Min(f, math.Exp2(58)/(1+math.Abs(r)*float64(b.up[i]+1)*float64(len(m.rate))))
	}
	from := begin{}
	var items []item
	for i, r := range m.rate {
		u := int64(math.Ceil(r * f))
		from.w += s.price[i] * int64(b.lo[i])
		from.v += u * int64(b.lo[i])
		if b.up[i] == b.lo[i] || u <= 0 {
			continue
		}
		if s.price[i] == 0 {
			return false
		}
		items = append(items, item{w: s.price[i], u: u, most: b.up[i] - b.lo[i], kind: i})
	}
	goal := s.cutoff() - 1
	if from.w > goal {
		return true
	}
	s.loads.most = reachWork
	got, sure := s.loads.dearest(items, []slot{{c: goal, rate: int64(math.Floor(m.total*f)) - 1}}, []begin{from})
	s.work += s.loads.work
	s.loads.most, s.loads.work = 0, 0
	return sure && got == nil
}
