package solver

import (
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
)

// Walls along that once took from half a second to half a minute: stiffeners whose spacing is bound from both sides, bays
// and posts that are named, counts that are tied, and no upper limit on how many bays there are.
var onceSlow = []string{
	`stiffener spacing = 21 in; bays = 1; span = 71 in`,
	`stiffener spacing < 37-1/16 in; bay = 71 in; bay 3 <= 36 in; span = 88-1/2 in`,
	`bays = 1; bay <= 24 in; span = 52 in; stiffener spacing = 14 in; added posts >= 0`,
	`overall in 101 in..101-1/4 in; stiffeners < 2; bay = 68-11/16 in; opening from left <= 891 mm; added posts = 1; bay 2 <= 53 in; opening < 50-1/2 in`,
	`bays > 0; stiffeners = 1; bay 1 = 69 in; opening >= 26-3/4 in; span <= 60 in; bay 3 < opening; opening side = middle`,
	`smallest gap; opening > 26 in; bay >= 81-7/16 in; opening side = right; span > 56 in; fewest rails; bay 3 = 57-3/4 in`,
	`bays <= 2; bay 3 in 32 in..32-1/2 in; rails = 5; bay <= 1/2 * wall height; bays = 1; wall height <= 27 in; rail size = 1x6`,
	`span > 195-1/16 in; smallest opening; bay in 83 in..83-1/2 in; bay 1 = 42-3/4 in; post size = 4x4; bays > 1`,
	`bottom gap = 3-1/3 in; rails = 3; openings = 1; opening from left = 31-1/2 in; rail size = 2x6; gap = 4 in; bracket clearance = 1-3/4 in; bay 1 >= 60-1/2 in; opening < 57-1/2 in; stiffener spacing < 41 in; post size = 6x6; wall height in 50-1/4 in..53 in; span <= 128 in`,
	`bay 1 = 889 mm; bay < 103 in; opening >= 33 in; span = 49 in; stiffener spacing >= 30 in; opening side = middle; bays = 2`,
	`bay < 20 in; bay = 3/2 * bay 1 + 8-1/4 in; opening side = middle; span = 57-3/8 in`,
	`bay in 60 in..62-1/2 in; span >= 66 in; opening side = middle; opening > 59 in; stiffener spacing = 21 in; bay 3 >= 35-11/16 in; bays = 2`,
	`opening = 60 in; opening from left = 24 in; stiffener spacing >= 20 in; bay in 30-3/4 in..31-1/2 in; span <= 86 in; bays > 1; bays = 2; bay 3 <= opening - 11 in`,
	`span > 124 in; opening >= 60 in; added posts >= bays; bay = 106 in; rail size = 2x4; rails = 2; bay <= wall height; gap >= 2 in; opening side = middle; bays <= 1; wall height >= 33 in`,
	`bays <= 3; rails ~ 6; span in 67-1/4 in..68 in; bay 3 = 78 in`,
	`most rails; bay 3 > 35 in; bays = 3; span < 43-1/2 in; opening >= 28 in`,
	`bays = 1; opening in 50 in..51-1/2 in; span = 65 in; bays >= 2; stiffener spacing = 21 in`,
	`bays >= 1; opening > 59-1/2 in; opening from left = 57 in; bay 2 = 38 in; span >= 130 in; bay in 105-1/2 in..107 in`,
	`equal bays; wall height in 46 in..48-1/4 in; smallest bottom gap; bay <= bay 1 - 12-1/4 in; rails > 4; span in 179 in..180-1/2 in; drop = 36 in; rail size = 2x8; bracket clearance = 2 in; rails <= 4; added posts = bays; bay >= wall height; bays <= 1; bays >= 2`,
	`span > 83-1/2 in; added posts = 1; stiffener spacing in 19 in..24 in; bay = 109 in; stock = 48 in, 48 in; bay 2 >= bay 1 - 10-1/4 in; bays = 1`,
	`bay 1 >= 1933 mm; bays >= 2; stiffener spacing <= 29 in; overall = 73-1/2 in; opening side = right`,
	`bays > 1; added posts = bays; stiffeners in 1..3; centers <= 85-15/16 in`,
	`wall height in 29-1/2 in..31-1/4 in; bottom gap in 3 in..3-1/4 in; bays = 2; bay <= 20 in; stiffener spacing >= 21 in; rail size = 2x8; post height > 32-3/4 in; bays >= 2; bottom gap ~ 3-3/8 in; centers < 156 in; bay ~ 68-1/2 in`,
	`span in 99-3/4 in..102-1/2 in; bay 3 >= 73-5/8 in; equal bays`,
	`added post size = 6x6; centers < 175-3/4 in; stiffener spacing >= 29 in; bays = 2; added posts > 1; stiffener spacing <= 25-15/16 in`,
	`span = 153-1/2 in; bay = 87-1/16 in; bay 2 = bay 1 - 9-1/4 in; opening from right = 16 in`,
	`span <= 44-1/8 in; rail 3 top = 10 in; wall height = 48 in; bay 2 in 36-3/4 in..39-1/4 in; bays in 1..3; bays = 2; added post size = 6x6; rail size = 2x8; opening in 40-3/4 in..40-3/4 in; openings = 3; gap > 3-15/16 in; bay > 45 in`,
	`bay 3 <= bay 1 - 6-1/2 in; stiffener spacing >= 28 in; bays = 2; end post size = 6x6; bottom gap ~ 4-11/16 in; fewest posts; span > 147 in`,
	`bays = 1; stiffener spacing <= 25 in; stiffener spacing in 16 in..16 in; span >= 189 in; bays = 2; bay = 26 in`,
	`stiffener spacing = 21 in; bays = 1; span = 71 in`,
	`gap < 5 in; span < 133 in; bottom gap = 5-1/4 in; end post size = 6x6; openings = 1; opening = 41 in; bay 2 <= bay 1; wall height >= 3/2 * opening; bay ~ 78-1/2 in; opening side = middle; stiffener spacing < 29-3/4 in; bays > 0; rails = 4; wall height in 44-1/2 in..45-1/4 in; bays <= 1`,
	`bay >= 1970 mm; stock = 60 in, 48 in; bay 1 < 42-3/4 in; stiffeners > -1; opening side = right; centers = 152-13/16 in; post size = 4x4; gap ~ 3 in; most posts`,
	`span <= 76-11/16 in; added posts = 4; opening >= bay + 1/4 in; post 2 from right = 80 in`,
	`gap < 1-1/3 in; bottom gap ~ 2-1/2 in; floor at right = -1-1/16 in; stiffeners > 2; bays = 1; smallest bottom gap; gap = 2 in; bays = 2; span in 93 in..94 in; stiffener spacing in 14 in..14 in; wall height < 25-1/2 in; rail size = 2x4`,
	`stiffener spacing = 16 in; bay <= 2 * wall height; span = 150 in`,
	`bay >= 42 in; bays < 1; post 2 from left <= 25 in`,
	`post 1 from right <= 53 in; bay 2 > 66 in; overall < 180 in`,
	`post 2 from right <= 71 in; bay in 105 in..106 in; post 2 from right = 45 in; added posts >= 2; bays < 1`,
}

// TestALawThatGivesWayIsStillSaid: the post that it names must be there when the least change of it is sought.
func TestALawThatGivesWayIsStillSaid(t *testing.T) {
	a := Solve(bookOf(t, "post size = 4x4", "openings = 0", "bay >= 42 in", "post 2 from left <= 75 in"))
	require.Equal(t, Blocked, a.Verdict)
	var told []string
	for _, w := range a.Ways {
		told = append(told, w.Changes[0].To)
	}
	// two bays and the post between them: 2 × 42 + 3-1/2 = 87-1/2; (75 − 3-1/2) / 2 = 35-3/4
	require.Equal(t, []string{"bay >= 35-3/4 in", "post 2 from left <= 87-1/2 in"}, told)
}

// TestBlockedWallsAreToldAtOnce holds each to a time that a person does not notice (on two busy cores; alone they take 1 to
// 15 ms, one 60) and to conflicts that are all found and smallest.
func TestBlockedWallsAreToldAtOnce(t *testing.T) {
	var slowest time.Duration
	for _, wall := range onceSlow {
		b := bookOf(t, strings.Split(wall, "; ")...)
		start := time.Now()
		a := Solve(b)
		took := time.Since(start)
		slowest = max(slowest, took)
		require.Equal(t, Blocked, a.Verdict, wall)
		require.NotEmpty(t, a.Because, wall)
		require.False(t, slices.ContainsFunc(a.Facts, func(f Fact) bool { return f.Key == "not fully reduced" }), wall)
		require.Less(t, took, time.Second, wall)
	}
	t.Logf("%d walls, the slowest took %v", len(onceSlow), slowest)
}
