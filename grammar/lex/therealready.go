package lex

import (
	"regexp"

	"saywright/grammar/ways"
)

// MatchOf is the match of an expression with its groups, nil where there is none.
func MatchOf(way *regexp.Regexp, said string) []string {
	if !ways.MayMatch(way, said) {
		return nil
	}
	return way.FindStringSubmatch(said)
}
