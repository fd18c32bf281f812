package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// What one clause says is not taken for a part of the next one, nor lost to it: units, reasons, trials, names and what somebody once thought. Common
// ways of speech, no source.
func TestClausesApart(t *testing.T) {
	for line, want := range map[string]string{
		// A unit in a question is for its answer alone.
		"gap 2, how high is the wall in mm":                "gap = 2 in; ask wall height",
		"set the gap to 2, how high is the wall in mm":     "gap = 2 in; ask wall height",
		"how long are the rails in mm, and make the gap 2": "ask cuts; gap = 2 in",
		"what if gap 2, how high is the wall in mm":        "what if gap = 2 in; ask wall height",
		"gap 2 what is the height in mm":                   "gap = 2 in; ask wall height",
		"opening 30, how wide are the bays in mm":          "opening = 30 in; ask bay",
		"gap 60, wall 1100, all in mm":                     "gap = 60 mm; wall height = 1100 mm; units = metric",
		"in mm: span 3450, bottom gap 70, six rails":       "units = metric; span = 3450 mm; bottom gap = 70 mm; rails = 6",
		"work in mm, gap 60, how high is the wall":         "units = metric; gap = 60 mm; ask wall height",
		// Its height is that of what was spoken of.
		"how high is the new post, and how'd you arrive at its height": "ask post height; why post height",
		"where does the added post go and what's its height":           "ask posts; ask post height",
		"where does the new post go, and explain its height":           "ask posts; why post height",
		"how high is the wall, and how'd you arrive at its height":     "ask wall height; why wall height",
		// A trial behind a reason is a question of its own.
		"why six rails, would five rails do":                  "why rails; what if rails = 5",
		"why six rails, should I use five rails":              "why rails; what if rails = 5",
		"how come the gap is 2, would 3 do":                   "why gap; what if gap = 3 in",
		"why is the opening 30, would a 32 inch opening work": "why opening; what if opening = 32 in",
		"why 2 bays and 3 stiffeners, would 1 stiffener do":   "why bays; why stiffeners; what if stiffeners = 1",
		"why 6 rails and 3 posts":                             "why rails; why added posts",
		"why six rails, is it the gap":                        "why rails; why gap",
		// What is asked is not set.
		"six rails, is five better":           "rails = 6; what if rails = 5",
		"gap 2, is 3 better":                  "gap = 2 in; what if gap = 3 in",
		"why is the gap 2, shall I make it 3": "why gap; what if gap = 3 in",
		"wall 48, should we lower it to 44":   "wall height = 48 in; what if wall height = 44 in",
		"six rails, five is better":           "rails = 5",
		// What the speaker once thought is no claim, and takes nothing with it.
		"bay 1 top is 68, but i thought it was 67, gap 3":     "measured bay 1 top = 68 in; gap = 3 in",
		"the gap is 2, but I thought it was 3, wall 48":       "gap = 2 in; wall height = 48 in",
		"the gap is 2, but I thought it was 3, is that right": "gap = 2 in; check gap = 3 in",
		// A name ends where a clause begins.
		"what's the difference between porch and shed, and before the crew breaks for lunch, how wide are the bays": "compare porch, shed; ask bay",
		"compare porch and shed, gap 2":                                      "compare porch, shed; gap = 2 in",
		"compare this with shed, and make the gap 2":                         "compare this, shed; gap = 2 in",
		"compare the shed with the back porch, thanks, how high is the wall": "compare shed, back porch; ask wall height",
		"compare porch, shed":                                                "compare porch, shed",
		"call this one porch and then show me the marks":                     "save porch; ask marks",
		"call this one porch and tell me how high the wall is":               "save porch; ask wall height",
		"save this as porch, after that show me the cuts":                    "save porch; ask cuts",
		"show me the marks, after that the cuts":                             "ask marks; ask cuts",
		"gap 2, before that, how high is the wall":                           "gap = 2 in; ask wall height",
		"what do I do after that":                                            "next",
		// A list of what is there goes on.
		"have (4) 4x4 8' plus 2 2x6 12'": "have 4x4 96 in x 4; have 2x6 144 in x 2",
		"plus two 2x6 12 footers":        "extra 2x6 144 in x 2",
		"keep it":                        "take that",
		"Aye, the one we just tried suits me, we'll keep to it.": "take that",
		"the cap is 300": "budget = 300.00",
		// What is at hand is not asked for, and a topic behind a question is none of it.
		"aded post 2 1/2 in above the wlal and I've got the cut list, what about the marks":          "post height = wall height + 2-1/2 in; ask marks",
		"I have the cut list, now for the marks":                                                     "ask marks",
		"I've got the marks, but where does the post go":                                             "ask posts",
		"what kind of posts are we using and then as for the stiffeners, I don't need any after all": "ask post size; stiffeners = 0",
		"show me the cuts and as for the gap, make it 2":                                             "ask cuts; gap = 2 in",
		"how'd the new post wind up in that spot":                                                    "why posts",
		"did I mention the brackets are an eighth thick":                                             "bracket thickness = 1/8 in",
		"did I say the gap is 2":                                                                     "check gap = 2 in",
		"the gap's two inches, or so the fella next door tells me":                                   "check gap = 2 in",
		"the gap is two inches or so":                                                                "gap ~ 2 in",
		"3 inches clearance between boards":                                                          "gap = 3 in",
		"show me where the marks go":                                                                 "ask marks",
		"let's keep going":                                                                           "next",
	} {
		r := Read(line, act.Context{Answered: true, Tried: true})
		require.Nil(t, r.Ask, line)
		require.Equal(t, want, parse.Normal(r.Acts), line)
	}
}

func TestClausesAskedBack(t *testing.T) {
	for _, line := range []string{
		"gap 2, what would that be in metric",
		"gap 2, print it in millimeters",
		"how wide is the opening, and how'd you get its height",
		"why 2 bays and 3 stiffeners, would 1 do",
		"why 6 rails and 3 posts, could I use 2",
		"six rails, one more would be nice",
		"bay 1 is 60 wide, 40 high and 38 low",
		"bay 2 measures 60 at the top and 38 at the bottom",
		"compare the shed with the back porch, once that's done how high is the wall",
		"forget lunch, let's keep going",
		"never mind the rain, let's keep going",
		"let's keep at it",
		"go on it",
		"plus the cap is 1 1/2",
		"the cap is 8",
		"three inches of clearance",
		"show me where you put the pencil",
	} {
		r := Read(line, act.Context{Answered: true, Tried: true})
		require.NotNil(t, r.Ask, "%s: %s", line, parse.Normal(r.Acts))
	}
	require.Empty(t, Offer("same gap as my cousin has", act.Context{}, Read("same gap as my cousin has", act.Context{}).Ask))
	require.Empty(t, Offer("the deck boards are still wet", act.Context{}, Read("the deck boards are still wet", act.Context{}).Ask))
	unit := Read("gap 2, how high is the wall in mm", act.Context{})
	require.Equal(t, []string{"", "metric"}, []string{unit.Acts[0].Units, unit.Acts[1].Units})
}
