package explain

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/explain/figure"
	"saywright/solver"
	"saywright/solver/exact"
)

func TestPhrases(t *testing.T) {
	v := &voice{a: &solver.Answer{}}
	for form, want := range map[string]string{
		"wall height = 48 in":                   "a wall of 48",
		"wall height ~ 48 in":                   "a wall of about 48",
		"gap = 2-1/2 in":                        "a gap of 2-1/2",
		"gap < 4 in":                            "a gap of less than 4",
		"gap > 2 in":                            "a gap of more than 2",
		"gap in 2 in..3 in":                     "a gap of 2 to 3",
		"opening >= 24 in":                      "an opening of 24 or more",
		"bay <= 96 in":                          "bays of 96 or less",
		"bay 2 = 60 in":                         "bay 2 at 60",
		"rails = 6":                             "six rails",
		"rails = 1":                             "one rail",
		"rails in 5..7":                         "five to seven rails",
		"rails <= 6":                            "six rails or fewer",
		"rails = 14":                            "14 rails",
		"bay 2 stiffeners = 2":                  "two stiffeners in bay 2",
		"rail size = 2x6":                       "2x6 rails",
		"post size = 4x4":                       "4x4 posts",
		"bottom gap = gap":                      "the same gap underneath",
		"post height = wall height + 2 in":      "posts 2 above the wall",
		"opening >= 2 * gap":                    "the opening no less than twice the gap",
		"bottom gap = gap - 1 in":               "the gap underneath 1 less than the gap",
		"opening side = right":                  "the opening against the right post",
		"opening 2 side = middle":               "opening 2 in the middle",
		"opening from left = 60 in":             "the opening 60 from the left post",
		"stock = 96 in, 144 in, 192 in":         "boards of 96, 144 and 192",
		"stock 4x4 = 96 in, 120 in":             "4x4 boards of 96 and 120",
		"price 2x6 192 in = 14.50":              "a 2x6 of 192 at 14.50",
		"price bracket = 3.49":                  "a bracket at 3.49",
		"price screws 100 = 9.00":               "100 screws at 9.00",
		"have 2x6 144 in x 6":                   "six 2x6 of 144 at hand",
		"extra 2x6 45-1/2 in x 12":              "twelve 2x6 of 45-1/2 besides",
		"measured bay 1 rail 3 = 68-3/8 in":     "rail 3 of bay 1 measures 68-3/8",
		"measured bay 1 bottom = 68-3/8 in":     "bay 1 at the bottom measures 68-3/8",
		"measured opening = 30 in":              "the opening measures 30",
		"rail 3 top = 24 in":                    "the top of rail 3 at 24",
		"fixed rail 2 top = 16 in":              "rail 2 up already, its top at 16",
		"post 1 from left = 60 in":              "post 1 at 60 from the left",
		"floor falls 1/8 in per 12 in":          "a floor that falls 1/8 per 12",
		"left post leans 3/8 in right in 48 in": "the left post leans 3/8 right in 48",
		"floor at right = 0 in":                 "a level floor",
		"equal bays":                            "equal bays",
		"smallest gap":                          "the smallest gap",
		"cheapest":                              "the lowest cost",
		"same length":                           "all rails of a bay cut to one length",
		"spare = 10%":                           "10% of lumber to spare",
		"spare = 1":                             "1 board to spare",
		"spare = 2":                             "2 boards to spare",
		"budget = 350.00":                       "a budget of 350.00",
		"check cost = 380.00":                   "check cost at 380.00", // an act, not a statement: the words as they came
		"cost = 380.00":                         "a cost of 380.00",
		"cut bay 1 = 66-1/8 in":                 "the rails of bay 1 cut at 66-1/8",
		"cut post = 44 in":                      "posts cut at 44",
		"marks = 8-1/2 in, 16-1/2 in":           "marks at 8-1/2 and 16-1/2",
		"boards 2x6 144 in = 10":                "ten 2x6 of 144",
		"kerf = 1/8 in":                         "a saw cut of 1/8",
		"fit = 1/8 in":                          "1/8 of play in all",
		"bracket clearance = 2 in":              "brackets that need 2 between rails",
		"short bay 1 rail 3 = 1/4 in":           "rail 3 of bay 1, 1/4 short",
		"north wall: gap = 2 in":                "north wall: a gap of 2",
		"coats = 2":                             "two coats",
		"gap = 2.37 in":                         "a gap of 2.37",
		"gap = 60 mm":                           "a gap of 60 millimeters",
		"something nobody knows":                "something nobody knows",
		"something = odd":                       "something at odd",
	} {
		require.Equal(t, want, written(v.phrase(form), figure.Style{}), form)
	}
	require.Equal(t, "a gap of 60 mm", written((&voice{a: v.a, Style: figure.Style{Metric: true}}).phrase("gap = 60 mm"), figure.Style{Metric: true}))
	require.Equal(t, "bays of 2438.4 mm or less", written(v.phrase("bay <= 96 in"), figure.Style{Metric: true}))
}

func TestFigures(t *testing.T) {
	v := &voice{}
	for _, c := range []struct{ text, eye, ear string }{
		{v.length(exact.Must("17/6")), "2-5/6", "about two and thirteen sixteenths inches"},
		{v.both(exact.Must("17/6")), "2-5/6 (about 2-13/16)", "about two and thirteen sixteenths inches"},
		{v.both(exact.Must("5/2")), "2-1/2", "two and a half inches"},
		{v.both(exact.Must("115/48")), "about 2-3/8", "about two and three eighths inches"}, // 2-19/48: nobody has that in the head
		{v.about(exact.Must("103/6")), "about 17-3/16", "about seventeen and three sixteenths inches"},
		{v.short(exact.Must("17/6")), "2-5/6", "about two and thirteen sixteenths inches"},
		{v.ball(exact.Int(4)), "4 in", "four inch"},
		{count(6), "six", "six"},
		{count(13), "13", "thirteen"},
		{count(0), "no", "no"},
		{money(exact.Must("25/2")), "12.50", "twelve fifty"},
		{number(exact.Int(12345)), "12,345", "twelve thousand three hundred forty five"},
		{size("2x6"), "2x6", "two by six"},
		{forEye("x"), "x", ""},
		{quoted("a\x01b\x1b[31m\tc\u202e"), "ab[31m c", "ab[31m c"},
	} {
		require.Equal(t, c.eye, written(c.text, figure.Style{}))
		require.Equal(t, c.ear, heard(c.text, figure.Style{}))
	}
	require.Equal(t, "Six rails.", written(sentence(count(6)+" rails"), figure.Style{}))
	require.Equal(t, "13 rails.", written(sentence(count(13)+" rails"), figure.Style{}))
}

func TestUnitsOfSums(t *testing.T) {
	length := solver.Line("wall height", "sum", solver.Sum(solver.Num(exact.Int(33)), solver.Num(exact.Int(15))))
	tally := solver.Line("bracket", "brackets", solver.Product(solver.Tally(2), solver.Tally(5)))
	area := solver.Line("finish", "faces and ends", solver.Product(solver.Num(exact.Int(2)), solver.Num(exact.Int(3))))
	cost := solver.Line("2x6", "amount", solver.Product(solver.Tally(3), solver.Paid(exact.Must("29/2"))))
	for _, c := range []struct {
		w          solver.Work
		inches, mm string
	}{
		{length, "33 + 15 = 48 in", "838.2 + 381 = 1219.2 mm"}, // 1 in = 25.4 mm exactly: NIST SP 811, appendix B.8
		{tally, "2 × 5 = 10", "2 × 5 = 10"},
		{area, "2 × 3 = 6 sq in", "50.8 × 76.2 = 3870.96 sq mm"},
		{cost, "3 × 14.50 = 43.50", "3 × 14.50 = 43.50"},
	} {
		inches := &voice{a: &solver.Answer{}}
		mm := &voice{a: &solver.Answer{}, Style: figure.Style{Metric: true}}
		require.Equal(t, c.inches, inches.says(c.w))
		require.Equal(t, c.mm, mm.says(c.w))
	}
}
