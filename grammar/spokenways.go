package grammar

import (
	"regexp"
	"regexp/syntax"
	"strings"
	"sync"
)

// Ways of speaking told by expressions are looked for in every line. Most lines hold none of the words that a way cannot do without; for
// them the expression is never run.

// wayKeys holds for each expression the stretches one of which every match holds; none where there are no such.
var wayKeys sync.Map // *regexp.Regexp → []string

// matchesWay reports whether an expression matches, looking for what it cannot do without first.
func matchesWay(way *regexp.Regexp, said string) bool {
	keys, ok := wayKeys.Load(way)
	if !ok {
		var found []string
		if tree, err := syntax.Parse(way.String(), syntax.Perl); err == nil {
			found = neededIn(tree.Simplify())
		}
		keys, _ = wayKeys.LoadOrStore(way, found)
	}
	list := keys.([]string)
	for _, k := range list {
		if strings.Contains(said, k) {
			return way.MatchString(said)
		}
	}
	return len(list) == 0 && way.MatchString(said)
}

const (
	mostKeys    = 60 // the most stretches that are worth looking for
	shortestKey = 3
)

// neededIn returns stretches one of which every match of an expression holds, nil where none can be told.
func neededIn(tree *syntax.Regexp) []string {
	switch tree.Op {
	case syntax.OpLiteral:
		if s := string(tree.Rune); tree.Flags&syntax.FoldCase == 0 && len(s) >= shortestKey {
			return []string{s}
		}
	case syntax.OpCapture, syntax.OpPlus:
		return neededIn(tree.Sub[0])
	case syntax.OpConcat:
		var best []string
		for _, sub := range tree.Sub {
			if keys := neededIn(sub); keys != nil && (best == nil || len(keys) < len(best)) {
				best = keys
			}
		}
		return best
	case syntax.OpAlternate:
		var all []string
		for _, sub := range tree.Sub {
			keys := neededIn(sub)
			if keys == nil || len(all)+len(keys) > mostKeys {
				return nil
			}
			all = append(all, keys...)
		}
		return all
	}
	return nil
}
