package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// What one line does must go together; an act too many is asked back, or is no act.
func TestActsGoTogether(t *testing.T) {
	at := func(said string, acts ...Act) Reading {
		letters, _ := foldLine(said)
		return together(Reading{Acts: acts}, split(letters))
	}
	require.NotNil(t, at("put that back", Act{Kind: Redo}, Act{Kind: Undo, At: 4}).Ask)
	require.NotNil(t, at("open at home", Act{Kind: Open, Words: []string{"at home"}}).Ask)
	require.NotNil(t, at("the boys only set the stop once", Act{Kind: State}, Act{Kind: Quit, At: 22, End: 26}).Ask)
	require.NotNil(t, at("quit, gap 2", Act{Kind: Quit, End: 4}, Act{Kind: State, At: 6}).Ask)
	require.Nil(t, at("save it as deck, stop", Act{Kind: Save, Words: []string{"deck"}}, Act{Kind: Quit, At: 17, End: 21}).Ask)
	require.Nil(t, at("open mill race", Act{Kind: Open, Words: []string{"mill race"}}).Ask)
	r := at("why has the list got so many boards", Act{Kind: Why, Topic: "shopping"}, Act{Kind: Ask, Topic: "shopping"})
	require.Equal(t, "why shopping", Normal(r.Acts))
}
