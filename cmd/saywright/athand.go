package main

import (
	"regexp"
	"slices"
	"strconv"
	"strings"

	"saywright/grammar"
	"saywright/solver"
	"saywright/solver/exact"
)

// offerAtHand offers to take off the list what a line says is there already: as much as the list still has of it, because nobody said how much. A "have"
// takes the place of the one before, so what was told to be there before counts in.
func (t *Talk) offerAtHand(q solver.Question, line string) *solver.Question {
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
	pieces := func(piece string) { // all that stand, as they are cut
		for _, c := range cuts {
			if c.Piece == piece {
				add(c.Size, " "+t.written(solver.Inches(c.Length)), max(c.Count, hadOf(b, c.Size, &c.Length)))
			}
		}
	}
	hardware := func(item string) {
		for _, l := range buys {
			if l.Item == item && l.Count > 0 {
				add(item, "", hadOf(b, item, nil)+l.Count)
			}
		}
	}
	boards := func(piece string) { // boards come as they are bought, not as they are cut
		for _, l := range buys {
			if l.Length != nil && (piece == "" || sizeOfPiece(cuts, piece) == l.Item) {
				add(l.Item, " "+t.written(solver.Inches(*l.Length)), hadOf(b, l.Item, l.Length)+l.Count)
			}
		}
	}
	posts := false
	for _, item := range q.Facts[0].Names {
		switch item {
		case "post":
			if posts = true; !onlyEndPosts(line) {
				pieces("post")
			}
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
			q.Facts, q.Example = append(slices.Clip(q.Facts), solver.Fact{Key: "not on the list"}), "what do I need to buy"
			if posts && len(base.Layout.Posts) > 0 { // only the end posts were spoken of
				q.Facts = append(q.Facts, solver.Fact{Key: "end posts alone"})
			}
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

// hadOf counts what was told to be there of an item, of that length where it has one.
func hadOf(b solver.Book, item string, long *exact.Rat) (n int) {
	for _, s := range b.Standing() {
		if s.Name.Quantity != solver.Have || solver.PartName(s.Name.Item) != solver.PartName(item) || (long == nil) != (s.Name.Long == nil) || long != nil && !s.Name.Long.Num.Eq(*long) {
			continue
		}
		k, _ := s.Value.Num.Int64()
		n += int(k)
	}
	return n
}

// onlyEndPosts reports whether no other posts are spoken of: those are never on the list.
func onlyEndPosts(line string) bool {
	rest := endPost.ReplaceAllString(line, "")
	return rest != line && !anyPost.MatchString(rest)
}

var (
	endPost = regexp.MustCompile(`(?i)\bend[ -]?posts?\b`)
	anyPost = regexp.MustCompile(`(?i)\b(?:posts?|others|added ones)\b`)
)

// withoutAny answers what a line asks for besides where nothing of what it says is there is on the list: then nothing is left to ask. none tells so.
func (t *Talk) withoutAny(line string, read grammar.Reading) (then grammar.Reading, none *solver.Fact) {
	if read.Ask == nil || read.Ask.Key != "at hand" {
		return read, nil
	}
	q := t.offerAtHand(*read.Ask, line)
	for _, f := range q.Facts {
		if f.Key == "then" && len(q.Choices) == 0 && slices.ContainsFunc(q.Facts, func(f solver.Fact) bool { return f.Key == "not on the list" }) {
			return grammar.Read(strings.Join(f.Names, "; "), t.context()), &solver.Fact{Key: "none comes off", Names: q.Facts[0].Names}
		}
	}
	return read, nil
}

// written writes a length in the units that the person works in.
func (t *Talk) written(v solver.Value) string {
	if !t.now.inMillimeters() {
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
