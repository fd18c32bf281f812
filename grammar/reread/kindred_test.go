package reread

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"saywright/grammar/idiom"
	"saywright/grammar/phrase"
	"saywright/grammar/spelling"
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
			if kind == "w" || len(words[at]) < 4 || !spelling.English()[words[at]] {
				continue
			}
			for _, form := range formsOf(kind, words) {
				assert.True(t, spelling.English()[form[at]], "%q of %q", form[at], line)
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

// A word by which a clause takes back, denies, judges or tells somebody's view of what is said beside it has no plainer one: the guards that know
// it would no longer see it.
func TestKindredLeavesTurningWords(t *testing.T) {
	for _, rows := range kindred() {
		for _, row := range rows {
			if len(row.words) > 1 {
				continue
			}
			w := row.words[0]
			for name, set := range map[string]map[string]bool{"turning": phrase.Turning, "withheld": idiom.Withheld} {
				assert.False(t, set[w], "%q is a %s word", w, name)
			}
		}
	}
}
