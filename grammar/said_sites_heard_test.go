package grammar

import (
	"testing"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// Money, prices and what the site measures, in more words; and lines that sound like them and are not.
func TestSitesHeardGist(t *testing.T) {
	for _, c := range []struct{ said, want string }{
		{"I can't justify more than 290 on it", "budget = 290.00"},
		{"11.85 buys a twelve foot 2x6 round here", "price 2x6 144 in = 11.85"},
		{"one bracket three ten, one post base seventeen fifty", "price bracket = 3.10; price post base = 17.50"},
		{"1x4x8' 3.65, brkts 2.89 ea", "price 1x4 96 in = 3.65; price bracket = 2.89"},
		{"they're all out of sixteens, but I spotted some eighteens", "stock -= 192 in; stock += 216 in"},
		{"leave the second rail where it is, top at 16 inches", "fixed rail 2 top = 16 in"},
		{"brackets, 2 each", ""},
		{"I can't justify more than six rails", ""},
		{"bracket two seventy-five inches", ""},
		{"don't scrap it all from the top", ""},
		{"that is the plan I want opened", ""},
	} {
		r := Read(c.said, act.Context{})
		if got := parse.Normal(r.Acts); got != c.want {
			t.Errorf("%q: heard %q, want %q", c.said, got, c.want)
		}
	}
}
