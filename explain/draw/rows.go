package draw

// spread moves labels apart along one direction: want holds where each label's middle would best lie, ascending,
// long how much room each takes, apart the least space between two. It returns the middles that are nearest in the
// sum of squares (pooling neighbors that are in each other's way, as isotonic regression does) inside lo to hi, and
// false where all of them together are too long for that.
func spread(want, long []float64, lo, hi, apart float64) ([]float64, bool) {
	total := apart * float64(max(len(want)-1, 0))
	for _, l := range long {
		total += l
	}
	if total > hi-lo+1e-9 {
		return nil, false
	}
	// With every label moved back by the room of those before it, "in order, not overlapping" becomes "ascending".
	offset := make([]float64, len(want))
	sum := 0.0
	for i, l := range long {
		offset[i] = sum + l/2
		sum += l + apart
	}
	var pools []pool
	for i := range want {
		next := pool{want[i] - offset[i], 1}
		for len(pools) > 0 && pools[len(pools)-1].mean() > next.mean() {
			last := pools[len(pools)-1]
			next, pools = pool{next.sum + last.sum, next.count + last.count}, pools[:len(pools)-1]
		}
		pools = append(pools, next)
	}
	out := make([]float64, 0, len(want))
	for _, p := range pools {
		at := min(max(p.mean(), lo), hi-total)
		for range p.count {
			out = append(out, at+offset[len(out)])
		}
	}
	return out, true
}

type pool struct {
	sum   float64
	count int
}

func (p pool) mean() float64 { return p.sum / float64(p.count) }

// sizes are tried from the best to the least that can be read.
var sizes = []float64{normal, small, least}
