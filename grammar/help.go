package grammar

import "saywright/solver"

// Topics lists what Help knows.
func Topics() []string {
	var list []string
	for _, a := range solver.Vocabulary {
		list = append(list, string(a.Quantity))
	}
	return append(list, tables...)
}

func isTopic(s string) bool {
	for _, t := range Topics() {
		if t == s {
			return true
		}
	}
	return false
}

// Help returns lines of help on a topic; "" is the short general help.
func Help(topic string) []string { return nil }

// Complete lists candidates for the last word of a line.
func Complete(line string) []string { return nil }
