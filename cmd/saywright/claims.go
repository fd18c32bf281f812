package main

import (
	"slices"
	"strings"

	"saywright/grammar"
	"saywright/solver"
)

// A list of claims may be pasted over several lines: "the sheet says:", then a claim on each. Read alone, such a line
// would be a statement, and what is only claimed would be set. So a line that goes on from the one before is read
// together with it, where both together say nothing but claims.

// listLimit is the most characters that claims over several lines may come to.
const listLimit = 3000

// goesOn reads a line together with the claims before it. ok is false where it does not go on from them.
func (t *Talk) goesOn(line string) (read grammar.Reading, whole string, ok bool) {
	item, bullet := withoutBullet(line)
	if t.claims == "" || item == "" || !bullet && !leftOpen(t.claims) || len(t.claims)+len(item) > listLimit {
		return read, "", false
	}
	whole = t.claims
	if !leftOpen(whole) {
		whole += ","
	}
	whole += " " + item
	read = grammar.Read(whole, t.context())
	return read, whole, read.Ask == nil && onlyClaims(read.Acts)
}

// keepClaims remembers a line that the next may go on from.
func (t *Talk) keepClaims(line string, read grammar.Reading) {
	t.claims = ""
	t.hold(read)
	claims := read.Ask == nil && onlyClaims(read.Acts)
	if line = strings.TrimSpace(line); claims || strings.HasSuffix(line, ":") {
		t.claims = line
	}
}

// hold keeps what was claimed, the latest of each thing, so that "is he right" can be asked again. A new start drops it.
func (t *Talk) hold(read grammar.Reading) {
	if read.Ask != nil {
		return
	}
	held := slices.Clone(t.held)
	for _, a := range read.Acts {
		switch a.Kind {
		case grammar.StartOver, grammar.Open:
			held = nil
		case grammar.Check:
			for _, s := range a.Statements {
				held = slices.DeleteFunc(held, func(was solver.Statement) bool { return was.Name == s.Name && was.Op == s.Op })
				held = append(held, s)
			}
		}
	}
	t.held = held[max(0, len(held)-mostHeld):]
}

// mostHeld is the most claims that are kept.
const mostHeld = 24

func onlyClaims(acts []grammar.Act) bool {
	for _, a := range acts {
		if a.Kind != grammar.Check {
			return false
		}
	}
	return len(acts) > 0
}

// leftOpen reports whether more is to come behind a line.
func leftOpen(line string) bool {
	return strings.HasSuffix(line, ",") || strings.HasSuffix(line, ":") || strings.HasSuffix(line, ";")
}

// withoutBullet takes the mark of a list off a line.
func withoutBullet(line string) (item string, bullet bool) {
	line = strings.TrimSpace(line)
	for _, mark := range []string{"- ", "– ", "— ", "* ", "• "} {
		if rest, ok := strings.CutPrefix(line, mark); ok {
			return strings.TrimSpace(rest), true
		}
	}
	return line, false
}
