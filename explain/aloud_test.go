package explain

import (
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/explain/figure"
	"saywright/solver"
	"saywright/solver/exact"
)

func TestLengthsAloud(t *testing.T) {
	for _, c := range []struct{ value, inches, mm string }{
		{"5/2", "two and a half inches", "sixty three point five millimeters"},
		{"1", "one inch", "twenty five point four millimeters"},
		{"3/8", "three eighths of an inch", "about nine point five millimeters"},
		{"1/8", "an eighth of an inch", "about three point two millimeters"},
		{"3/4", "three quarters of an inch", "about nineteen point one millimeters"},
		{"231/2", "one hundred fifteen and a half inches", "two thousand nine hundred thirty three point seven millimeters"},
		{"17/6", "about two and thirteen sixteenths inches", "about seventy two millimeters"},
		{"149", "one hundred forty nine inches", "three thousand seven hundred eighty four point six millimeters"},
		{"0", "zero inches", "zero millimeters"},
		{"-3/2", "minus one and a half inches", "minus thirty eight point one millimeters"},
		{"1/32", "about a sixteenth of an inch", "about zero point eight millimeters"},
	} {
		v := exact.Must(c.value)
		require.Equal(t, c.inches, lengthAloud(v, figure.Style{}), c.value)
		require.Equal(t, c.mm, lengthAloud(v, figure.Style{Metric: true}), c.value)
	}
}

func TestNumbersAloud(t *testing.T) {
	for value, want := range map[string]string{
		"0": "zero", "7": "seven", "13": "thirteen", "20": "twenty", "21": "twenty one", "100": "one hundred", "115": "one hundred fifteen",
		"1000000": "one million", "1001": "one thousand one", "12345": "twelve thousand three hundred forty five",
		"-4": "minus four", "1000000000": "one zero zero zero zero zero zero zero zero zero",
	} {
		require.Equal(t, want, whole(exact.Must(value)), value)
	}
	for value, want := range map[string]string{"380": "three hundred eighty", "29/2": "fourteen fifty", "1/4": "twenty five cents", "349/100": "three forty nine",
		"1405/100": "fourteen and five cents"} {
		require.Equal(t, want, moneyAloud(exact.Must(value)), value)
	}
	for size, want := range map[string]string{"2x6": "two by six", "5/4x6": "five quarter by six", "90x45": "ninety by forty five", "4x4": "four by four"} {
		require.Equal(t, want, sizeAloud(size))
	}
	for n, want := range map[int]string{3: "third", 8: "eighth", 9: "ninth", 12: "twelfth", 16: "sixteenth", 20: "twentieth", 32: "thirty second", 64: "sixty fourth"} {
		require.Equal(t, want, ordinal(n))
	}
}

// Ears mix up -teens and -tys (forty for fourteen in ten of forty four, voice.md): those are read back digit by digit.
func TestReadBack(t *testing.T) {
	for form, want := range map[string]string{
		"wall height = 15 in":   "A wall of fifteen inches, one five.",
		"wall height = 50 in":   "A wall of fifty inches, five zero.",
		"gap = 2-1/2 in":        "A gap of two and a half inches.",
		"bay = 116-1/2 in":      "Bays of one hundred sixteen and a half inches, one one six.",
		"wall height = 48 in":   "A wall of forty eight inches.",
		"rail size = 2x6":       "Two by six rails.",
		"rails = 6":             "Six rails.",
		"forget all but gap":    "Forget all but gap.",
		"opening side = middle": "The opening in the middle.",
	} {
		require.Equal(t, want, ReadBack([]string{form}, false))
	}
	require.Equal(t, "A gap of sixty millimeters, six zero.", ReadBack([]string{"gap = 60 mm"}, true))
}

var notSpoken = regexp.MustCompile(`[^A-Za-z' ,.?]`)

func TestSpokenIsWordsAlone(t *testing.T) {
	longest := ""
	eachAnswer(t, Options{}, func(t *testing.T, a *solver.Answer) {
		require.Empty(t, notSpoken.FindAllString(a.Spoken, -1), a.Spoken)
		require.NotEmpty(t, a.Spoken, a.Said)
		require.LessOrEqual(t, strings.Count(a.Spoken, ".")+strings.Count(a.Spoken, "?"), mostSentences, a.Spoken)
		require.NotContains(t, a.Spoken, "  ")
		require.NotContains(t, a.Spoken, " ,")
		if len(a.Spoken) > len(longest) {
			longest = a.Spoken
		}
	})
	t.Logf("longest: %d words: %s", len(strings.Fields(longest)), longest)
}

func TestAloudDropsWhatStandsInParentheses(t *testing.T) {
	require.Equal(t, "Six rails. And so on.", aloud("Six rails (gaps 2-5/6). And so on.", 3))
	require.Equal(t, "One. Two. Three.", aloud("One. Two. Three. Four.", 3))
	require.Equal(t, "Is it?", aloud("Is it?", 3))
}
