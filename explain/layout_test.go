package explain

import (
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/solver"
)

var escape = regexp.MustCompile("\x1b\\[[0-9;]*m")

// narrowEnough fails on a line that is wider than asked and could have been broken. The line as it was said, shown with
// its caret, is cut to the width too.
func narrowEnough(t *testing.T, text string, width int) {
	t.Helper()
	for _, line := range strings.Split(text, "\n") {
		if cells(line) <= width || !strings.Contains(strings.TrimSpace(line), " ") {
			continue
		}
		require.LessOrEqual(t, cells(line), width, "%q\nin\n%s", line, text)
	}
}

func TestNoLineIsWiderThanAsked(t *testing.T) {
	for _, width := range []int{40, 60, 80, 120} {
		eachAnswer(t, Options{Width: width}, func(t *testing.T, a *solver.Answer) {
			narrowEnough(t, a.Text, width)
			require.NotEmpty(t, a.Text)
			for _, r := range a.Text {
				require.False(t, r < ' ' && r != '\n', "%q", a.Text)
			}
			require.NotContains(t, a.Text, "\n\n\n")
			require.Equal(t, strings.TrimSpace(a.Text), a.Text)
		})
	}
}

func TestWidthsOutsideAreBrought(t *testing.T) {
	require.Equal(t, 80, Options{}.width())
	require.Equal(t, 40, Options{Width: 3}.width())
	require.Equal(t, 200, Options{Width: 5000}.width())
}

func TestPlainASCIIWhenAsked(t *testing.T) {
	eachAnswer(t, Options{ASCII: true}, func(t *testing.T, a *solver.Answer) {
		for _, r := range a.Text {
			require.Less(t, r, rune(0x7f), "%s", a.Text)
		}
		require.NotContains(t, a.Text, "?x?")
	})
	require.Equal(t, `5 x 5-1/2 = 27-1/2, 3 - 1, 6 / 2, "a"`, ascii("5 × 5-1/2 = 27-1/2, 3 − 1, 6 ÷ 2, “a”"))
	require.Equal(t, "?", ascii("板"))
}

func TestColorIsNeverTheOnlyCarrier(t *testing.T) {
	eachAnswer(t, Options{}, func(t *testing.T, a *solver.Answer) {
		plainText := a.Text
		require.NotContains(t, plainText, "\x1b")
		inColor := Text(a, Options{Color: true})
		require.Equal(t, plainText, escape.ReplaceAllString(inColor, ""))
		require.Equal(t, plainText, a.Text)
	})
}

func TestTheSameAnswerIsTheSameBytes(t *testing.T) {
	eachAnswer(t, Options{}, func(t *testing.T, a *solver.Answer) {
		text, spoken := a.Text, a.Spoken
		Say(a, Options{})
		require.Equal(t, text, a.Text)
		require.Equal(t, spoken, a.Spoken)
		require.Equal(t, text, Text(a, Options{}))
	})
}

func TestSayLeavesSharedListsAlone(t *testing.T) {
	c := talk(t)
	c.line("wall height = 40 in; gap = 2-1/2 in; span = 149 in; opening = 30 in")
	before := c.base.Work[0].Says
	copied := *c.base
	Say(&copied, Options{})
	require.Equal(t, before, c.base.Work[0].Says)
	require.Empty(t, c.base.Cautions[0].Text)
	require.NotEmpty(t, copied.Cautions[0].Text)
}

func TestWrap(t *testing.T) {
	for _, c := range []struct {
		text  string
		width int
		want  []string
	}{
		{"one two three", 7, []string{"one two", "three"}},
		{"", 10, []string{""}},
		{"unbreakableword x", 5, []string{"unbreakableword", "x"}},
		{"them: 6 × 5-1/2 + 5 × 2 = 43", 26, []string{"them:", "6 × 5-1/2 + 5 × 2 = 43"}}, // a sum stays whole
		{"it is 215.9 mm wide", 11, []string{"it is", "215.9 mm", "wide"}},                // a figure keeps its unit
		{"板板板 板板", 6, []string{"板板板", "板板"}},
	} {
		require.Equal(t, c.want, wrap(c.text, c.width), c.text)
	}
}

// A sum that is wider than the line breaks before its signs; its result stands alone, so that no part reads as a whole.
func TestWideSumsBreakBeforeTheResult(t *testing.T) {
	lines := wrapSum("1628-1/4 + 1627-3/8 + 1626-1/2 + 1625-5/8 + 1624-3/4 + 648 = 8780-1/2", 40)
	require.Greater(t, len(lines), 1)
	require.Equal(t, "= 8780-1/2", strings.TrimSpace(lines[len(lines)-1]))
	for _, l := range lines {
		require.LessOrEqual(t, cells(l), 40)
	}
	require.Equal(t, []string{"1 + 2 = 3"}, wrapSum("1 + 2 = 3", 40))
}

func TestTablesStayAligned(t *testing.T) {
	tb := newTable("n", "<piece", "length")
	tb.row("1", "rail 1", "115-1/4")
	tb.row("12", "stiffeners", "37-1/2")
	require.Equal(t, []string{" n  piece        length", " 1  rail 1      115-1/4", "12  stiffeners   37-1/2"}, tb.lines(Options{Width: 40}))

	wide := newTable("<what", "<why")
	wide.row("boards", "because the longest of them fills no more than that, and the bay is wider")
	for _, l := range wide.lines(Options{Width: 40}) {
		require.LessOrEqual(t, cells(l), 40)
	}

	empty := newTable("<piece", "<ends")
	empty.row("rail", "")
	require.Equal(t, []string{"piece", "rail"}, empty.lines(Options{Width: 40})) // a column in which nothing stands goes

	figures := newTable("aaaaaaaaaaaaaaaaaaaaaaaa", "bbbbbbbbbbbbbbbbbbbbbbbbbb")
	figures.row("1", "2")
	for _, l := range figures.lines(Options{Width: 40}) { // no column can give: each row as a list
		require.LessOrEqual(t, cells(l), 40)
	}
}
