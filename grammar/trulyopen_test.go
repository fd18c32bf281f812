package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// What a line truly leaves open is asked back, and sets, tries and asks nothing; common practice of speech, no source.
func TestWhatIsTrulyOpenIsAskedBack(t *testing.T) {
	for _, line := range []string{
		"how much trouble is this gonna be", "how much work is this going to be", "how much fuss is it",
		"which is cheapest", "which one is the cheapest", "what is cheapest", "which is least waste",
		"I bought six boards", "we picked up eight rails yesterday", "my dad bought me two posts", "I bought six boards at 14.50",
		"can't decide between five and six rails", "can't decide between a 2 and a 3 inch gap",
		"walk-through comfortable for most people", "gap most people would like", "walkthrough right for most folks",
		"I want bay 1 to be 60 at the top", "make bay 2 60 at the bottom", "I need bay 1 to be 60 at the bottom",
		"give my neighbor a wider opening", "give my wife a taller wall",
		"would the wall stand an inch taller if I went to two by sixes", "if I use five rails would the gap go up half an inch", "does the wall get an inch taller if I use 2x6",
		"6 x 2", "5 by 2", "144 between the posts, 4x4, six rails",
		"the span was 150, is it 147 now", "the gap was 2, is it 3 now",
		"opening same as the gap, no, twice it", "gap as big as the bottom gap, wait, an inch bigger", "raise the added post another half inch off the floor",
		"take the opening in another two inches", "shift the opening another 6 inches to the left", "let me check with my wife, gap 2", "gap 2, how many rails did he say",
		"he got me a dozen boards", "opening like most doors", "I'm between five and six rails", "how much higher does the wall get if I add a rail",
	} {
		r := Read(line, act.Context{})
		require.NotNil(t, r.Ask, "%s: %s", line, parse.Normal(r.Acts))
	}
}

// The same words are taken where they leave nothing open.
func TestWhatIsNotOpenIsTaken(t *testing.T) {
	requireReads(t, act.Context{}, map[string]string{
		"opening on the right for the kids": "opening side = right", "between five and six rails": "rails in 5..6",
		"the cheapest one": "cheapest", "whichever is cheapest": "cheapest", "go with whatever is cheapest": "cheapest",
		"how much is this going to run me":                "ask cost",
		"bay 1 is 60 at the top":                          "measured bay 1 top = 60 in",
		"give the opening an inch more":                   "opening += 1 in",
		"could the wall be an inch taller with six rails": "what if wall height += 1 in, rails = 6",
		"rails 2x6":                                     "rail size = 2x6",
		"the span was 150, it's 147 now":                "span = 147 in",
		"144 between posts. 2x6, six high":              "span = 144 in; rail size = 2x6; rails = 6",
		"144 between posts, 4x4":                        "span = 144 in; post size = 4x4",
		"three bays, 2x6, five high":                    "bays = 3; rail size = 2x6; rails = 5",
		"two bays, one stiffener each, 1x4":             "bays = 2; stiffeners = 1; stiffener size = 1x4",
		"would an inch taller wall work with six rails": "what if wall height += 1 in, rails = 6",
		"I bought six 12 foot 2x6s":                     "have 2x6 144 in x 6",
	})
}

// One word makes another of all the rest.
func TestTurnsThatMend(t *testing.T) {
	requireReads(t, act.Context{}, map[string]string{
		"added post level with the wall, scratch that, an inch and a half above it": "post height = wall height + 1-1/2 in",
		"posts level with the top, no, two inches over it":                          "post height = wall height + 2 in",
		"added post flush with the wall, wait, an inch under it":                    "post height = wall height - 1 in",
		"lift the bottom board another 15 mm clear of the floor":                    "bottom gap += 15 mm",
		"raise the bottom rail another half inch off the floor":                     "bottom gap += 1/2 in",
		"set the bottom rail 2 inches clear of the floor":                           "bottom gap = 2 in",
		"what's the harm if every cut is out by a sixteenth":                        "tolerance = 1/16 in",
		"is there any harm if each cut is a 32nd out":                               "tolerance = 1/32 in",
		"what's the harm if the gap is 3":                                           "what if gap = 3 in",
		"gap 2, how much spare did I say":                                           "gap = 2 in; ask spare",
		"gap 2, how many rails did I say":                                           "gap = 2 in; ask rails",
		"gap 2, you said six rails":                                                 "gap = 2 in; check rails = 6",
		"what did I say brackets cost":                                              "recap",
		"what did I say the gap was":                                                "ask gap",
		"let me check, the gap is 2":                                                "gap = 2 in",
		"hold on, let me check, six rails":                                          "rails = 6",
		"let me check that the gap is 2":                                            "check gap = 2 in",
		"draw it and call it quits":                                                 "ask drawing; quit",
		"write me them cuts out as a spreadsheet and then we're done here":          "ask cuts as csv; quit",
		"give me the cut list and then we're finished here":                         "ask cuts; quit",
		"Six rails. Hmm, scratch that, five. No, really, six.":                      "rails = 6",
		"gap 2. scratch that. 3":                                                    "gap = 3 in",
		"show me the drawing and the cut list":                                      "ask drawing; ask cuts",
		"the sketch and the cuts please":                                            "ask drawing; ask cuts",
		"bay 1 gets two stiffeners, the others one":                                 "bay 1 stiffeners = 2; stiffeners = 1",
	})
}
