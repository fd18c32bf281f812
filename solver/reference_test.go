package solver

import (
	"bufio"
	"compress/gzip"
	"encoding/json"
	"os"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/solver/exact"
)

// A wall worked out by two independent exact methods (enumeration with Fourier–Motzkin elimination in exact
// fractions; an SMT solver over exact rationals), which agree on every verdict, count and range.
type referenceWall struct {
	ID     int      `json:"id"`
	Kind   string   `json:"kind"`
	Say    []string `json:"say"`
	Expect struct {
		Feasible bool             `json:"feasible"`
		Rails    []referenceRails `json:"rails"`
		Posts    []referencePosts `json:"posts"`
		Core     []string         `json:"core"`
	} `json:"expect"`
}

type referenceEnd struct {
	Lo     *string `json:"lo"`
	LoOpen bool    `json:"lo_open"`
	Hi     *string `json:"hi"`
	HiOpen bool    `json:"hi_open"`
}

type referenceRails struct {
	N int          `json:"n"`
	G referenceEnd `json:"g"`
	B referenceEnd `json:"b"`
	H referenceEnd `json:"H"`
}

type referencePosts struct {
	Posts   int           `json:"posts"`
	Bays    int           `json:"bays"`
	Bay     referenceEnd  `json:"bay"`
	Opening *referenceEnd `json:"opening"`
	M       []int         `json:"m"`
}

func (r Range) reference() referenceEnd {
	var e referenceEnd
	if !r[0].None {
		s := r[0].Val.String()
		e.Lo, e.LoOpen = &s, r[0].Open
	}
	if !r[1].None {
		s := r[1].Val.String()
		e.Hi, e.HiOpen = &s, r[1].Open
	}
	return e
}

func referenceWalls(t testing.TB) []referenceWall {
	t.Helper()
	f, err := os.Open("../testdata/published/walls.jsonl.gz")
	require.NoError(t, err)
	defer f.Close()
	z, err := gzip.NewReader(f)
	require.NoError(t, err)
	lines := bufio.NewScanner(z)
	lines.Buffer(nil, 1<<22)
	var walls []referenceWall
	for lines.Scan() {
		var w referenceWall
		require.NoError(t, json.Unmarshal(lines.Bytes(), &w))
		walls = append(walls, w)
	}
	require.NoError(t, lines.Err())
	return walls
}

func TestReferenceWalls(t *testing.T) {
	walls := referenceWalls(t)
	blocked, beyond := 0, 0
	for _, w := range walls {
		a := Solve(bookOf(t, w.Say...))
		if !w.Expect.Feasible && a.Verdict == Fits && a.Layout.Along != nil && len(a.Layout.Posts) > mostPostsListed {
			// The reference looked at 16 added posts and fewer. The verdict does not stop where the list does.
			beyond++
			require.True(t, a.Options == nil || len(a.Options.Along) == 0, "wall %d", w.ID)
			continue
		}
		if !w.Expect.Feasible {
			blocked++
			require.Equal(t, Blocked, a.Verdict, "wall %d %q", w.ID, w.Say)
			continue
		}
		require.NotEqual(t, Blocked, a.Verdict, "wall %d %q", w.ID, w.Say)
		require.NotNil(t, a.Options, "wall %d %q", w.ID, w.Say)
		if strings.Contains(w.Kind, "v") {
			var got []referenceRails
			for _, o := range a.Options.Up {
				got = append(got, referenceRails{o.Rails, o.Gap.reference(), o.BottomGap.reference(), o.WallHeight.reference()})
			}
			require.Equal(t, w.Expect.Rails, got, "wall %d %q", w.ID, w.Say)
		}
		if strings.Contains(w.Kind, "h") {
			var got []referencePosts
			for _, o := range a.Options.Along {
				r := referencePosts{Posts: o.AddedPosts, Bays: o.Bays, Bay: o.Bay.reference(), M: o.Stiffeners}
				if o.Opening != nil {
					e := o.Opening.reference()
					r.Opening = &e
				}
				got = append(got, r)
			}
			require.Equal(t, w.Expect.Posts, got, "wall %d %q", w.ID, w.Say)
		}
	}
	t.Logf("%d walls: %d blocked, %d hold only with more posts than the reference looked at", len(walls), blocked, beyond)
	require.LessOrEqual(t, beyond, 3)
}

// bookOf says normal forms. Only the plain shapes that the tests of this package use are read here; the grammar,
// which this package must not know, reads everything else.
func bookOf(t testing.TB, lines ...string) Book {
	t.Helper()
	var b Book
	for _, line := range lines {
		next, _, _, err := b.With(say(t, line), nil)
		require.NoError(t, err, line)
		b = next
	}
	return b
}

var (
	plainForm = regexp.MustCompile(`^(.+?) (=|<=|>=|<|>|~|in|\+=|-=|\*=) (.+)$`)
	partForm  = regexp.MustCompile(`^(bay|opening|rail|post) (\d+)(.*)$`)
)

func say(t testing.TB, line string) Statement {
	t.Helper()
	m := plainForm.FindStringSubmatch(line)
	if m == nil {
		return Statement{Name: Name{Quantity: Goal}, Value: Value{Word: line}}
	}
	s := Statement{Name: nameOf(m[1]), Op: Op(m[2])}
	if s.Op == In {
		lo, hi, _ := strings.Cut(m[3], "..")
		s.Value, s.Upper = formValue(t, lo), formValue(t, hi)
		return s
	}
	s.Value = formValue(t, m[3])
	return s
}

func nameOf(s string) Name {
	if m := partForm.FindStringSubmatch(s); m != nil {
		i, _ := strconv.Atoi(m[2])
		rest := strings.TrimSpace(m[3])
		switch m[1] {
		case "bay":
			if rest == "" {
				rest = "bay"
			}
			return Name{Quantity: Quantity(rest), Bay: i}
		case "opening":
			return Name{Quantity: Quantity(strings.TrimSpace("opening " + rest)), Opening: i}
		case "rail":
			return Name{Quantity: Quantity("rail " + rest), Rail: i}
		}
		return Name{Quantity: Quantity("post " + rest), Post: i}
	}
	if rest, ok := strings.CutPrefix(s, "fixed rail "); ok {
		i, _ := strconv.Atoi(strings.Fields(rest)[0])
		return Name{Quantity: FixedRail, Rail: i}
	}
	return Name{Quantity: Quantity(s)}
}

func formValue(t testing.TB, s string) Value {
	t.Helper()
	switch {
	case strings.Contains(s, ", "):
		var v Value
		for _, e := range strings.Split(s, ", ") {
			v.List = append(v.List, formValue(t, e))
		}
		return v
	case strings.HasSuffix(s, " in") && isNumber(strings.TrimSuffix(s, " in")):
		return Inches(mixedNumber(t, strings.TrimSuffix(s, " in")))
	case strings.HasSuffix(s, " mm") && isNumber(strings.TrimSuffix(s, " mm")):
		return Value{Num: mixedNumber(t, strings.TrimSuffix(s, " mm")).Div(PerInch), Unit: Millimeter}
	case isNumber(s):
		return Value{Num: mixedNumber(t, s)}
	case KindOf(Quantity(strings.Fields(s)[0])) == 0 && !strings.Contains(s, " "):
		return Value{Word: s}
	}
	return relationOf(t, s)
}

func isNumber(s string) bool { return regexp.MustCompile(`^-?[0-9][-0-9./]*$`).MatchString(s) }

func mixedNumber(t testing.TB, s string) exact.Rat {
	t.Helper()
	if whole, frac, ok := strings.Cut(strings.TrimPrefix(s, "-"), "-"); ok {
		r := exact.Must(whole).Add(exact.Must(frac))
		if strings.HasPrefix(s, "-") {
			r = r.Neg()
		}
		return r
	}
	r, err := exact.Parse(s)
	require.NoError(t, err)
	return r
}

// relationOf reads "2 * gap + 1/2 in".
func relationOf(t testing.TB, s string) Value {
	t.Helper()
	v := Value{Unit: Inch}
	if f, rest, ok := strings.Cut(s, " * "); ok {
		m := mixedNumber(t, f)
		v.Mult, s = &m, rest
	}
	for _, sign := range []string{" + ", " - "} {
		if n, k, ok := strings.Cut(s, sign); ok {
			s, v.Num = n, formValue(t, k).Num
			if sign == " - " {
				v.Num = v.Num.Neg()
			}
		}
	}
	n := nameOf(s)
	v.Of = &n
	return v
}
