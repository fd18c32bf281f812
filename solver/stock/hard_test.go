package stock

import (
	"fmt"
	"math"
	"math/rand"
	"os"
	"sort"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"saywright/solver/exact"
)

// shop is a kind of random job: lengths in sixteenths of an inch between lo and hi of the longest board, prices in cents near
// to length^e, off by up to the spread, so that they are never in proportion.
type shop struct {
	style         string
	lo, hi        float64
	pieces, kinds int
	boards        int
	spread        float64
	hand          bool // boards on hand too
}

var styles = []shop{{style: "mixed", lo: .05, hi: .9}, {style: "short", lo: .04, hi: .3}, {style: "rails", lo: .2, hi: .5}, {style: "long", lo: .4, hi: .98}}

func (s shop) job(seed int64) Job {
	r := rand.New(rand.NewSource(seed))
	lengths := []int{96, 120, 144, 168, 192, 240, 72, 216}
	r.Shuffle(len(lengths), func(i, j int) { lengths[i], lengths[j] = lengths[j], lengths[i] })
	lengths = lengths[:s.boards]
	j := Job{Kerf: exact.Int(2)}
	e, base, longest := 1-s.spread+2*s.spread*r.Float64(), 500+1000*r.Float64(), 0
	for _, l := range lengths {
		cents := base * math.Pow(float64(l)/96, e) * (1 + s.spread*(2*r.Float64()-1))
		j.OnSale = append(j.OnSale, Board{Length: exact.Int(16 * l), Price: rat(int(math.Round(cents)))})
		longest = max(longest, 16*l)
	}
	if s.hand {
		for range 3 {
			j.OnHand = append(j.OnHand, Board{Length: exact.Int(int(float64(longest) * (.2 + .8*r.Float64()))), Have: 1 + r.Intn(6)})
		}
	}
	seen := map[int]bool{}
	for len(j.Pieces) < s.kinds {
		if l := int(float64(longest) * (s.lo + (s.hi-s.lo)*r.Float64())); !seen[l] {
			seen[l] = true
			j.Pieces = append(j.Pieces, Piece{Length: exact.Int(l), Count: 1})
		}
	}
	for range s.pieces - s.kinds {
		j.Pieces[r.Intn(s.kinds)].Count++
	}
	return j
}

// TestDistribution prints how long hard jobs take and how many cases their proofs have; set STOCK_HARD to "seeds pieces kinds
// boards spread" to run it.
func TestDistribution(t *testing.T) {
	var seeds int
	var s shop
	if n, _ := fmt.Sscan(os.Getenv("STOCK_HARD"), &seeds, &s.pieces, &s.kinds, &s.boards, &s.spread); n < 5 {
		t.Skip("set STOCK_HARD to run it")
	}
	s.hand = os.Getenv("STOCK_HAND") != ""
	for _, style := range styles {
		s.style, s.lo, s.hi = style.style, style.lo, style.hi
		var took []float64
		var cases []int
		open, slow := "", ""
		for seed := range seeds {
			j := s.job(int64(seed + 1))
			at := time.Now()
			plan, err := Solve(j)
			require.NoError(t, err, "%s %d", s.style, seed)
			ms := float64(time.Since(at).Microseconds()) / 1000
			took = append(took, ms)
			if !plan.Proven {
				open += fmt.Sprintf(" %d:%s>%s", seed+1, plan.Cost, plan.AtLeast)
			}
			if ms > 700 {
				slow += fmt.Sprintf(" %d:%.0f", seed+1, ms)
			}
			if len(plan.Proof.Claims) > 0 {
				cases = append(cases, countCases(plan.Proof.Claims[0].Root))
			}
		}
		sort.Float64s(took)
		sort.Ints(cases)
		at := func(p float64) (float64, int) {
			return took[int(p*float64(len(took)-1))], cases[int(p*float64(len(cases)-1))]
		}
		m, mc := at(.5)
		n, nc := at(.9)
		x, xc := at(1)
		fmt.Printf("%-6s median %.1f ms, 9 of 10 in %.1f, all in %.1f; cases %d, %d, %d; open:%s slow:%s\n", s.style, m, n, x, mc, nc, xc, open, slow)
	}
}

func countCases(c *Case) int {
	if c == nil || c.Split == nil {
		return 1
	}
	return countCases(c.AtMost) + countCases(c.More)
}
