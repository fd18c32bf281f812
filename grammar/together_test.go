package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
	"saywright/grammar/hear"
	"saywright/grammar/parse"
	"saywright/grammar/scan"
)

// What one line does must go together; an act too many is asked back, or is no act.
func TestActsGoTogether(t *testing.T) {
	at := func(said string, acts ...act.Act) act.Reading {
		letters, _ := scan.Fold(said)
		return hear.Together(act.Reading{Acts: acts}, scan.Split(letters))
	}
	require.NotNil(t, at("put that back", act.Act{Kind: act.Redo}, act.Act{Kind: act.Undo, At: 4}).Ask)
	require.NotNil(t, at("open at home", act.Act{Kind: act.Open, Words: []string{"at home"}}).Ask)
	require.NotNil(t, at("the boys only set the stop once", act.Act{Kind: act.State}, act.Act{Kind: act.Quit, At: 22, End: 26}).Ask)
	require.NotNil(t, at("quit, gap 2", act.Act{Kind: act.Quit, End: 4}, act.Act{Kind: act.State, At: 6}).Ask)
	require.Nil(t, at("save it as deck, stop", act.Act{Kind: act.Save, Words: []string{"deck"}}, act.Act{Kind: act.Quit, At: 17, End: 21}).Ask)
	require.Nil(t, at("open mill race", act.Act{Kind: act.Open, Words: []string{"mill race"}}).Ask)
	r := at("why has the list got so many boards", act.Act{Kind: act.Why, Topic: "shopping"}, act.Act{Kind: act.Ask, Topic: "shopping"})
	require.Equal(t, "why shopping", parse.Normal(r.Acts))
}

// What one sentence says is not carried over into the next by a point, a tag or a unit that was said too late.
func TestSentencesStandAlone(t *testing.T) {
	requireReads(t, act.Context{}, map[string]string{
		"sheet says post cut 43-1/4, right? boards 5-3/8 actual face": "check cut post = 43-1/4 in; rail face = 5-3/8 in",
		"44 high max. six rails":                                                        "wall height <= 44 in; rails = 6",
		"kerf 1/8. metric please, gap 60":                                               "kerf = 1/8 in; units = metric; gap = 60 mm",
		"gaps 2-3\". contractor wants 560 for materials, fair?":                         "gap in 2 in..3 in; check cost = 560.00",
		"what if the gap was twice as big. no higher than 44":                           "what if gap *= 2; wall height <= 44 in",
		"opening 90 cm. the list has fourteen 2x6 twelve footers on it, is that enough": "opening = 900 mm; check boards 2x6 144 in = 14",
		"tens are 9.89 and sixteens 15.49. switch to 2x8":                               "price rails 120 in = 9.89; price rails 192 in = 15.49; rail size = 2x8",
		"what did you put the post there for. 2 stiffeners per bay":                     "why posts; stiffeners = 2",
	})
	for _, line := range []string{"metric please, kerf 1/8", "I work in millimeters. close the gap an eighth"} {
		require.NotNil(t, Read(line, act.Context{}).Ask, line)
	}
}

// A question or a claim behind a statement leaves it what it is.
func TestStatementsBesideQuestions(t *testing.T) {
	requireReads(t, act.Context{}, map[string]string{
		"wall fifty, and the other guy cut the rails in bay 2 at 61 and 3/8, was that right":       "wall height = 50 in; check cut bay 2 = 61-3/8 in",
		"leave three inches under the bottom board, and the quote comes to 412, does that hold up": "bottom gap = 3 in; check cost = 412.00",
		"fit 1/8, and why can't we have the 42 inch opening they drew":                             "fit = 1/8 in; why not opening = 42 in",
		"squeeze the doorway by half an inch, and could you open the plan called porch?":           "opening -= 1/2 in; open porch",
		"anchors cost 1.85 each, and do we need two stiffeners":                                    "price anchor = 1.85; check stiffeners = 2",
		"the span is 150, and the three inch limit on the gap can go":                              "span = 150 in; forget gap <= 3 in",
		"opening 36, and so the wall is 42 high":                                                   "opening = 36 in; wall height = 42 in",
		"six rails, and does a gap of 2-3/8 sound right":                                           "rails = 6; check gap = 2-3/8 in",
	})
}

// What stands in a sentence of its own is not lost beside another, nor drawn to what was spoken of before.
func TestSentencesKeepTheirOwn(t *testing.T) {
	for line, want := range map[string]string{
		"smalest gap u can do. Print that to order.html":                                            "smallest gap; print to order.html",
		"I use a wheelchair so go for the biggest opening. i konw about the gaurd, its been setled": "largest opening; set aside guard",
		"why does it cost that much. sorry I meant 5 rails":                                         "why cost; rails = 5",
		"Please store this design as sunroom. no openings":                                          "save sunroom; openings = 0",
		"they stock 8s and 10s. no twelves left on the rack":                                        "stock = 96 in, 120 in; stock -= 144 in",
		"a box of 200 screws is 14.50. twelves are ten fifty":                                       "price screws 200 = 14.50; price rails 144 in = 10.50",
		"bays no wider than 78. The entrance has to fit a wheelchair, so 38 inches or more":         "bay <= 78 in; opening >= 38 in",
	} {
		r := Read(line, act.Context{})
		require.Nil(t, r.Ask, line)
		require.Equal(t, want, parse.Normal(r.Acts), line)
	}
}

// No statement is lost or tried because of what stands beside it.
func TestStatementsStandBesideOthers(t *testing.T) {
	for line, want := range map[string]string{
		"wall 43 tall, my boards are actually 5 3/8 wide":      "wall height = 43 in; rail face = 5-3/8 in",
		"six rails, gap is actually 2-1/2":                     "rails = 6; gap = 2-1/2 in",
		"wall 43 tall, gap 3, actually 2":                      "wall height = 43 in; gap = 2 in",
		"rail face 5-7/16, and could you give me the layout":   "rail face = 5-7/16 in; ask layout",
		"six rails, and could I have a sketch of it":           "rails = 6; ask drawing",
		"six rails would leave what gap":                       "what if rails = 6; ask gap",
		"gap 3, and call it porch":                             "gap = 3 in; save porch",
		"six rails, and call it six":                           "rails = 6",
		"the saw takes 3 mm per cut, and the plan has 6 rails": "kerf = 3 mm; check rails = 6",
	} {
		r := Read(line, act.Context{})
		require.Nil(t, r.Ask, line)
		require.Equal(t, want, parse.Normal(r.Acts), line)
	}
	for _, line := range []string{"kerf of 0.125, and the reading on rail 3 in bay 1 was bad, throw it away", "brkt ears 5/8, and can you scratch that last change, then tell me the gap",
		"lift the wall to 50, and bay one, what's its width", "the smallest mark on my tape is 1 mm, and clear the opening to 36"} {
		for _, a := range Read(line, act.Context{}).Acts {
			require.False(t, a.Kind == act.Forget || a.Kind == act.Undo, line)
		}
	}
}

// What was spoken of before does not draw another sentence to it.
func TestSentencesAreNotDrawnOn(t *testing.T) {
	for line, want := range map[string]string{
		"2x8 boards. the stiffeners are 24 on center, two to a bay":                                             "rail size = 2x8; stiffener spacing = 24 in; stiffeners = 2",
		"they say the new post gets cut at 45 and a half. the clerk totalled it at 389.50":                      "check cut post = 45-1/2 in; check cost = 389.50",
		"they say the new post gets cut at 45 and a half. the plans call for stiffeners at 20 inches on center": "check cut post = 45-1/2 in; check stiffener spacing = 20 in",
		"print the whole thing to porch.html. no more tens here":                                                "print to porch.html; stock -= 120 in",
		"Bay two, along the bottom, I measure 54. he says bay 1 is 60 and bay 2 is 66-3/4":                      "measured bay 2 bottom = 54 in; check bay 1 = 60 in, bay 2 = 66-3/4 in",
		"the yard totaled it at 345. is there anything I have to be careful about with this":                    "check cost = 345.00; ask cautions",
	} {
		r := Read(line, act.Context{})
		require.Nil(t, r.Ask, line)
		require.Equal(t, want, parse.Normal(r.Acts), line)
	}
}

// A question for how many fit is none about what stands before it, and a limit that is only named is no wish for the most.
func TestWhatIsSetStaysSet(t *testing.T) {
	for line, want := range map[string]string{
		"gap 2, how many rails will fit":                                                 "gap = 2 in; ask rails",
		"widen the bays 2 inches, and how many rails will fit":                           "bay += 2 in; ask rails",
		"with a 2 inch gap how many rails will fit":                                      "what if gap = 2 in; ask rails",
		"posts are 4x4, and the biggest opening that will fit":                           "post size = 4x4; largest opening",
		"what's the gap; rails are 2x6":                                                  "ask gap; rail size = 2x6",
		"why is it so expensive; bay 64 1/4 each":                                        "why cost; bay = 64-1/4 in",
		"11'-8 1/4\" clear between posts; the vertical braces, what spacing are they at": "span = 140-1/4 in; ask stiffener spacing",
		"the wall seems a bit tall to me; please bring it down by an inch":               "wall height -= 1 in",
		"could you please double the opening, and start over":                            "opening *= 2; start over",
		"gap 3, and might I ask how many boards that comes to":                           "gap = 3 in; ask rails",
	} {
		r := Read(line, act.Context{})
		require.Nil(t, r.Ask, line)
		require.Equal(t, want, parse.Normal(r.Acts), line)
	}
	require.NotNil(t, Read("the gap limit", act.Context{}).Ask)
	require.NotNil(t, Read("the gap limit, scrap it", act.Context{}).Ask) // which limit, or all of the gap?
}
