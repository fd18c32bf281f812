package ways

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// TestVerbsAreUsedInTheirForms holds each use of a verb to the forms that have it.
func TestVerbsAreUsedInTheirForms(t *testing.T) {
	for w, want := range map[string]bool{"go": true, "goes": true, "went": false, "be": true, "is": false} {
		require.Equal(t, want, SideVerbs[w], "before a side: %s", w)
	}
	for w, want := range map[string]bool{"spaced": true, "space": false, "hold": true, "held": false, "allow": true, "allowed": true, "at": true} {
		require.Equal(t, want, UnderNot[w], "behind a not: %s", w)
	}
	for w, want := range map[string]bool{"build": true, "built": false, "want": true} {
		require.Equal(t, want, DoneSo[w], "told how by a so: %s", w)
	}
	for w, want := range map[string]bool{"found": true, "wants": true, "keeps": true, "kept": false, "dropped": true, "drops": false, "washed": false, "wasted": false} {
		require.Equal(t, want, WishingVerbs[w], "of a wish: %s", w)
	}
}
