package solver

import (
	"encoding/json"
	"flag"
	"fmt"
	"math/rand/v2"
	"sync"
	"testing"

	"github.com/stretchr/testify/require"
)

// Random walls with a fixed seed, most of them small: each is held against the oracle of brute_test.go. Up the wall and
// along it are asked apart, so that the oracle stays small. Every rule in force is written out, so that defaults change
// nothing. A wall is drawn from a layout that holds, its figures then moved a little, or not.

// randomWalls is how many: a third along the wall. Twenty thousand take some minutes: go test -run RandomWalls -walls 20000
var randomWalls = flag.Int("walls", 3000, "how many random walls to hold against the oracle")

const randomSeed = 1209

// randomCount is what the walls amount to.
type randomCount struct {
	walls, blocked, several, waysTried, openEnds, unmended, pairs, exhaustive, unreduced int
}

func (c *randomCount) add(d randomCount) {
	c.walls += d.walls
	c.blocked += d.blocked
	c.several += d.several
	c.waysTried += d.waysTried
	c.openEnds += d.openEnds
	c.unmended += d.unmended
	c.pairs += d.pairs
	c.exhaustive += d.exhaustive
	c.unreduced += d.unreduced
}

func TestRandomWalls(t *testing.T) {
	t.Parallel()
	const shards = 8
	along := (*randomWalls + 3*shards - 1) / (3 * shards) // of each shard, rounded up
	if testing.Short() {
		along /= 6
	}
	up := 2 * along
	var total randomCount
	var mu sync.Mutex
	t.Run("shard", func(t *testing.T) {
		for shard := range shards {
			t.Run(fmt.Sprint(shard), func(t *testing.T) {
				t.Parallel()
				d := drawing{rand.New(rand.NewPCG(randomSeed, uint64(shard)))}
				var c randomCount
				for i := 0; i < up+along && !t.Failed(); i++ {
					w := d.up
					if i >= up {
						w = d.across
					}
					holdWall(t, w(), d, i, &c)
				}
				mu.Lock()
				defer mu.Unlock()
				total.add(c)
			})
		}
	})
	blocked := 100 * float64(total.blocked) / float64(total.walls)
	several := 100 * float64(total.several) / float64(total.walls)
	t.Logf("%d random walls: %.1f %% blocked, %.1f %% with several conflicts; %d single changes tried (%d to an end that is not reached), "+
		"%d changes in two, %d walls that no single change mends; every set of rules asked after in %d walls; %d told as not fully reduced",
		total.walls, blocked, several, total.waysTried, total.openEnds, total.pairs, total.unmended, total.exhaustive, total.unreduced)
	require.Greater(t, blocked, 20.0, "too few blocked walls to mean anything")
	require.Greater(t, several, 3.0, "too few walls with several conflicts to mean anything")
	require.Less(t, 200*total.unreduced, total.walls, "too often not fully reduced")
	require.Positive(t, total.openEnds)
	require.Positive(t, total.unmended)
	require.Positive(t, total.exhaustive)
}

// holdWall holds one wall against the oracle.
func holdWall(t *testing.T, w randomWall, d drawing, i int, c *randomCount) {
	c.walls++
	b := bookOf(t, w.say...)
	require.Len(t, b.Standing(), len(w.say), "%q", w.say)
	a := Solve(b)
	want := optionsOfBrute(w)
	if len(want) > 0 {
		require.NotEqual(t, Blocked, a.Verdict, "%q", w.say)
		require.Equal(t, want, optionsOfSolver(a), "%q", w.say)
	} else {
		require.Equal(t, Blocked, a.Verdict, "%q", w.say)
		c.blocked++
		holdConflicts(t, w, a, i%60 == 0, c)
		holdWays(t, w, a, d, c)
	}
	if i%12 == 0 {
		holdVariants(t, w, a, d)
	}
}

// optionsOfBrute and optionsOfSolver put every count and its ranges in words that can be compared.
func optionsOfBrute(w randomWall) (out []string) {
	rules := bruteReadAll(w.say)
	if !w.along {
		for _, o := range bruteUpOptions(rules) {
			out = append(out, fmt.Sprint(o.rails, " rails: ", o.gap, o.bottom, o.height))
		}
		return out
	}
	k := bruteOpenings(rules)
	for _, o := range bruteAlongOptions(rules) {
		s := fmt.Sprint(o.posts, " posts, ", o.bays, " bays: ", o.bay, o.stiffeners)
		if k > 0 {
			s += fmt.Sprint(o.opening)
		}
		out = append(out, s)
	}
	return out
}

func optionsOfSolver(a *Answer) (out []string) {
	if a.Options == nil {
		return nil
	}
	for _, o := range a.Options.Up {
		out = append(out, fmt.Sprint(o.Rails, " rails: ", o.Gap.brute(), o.BottomGap.brute(), o.WallHeight.brute()))
	}
	for _, o := range a.Options.Along {
		s := fmt.Sprint(o.AddedPosts, " posts, ", o.Bays, " bays: ", o.Bay.brute(), o.Stiffeners)
		if o.Opening != nil {
			s += fmt.Sprint(o.Opening.brute())
		}
		out = append(out, s)
	}
	return out
}

func (r Range) brute() (out bruteRange) {
	for i, e := range r {
		if !e.None {
			out[i] = bruteEnd{e.Val.Big(), e.Open}
		}
	}
	return out
}

func bytesOf(t *testing.T, a *Answer) string {
	t.Helper()
	j, err := json.Marshal(a)
	require.NoError(t, err)
	return string(j)
}
