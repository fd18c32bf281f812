// Package lumber knows what a lumber size measures: published dressed sizes, each with its source.
//
// It knows nominal customary sizes ("2x6", "5/4x6") and metric sizes ("90x45"), which are what they say. It does not
// know what a size is used for, what it costs, or how strong it is; nor what is not published or where the tables disagree.
package lumber

import (
	"fmt"
	"sort"
	"strings"

	"saywright/solver/exact"
)

// Size is one lumber size. Lengths are inches, exact.
type Size struct {
	Name       string    // as it was said: order kept, "6x2" stays "6x2"
	Thickness  exact.Rat // the smaller dressed figure
	Face       exact.Rat // the larger dressed figure
	Green      *Green    // as it leaves the mill unseasoned, where that is published
	Source     string    // where the figures come from
	Metric     bool      // said in millimeters
	FromMemory bool      // the source is known from memory only: never to be called published
}

// Green is the size of unseasoned lumber, larger so that it reaches the dry size in use. Inches.
type Green struct{ Thickness, Face exact.Rat }

// Unknown says that a size is in no table here. Known lists what is, Why tells more where there is more to tell.
type Unknown struct {
	Said  string
	Known []string
	Why   string
}

// Error names what was said, what is known, and the way on.
func (u *Unknown) Error() string {
	s := fmt.Sprintf("got size %q, want one of %s, or a metric size such as 90x45", u.Said, strings.Join(u.Known, ", "))
	if u.Why != "" {
		s += "; " + u.Why
	}
	return s
}

// Find returns the size called name: two figures with an x between, in either order. Both figures in millimeters (12 or
// more, one of them 32 or more) make a metric size, which measures what it says; all others are nominal and are looked
// up. What is in no table comes back as an *Unknown.
func Find(name string) (Size, error) {
	a, b, ok := figures(name)
	if !ok {
		return Size{}, unknown(name, "a size is two figures with an x between them")
	}
	small, large := exact.Min(a, b), exact.Max(a, b)
	if !small.Less(exact.Int(12)) && !large.Less(exact.Int(32)) {
		return metric(name, small, large), nil
	}
	for _, row := range dressed {
		if row.nominal(small, large) {
			return row.size(name), nil
		}
	}
	if !small.Less(exact.Int(5)) && !large.Less(exact.Int(7)) {
		return Size{}, unknown(name, wideTimber)
	}
	return Size{}, unknown(name, "")
}

// All returns every size that is listed with a source of its own: the customary ones, then the metric ones.
func All() []Size {
	var all []Size
	for _, row := range dressed {
		all = append(all, row.size(row.name))
	}
	for _, known := range listedMetric {
		for _, name := range known.names {
			if s, err := Find(name); err == nil {
				all = append(all, s)
			}
		}
	}
	return all
}

func unknown(name, why string) error {
	u := &Unknown{Said: name, Why: why}
	for _, row := range dressed {
		u.Known = append(u.Known, row.name)
	}
	return u
}

// figures reads the two figures of a size, whole, decimal or a fraction as in 5/4x6.
func figures(name string) (a, b exact.Rat, ok bool) {
	left, right, found := strings.Cut(strings.NewReplacer("X", "x", "×", "x", " ", "").Replace(name), "x")
	if !found || len(left) > 12 || len(right) > 12 {
		return a, b, false
	}
	a, err1 := exact.Parse(left)
	b, err2 := exact.Parse(right)
	return a, b, err1 == nil && err2 == nil && a.Sign() > 0 && b.Sign() > 0
}

func metric(name string, small, large exact.Rat) Size {
	s := Size{Name: name, Metric: true, Source: itsOwnSize,
		Thickness: small.Div(millimeters), Face: large.Div(millimeters)}
	key := small.String() + "x" + large.String()
	for _, known := range listedMetric {
		if i := sort.SearchStrings(known.keys, key); i < len(known.keys) && known.keys[i] == key {
			s.Source, s.FromMemory = known.source, known.fromMemory
			break
		}
	}
	return s
}

// millimeters in an inch: 25.4 exactly (NIST SP 811, appendix B.8).
var millimeters = exact.New(254, 10)

// Nominal returns the larger figure of a customary size's name, inches: what a 2x6 is called, not what it measures. It
// is not ok for metric sizes, which are called what they measure.
func Nominal(name string) (exact.Rat, bool) {
	size, err := Find(name)
	if err != nil || size.Metric {
		return exact.Rat{}, false
	}
	a, b, ok := figures(name)
	return exact.Max(a, b), ok
}
