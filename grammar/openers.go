package grammar

// onlyAsks reports whether the sentence so far does no more than ask whether something is known.
func (g *grouping) onlyAsks() bool {
	if g.g.force != Check && g.g.force != State || g.g.cmd != "" || g.g.sealed || len(g.g.items) == 0 {
		return false
	}
	for _, it := range g.g.items {
		if it.value() || it.kind != kIt && it.kind != kKnowing && it.kind != kHave && it.kind != kTailFill && it.kind != kAbout && it.kind != kSell && !(it.kind == kBound && it.text == "exactly") && !it.breaks() && !(it.kind == kSellMore && it.text == "also") {
			return false
		}
	}
	return true
}

func (g *grouping) teach(i int) bool {
	g.flush(group{force: Teach, head: g.list[i].token})
	return true
}

func (g *grouping) nameWord(i int) bool {
	g.g.name = g.list[i].text
	return true
}

func (g *grouping) csv(i int) bool {
	switch n := len(g.s.groups); {
	case g.g.topic != "" || g.g.force == Ask && !g.empty():
		g.g.csv = true
	case n > g.first:
		g.s.groups[n-1].csv = true
	case i+1 < len(g.list) && !g.list[i+1].value() && g.list[i+1].kind == kQuest:
		if g.empty() && g.g.force == WhatIf && g.g.head != nil && !strong(g.g.head) {
			g.g = group{force: State} // "can I get a spreadsheet of the cuts"
		}
		g.asCsv = true
	default:
		return false
	}
	return true
}
