package grammar

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Every line of the files has its kind, words and plainer ones, and the forms that are made of its verbs and nouns are English: held against
// the word list of SCOWL (english.txt), which has the inflected forms, where it has the word itself.
func TestKindredFormsAreEnglish(t *testing.T) {
	seen := map[string]string{}
	for _, line := range kindredLines() {
		if strings.HasPrefix(line, "#") || line == "" {
			continue
		}
		kind, rest, ok := strings.Cut(line, " ")
		from, to, colon := strings.Cut(rest, ":")
		require.True(t, ok && colon && (kind == "v" || kind == "n" || kind == "w") && strings.TrimSpace(to) != "", "%q", line)
		for _, w := range strings.Split(from, ",") {
			words := strings.Fields(w)
			require.NotEmpty(t, words, "%q", line)
			name := kind + " " + strings.Join(words, " ")
			assert.Empty(t, seen[name], "%q stands twice", name)
			seen[name] = line
		}
		for _, w := range strings.Split(from+","+to, ",") {
			words := strings.Fields(w)
			at := 0
			if kind == "n" {
				at = len(words) - 1
			}
			if kind == "w" || len(words[at]) < 4 || !english()[words[at]] {
				continue
			}
			for _, form := range formsOf(kind, words) {
				assert.True(t, english()[form[at]], "%q of %q", form[at], line)
			}
		}
	}
}

// What is put in the place of a word is of the tables itself, in its base form at least: it helps nobody otherwise.
func TestKindredPlainWordsAreKnown(t *testing.T) {
	for _, line := range kindredLines() {
		if _, to, ok := strings.Cut(line, ":"); ok && !strings.HasPrefix(line, "#") {
			for _, m := range strings.Split(to, ",") {
				assert.True(t, strings.TrimSpace(m) == "-" || allOfTables(strings.Fields(m)), "%q of %q", m, line)
			}
		}
	}
}

func TestKindredHeard(t *testing.T) {
	for line, want := range map[string]string{
		"tack two more inches onto the wall height and tell me what the gap comes to": "wall height += 2 in; ask gap",
		"I authorize $375 for materials and no more.":                                 "budget = 375.00",
		"retrieve the plan I stored as quote one":                                     "open quote one",
		"they've started carrying eighteen footers too":                               "stock += 216 in",
	} {
		r := Read(line, Context{Saved: []string{"quote one"}})
		if assert.Nil(t, r.Ask, line) {
			assert.Equal(t, want, Normal(r.Acts), line)

		}
	}
}

// Words that have no plainer one stay asked about, and so do lines of which two readings would come.
func TestKindredNotHeard(t *testing.T) {
	for _, line := range []string{
		"they refused to carry eighteen footers",
		"he authorized nothing",
		"I doubt they carry eighteen footers",
		"two by two we carried the boards over",
	} {
		assert.NotNil(t, Read(line, Context{}).Ask, line)
	}
}

// A word by which a clause takes back, denies, judges or tells somebody's view of what is said beside it has no plainer one: the guards that know
// it would no longer see it.
func TestKindredLeavesTurningWords(t *testing.T) {
	for _, rows := range kindred() {
		for _, row := range rows {
			if len(row.words) > 1 {
				continue
			}
			w := row.words[0]
			for name, set := range map[string]map[string]bool{"turning": turning, "withheld": withheld} {
				assert.False(t, set[w], "%q is a %s word", w, name)
			}
		}
	}
}
