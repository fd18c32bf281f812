package grammar

import "strings"

// lengthWords are words of comparing that are said of lengths alone.
var lengthWords = map[string]bool{"apart": true, "wider": true, "narrower": true, "closer": true, "nearer": true, "tighter": true, "looser": true,
	"farther": true, "further": true, "thicker": true, "thinner": true, "taller": true}

// ofLengths reports whether a limit is said with a word that only lengths are compared with: "no farther apart than 30".
func (l *limit) ofLengths() bool {
	for _, t := range l.lead {
		if t.kind != kRel && t.kind != kOver {
			continue
		}
		for _, w := range strings.Fields(t.text) {
			if lengthWords[w] {
				return true
			}
		}
	}
	return false
}
