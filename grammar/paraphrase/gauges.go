package paraphrase

import (
	"strings"

	"saywright/grammar/chunk"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
)

// The number of a screw's thickness is none of its length, a grade of lumber is no count, and a "k" behind money is thousands: "#8 x 2-1/2 screws",
// "#2 2x6 rails", "budget 2k". The first two are left out, as nothing of the wall hangs on them. Everyday speech, no source.

// gaugesAndGrades leaves numbers of screws and of grades out, and writes thousands out.
func gaugesAndGrades(in []scan.Atom) []scan.Atom {
	for i := 0; i < len(in); i++ {
		if in[i].Text == "k" && i > 0 {
			in = thousandsAt(in, i)
			continue
		}
		if gaugeNumbers[in[i].Text] && i+4 < len(in) && in[i+1].Text == "x" && fractionAt(in, i+2) && screwsSoon(in, i+2) {
			in = scan.CutOut(in, i, i+2)
			continue
		}
		n, grade := numberSignAt(in, i)
		if n == 0 || i+n >= len(in) || in[i+n].Kind != scan.Digits && !chunk.SpelledNumber(in[i+n].Text) {
			continue
		}
		next := i + n + 1
		switch {
		case !grade && next+1 < len(in) && (in[next].Text == "x" || in[next].Text == "by") && screwsSoon(in, next+1):
			in = scan.CutOut(in, i, next+1)
		case gradeNumbers[in[i+n].Text] && sizeAt(in, next):
			in = scan.CutOut(in, i, next)
		case gradeNumbers[in[i+n].Text] && next < len(in) && gradeWords[in[next].Text] && sizeAt(in, next+1):
			in = scan.CutOut(in, i, next+1)
		}
	}
	return in
}

// gradeNumbers are the common grades of lumber.
var gradeNumbers = scan.WordSet("1 2 3 one two three")

// gradeWords may stand behind the number of a grade.
var gradeWords = scan.WordSet("grade common prime pine fir spruce cedar hemlock")

// gaugeNumbers are the common thicknesses of screws.
var gaugeNumbers = scan.WordSet("6 7 8 9 10 12 14")

// fractionAt reports whether a mixed figure begins at an atom: "2 1/2", "2-1/2".
func fractionAt(in []scan.Atom, i int) bool {
	if i+1 < len(in) && in[i+1].Text == "-" {
		i++
	}
	return i+1 < len(in) && (in[i+1].Kind == scan.Vulgar || i+3 < len(in) && in[i+2].Text == "/")
}

// numberSignAt tells of how many atoms a sign of a number at an atom is made, and whether it is of a grade only.
func numberSignAt(in []scan.Atom, i int) (n int, grade bool) {
	switch in[i].Text {
	case "#", "number":
		return 1, false
	case "grade":
		return 1, true
	case "no":
		if i+1 < len(in) && in[i+1].Text == "." && in[i+1].Glued {
			return 2, false
		}
	}
	return 0, false
}

// screwsSoon reports whether a length begins at an atom, and screws are named behind it.
func screwsSoon(in []scan.Atom, i int) bool {
	_, next, ok := measure.Reader{Atoms: in}.Length(i)
	for ; ok && next < len(in) && next < i+12; next++ {
		if strings.HasPrefix(in[next].Text, "screw") {
			return true
		}
		if in[next].Kind != scan.Word {
			return false
		}
	}
	return false
}

// sizeAt reports whether a size of lumber stands at an atom.
func sizeAt(in []scan.Atom, i int) bool {
	return i+2 < len(in) && (in[i+1].Text == "x" || in[i+1].Text == "by") && chunk.Numeric(in[i]) && chunk.Numeric(in[i+2]) && in[i].Kind != scan.Vulgar
}

// thousandsAt writes thousands of money out whose "k" stands at an atom, right behind the figure.
func thousandsAt(in []scan.Atom, i int) []scan.Atom {
	figure := in[i-1]
	if figure.Kind != scan.Digits || !in[i].Glued && i+1 < len(in) || strings.Contains(figure.Text, ",") || !ofMoney(in, i) {
		return in
	}
	whole, part, _ := strings.Cut(figure.Text, ".")
	if len(part) > 3 {
		return in
	}
	figure.Text, figure.End = strings.TrimLeft(whole+part+strings.Repeat("0", 3-len(part)), "0"), in[i].End
	out := append(append([]scan.Atom{}, in[:i-1]...), figure)
	return append(out, in[i+1:]...)
}

// ofMoney reports whether money is spoken of in a line with a figure before atom i.
func ofMoney(in []scan.Atom, i int) bool {
	if i > 1 && in[i-2].Text == "$" {
		return true
	}
	for _, a := range in {
		if moneyNamed[a.Text] {
			return true
		}
	}
	return false
}

var moneyNamed = scan.WordSet("budget spend spending dollars bucks cost costs quote total bill price comes money afford")
