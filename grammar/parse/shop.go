package parse

import (
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/solver"
)

// goods is what a clause says of lumber and parts: sizes, lengths, counts and money, in the order said.
type goods struct {
	size   string
	longs  []*limit // lengths with a unit, or by their feet
	counts []*limit // bare whole numbers
	others []*limit // bare fractions
	cash   []*limit
	items  []string // brackets, screws, …
	boards bool
}

// shop reads prices, lumber on sale, lumber at hand and extra pieces.
func (k *clause) shop() (reading, bool) {
	g, ok := k.goods()
	if !ok {
		return reading{}, false
	}
	for _, read := range []func(*clause, goods) (reading, bool){(*clause).price, (*clause).have, (*clause).extra, (*clause).stock} {
		if r, ok := read(k, g); ok {
			return r, true
		}
	}
	return reading{}, false
}

// goods sorts the values of a clause; ok is false where it speaks of anything but what is bought.
func (k *clause) goods() (g goods, ok bool) {
	k.spokenPrice()
	for _, i := range k.values {
		lim := k.items[i].lim
		op, rel := lim.relation()
		if !rel || op != solver.Eq || lim.hi != nil || lim.of != nil || lim.thickWide() {
			return g, false
		}
		switch a := lim.lo; {
		case a.Size != "":
			if g.size != "" && g.size != a.Size {
				return g, false
			}
			g.size = a.Size
		case a.Unit == measure.Money:
			g.cash = append(g.cash, lim)
		case a.Unit == measure.Percent || a.Times:
			return g, false
		case a.Unit != measure.Bare || lim.long():
			g.longs = append(g.longs, lim)
		case a.Val.IsInt() && !a.Point:
			g.counts = append(g.counts, lim)
		default:
			g.others = append(g.others, lim)
		}
	}
	for _, i := range k.things {
		t := k.items[i]
		item := t.As(lexicon.Item)
		switch {
		case item != nil:
			g.items = append(g.items, item.Key)
		case t.Key() == "rail", t.Key() == "fit" && lex.CutWord(t.Text) && !strings.HasPrefix(t.Text, "cut"):
			g.boards = true // "nine more pieces cut at 30"
		case t.Key() == "post" && t.Index == 0 && k.has(lexicon.Sell) != nil && k.sized():
		case t.Kind == lexicon.StockWord, t.Key() == "size", t.Key() == "of wall", t.Key() == "in all":
		default:
			return g, false
		}
	}
	for _, i := range k.dims {
		if k.items[i].Key() != "long" {
			return g, false
		}
	}
	for _, w := range k.words {
		if t := k.items[w]; t.Kind == lexicon.Item {
			g.items = append(g.items, t.Key())
		}
	}
	return g, len(k.sides) == 0 && k.bay+k.rail+k.post+k.open == 0
}

func (k *clause) one(st solver.Statement, c carry) (reading, bool) {
	r, ok := k.finish(reading{made: []made{{st: st, at: k.at()}}})
	r.carry.item = c.item
	if r.carry.item == nil {
		r.carry.item = k.carry.item
	}
	return r, ok
}

func (k *clause) lengthOf(l *limit) (*solver.Value, bool) {
	v, ok := k.s.value(*l.lo, solver.Length)
	return &v, ok && v.Num.Sign() > 0
}

// price reads "2x6 twelve-footers are 11.48 apiece", "brackets are 3.49 apiece", "a box of 100 screws is 9.00".
func (k *clause) price(g goods) (reading, bool) {
	if !k.only(lexicon.PriceVerb, lexicon.Each, lexicon.X, lexicon.Item, lexicon.BoxOf, lexicon.Per, lexicon.Rel, lexicon.Sell, lexicon.Have, lexicon.To, lexicon.More) || k.has(lexicon.Have) != nil && k.has(lexicon.Each) == nil || k.boughtMore() || k.tellsOfThem() {
		return reading{}, false
	}
	said := k.has(lexicon.PriceVerb) != nil || k.has(lexicon.Each) != nil || len(g.cash) == 1 || len(g.items) == 1 && k.carry.item != nil && k.carry.item.Quantity == solver.Price
	cash, g, ok := k.cash(g)
	if !ok {
		return reading{}, false
	}
	n := solver.Name{Quantity: solver.Price}
	switch {
	case len(g.items) == 1 && g.size == "" && len(g.longs) == 0:
		n.Item = g.items[0]
		if !said && !cash.lo.Money2 && k.has(lexicon.BoxOf) == nil {
			return reading{}, false
		}
		if n.Item == "screws" && len(g.counts) == 1 {
			v, _ := g.counts[0].lo.Val.Int64()
			n.Box = int(v)
		} else if len(g.counts) > 0 && !((k.has(lexicon.Each) != nil || said && k.items[0].value() && k.items[0].lim == g.counts[0]) && g.counts[0].lo.Val.Eq(lex.OneRat)) {
			return reading{}, false
		}
	case len(g.items) == 0 && len(g.longs) == 1:
		n.Item = g.size
		if n.Item == "" && k.carry.item != nil && !hardware[k.carry.item.Item] && !k.about("rail") {
			n.Item = k.carry.item.Item
		} else if n.Item == "" && k.carry.Name != nil && k.carry.Name.Quantity == solver.Stock {
			n.Item = k.carry.Name.Item // "2x6s come in twelves and sixteens, the sixteens are 14.50"
		}
		if n.Item == "" {
			n.Item = "rails"
		}
		if len(g.counts) == 1 && !g.counts[0].lo.Val.Eq(lex.OneRat) || len(g.counts) > 1 {
			return reading{}, false
		}
		if g.size == "" && !g.longs[0].lo.Footer && k.carry.item == nil && !(k.has(lexicon.StockWord) != nil || k.about("stock") || g.boards) {
			return reading{}, false
		}
		if n.Long, ok = k.lengthOf(g.longs[0]); !ok {
			return reading{}, false
		}
	default:
		return reading{}, false
	}
	v, ok := k.s.value(*cash.lo, solver.Money)
	if !ok || len(g.others) > 0 || v.Num.Sign() < 0 {
		return reading{}, false
	}
	r, ok := k.one(solver.Statement{Name: n, Op: solver.Eq, Value: v}, carry{item: &n})
	return k.soldOnly(r, n), ok
}

// hardware are goods that have no length of their own.
var hardware = map[string]bool{"bracket": true, "screws": true, "anchor": true, "post base": true, "post cap": true}

func (k *clause) boughtMore() bool {
	t := k.has(lexicon.More)
	return t != nil && t.Text == "more"
}

// cash takes the money out of the goods: what is said as money, or else the last bare number.
func (k *clause) cash(g goods) (*limit, goods, bool) {
	if len(g.cash) == 1 {
		return g.cash[0], g, len(g.others) == 0
	}
	if len(g.cash) > 1 {
		return nil, g, false
	}
	last := k.items[k.values0()].lim
	switch {
	case len(g.others) == 1 && g.others[0] == last:
		g.others = nil
	case len(g.others) == 1 && g.others[0].lo.Money2 && (k.has(lexicon.PriceVerb) != nil || k.has(lexicon.BoxOf) != nil || len(g.longs) == 1 && (strings.HasSuffix(k.items[k.valueOf(g.others[0])].Before, "are") || strings.HasSuffix(k.items[k.valueOf(g.others[0])].Before, "is"))):
		last, g.others = g.others[0], nil // "I paid 14.50 for a sixteen foot 2x6"
	case len(g.counts) > 0 && g.counts[len(g.counts)-1] == last && (k.has(lexicon.PriceVerb) != nil || len(g.items) == 1 && k.carry.item != nil && k.carry.item.Quantity == solver.Price && len(g.counts) == 1):
		g.counts = g.counts[:len(g.counts)-1]
	default:
		return nil, g, k.spokenCash(&g)
	}
	return last, g, !last.lo.Frac || last.lo.Point
}

// spokenCash is not taken: "nine fifty" is two numbers until a price stands before it.
func (k *clause) spokenCash(*goods) bool { return false }

// values0 is the place of the last value, 0 where there is none.
func (k *clause) values0() int {
	if len(k.values) == 0 {
		return 0
	}
	return k.values[len(k.values)-1]
}

// have reads lumber at hand: "I've already got six twelve-foot two by sixes".
func (k *clause) have(g goods) (reading, bool) {
	again := k.carry.item != nil && k.carry.item.Quantity == solver.Have && g.size != "" // "eight 2x6 twelve footers and two 4x4 eights"
	if k.has(lexicon.Have) == nil && k.has(lexicon.HaveTail) == nil && !again && !k.boughtThem() && !k.ownsBoards() || k.boughtMore() || !k.only(lexicon.Have, lexicon.HaveTail, lexicon.Each, lexicon.PriceVerb, lexicon.Sell, lexicon.X, kIt2) && !(again && k.plusBoards(g)) {
		return reading{}, false
	}
	return k.counted(solver.Have, g)
}

// plusBoards reports whether a list of boards goes on with "plus" and boards as they are sold: "have (4) 4x4 8' plus (2) 2x6 12'". Pieces are told in inches.
func (k *clause) plusBoards(g goods) bool {
	t := k.has(lexicon.Change)
	for i, it := range k.items {
		if t != nil && it.Token == t && i+1 < len(k.items) && k.items[i+1].startAt() > t.End+3 {
			return false // "plus I need two"
		}
	}
	return t != nil && t.Text == "plus" && len(g.longs) == 1 && (g.longs[0].lo.Footer || g.longs[0].lo.Unit == measure.Feet) && k.only(lexicon.Have, lexicon.HaveTail, lexicon.Each, lexicon.X, kIt2, lexicon.Change)
}

// boughtThem reports whether boards were bought: "I bought ten 2x6 twelve footers".
func (k *clause) boughtThem() bool {
	t := k.has(lexicon.Sell)
	return t != nil && k.force == act.State && (lex.EndsIn(t.Text, "bought") || lex.EndsIn(t.Text, "sold me") || lex.EndsIn(t.Text, "sold us"))
}

// extra reads pieces wanted besides: "and twelve more two by sixes at 45 and a half".
func (k *clause) extra(g goods) (reading, bool) {
	plus := k.has(lexicon.Change) != nil && k.has(lexicon.Change).Text == "plus" && len(g.counts) > 0
	if k.has(lexicon.Extra) == nil && !k.boughtMore() && !plus || !k.only(lexicon.Extra, lexicon.More, lexicon.Another, lexicon.Each, lexicon.PriceVerb, lexicon.X, lexicon.CutWord, lexicon.Have, lexicon.Change, lexicon.Sell, lexicon.HaveTail, lexicon.ThanNow) {
		return reading{}, false
	}
	if len(g.longs) == 0 && len(g.counts)+len(g.others) == 2 { // the length is bare
		last := k.items[k.values0()].lim
		if n := len(g.counts); n == 2 && g.counts[1] == last {
			g.counts = g.counts[:1]
			g.longs = []*limit{last}
		} else if len(g.others) == 1 {
			g.longs, g.others = g.others, nil
		}
	}
	return k.counted(solver.Extra, g)
}

func (k *clause) counted(q solver.Quantity, g goods) (reading, bool) {
	if g.size == "" || len(g.longs) != 1 || len(g.counts) != 1 || len(g.others)+len(g.cash)+len(g.items) > 0 {
		return reading{}, false
	}
	long, ok := k.lengthOf(g.longs[0])
	n, ok2 := g.counts[0].lo.Val.Int64()
	if !ok || !ok2 || n < 1 || n > 10000 {
		return reading{}, false
	}
	st := solver.Statement{Name: solver.Name{Quantity: q, Item: g.size, Long: long}, Op: solver.Each, Value: solver.Number(int(n))}
	return k.one(st, carry{item: &st.Name})
}

// thickWide reports whether a dimension that no lumber or part is sold by stands after a value.
func (l *limit) thickWide() bool {
	for _, t := range l.tail {
		if t.Kind == lexicon.Dim && t.Key() != "long" {
			return true
		}
	}
	return false
}

// sized reports whether a lumber size stands in the clause.
func (k *clause) sized() bool {
	for _, i := range k.values {
		if k.items[i].lim.lo.Size != "" {
			return true
		}
	}
	return false
}

// long reports whether "long" stands after a value.
func (l *limit) long() bool {
	for _, t := range l.tail {
		if t.Kind == lexicon.Dim && t.Key() == "long" && !(t.Text == "lengths" && l.lo.Unit == measure.Bare) { // "eight lengths of 2x6"
			return true
		}
	}
	return false
}

// valueOf is the place of a value.
func (k *clause) valueOf(l *limit) int {
	for _, i := range k.values {
		if k.items[i].lim == l {
			return i
		}
	}
	return 0
}

// boughtLast reports whether what was said last in the line is of what is bought.
func (s *Speech) boughtLast() bool {
	n := len(s.Acts)
	if n == 0 || len(s.Acts[n-1].Statements) == 0 {
		return false
	}
	list := s.Acts[n-1].Statements
	switch list[len(list)-1].Name.Quantity {
	case solver.Spare, solver.Price, solver.Stock, solver.Have, solver.Extra, solver.Budget:
		return true
	}
	return false
}
