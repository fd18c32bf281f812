package guard

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// TestWaysAreWrittenWithClasses reads braces, classes and the blanks at their ends.
func TestWaysAreWrittenWithClasses(t *testing.T) {
	way := asWay(`^{Person|my [a-z]+} {would|could} {Ever }*have {built|made (it|them)}{ here|there}?{ Stop}*$`)
	for said, want := range map[string]bool{
		"we would have built": true, "my uncle could never ever have made them there !": true, "we would  have built": false,
		"we would neverhave built": false, "it would have built": false, "we would have made": false, "we would have built here there": false,
	} {
		require.Equal(t, want, way.MatchString(said), said)
	}
	require.Regexp(t, asWay(`^x{ [a-z]+}{0,2}$`), "x a b")
	require.NotRegexp(t, asWay(`^x{ [a-z]+}{0,2}$`), "x a b c")
	require.Panics(t, func() { asWay(`{Nobody} knows`) })
	require.True(t, orWay(anyWordOf("six"), "^{Turned|so} ").MatchString("so it is"))
}
