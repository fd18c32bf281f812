package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// What stands along the wall, and what only sounds like it.
func TestGistAlong(t *testing.T) {
	for _, c := range [][2]string{
		{"from the inside of the left post to the inside of the right one I get 141 and a quarter", "span = 141-1/4 in"},
		{"we have 3.6 m free from one post to the other", "span = 3600 mm"},
		{"hooked the tape on the outside of one end post and pulled it to the outside of the other, 158 1/4", "overall = 158-1/4 in"},
		{"I measured from the centerline of the left post to the centerline of the right one, 160 inches", "centers = 160 in"},
		{"The top of the additional post is to be three inches higher than the wall.", "post height = wall height + 3 in"},
		{"bay 1, board 2 from the bottom, tape reads 66 3/8", "measured bay 1 rail 2 = 66-3/8 in"},
		{"on the north side the wall should be 44 inches high", "north wall: wall height = 44 in"},
		{"the wall at the back gets gaps of 2 inches", "back wall: gap = 2 in"},
		{"The patio drops an inch and a half between the left post and the right one.", "floor at right = -1-1/2 in"},
		{"could we leave the stiffeners out altogether, what would happen", "what if stiffeners = 0"},
		{"Would anything dreadful happen if I left out the stiffeners?", "what if stiffeners = 0"},
		{"Between two stiffeners I'd like no more than two feet.", "stiffener spacing <= 24 in"},
		{"the doorway is directly at the left post and measures 92 cm", "opening side = left; opening = 920 mm"},
	} {
		require.Equal(t, c[1], parse.Normal(Read(c[0], act.Context{}).Acts), c[0])
	}
	for _, line := range []string{
		"between the posts there used to be 12 feet of clear space", "we can't do without the stiffeners", "I never said leave the stiffeners out",
		"the neighbor's wall on the north side has five boards", "The north side wall or the south side wall gets five boards.",
		"the doorway is not directly at the left post and measures 92 cm", "nothing dreadful would happen if I left out the stiffeners",
		"bay 1, bay 2, board 3, the tape reads 66 3/8", "bay 2, slat 3 from the bottom, the tape can't say 1588 mm", "the wall on the left of the opening gets five boards",
	} {
		require.Empty(t, Read(line, act.Context{}).Acts, line)
	}
}
