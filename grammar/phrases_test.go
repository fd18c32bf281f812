package grammar

import (
	"bufio"
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
)

// listedPhrase is a line as somebody said it, and its normal forms.
type listedPhrase struct {
	file string
	line int
	said string
	want []string
}

// phraseLists reads every list in testdata/phrases: `utterance<TAB>normal form; normal form`. phrases.tsv is the list of
// seven kinds of people that the grammar was built on, variants.tsv and asking.tsv what was tried while building it; the others were written
// by people who had not seen the grammar.
func phraseLists(t testing.TB) []listedPhrase {
	t.Helper()
	return listsIn(t, "../testdata/phrases/*.tsv")
}

// listsIn reads the lists that a pattern of names finds.
func listsIn(t testing.TB, pattern string) []listedPhrase {
	t.Helper()
	names, err := filepath.Glob(pattern)
	require.NoError(t, err)
	require.NotEmpty(t, names)
	var out []listedPhrase
	for _, name := range names {
		f, err := os.Open(name)
		require.NoError(t, err)
		lines := bufio.NewScanner(f)
		for n := 1; lines.Scan(); n++ {
			said, want, found := strings.Cut(lines.Text(), "\t")
			if !found || strings.HasPrefix(said, "#") {
				continue
			}
			p := listedPhrase{file: filepath.Base(name), line: n, said: strings.TrimSpace(said)}
			for _, w := range strings.Split(want, ";") {
				p.want = append(p.want, strings.Join(strings.Fields(w), " "))
			}
			out = append(out, p)
		}
		require.NoError(t, lines.Err())
		f.Close()
	}
	return out
}

var oneLimit = regexp.MustCompile(`^(.+) (>=|<=) (.+)$`)

// tidy counts two limits said one by one as the range that they make.
func tidy(forms []string) []string {
	var out []string
	for _, f := range forms {
		one := oneLimit.FindStringSubmatch(f)
		if one != nil && len(out) > 0 {
			if two := oneLimit.FindStringSubmatch(out[len(out)-1]); two != nil && two[1] == one[1] && two[2] != one[2] {
				low, high := one[3], two[3]
				if one[2] == "<=" {
					low, high = high, low
				}
				out[len(out)-1] = fmt.Sprintf("%s in %s..%s", one[1], low, high)
				continue
			}
		}
		out = append(out, f)
	}
	return out
}

func hearing(said string) (forms []string, clear bool) {
	r := Read(said, act.Context{})
	if r.Ask != nil || len(r.Acts) == 0 {
		return nil, false
	}
	for _, a := range r.Acts {
		forms = append(forms, a.String())
	}
	return forms, true
}

// marks is how a list was heard: as it should be; asked back where it could have been heard; taken for something else.
type marks struct{ right, asked, misread, all int }

func (p listedPhrase) judge(s *marks) (heard []string) {
	s.all++
	heard, clear := hearing(p.said)
	switch {
	case slices.Equal(p.want, []string{"unclear"}):
		if clear {
			s.misread++
		} else {
			s.right++
		}
	case !clear:
		s.asked++
	case slices.Equal(tidy(heard), tidy(p.want)):
		s.right++
	default:
		s.misread++
	}
	return heard
}

// leastRight is the share, in percent, that must be heard right. A list that the grammar was built on is held to all but
// what stands in disputed; the others may be asked back more often.
var leastRight = map[string]int{"phrases.tsv": 99, "variants.tsv": 100, "asking.tsv": 100}

// mostMisread is how many lines of a list are read otherwise than it wants: what is disputed, and what is known and not yet mended.
var mostMisread = map[string]int{}

// leastRightLater and mostMisreadLater are the same of the lists in testdata/phrases/later, which were written by people who had not seen
// the grammar, and were heard worse at first sight. They may only get better.
var (
	leastRightLater = map[string]int{"breaths.tsv": 94, "contrasts.tsv": 82, "counter.tsv": 96, "dense_along.tsv": 99, "dense_ask.tsv": 99, "dense_up.tsv": 99, "dialects.tsv": 75, "families.tsv": 96, "homeowners.tsv": 98, "learners.tsv": 98, "lookalikes.tsv": 87, "lookalikes_10.tsv": 95,
		"lookalikes_11.tsv": 86, "lookalikes_12.tsv": 85, "lookalikes_13.tsv": 78, "lookalikes_14.tsv": 91, "lookalikes_2.tsv": 95, "lookalikes_3.tsv": 85, "lookalikes_4.tsv": 93, "lookalikes_5.tsv": 94,
		"lookalikes_6.tsv": 98, "lookalikes_7.tsv": 93, "lookalikes_8.tsv": 80, "lookalikes_9.tsv": 90, "orders.tsv": 100, "overseas.tsv": 99, "questions.tsv": 96, "sisters.tsv": 99,
		"sisters_10.tsv": 95, "sisters_11.tsv": 92, "sisters_12.tsv": 100, "sisters_13.tsv": 100, "sisters_14.tsv": 95, "sisters_15.tsv": 92, "sisters_16.tsv": 97, "sisters_17.tsv": 90,
		"sisters_18.tsv": 91, "sisters_19.tsv": 97, "sisters_2.tsv": 100, "sisters_20.tsv": 99, "sisters_21.tsv": 88, "sisters_22.tsv": 98, "sisters_23.tsv": 87, "sisters_24.tsv": 95,
		"sisters_25.tsv": 90, "sisters_26.tsv": 91, "sisters_27.tsv": 74, "sisters_28.tsv": 92, "sisters_29.tsv": 94, "sisters_3.tsv": 95, "sisters_30.tsv": 90, "sisters_31.tsv": 88, "sisters_32.tsv": 90, "sisters_33.tsv": 93, "sisters_34.tsv": 91, "sisters_4.tsv": 98, "sisters_5.tsv": 98, "sisters_6.tsv": 99, "sisters_7.tsv": 96, "sisters_8.tsv": 99, "sisters_9.tsv": 100, "talkers.tsv": 65,
		"trades.tsv": 99, "dense_shop.tsv": 96, "sisters_35.tsv": 97, "sisters_36.tsv": 98, "sisters_37.tsv": 97, "sisters_38.tsv": 95, "sisters_39.tsv": 97, "sisters_40.tsv": 97, "sisters_41.tsv": 95, "sisters_42.tsv": 94, "sisters_43.tsv": 100, "sisters_44.tsv": 92, "sisters_45.tsv": 98, "sisters_46.tsv": 92, "sisters_47.tsv": 99, "sisters_48.tsv": 98, "sisters_49.tsv": 91, "sisters_50.tsv": 99, "sisters_51.tsv": 95, "sisters_52.tsv": 100, "sisters_53.tsv": 96, "sisters_54.tsv": 91, "sisters_55.tsv": 98, "sisters_56.tsv": 94, "sisters_57.tsv": 89, "sisters_58.tsv": 97,
		"sisters_59.tsv": 96, "sisters_60.tsv": 95, "sisters_61.tsv": 84, "sisters_62.tsv": 98, "sisters_63.tsv": 96, "sisters_64.tsv": 91, "sisters_65.tsv": 81, "sisters_66.tsv": 98, "sisters_67.tsv": 89, "sisters_68.tsv": 98,
		"sisters_69.tsv": 91, "sisters_70.tsv": 94, "sisters_71.tsv": 99, "sisters_72.tsv": 92}
	mostMisreadLater = map[string]int{"sisters_59.tsv": 1, "sisters_61.tsv": 4, "sisters_69.tsv": 1, "sisters_70.tsv": 1, "sisters_48.tsv": 1, "sisters_50.tsv": 1, "contrasts.tsv": 3, "families.tsv": 3, "homeowners.tsv": 1, "lookalikes.tsv": 1, "lookalikes_10.tsv": 1, "lookalikes_11.tsv": 1, "lookalikes_12.tsv": 3, "lookalikes_13.tsv": 3,
		"lookalikes_2.tsv": 2, "lookalikes_3.tsv": 1, "lookalikes_5.tsv": 2, "lookalikes_7.tsv": 2, "lookalikes_8.tsv": 1, "lookalikes_9.tsv": 1, "sisters_10.tsv": 2, "sisters_15.tsv": 1,
		"sisters_23.tsv": 2, "sisters_25.tsv": 2, "sisters_26.tsv": 3, "sisters_27.tsv": 1, "sisters_29.tsv": 1, "sisters_30.tsv": 2, "sisters_31.tsv": 5, "sisters_33.tsv": 3, "lookalikes_14.tsv": 1, "talkers.tsv": 1}
)

func TestPhrases(t *testing.T) {
	holdMarks(t, phraseLists(t), leastRight, mostMisread)
}

func TestLaterPhrases(t *testing.T) {
	holdMarks(t, listsIn(t, "../testdata/phrases/later/*.tsv"), leastRightLater, mostMisreadLater)
}

// holdMarks scores lists, and holds the share heard right and the number misread.
func holdMarks(t *testing.T, list []listedPhrase, least, most map[string]int) {
	t.Helper()
	scores := map[string]*marks{}
	var files []string
	for _, p := range list {
		s := scores[p.file]
		if s == nil {
			s = &marks{}
			scores[p.file], files = s, append(files, p.file)
		}
		was := *s
		heard := p.judge(s)
		if s.misread > was.misread {
			t.Logf("%s:%d %q\n   want %q\n   got  %q", p.file, p.line, p.said, p.want, heard)
		}
	}
	var all marks
	for _, f := range files {
		s := scores[f]
		t.Logf("%-16s %3d lines: right %3d (%.1f %%), asked %2d, misread %d", f, s.all, s.right, 100*float64(s.right)/float64(s.all), s.asked, s.misread)
		require.GreaterOrEqual(t, 100*s.right, least[f]*s.all, f)
		require.LessOrEqual(t, s.misread, most[f], "%s: misread; see which with -v", f)
		all.right, all.asked, all.misread, all.all = all.right+s.right, all.asked+s.asked, all.misread+s.misread, all.all+s.all
	}
	t.Logf("%d lines: right %.1f %%, misread %d", all.all, 100*float64(all.right)/float64(all.all), all.misread)
}

// BenchmarkRead reads all lists: time for each line. Most tables are set up before; some are when the first line wants them.
func BenchmarkRead(b *testing.B) {
	list := phraseLists(b)
	Read("gap 2", act.Context{})
	readAll(b, list)
}

// BenchmarkReadOn is the same once every table that the lists want has been set up: a talk that goes on.
func BenchmarkReadOn(b *testing.B) {
	list := phraseLists(b)
	for _, p := range list {
		Read(p.said, act.Context{})
	}
	readAll(b, list)
}

func readAll(b *testing.B, list []listedPhrase) {
	b.ReportAllocs()
	for i := 0; b.Loop(); i++ {
		Read(list[i%len(list)].said, act.Context{})
	}
}

// FuzzRead reads anything: no crash, and a reading or a question whose place lies in the line.
func FuzzRead(f *testing.F) {
	for i, p := range phraseLists(f) {
		if i%7 == 0 {
			f.Add(p.said)
		}
	}
	f.Add("gap = 1/0")
	f.Add("0A,thAts") // crashes that fuzzing found
	f.Add("!!Brs1on")
	f.Add("void this ticket, neqxt customer")
	f.Add("also need " + strings.Repeat("!", 700) + " for it") // slow
	f.Add("rails = 1000000000, gap 2½″ − 12′ 6\"\x00\xff")
	f.Fuzz(func(t *testing.T, line string) {
		r := Read(line, act.Context{Answered: true, Tried: true})
		if r.Ask == nil && len(r.Acts) == 0 && strings.TrimSpace(line) != "" {
			t.Fatalf("%q: neither a reading nor a question", line)
		}
		if r.Ask != nil && r.Ask.At != nil && (*r.Ask.At < 0 || *r.Ask.At > utf8.RuneCountInString(line)) {
			t.Fatalf("%q: asked at %d", line, *r.Ask.At)
		}
		for _, a := range r.Acts {
			if a.String() == "" {
				t.Fatalf("%q: an act without a normal form", line)
			}
		}
	})
}
