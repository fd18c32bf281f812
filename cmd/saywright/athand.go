package main

import (
	"strconv"
	"strings"

	"saywright/solver"
)

// offerAtHand offers to take off the list what the person says is there already: as much as the list has of it, because nobody said how much.
func (t *Talk) offerAtHand(q solver.Question) *solver.Question {
	b := t.now.book(t.now.hand)
	if b.Empty() || len(q.Facts) == 0 {
		return &q
	}
	base := t.base(b)
	bought := solver.Ask(b, base, "shopping", nil)
	if bought.Ask != nil {
		return bought.Ask // what keeps the list from being made comes first
	}
	buys := bought.Shopping
	cuts := solver.Ask(b, base, "cuts", nil).Cuts
	var forms []string
	add := func(item, long string, count int) {
		if count > 0 {
			forms = append(forms, "have "+item+long+" x "+strconv.Itoa(count))
		}
	}
	pieces := func(piece string) {
		for _, c := range cuts {
			if c.Piece == piece {
				add(c.Size, " "+t.written(solver.Inches(c.Length)), c.Count)
			}
		}
	}
	hardware := func(item string) {
		for _, l := range buys {
			if l.Item == item {
				add(item, "", l.Count)
			}
		}
	}
	boards := func(piece string) { // boards come as they are bought, not as they are cut
		for _, l := range buys {
			if l.Length != nil && (piece == "" || sizeOfPiece(cuts, piece) == l.Item) {
				add(l.Item, " "+t.written(solver.Inches(*l.Length)), l.Count)
			}
		}
	}
	posts := false
	for _, item := range q.Facts[0].Names {
		switch item {
		case "post":
			posts = true
			pieces("post")
		case "rail", "stiffener":
			boards(item)
		case "lumber":
			boards("")
		case "hardware":
			for _, l := range buys {
				if l.Length == nil {
					hardware(l.Item)
				}
			}
		default:
			hardware(item)
		}
	}
	if len(forms) == 0 {
		if base.Layout != nil && base.Layout.Up != nil && base.Layout.Along != nil {
			q.Facts, q.Example = append(q.Facts, solver.Fact{Key: "not on the list"}), "what do I need to buy"
		}
		return &q
	}
	then := ""
	for _, f := range q.Facts {
		if f.Key == "then" {
			then = "; " + strings.Join(f.Names, "; ")
		}
	}
	q.Choices = []string{strings.Join(forms, "; ") + then}
	q.Example = "yes"
	if posts && len(q.Facts[0].Names) == 1 { // what holds them may be there too
		for _, with := range []string{"post base", "post cap"} {
			n := len(forms)
			if hardware(with); len(forms) > n {
				q.Choices = append(q.Choices, strings.Join(forms, "; ")+then)
			}
		}
		if len(q.Choices) > 1 {
			q.Example = "the second"
		}
	}
	return &q
}

// written writes a length in the units that the person works in.
func (t *Talk) written(v solver.Value) string {
	if !t.now.metric() {
		return v.String()
	}
	return solver.Decimal(v.Num.Mul(solver.PerInch)) + " mm"
}

func sizeOfPiece(cuts []solver.Cut, piece string) string {
	for _, c := range cuts {
		if c.Piece == piece {
			return c.Size
		}
	}
	return ""
}
