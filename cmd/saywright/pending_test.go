package main

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// What was asked back is answered in a word: each row is what stands, what is said, the questions by a piece of their words, and what is heard at last.
func TestQuestionIsAnsweredInAWord(t *testing.T) {
	for _, row := range []struct{ said, asked, heard string }{
		{"tighter gaps|2 inches", "How much for the gap?", "gap = 2 in"},
		{"wider gaps|3", "How much", "gap = 3 in"},
		{"wider gaps|half an inch", "How much", "gap += 1/2 in"},
		{"wider gaps|by a quarter", "How much", "gap += 1/4 in"},
		{"wider gaps|six rails", "How much", "rails = 6"},
		{"wider gaps|um, make it 3 please", "How much", "gap = 3 in"},
		{"tighter gaps|half an inch", "How much|or by how much it changes", ""},
		{"tighter gaps|half an inch|the second", "How much|or by how much", "gap -= 1/2 in"},
		{"tighter gaps|half an inch|half an inch less", "How much|or by how much", "gap -= 1/2 in"},
		{"a taller wall|a foot", "How much", "wall height += 12 in"},
		{"shorter wall|a foot", "How much|or by how much", ""},
		{"what if a taller wall|50", "How much", "what if wall height = 50 in"},
		{"more rails|one", "How much", "rails += 1"},
		{"more rails|6", "How much", "rails = 6"},
		{"opening 30|narrower opening|2 inches", "|How much", "opening -= 2 in"},
		{"move the opening|6 inches to the left", "How much", "opening from left -= 6 in"},
		{"2 inches|the gap", "of what", "gap = 2 in"},
		{"2 inches|under the bottom rail", "of what", "bottom gap = 2 in"},
		{"what if 2 inches|the gap", "of what", "what if gap = 2 in"},
		{"36|it's the opening", "of what", "opening = 36 in"},
		{"48|tall", "of what", "wall height = 48 in"},
		{"96|between the posts", "of what", "span = 96 in"},
		{"7|boards", "of what", "rails = 7"},
		{"2 bays|bay measures 68 at the bottom|the second", "|Which bay", "measured bay 2 bottom = 68 in"},
		{"2 bays|bay measures 68 at the bottom|2", "|Which bay", "measured bay 2 bottom = 68 in"},
		{"3 bays|it measures 46 at the bottom and 46-1/4 at the top|3", "|Which bay", "measured bay 3 bottom = 46 in; measured bay 3 top = 46-1/4 in"},
		{"bay measures 142 at the bottom", "", "measured bay 1 bottom = 142 in"}, // only one stands
		{"the floor drops|an inch to the right", "How far", "floor at right = -1 in"},
		{"the floor is not level|1 inch|right", "How far|To which side", "floor at right = -1 in"},
		{"floor slopes half an inch|right", "To which side", "floor at right = -1/2 in"},
		{"the slab drops 3/4|to the left", "To which side", "floor at right = 3/4 in"},
		{"how far down is the last hole", "", ""}, // a hole is no "whole"
		{"left post leans|3/8|right|48", "How far|To which side|Over what height", "left post leans 3/8 in right in 48 in"},
		{"left post leans 3/8 right|over 4 feet", "Over what height", "left post leans 3/8 in right in 48 in"},
		{"the opening starts at 36|the left one", "From which", "opening from left = 36 in"},
		{"five or six rails|six", "Which of the two", "rails = 6"},
		{"gap 2 or 3|the first", "Which of the two", "gap = 2 in"},
		{"gap 2 and gap 3|3", "Which holds", "gap = 3 in"},
		{"gap 2 and gap 3|2", "Which holds|number 2", ""},
		{"gap 2 and gap 3|2|2", "Which holds|number 2", "gap = 2 in"},
		{"a bit more gap|half an inch", "How much is", "gap += 1/2 in"},
		{"I have six twelve footers|2x6", "Of what size", "have 2x6 144 in x 6"},
		{"2x6s are 9.50|the 12 footers", "Which length", "price 2x6 144 in = 9.50"},
		{"what about|five rails", "What about", "what if rails = 5"},
		{"forget|the gap", "Forget what", "forget gap"},
		{"how many|stiffeners", "How many of what", "ask stiffeners"},
		{"how wide|the opening", "How wide is what", "ask opening"},
		{"save|porch", "Under which name", "save porch"},
		{"keep|the gap", "Under which name|How much", ""},
		{"stiffeners 24|inches apart", "really meant", "stiffener spacing = 24 in"},
		{"gap to|3", "what?", "gap = 3 in"},
		{"gap|no more than 3", "How much", "gap <= 3 in"}, // a no that begins a limit is none that corrects
		{"gap|at most 3", "How much", "gap <= 3 in"},
		{"gap|over 3", "How much", "gap > 3 in"},
		{"left post leans 3/8 right|in 48", "Over what", "left post leans 3/8 in right in 48 in"},
		{"gap|no, 3", "How much", "gap = 3 in"},
		{"rails 5|tighter gaps|never mind", "|How much|Dropped", ""}, // drops the question, and takes nothing back
		{"rails 5|2 inches|forget it", "|of what|Dropped", ""},
		{"rails 5|never mind", "", "undo"},
		// What says more than was asked for is heard by itself, and no question is answered twice.
		{"wider gaps|how many rails", "How much", "ask rails"},
		{"wider gaps|48 high", "How much", "wall height = 48 in"},
		{"wider gaps|gap 3|2", "How much||of what", ""},
	} {
		talk := talking(t)
		talk.say("wall 42 high, gap 2.5, 12 feet between the posts")
		lines, asked := strings.Split(row.said, "|"), strings.Split(row.asked, "|")
		for i, line := range lines {
			a := talk.say(line)
			if i < len(asked) && asked[i] != "" {
				require.NotNil(t, a.Ask, "%s: %s", row.said, line)
				require.Contains(t, a.Ask.Text, asked[i], row.said)
			}
			if i == len(lines)-1 {
				require.Equal(t, row.heard, strings.Join(a.Heard, "; "), row.said)
			}
		}
	}
}

// Who asks for the code hears which published limits are in force and which are not, and that local code decides.
func TestAskedForTheCode(t *testing.T) {
	talk := talking(t)
	talk.say("wall 42 high, gap 2.5, 12 feet between the posts")
	for _, row := range []struct{ line, tells string }{
		{"is this up to code", "No published limit is in force, as no drop and no pool was told."},
		{"the deck is 30 inches off the ground", "30"},
		{"can kids climb it", "The ground beyond was told to lie 30"},
		{"drop 31", "31"},
		{"is this up to code", "The ground beyond lies 31 lower, so this wall is a guard"},
	} {
		text := strings.Join(strings.Fields(talk.say(row.line).Text), " ")
		require.Contains(t, text, row.tells, row.line)
		if row.line != "drop 31" && row.line[:3] != "the" {
			require.Contains(t, text, "Local code decides", row.line)
			if wind := strings.Index(text, "wind"); wind >= 0 {
				require.Less(t, strings.Index(text, "Local code decides"), wind, "first of all")
			}
		}
	}
}
