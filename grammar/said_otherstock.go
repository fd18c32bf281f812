package grammar

import (
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/idiom"
	"saywright/solver"
)

// triesStockOn reads such a line: right behind a trial of other boards they are tried too, and set nothing; behind what is on sale they are on sale
// besides.
func triesStockOn(line string, c act.Context) (act.Reading, bool) {
	sold := c.Subject != nil && c.Subject.Quantity == solver.Stock && c.Subject.Item == "" && strings.HasPrefix(strings.ToLower(line), "and ")
	if !c.TriedStock && !sold || c.Deep {
		return act.Reading{}, false
	}
	found := idiom.StockOn.FindStringSubmatch(strings.ToLower(strings.Join(strings.Fields(line), " ")))
	if found == nil {
		return act.Reading{}, false
	}
	tried := c.TriedStock
	c.Deep, c.TriedStock = true, false
	if !tried {
		r := Read("they have "+found[1]+" too", c)
		return r, r.Ask == nil && len(r.Acts) == 1 && r.Acts[0].Kind == act.State && len(r.Acts[0].Statements) == 1 && r.Acts[0].Statements[0].Op == solver.Plus
	}
	r := Read("what if i buy only "+found[1]+", what do i have to buy", c)
	if r.Ask != nil || len(r.Acts) != 2 || r.Acts[0].Kind != act.WhatIf || len(r.Acts[0].Statements) != 1 || r.Acts[0].Statements[0].Name.Quantity != solver.Stock {
		return act.Reading{}, false
	}
	for i := range r.Acts {
		r.Acts[i].At, r.Acts[i].End = 0, len([]rune(line))
	}
	return r, true
}
