package parse

import (
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
	"saywright/solver"
	"saywright/solver/exact"
)

// sameBays reads "every bay the same width".
func (k *clause) sameBays() (reading, bool) {
	if len(k.values)+len(k.sides) > 0 || k.has(lexicon.Same) == nil || len(k.things) == 0 && !k.carriesBays() || !k.only(lexicon.Same, lexicon.Out, lexicon.But) || k.bay > 0 {
		return reading{}, false
	}
	bays := 0
	if len(k.things) == 0 {
		bays = 1
	}
	for _, i := range k.things {
		switch k.items[i].Key() {
		case "bay", "per bay":
			bays++
		case "of wall":
		default:
			return reading{}, false
		}
	}
	for _, i := range k.dims {
		if key := k.items[i].Key(); key != "wide" && key != "long" {
			return reading{}, false
		}
	}
	st := solver.Statement{Name: solver.Name{Wall: k.wallName(), Quantity: solver.Goal}, Value: solver.Value{Word: "equal bays"}}
	r, _ := k.finish(reading{made: []made{{st: st, at: k.at()}}})
	return r, bays > 0
}

// bayLikeBay reads one bay held against another: "bay 2 the same as bay 1", "bay 1 twice as wide as bay 2".
func (k *clause) bayLikeBay() (reading, bool) {
	same := k.has(lexicon.Same)
	if len(k.values)+len(k.sides)+k.rail+k.post+k.open > 0 || same == nil && k.has(lexicon.Factor) == nil || !k.only(lexicon.Same, lexicon.Factor, lexicon.Times) {
		return reading{}, false
	}
	for _, i := range k.things {
		if k.items[i].Key() != "bay" {
			return reading{}, false
		}
	}
	v := solver.Value{Of: &solver.Name{Wall: k.wallName(), Quantity: solver.Bay, Bay: k.bay2}}
	if f := k.has(lexicon.Factor); f != nil {
		r := exact.Must(f.As(lexicon.Factor).Key)
		v.Mult = &r
	}
	n := solver.Name{Wall: k.wallName(), Quantity: solver.Bay, Bay: k.bay}
	return k.finish(reading{made: []made{{st: solver.Statement{Name: n, Op: solver.Eq, Value: v}, at: k.at(), kind: solver.Length}}})
}

// carriesBays reports whether bays were counted last: "3 bays, eq".
func (k *clause) carriesBays() bool {
	return k.carry.Name != nil && (k.carry.Name.Quantity == solver.Bays || k.carry.Name.Quantity == solver.Bay) && alikeWords[k.has(lexicon.Same).Text]
}

// alikeWords are what bays are said to be where nothing else is compared.
var alikeWords = map[string]bool{"eq": true, "equal": true, "same": true, "identical": true, "equal to": false}

// equalBays reads "two equal bays": how many, and that they are alike.
func (k *clause) equalBays() (reading, bool) {
	same := k.has(lexicon.Same)
	if same == nil || !alikeWords[same.Text] || len(k.values) != 1 || len(k.sides)+len(k.dims) > 0 || k.bay > 0 || !k.only(lexicon.Same) {
		return reading{}, false
	}
	for _, i := range k.things {
		if k.items[i].Key() != "bay" {
			return reading{}, false
		}
	}
	lim := k.items[k.values[0]].lim
	if op, ok := lim.relation(); len(k.things) != 1 || !ok || op != solver.Eq || lim.lo.Unit != measure.Bare || !lim.lo.Val.IsInt() || lim.of != nil || lim.hi != nil {
		return reading{}, false
	}
	m, ok := k.fill(made{st: solver.Statement{Name: solver.Name{Wall: k.wallName(), Quantity: solver.Bays}, Op: solver.Eq}, at: k.at(), lim: lim, kind: solver.Count})
	if !ok {
		return reading{}, false
	}
	st := solver.Statement{Name: solver.Name{Wall: k.wallName(), Quantity: solver.Goal}, Value: solver.Value{Word: "equal bays"}}
	return k.finish(reading{made: []made{m, {st: st, at: same.At}}})
}

// nextBay reads how many of what was counted in one bay stand in another: "three stiffeners in bay 1 and just the one in bay 2".
func (k *clause) nextBay() (reading, bool) {
	n := k.carry.Name
	if n == nil || n.Bay == 0 || k.bay == 0 || solver.KindOf(n.Quantity) != solver.Count || len(k.things) != 1 || len(k.values) != 1 || len(k.dims)+len(k.sides) > 0 || len(k.many) > 1 || !k.only() {
		return reading{}, false
	}
	lim := k.items[k.values[0]].lim
	if op, ok := lim.relation(); !ok || op != solver.Eq || lim.of != nil || lim.hi != nil || lim.lo.Unit != measure.Bare || !lim.lo.Val.IsInt() {
		return reading{}, false
	}
	name := *n
	name.Bay = k.bay
	m, ok := k.fill(made{st: solver.Statement{Name: name, Op: solver.Eq}, at: k.at(), lim: lim, kind: solver.Count})
	if !ok {
		return reading{}, false
	}
	return k.finish(reading{made: []made{m}})
}

// ofThatBay reports whether a clause without a subject goes on about the one bay whose width was told: "bay 1 is 60 wide and gets two
// stiffeners".
func (k *clause) ofThatBay() bool {
	n := k.carry.Name
	if n == nil || n.Quantity != solver.Bay || n.Bay == 0 || k.about("per bay") || k.about("bay") || len(k.items) == 0 {
		return false
	}
	return baysVerbs[lex.FirstWord(leadOf(k.items[0]))]
}

// baysVerbs are what a bay does with its stiffeners.
var baysVerbs = scan.WordSet("has takes gets needs wants with holds carries takes")
