package measure

import "strings"

// Text is what stands from one atom up to another, as it was said.
func (r Reader) Text(i, next int) string {
	var b strings.Builder
	for k := i; k < next; k++ {
		if k > i && !r.Atoms[k].Glued {
			b.WriteByte(' ')
		}
		b.WriteString(r.Atoms[k].Text)
	}
	return b.String()
}
