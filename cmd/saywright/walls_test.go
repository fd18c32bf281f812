package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/solver"
)

func TestSeveralWalls(t *testing.T) {
	c := talking(t)
	c.say("north wall: wall height = 48 in")
	c.say("gap = 2-1/2 in") // of the wall at hand
	c.say("south wall: wall height = 40 in")
	require.Equal(t, []string{"wall height = 48 in", "gap = 2-1/2 in"}, forms(c.now.book("north wall")))
	c.stands("wall height = 40 in")
	a := c.say("south wall: gap = north wall: gap")
	c.stands("wall height = 40 in", "gap = 2-1/2 in")
	require.Equal(t, 5, a.Layout.Rails)
	a = c.say("ask north wall: rails")
	require.Equal(t, 6, a.Layout.Rails)
	require.Equal(t, "south wall", c.now.hand, "asking after another wall leaves this one at hand")
	require.Contains(t, a.Text, "North wall")
	require.Equal(t, []string{"ask north wall: cuts"}, c.say("how long do I cut them for the north wall").Heard)
	require.Len(t, c.say("ask north wall: marks").Marks[0].Rows, 6)
	require.Len(t, c.say("ask marks").Marks[0].Rows, 5)
	c.say("east wall: span = 144 in")
	a = c.say("same as north wall")
	c.stands("span = 144 in", "wall height = 48 in", "gap = 2-1/2 in")
	require.Equal(t, "144", a.Layout.Span.String())
	c.nothing("same as east wall", "same wall")
	c.nothing("opening = north wall: opening", "not known there")
	c.nothing("what if north wall: gap = 2 in, south wall: gap = 3 in", "one wall")
	a = c.say("compare north wall, south wall")
	require.NotEmpty(t, a.Change)
	a = c.say("recap")
	for _, wall := range []string{"North wall", "South wall", "East wall"} {
		require.Contains(t, a.Text, wall)
	}
	c.say("save all three")
	all := c.now
	c.say("start over")
	c.say("open all three")
	require.True(t, all.same(c.now))
}

func TestSaveAndOpen(t *testing.T) {
	c := talking(t)
	c.say("wall height = 48 in; gap = 2-1/2 in")
	a := c.say("save porch")
	require.Equal(t, solver.Fits, a.Verdict)
	require.NotContains(t, c.say("save porch").Text, "before", "the same again takes nobody's place")
	c.say("gap = 2 in")
	require.Contains(t, c.say("save porch").Text, before("porch"))
	a = c.say("compare this, " + before("porch"))
	require.Contains(t, a.Change, solver.Moved{Of: "gap", From: "2", To: "5/2"})
	a = c.say("open porch before")
	require.Equal(t, 6, a.Layout.Rails)
	c.stands("wall height = 48 in", "gap = 2-1/2 in")
	c.say("undo")
	c.stands("wall height = 48 in", "gap = 2 in")

	a = c.nothing("open shed", "not saved")
	require.Equal(t, []string{"open porch", "open porch before"}, a.Ask.Choices)
	c.say("2")
	c.stands("wall height = 48 in", "gap = 2-1/2 in")

	require.NoError(t, os.WriteFile(filepath.Join(c.shelf.folder, "odd.wall"), []byte("saywright 7\n"), 0o600))
	c.nothing("open odd", "cannot open")
	c.shelf.folder = filepath.Join(c.shelf.folder, "odd.wall") // a folder that cannot be
	c.nothing("save porch", "cannot write")
}

func TestDrawings(t *testing.T) {
	c := talking(t)
	c.say("wall height = 48 in; gap = 2-1/2 in; span = 144 in")
	for line, file := range map[string]string{"draw to porch": "porch.svg", "draw to a.svg": "a.svg", "print to porch": "porch.html", "print to b.svg": "b.svg"} {
		a := c.say(line)
		require.Equal(t, solver.Fits, a.Verdict)
		content, err := os.ReadFile(file)
		require.NoError(t, err, line)
		kind := "<svg"
		if strings.HasSuffix(file, ".html") {
			kind = "<html"
		}
		require.Contains(t, string(content), kind)
		require.Nil(t, c.say(line).Ask, "%s: our own drawings are drawn anew", line)
	}
	require.NoError(t, os.WriteFile("mine.svg", []byte("<svg>somebody's own</svg>"), 0o644))
	c.nothing("draw to mine.svg", "file in the way")
	content, err := os.ReadFile("mine.svg")
	require.NoError(t, err)
	require.Equal(t, "<svg>somebody's own</svg>", string(content))
	c.nothing("draw to no/such/folder/a.svg", "cannot write")
}
