package grammar

import (
	"testing"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// What is told at the site and in the yard, and what only looks like it.
func TestPhrasesOfSites(t *testing.T) {
	for _, c := range []struct{ line, want string }{
		{"most we can lay out on materials is 412.50", "budget = 412.50"},
		{"my husband's put his foot down at 290 for the lot", "budget = 290.00"},
		{"there's 290 in the kitty for this and that's all of it", "budget = 290.00"},
		{"the boss voted us 290 to spend on material, so stick to that", "budget = 290.00"},
		{"can't go above 412.50, the bank won't stretch to a cent more", "budget = 412.50"},
		{"the clerk totted it all up to 290, is she right", "check cost = 290.00"},
		{"his figure for the whole job was 412.50, was he close", "check cost = 412.50"},
		{"the mill wants 290 for the whole lumber list, does that tally", "check cost = 290.00"},
		{"is it true the lumber for this wall will run 290", "check cost = 290.00"},
		{"I figured it out at 290 for everything, did I get that right", "check cost = 290.00"},
		{"what's the damage on materials", "ask cost"},
		{"jot down 18.40 apiece for the ten foot 4x4 boards", "price 4x4 120 in = 18.40"},
		{"rail brackets are 18 a pop", "price bracket = 18.00"},
		{"we were quoted 18 for a single post base", "price post base = 18.00"},
		{"you'd pay 18 for a hundred screws", "price screws 100 = 18.00"},
		{"screws are 18 the hundred", "price screws 100 = 18.00"},
		{"our mill cuts tens, twelves, sixteens, that's the lot", "stock = 120 in, 144 in, 192 in"},
		{"I called the merchant, they carry tens and twelves", "stock = 120 in, 144 in"},
		{"the clerk said ten foot and twelve foot is all they keep", "stock = 120 in, 144 in"},
		{"you can get sixteens there on top of the others", "stock += 192 in"},
		{"he spotted a bundle of tens out the back so they've got those as well", "stock += 120 in"},
		{"a contractor snapped up every one of the tens, there are none left", "stock -= 120 in"},
		{"cross tens off the list, they're sold out", "stock -= 120 in"},
		{"no need to order these, I have six twelve foot 2x6 boards on hand", "have 2x6 144 in x 6"},
		{"we've got 4 eight foot 1x4 boards stacked under the porch", "have 1x4 96 in x 4"},
		{"I want three boards more than we'll use", "spare = 3"},
		{"the groove my saw cuts is an eighth", "kerf = 1/8 in"},
		{"I can't measure with my tape any finer than 1/16 inch", "tape = 1/16 in"},
		{"leave an eighth of play, all told, on the length of each rail", "fit = 1/8 in"},
		{"shave an eighth off each board's length so it slips in", "fit = 1/8 in"},
		{"the deck floor dips, the left end's half an inch lower than the other end", "floor at right = 1/2 in"},
		{"the lawn behind the wall lies 18\" below floor level", "drop = 18 in"},
		{"climb over the wall and you'd drop thirty inches to the grass", "drop = 30 in"},
		{"a digger hit the left post so now it leans 3/8\" right over four feet", "left post leans 3/8 in right in 48 in"},
		{"crawled under the deck and measured the bottom of bay 1, 68-3/8", "measured bay 1 bottom = 68-3/8 in"},
		{"third rail's been up since last week, its top edge at 24-1/4", "fixed rail 3 top = 24-1/4 in"},
		{"these brackets overshoot the rail by an eighth", "bracket ear = 1/8 in"},
		{"unless the gap's 1-3/4\" the brackets foul each other", "bracket clearance = 1-3/4 in"},
		{"holes for both end posts were drilled 148\" center to center", "centers = 148 in"},
		{"let's have the opening over on the left side", "opening side = left"},
		{"no odd bay out, equal width for all of them", "equal bays"},
		{"can you get all the bays to match", "equal bays"},
		{"I don't fancy digging more holes, so keep the posts to a minimum", "fewest posts"},
		{"keep this plan as porch", "save porch"},
		{"list all the counts that come out right", "ask options"},
		{"how far along do we dig for the new post", "ask posts"},
		// Look-alikes.
		{"brackets, 4 apiece for each rail", ""},
		{"the wife's put her foot down at 42 inches", ""},
		{"can't go above 42", ""},
		{"can we go above 412.50", ""},
		{"the mill wants 412.50 for the whole lumber list", ""},
		{"keep this plan as is", ""},
		{"keep this one as planned", ""},
		{"nothing smaller than 4 inches gets through", ""},
		{"nothing finer than an eighth would do for the gap", ""},
		{"I can't get any closer than 3 inches", ""},
		{"a kid could fall thirty inches", ""},
		{"no odd bay out, same width for all the boards", ""},
		{"I don't want to dig holes so keep the gap to a minimum", ""},
		{"lumber comes in handy", ""},
		{"do they sell tens on top of the others", ""},
		{"what if they are out of tens", "what if stock -= 120 in"},
		{"they got every one of the tens in again", "stock += 120 in"},
		{"take half an inch off each board end", ""},
		{"could the second rail go with its top at 16 inches?", "what if rail 2 top = 16 in"},
	} {
		if got := parse.Normal(Read(c.line, act.Context{}).Acts); got != c.want {
			t.Errorf("%s\n\tgot  %s\n\twant %s", c.line, got, c.want)
		}
	}
}
