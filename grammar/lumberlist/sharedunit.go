package lumberlist

import (
	"slices"
	"strconv"
	"strings"

	"saywright/grammar/chunk"
	"saywright/grammar/idiom"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
)

// UnitForAll gives the unit behind the last length of a list to all before it: "if they only sold 8 and 10 foot boards", "drop the eight
// and ten footers". What stands before the list must leave no other sense to its first figure, as "rails 6, 8 and 10 foot posts" would.
func UnitForAll(atoms []scan.Atom) []scan.Atom {
	if !slices.ContainsFunc(atoms, func(a scan.Atom) bool { return sharedUnits[a.Text] != "" }) {
		return atoms
	}
	for i := 3; i < len(atoms); i++ {
		unit := sharedUnits[atoms[i].Text]
		if unit == "" {
			continue
		}
		last := i
		if atoms[i-1].Text == "-" {
			last-- // "8 and 10-foot"
		}
		ends, start := bareBefore(atoms, last, unit)
		if len(ends) == 0 {
			continue
		}
		behind, first := i+1, ends[len(ends)-1]
		lumber := unit == "footers" && lumberBehind(atoms, behind)
		if lumber && behind < len(atoms) && boardNouns[atoms[behind].Text] {
			behind++
		}
		before := atoms[:start]
		if unit != "footers" && behind < len(atoms) && boardNouns[atoms[behind].Text] && start > 1 && drops[atoms[start-2].Text] && atoms[start-1].Text == "the" && chunk.ClauseBeginsAt(atoms, start-2) {
			before = append(slices.Clone(atoms[:start-2]), chunk.Worded(atoms[start], "they"), chunk.Worded(atoms[start], "are"), chunk.Worded(atoms[start], "out"), chunk.Worded(atoms[start], "of"))
		}
		out := append(append(make([]scan.Atom, 0, len(atoms)+len(ends)+2), before...), atoms[start:first]...)
		for k := len(ends) - 1; k >= 0; k-- {
			next, rest := last, ends[k]
			if sharedUnits[atoms[rest].Text] != "" {
				rest++
			}
			if k > 0 {
				next = ends[k-1]
			}
			given := atoms[i]
			given.Glued = false
			if lumber {
				given.Text, given.Kind = "footers", scan.Word
			} else if unit != "footers" {
				given.Text = unit
			}
			out = append(append(out, given), atoms[rest:next]...)
		}
		if lumber {
			out = append(out, chunk.Worded(atoms[i], "footers"))
		} else {
			out = append(out, atoms[i])
		}
		out = append(out, atoms[behind:]...)
		i += len(ends)
		atoms = out
	}
	return atoms
}

// drops are verbs that take a length from those on sale.
var drops = scan.WordSet("drop lose remove strike")

// lumberBehind reports whether what stands behind a list of lengths tells that they are boards, as they are sold.
func lumberBehind(atoms []scan.Atom, i int) bool {
	if i >= len(atoms) {
		return false
	}
	if boardNouns[atoms[i].Text] {
		return i+1 >= len(atoms) || atoms[i+1].Text != "size" && atoms[i+1].Text != "price"
	}
	return (atoms[i].Text == "to" || atoms[i].Text == "off" || atoms[i].Text == "from") && i+2 < len(atoms) && (atoms[i+2].Text == "list" || atoms[i+2].Text == "stock")
}

// boardNouns are names of what is sold in lengths.
var boardNouns = scan.WordSet("boards board lengths length lumber planks plank timber timbers sticks stuff ones stock")

// sharedUnits are words for the units that lumber is sold in, as soldBetween has them.
var sharedUnits = map[string]string{"foot": "footers", "ft": "footers", "feet": "footers", "'": "footers", "footer": "footers", "footers": "footers",
	"m": "m", "meter": "m", "meters": "m", "metre": "m", "metres": "m", "mm": "mm", "cm": "cm"}

// bareBefore finds the figures without a unit that stand in one list before the figure that ends at an atom: the atoms behind them, the last first,
// and where the first begins.
func bareBefore(atoms []scan.Atom, end int, unit string) (ends []int, at int) {
	at, ok := lengthEndingAt(atoms, end, unit)
	if !ok {
		return nil, 0
	}
	joined := false
	for at > 1 {
		k := at
		if w := atoms[k-1].Text; w == "and" || w == "or" || w == "&" {
			joined, k = true, k-1
		}
		if atoms[k-1].Text == "," {
			k--
		}
		if k == at {
			break
		}
		if sharedUnits[atoms[k-1].Text] == unit && unit == "footers" {
			k-- // "8' and 10' boards"
		}
		before, ok := lengthEndingAt(atoms, k, unit)
		if !ok {
			break
		}
		ends, at = append(ends, k), before
	}
	if at > 1 && atoms[at-1].Text == "of" && (atoms[at-2].Text == "choice" || atoms[at-2].Text == "selection" || atoms[at-2].Text == "pick") {
		return nil, 0 // "a choice of 8, 12 or 16 foot lengths" is all of them
	}
	if at > 1 && atoms[at-1].Text == ":" && (sharedUnits[atoms[at-2].Text] != "" || measure.LumberFeet[atoms[at-2].Text] > 0 || atoms[at-2].Text == "s") {
		return nil, 0 // "twelves: 9, and 16-footers: 14"
	}
	if at > 0 && !beforeLengths[atoms[at-1].Text] && !chunk.EndsPart(atoms, at-1) || !joined && len(ends) < 2 {
		return nil, 0
	}
	return ends, at
}

// lengthEndingAt is where a figure begins that ends before an atom and is a length that lumber is sold in.
func lengthEndingAt(atoms []scan.Atom, end int, unit string) (from int, ok bool) {
	long := 0.0
	switch {
	case end < 1:
		return 0, false
	case atoms[end-1].Kind == scan.Digits && (idiom.CentsWritten(atoms[end-1].Text) || unit == "footers" && strings.ContainsAny(atoms[end-1].Text, ".,")):
		return 0, false // a price
	case atoms[end-1].Kind == scan.Digits:
		long, _ = strconv.ParseFloat(strings.Replace(atoms[end-1].Text, ",", ".", 1), 64)
		from = end - 1
	default:
		for k := max(0, end-2); k < end; k++ {
			if n, next := SpokenUpTo99(atoms, k); next == end && n > 0 {
				long, from = float64(n), k
				break
			}
		}
	}
	r := soldBetween[unit]
	return from, long >= r[0] && long <= r[1]
}

// beforeLengths are words that a list of lengths of lumber may stand behind.
var beforeLengths = scan.WordSet(`sell sells sold selling buy buys bought buying get gets got getting carry carries carried carrying stock stocks stocked stocking keep keeps kept
	have has offer offers offered only just in the of drop drops dropped add adds added lose lost use using used take no more any also both either some out need needs with :
	into those these their our to from be include remove removed scratch cross strike even as had 've but them and off list came come comes do does did`)
