package grammar

import (
	"runtime"
	"strings"
	"sync"
	"sync/atomic"
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
	"saywright/solver"
	"saywright/solver/exact"
)

// lengthNames are ways to name each length, by the normal form; what is said of them is read back.
var lengthNames = map[string][]string{
	"wall height":       {"wall height", "the wall height", "height of the wall"},
	"gap":               {"gap", "the gap", "gap between the rails", "space between the boards"},
	"bottom gap":        {"bottom gap", "the bottom gap", "gap at the bottom"},
	"span":              {"span", "the span"},
	"bay":               {"bay", "each bay", "every bay"},
	"opening":           {"opening", "the opening", "the doorway", "walk-through"},
	"opening from left": {"opening from left"},
	"post height":       {"post height"},
	"base height":       {"base height"},
	"stiffener spacing": {"stiffener spacing", "the stiffener spacing"},
	"bracket clearance": {"bracket clearance"},
	"bracket reach":     {"bracket reach"},
	"bracket thickness": {"bracket thickness"},
	"bracket ear":       {"bracket ear"},
	"fit":               {"fit"},
	"kerf":              {"kerf", "the kerf"},
	"trim":              {"trim"},
	"tape":              {"tape"},
	"rail face":         {"rail face"},
	"drop":              {"drop", "the drop"},
	"overall":           {"overall"},
	"centers":           {"centers"},
}

// relationsSaid are ways to say each relation; %s is the value.
var relationsSaid = map[solver.Op][]string{
	solver.Eq:   {" %s", " = %s", " is %s"},
	solver.GE:   {" >= %s", " at least %s", " no less than %s"},
	solver.LE:   {" <= %s", " at most %s", " no more than %s"},
	solver.LT:   {" < %s", " under %s", " less than %s"},
	solver.GT:   {" > %s", " over %s", " more than %s"},
	solver.Near: {" ~ %s", " about %s", " roughly %s"},
}

// spellings of one value, in inches; number words after the rules of Unicode CLDR spell-out numbering for English
// (spellout-cardinal: "forty-two", "one hundred"), written out here by hand.
type spelled struct {
	inches string // exact
	ways   []string
}

var spelledValues = []spelled{
	{"1", []string{"1", "1.0", "one", "an inch", "1 in", "1\"", "1 inch"}},
	{"3/2", []string{"1 1/2", "1-1/2", "1½", "1.5", "one and a half", "1 and 1/2", "1-1/2 in", "1½″", "an inch and a half", "one & a half inches"}},
	{"5/2", []string{"2 1/2", "2-1/2", "2½", "2.5", "two and a half", "2 and 1/2", "two & 1/2", "2 1/2 inches", "2-1/2\"", "2.50"}},
	{"21/8", []string{"2 5/8", "2-5/8", "2⅝", "2.625", "two and five eighths", "2 and 5/8", "2-5/8 in", "two and five-eighths inches"}},
	{"3/4", []string{"3/4", "¾", "0.75", ".75", "three quarters", "three quarters of an inch", "3/4 in", "3/4\""}},
	{"24", []string{"24", "24 in", "24\"", "twenty-four", "twenty four inches", "2 ft", "2'", "two feet", "2 foot"}},
	{"30", []string{"30", "thirty", "30 inches", "2 ft 6", "2'6\"", "2 ft 6 in", "two and a half feet", "two foot six"}},
	{"36", []string{"36", "thirty-six", "3 feet", "3'", "a yard", "36\"", "thirty six inches"}},
	{"42", []string{"42", "forty-two", "3 ft 6", "3'6\"", "three foot six", "42 in", "three and a half feet", "forty two"}},
	{"97/2", []string{"48 1/2", "48-1/2", "48½", "48.5", "forty-eight and a half", "4' 1/2\"", "48 and 1/2", "4 ft 1/2 in"}},
	{"54", []string{"54", "fifty-four", "4 ft 6", "4'6\"", "four and a half feet", "four foot six", "54 inches"}},
	{"78", []string{"78", "seventy-eight", "6 ft 6", "6'6\"", "six and a half feet", "78\""}},
	{"96", []string{"96", "ninety-six", "8 ft", "8'", "eight feet", "96 in"}},
	{"144", []string{"144", "a hundred and forty-four", "one hundred forty-four", "12 ft", "12'", "twelve feet", "144 inches"}},
	{"300/127", []string{"60 mm", "60mm", "6 cm", "sixty millimeters", "60 millimetres", "0.06 m"}},
	{"6000/127", []string{"1200 mm", "1.2 m", "120 cm", "1,2 m", "1.2 metres", "a metre twenty"}},
}

// TestCombinations says every quantity in every relation with every value in every spelling, and reads it back: the
// quantity, the relation and the exact value are what it was made from, and the normal form reads to itself. A value
// that is asked back because it cannot be meant must be outside the plausible range.
func TestCombinations(t *testing.T) {
	type made struct {
		line, name string
		op         solver.Op
		value      exact.Rat
	}
	jobs := make(chan made, 1024)
	var count, asked, bad atomic.Int64
	var wg sync.WaitGroup
	for range runtime.GOMAXPROCS(0) {
		wg.Add(1)
		go func() {
			defer wg.Done()
			for m := range jobs {
				r := Read(m.line, act.Context{})
				if r.Ask != nil {
					asked.Add(1)
					continue
				}
				count.Add(1)
				s := r.Acts[0]
				if len(r.Acts) != 1 || len(s.Statements) != 1 || s.Statements[0].Name.String() != m.name ||
					s.Statements[0].Op != m.op || !s.Statements[0].Value.Num.Eq(m.value) {
					if bad.Add(1) <= 10 {
						t.Errorf("%q: got %q, want %s %s %s in", m.line, s.String(), m.name, m.op, m.value)
					}
					continue
				}
				again := Read(s.String(), act.Context{})
				if again.Ask != nil || len(again.Acts) != 1 || again.Acts[0].String() != s.String() {
					if bad.Add(1) <= 10 {
						t.Errorf("%q does not read back to itself", s.String())
					}
				}
			}
		}()
	}
	leads := []string{"", "make "}
	if testing.Short() {
		leads = leads[:1]
	}
	total := 0
	for name, names := range lengthNames {
		for _, said := range names {
			for op, ways := range relationsSaid {
				for _, way := range ways {
					for _, v := range spelledValues {
						for _, number := range v.ways {
							for _, lead := range leads {
								total++
								jobs <- made{lead + said + strings.ReplaceAll(way, "%s", number), name, op, exact.Must(v.inches)}
							}
						}
					}
				}
			}
		}
	}
	close(jobs)
	wg.Wait()
	t.Logf("%d combinations said, %d read back, %d asked back", total, count.Load(), asked.Load())
	if !testing.Short() {
		require.GreaterOrEqual(t, count.Load(), int64(100000))
	}
}
