package main

import (
	"strings"

	"saywright/grammar"
)

// "Put that back" takes back what was just said. Behind an undo in other words, what was just done is the undo: there it brings back what that took.

// putsBack turns an undo into what brings back what the last undo took, where a line says no more than to put that back.
func (t *Talk) putsBack(line string, acts []grammar.Act) []grammar.Act {
	if t.back == nil || len(acts) != 1 || acts[0].Kind != grammar.Undo || !onlyPutsBack(line) {
		return acts
	}
	return []grammar.Act{*t.back}
}

// onlyPutsBack reports whether a line says to put something back and nothing that tells what.
func onlyPutsBack(line string) bool {
	said := map[string]bool{}
	for _, w := range strings.FieldsFunc(strings.ToLower(line), func(r rune) bool { return !(r == '\'' || 'a' <= r && r <= 'z') }) {
		if !besidePutBack[w] {
			return false
		}
		said[w] = true
	}
	return said["put"] && said["back"]
}

var besidePutBack = func() map[string]bool {
	set := map[string]bool{}
	for _, w := range strings.Fields("put that it them those this back please no wait oh ok okay sorry actually now again hey hm and just can could would you i want let's") {
		set[w] = true
	}
	return set
}()

// keepBack remembers what an undo took, so that it can be put back. Any change forgets it, for the change is what "that" is then.
func (r *round) keepBack(acts []grammar.Act) {
	for _, a := range acts {
		switch a.Kind {
		case grammar.Undo:
			if r.talk.back = r.took; onlyPutsBack(r.line) {
				r.talk.back = nil // said twice it takes back one more
			}
		case grammar.State, grammar.WhatIf, grammar.Take, grammar.TakeThat, grammar.Forget, grammar.ForgetAllBut, grammar.SetAside,
			grammar.Redo, grammar.StartOver, grammar.Open, grammar.SameAs:
			r.talk.back = nil
		}
	}
}

// again is the act that tries once more what was dropped, nil where a line cannot name its wall.
func again(t *trial, hand string) *grammar.Act {
	if t == nil || t.wall == "" && hand != "" {
		return nil
	}
	a := &grammar.Act{Kind: grammar.WhatIf}
	for _, s := range t.said {
		if t.wall != hand {
			s.Name.Wall = t.wall
		}
		a.Statements = append(a.Statements, s)
	}
	return a
}
