package grammar

import (
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
	"saywright/grammar/paraphrase"
	"saywright/grammar/parse"
)

// What leads a line on, and what only ends it, changes nothing in it: with a "so", a greeting or a thank-you every line of the lists
// says what it says without, or is asked back. An "also" may add to the lengths on sale.
func TestLeadsChangeNothing(t *testing.T) {
	leads := []string{"so ", "ok so ", "and ", "well ", "um ", "then ", "also ", "now ", "alright, ", "you know, ", "hey, ", "look, ", "but ", "oh and ", "ok, ",
		"Hi there, ", "Good morning! ", "Right then, ", "One more thing, ", "By the way, ", "As I said, ", "Next, ", "Thanks. ", "Oh, one more thing: "}
	tails := []string{" please", ", thanks", " thanks", " for me", " then", " now", ", please and thank you", "."}
	every := 4
	if testing.Short() {
		every = 17
	}
	said, asked := 0, 0
	for n, p := range phraseLists(t) {
		r := Read(p.said, act.Context{})
		if r.Ask != nil {
			continue
		}
		want := parse.Normal(r.Acts)
		for i, lead := range leads {
			if (i+n)%every == 0 {
				said++
				asked += sameOrAsked(t, lead+p.said, want)
			}
		}
		if bare := strings.TrimRight(p.said, ".! "); !strings.HasSuffix(bare, "?") && !strings.HasSuffix(bare, "for") && !paraphrase.LeansOn[bare[strings.LastIndex(bare, " ")+1:]] {
			tail := tails[n%len(tails)]
			if strings.HasSuffix(tail, " please") && asksMildly.MatchString(bare) {
				tail = "." // "could the gap be 3, please" begs for it, without the "please" it is tried
			}
			said++
			asked += sameOrAsked(t, bare+tail, want)
		}
	}
	t.Logf("%d lines with a lead or a tail, %d asked back", said, asked)
	require.Less(t, asked*20, said)
}

// asksMildly are questions that a "please" makes a wish.
var asksMildly = regexp.MustCompile(`\b(?:could|can|may|might) .*\b(?:be|come|have|go)\b`)

func sameOrAsked(t *testing.T, line, want string) (asked int) {
	t.Helper()
	r := Read(line, act.Context{})
	if r.Ask != nil {
		return 1
	}
	got := parse.Normal(r.Acts)
	if strings.Contains(strings.ToLower(line), "also") && strings.Contains(want, "stock") {
		return 0
	}
	if got != want {
		t.Errorf("%q: %s, and without: %s", line, got, want)
	}
	return 0
}

// A word that begins a line and has a meaning of its own there is not left out.
func TestLeadsThatMean(t *testing.T) {
	requireReads(t, act.Context{}, map[string]string{
		"so no gap over 3":                              "gap <= 3 in",
		"so they say six rails":                         "check rails = 6",
		"also they sell tens":                           "stock += 120 in",
		"opening on the left, no, on the right now":     "opening side = right",
		"the gap should be an eighth narrower than now": "gap -= 1/8 in",
		"save this as porch, ok":                        "save porch",
		"draw to wall.svg please":                       "draw to wall.svg",
		"then what":                                     "next",
		"open our gap to 3":                             "gap = 3 in",
		"what if we left the stiffeners out":            "what if stiffeners = 0",
		"op >= 2x gap":                                  "opening >= 2 * gap",
		"half our gap":                                  "gap *= 1/2",
		"the 2 end posts stand 160 inches on center":    "centers = 160 in",
		"what now":                                      "help",
	})
}

// requireReads holds that each line is read as the normal forms beside it.
func requireReads(t *testing.T, c act.Context, lines map[string]string) {
	t.Helper()
	for line, want := range lines {
		r := Read(line, c)
		require.Nil(t, r.Ask, line)
		require.Equal(t, want, parse.Normal(r.Acts), line)
	}
}
