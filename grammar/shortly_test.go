package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
	"saywright/grammar/parse"
	"saywright/solver"
)

// Short lines lean on the answer before them; without one, or after a trial, they are asked back.
func TestShortLines(t *testing.T) {
	requireReads(t, act.Context{Answered: true}, map[string]string{
		"does it work":                    "ask layout",
		"so will it fit then":             "ask layout",
		"is it ok":                        "ask layout",
		"how many will fit":               "ask rails",
		"how many can I get in":           "ask rails",
		"what happens now":                "ask layout",
		"does that change the cuts":       "ask cuts",
		"how many boards are left over":   "ask shopping",
		"what length boards should I buy": "ask shopping",
		"ok I'll take that then":          "take that",
	})
	require.NotNil(t, Read("does it work", act.Context{}).Ask)
	require.NotNil(t, Read("does it work", act.Context{Answered: true, Tried: true}).Ask)
	for line, text := range map[string]string{
		"save it":              "Under which name?",
		"how many do I need":   "How many of what?",
		"how wide":             "How wide is what?",
		"boards are 9.50 each": "Which length costs that?",
		"give me the list":     "Which list?",
		"posts are 8 feet apart, wall 42, six rails": "From face to face, or from center to center?",
	} {
		r := Read(line, act.Context{})
		require.NotNil(t, r.Ask, line)
		require.Equal(t, text, r.Ask.Text, line)
	}
	r := Read("how many do I need", act.Context{Settled: []string{"ask shopping"}})
	require.Nil(t, r.Ask)
	require.Equal(t, "ask shopping", parse.Normal(r.Acts))
}

// A value alone answers what the program asked for, where it can answer only one thing.
func TestAskedForIsAnswered(t *testing.T) {
	height, rails, gap, span := solver.Name{Quantity: solver.WallHeight}, solver.Name{Quantity: solver.Rails}, solver.Name{Quantity: solver.Gap}, solver.Name{Quantity: solver.Span}
	for _, c := range []struct {
		said  string
		asked []solver.Name
		want  string
	}{
		{"12 feet", []solver.Name{span}, "span = 144 in"},
		{"144", []solver.Name{span}, "span = 144 in"},
		{"about 12 ft", []solver.Name{span}, "span ~ 144 in"},
		{"four feet", []solver.Name{height, rails}, "wall height = 48 in"},
		{"40 inches", []solver.Name{gap, height}, "wall height = 40 in"},
		{"2 1/2 in", []solver.Name{gap, height}, "gap = 2-1/2 in"},
	} {
		r := Read(c.said, act.Context{Asked: c.asked})
		require.Nil(t, r.Ask, c.said)
		require.Equal(t, c.want, parse.Normal(r.Acts), c.said)
	}
	r := Read("48", act.Context{Asked: []solver.Name{height, rails}})
	require.NotNil(t, r.Ask)
	require.Equal(t, []string{"wall height = 48 in", "rails = 48"}, r.Ask.Choices)
	require.NotNil(t, Read("6", act.Context{Asked: []solver.Name{height, rails}}).Ask) // 6 rails, or 6 ft?
	require.NotNil(t, Read("20 in", act.Context{Asked: []solver.Name{gap, height}}).Ask)
	require.NotNil(t, Read("48", act.Context{}).Ask)
}

// A value with its dimension, or a side, goes on about what was spoken of last.
func TestGoesOn(t *testing.T) {
	for _, c := range []struct {
		subject solver.Quantity
		said    string
		want    string
	}{
		{solver.OpeningSide, "28 wide", "opening = 28 in"},
		{solver.Openings, "28 wide", "opening = 28 in"},
		{solver.Opening, "at the right end", "opening side = right"},
		{solver.Openings, "20 from the left post", "opening from left = 20 in"},
		{solver.Rails, "5 3/8 wide", "rail face = 5-3/8 in"},
		{solver.WallHeight, "42 high", "wall height = 42 in"},
	} {
		r := Read(c.said, act.Context{Subject: &solver.Name{Quantity: c.subject}})
		require.Nil(t, r.Ask, c.said)
		require.Equal(t, c.want, parse.Normal(r.Acts), c.said)
	}
	for _, line := range []string{"28", "3 wide", "28 wide and 40 high"} {
		require.NotNil(t, Read(line, act.Context{Subject: &solver.Name{Quantity: solver.Gap}}).Ask, line)
	}
	require.NotNil(t, Read("28 wide", act.Context{}).Ask)
}

// Of several things spoken of, "it" is the one that the value can be said of.
func TestOnlyOneCanBeMeant(t *testing.T) {
	lately := func(list ...solver.Quantity) (names []solver.Name) {
		for _, q := range list {
			names = append(names, solver.Name{Quantity: q})
		}
		return names
	}
	for _, c := range []struct {
		lately []solver.Name
		said   string
		want   string
	}{
		{lately(solver.Opening, solver.OpeningSide), "make it 34", "opening = 34 in"},
		{lately(solver.RailSize, solver.Gap), "make them 2x4", "rail size = 2x4"},
		{lately(solver.Rails, solver.Gap), "make it 3 inches", "gap = 3 in"},
	} {
		r := Read(c.said, act.Context{Lately: c.lately})
		require.Nil(t, r.Ask, c.said)
		require.Equal(t, c.want, parse.Normal(r.Acts), c.said)
	}
	posts := &solver.Name{Quantity: solver.PostSize}
	require.Equal(t, "rail size = 2x4", parse.Normal(Read("use 2x4s", act.Context{Subject: posts}).Acts))
	require.Equal(t, "post size = 6x6", parse.Normal(Read("make them 6x6", act.Context{Subject: posts}).Acts))
	require.NotNil(t, Read("I don't want my cat to get through", act.Context{}).Ask)
	require.NotNil(t, Read("make it 3", act.Context{Lately: lately(solver.Rails, solver.Gap)}).Ask)
	require.NotNil(t, Read("make it 40", act.Context{Lately: lately(solver.WallHeight, solver.Opening)}).Ask)
	require.NotNil(t, Read("add 10 percent", act.Context{Subject: &solver.Name{Quantity: solver.Trim}}).Ask)
}

// What was claimed before can be asked after again, and be taken over where it sets something.
func TestClaimsAreHeld(t *testing.T) {
	claims, err := parse.Parse("check rails = 6, gap = 2-3/8 in, cut bay 1 = 60 in")
	require.NoError(t, err)
	c := act.Context{Answered: true, Claims: claims[0].Statements}
	requireReads(t, c, map[string]string{
		"is he right":                "check rails = 6, gap = 2-3/8 in, cut bay 1 = 60 in",
		"so where did they go wrong": "check rails = 6, gap = 2-3/8 in, cut bay 1 = 60 in",
		"do his numbers add up":      "check rails = 6, gap = 2-3/8 in, cut bay 1 = 60 in",
		"use his gap then":           "gap = 2-3/8 in",
		"ok, I'll use his numbers":   "rails = 6; gap = 2-3/8 in",
	})
	require.NotNil(t, Read("is he right", act.Context{Answered: true}).Ask)
	require.NotNil(t, Read("use his gap then", act.Context{Answered: true}).Ask)
	require.NotNil(t, Read("use his opening", c).Ask)
}

// A number that leaves a gap is one of rails; how many fit at most is tried.
func TestHowManyAtMost(t *testing.T) {
	requireReads(t, act.Context{}, map[string]string{
		"what gap would eight leave":               "what if rails = 8; ask gap",
		"how big a gap does seven give":            "what if rails = 7; ask gap",
		"how many rails could I fit at most":       "what if most rails",
		"so how many boards can I fit at the most": "what if most rails",
	})
	require.NotNil(t, Read("what would eight leave", act.Context{}).Ask)
}
