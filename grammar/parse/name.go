package parse

import (
	"strconv"
	"strings"

	"saywright/grammar/act"
	"saywright/solver"
)

// parseName reads the normal form of a name: "gap", "bay 2 stiffeners", "measured bay 1 rail 3", "price 2x6 192 in".
func parseName(s string) (solver.Name, error) {
	wall, s := cutWall(s)
	n, ok := bareName(s)
	if !ok {
		return solver.Name{}, want("the name of a quantity", s)
	}
	n.Wall = wall
	return n, nil
}

func bareName(s string) (solver.Name, bool) {
	if solver.KindOf(solver.Quantity(s)) != 0 && s != string(solver.RailTop) {
		return solver.Name{Quantity: solver.Quantity(s)}, true
	}
	first, rest, _ := strings.Cut(s, " ")
	switch first {
	case "measured", "short", "cut":
		return placeName(solver.Quantity(first), rest)
	case "price", "have", "extra", "boards", "stock":
		return itemName(solver.Quantity(first), rest)
	case "fixed":
		rail, top, ok := strings.Cut(strings.TrimPrefix(rest, "rail "), " ")
		n, err := strconv.Atoi(rail)
		return solver.Name{Quantity: solver.FixedRail, Rail: n}, ok && err == nil && top == "top" && n > 0
	case "marks", "cost", "tolerance":
		return solver.Name{Quantity: solver.Quantity(first)}, rest == ""
	case "bay", "rail", "post", "opening":
		return indexedName(first, rest)
	}
	return solver.Name{}, false
}

// indexedName reads "bay 1", "bay 2 stiffeners", "rail 3 top", "opening 1 side", "post 1 from left".
func indexedName(part, s string) (solver.Name, bool) {
	index, rest, _ := strings.Cut(s, " ")
	k, err := strconv.Atoi(index)
	if err != nil || k < 1 || strconv.Itoa(k) != index {
		return solver.Name{}, false
	}
	q := solver.Quantity(strings.TrimSpace(part + " " + rest))
	n := solver.Name{Quantity: q}
	switch part {
	case "bay":
		n.Bay = k
		if rest != "" {
			n.Quantity = solver.Quantity(rest)
		}
	case "rail":
		n.Rail = k
		return n, q == solver.RailTop
	case "post":
		n.Post = k
		return n, q == solver.PostFromLeft || q == solver.PostFromRight || q == solver.PostHeight
	case "opening":
		n.Opening = k
	}
	return n, solver.KindOf(n.Quantity) != 0
}

// placeName reads the place of a measurement, a short piece or a claimed cut.
func placeName(q solver.Quantity, s string) (solver.Name, bool) {
	n := solver.Name{Quantity: q}
	words := strings.Fields(s)
	for i := 0; i < len(words); i++ {
		w := words[i]
		if w == "bay" || w == "rail" || w == "opening" {
			if i+1 < len(words) {
				if k, err := strconv.Atoi(words[i+1]); err == nil && k > 0 {
					setIndex(&n, w, k)
					i++
					continue
				}
			}
			if w == "opening" && q == solver.Measured {
				n.At = w // the opening, where there is one
				continue
			}
			return n, false
		}
		switch {
		case q == solver.Measured && (w == "bottom" || w == "top"):
			n.At = w
		case q == solver.CutOf && (w == "post" || w == "stiffener"):
			n.Item = w
		default:
			return n, false
		}
	}
	return n, len(words) > 0
}

func setIndex(n *solver.Name, part string, k int) {
	switch part {
	case "bay":
		n.Bay = k
	case "rail":
		n.Rail = k
	case "opening":
		n.Opening = k
	}
}

// itemName reads what is sold, had or wanted: "2x6 192 in", "rails 192 in", "post base", "screws 100", "4x4".
func itemName(q solver.Quantity, s string) (solver.Name, bool) {
	n := solver.Name{Quantity: q, Item: s}
	words := strings.Fields(s)
	if k := len(words); k >= 3 && (words[k-1] == "in" || words[k-1] == "mm") {
		v, err := parseAmount(words[k-2] + " " + words[k-1])
		if err != nil {
			return n, false
		}
		n.Long, n.Item = &v, strings.Join(words[:k-2], " ")
	} else if k == 2 {
		if box, err := strconv.Atoi(words[1]); err == nil {
			n.Item, n.Box = words[0], box
		}
	}
	return n, n.Item != "" && strings.Trim(n.Item, "abcdefghijklmnopqrstuvwxyz0123456789 -") == ""
}

// Known reports whether a wall or a saved plan has a name.
func Known(name string, c act.Context) bool {
	for _, of := range [][]string{c.Walls, c.Saved} {
		for _, n := range of {
			if strings.EqualFold(n, name) {
				return true
			}
		}
	}
	return false
}
