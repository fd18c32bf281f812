package parse

import "saywright/grammar/act"

// whatIfLast tries what stands before a "what if" at the end of a sentence: "could we get by with 4x4 posts, what if".
func (g *grouping) whatIfLast() {
	n := len(g.s.groups)
	if n-g.first < 2 || g.s.groups[n-1].force != act.WhatIf || len(strip(g.s.groups[n-1].items)) > 0 {
		return
	}
	p := &g.s.groups[n-2]
	if p.cmd == "" && (p.force == act.WhatIf || p.force == act.State && !p.sealed) && hasValue(p.items) {
		p.force = act.WhatIf
		g.s.groups = g.s.groups[:n-1]
	}
}
