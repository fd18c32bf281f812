package grammar

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// What a line that is not understood may mean is offered, never taken. Everyday speech, no source.
func TestOffered(t *testing.T) {
	for line, want := range map[string][]string{
		"help your brother with the ladder. ok, gap two and seven eighths":                                      {"gap = 2-7/8 in"},
		"my brother in law swears it comes to seven boards with inch and a half gaps, would you say he's right": {"check rails = 7, gap = 1-1/2 in"},
		"I have measured the face of a rail with my best rule, and it is 5 13/32\".":                            {"rail face = 5-13/32 in"},
		"check that the dog's in, then check six rails at two and a quarter gap":                                {"check rails = 6, gap = 2-1/4 in"},
		"I don't want six rails of that frobnication":                                                           nil, // denied
		"my neighbor frobnicates a gap of two":                                                                  nil, // somebody else's
		"we almost frobnicated six rails":                                                                       nil,
		"shelf wall by the ticket booth, forty four high, six boards":                                           {"wall height = 44 in; rails = 6"},
		"the rails are 120x38 treated pine":                                                                     {"rail size = 120x38"}, // without two words
		"bay one's sixty four and a quarter down at the bottom, whoever set that post was in a hurry":           {"measured bay 1 bottom = 64-1/4 in"},
		"2x6 8 6.10, 10 8.20":                  nil, // no two figures become one
		"the dog is 22 high":                   nil, // no figure of the wall
		"make her shipshape":                   nil, // holds nothing
		"wall 4 high":                          nil, // has choices of its own
		"frobnicate everything and start over": nil, // loses what stands
	} {
		r := Read(line, act.Context{})
		if assert.NotNil(t, r.Ask, line) {
			assert.Equal(t, want, Offer(line, act.Context{}, r.Ask), line)
		}
	}
}

// A word of agreement takes the one thing that is offered, and no more than one is taken so.
func TestAgreedToAnOffer(t *testing.T) {
	for _, line := range []string{"yes", "Yep.", "yes please", "yes, that's it", "right", "yes of course", "1", "the first"} {
		r := Read(line, act.Context{Choices: []string{"gap = 2-7/8 in"}})
		assert.Equal(t, "gap = 2-7/8 in", parse.Normal(r.Acts), line)
	}
	assert.NotNil(t, Read("yes", act.Context{Choices: []string{"gap = 2 in", "gap = 2 mm"}}).Ask)
	for _, line := range []string{"yes, 5", "exactly 5", "is that right", "right?", "is it"} {
		assert.NotEqual(t, "gap = 2-7/8 in", parse.Normal(Read(line, act.Context{Choices: []string{"gap = 2-7/8 in"}}).Acts), line)
	}
	for line, want := range map[string]bool{"no": true, "neither of them": true, "none of those": true, "no, six": false, "no, 60": false, "is that right": false, "that": false, "no gap": false, "": false} {
		assert.Equal(t, want, Declines(line), line)
	}
}

// What is offered for a line that is asked back is in normal form, whatever the line. How to run it stands beside FuzzRead's in DEVELOPERS.md.
func FuzzOffer(f *testing.F) {
	for i, p := range phraseLists(f) {
		if i%40 == 0 {
			f.Add(p.said + ", ouch")
		}
	}
	f.Fuzz(func(t *testing.T, line string) {
		for _, form := range Offer(line, act.Context{}, Read(line, act.Context{}).Ask) {
			if _, err := parse.Parse(form); err != nil {
				t.Fatalf("%q: %q is offered: %v", line, form, err)
			}
		}
	})
}
