package main

import (
	"regexp"
	"strconv"
	"strings"

	"saywright/grammar"
	"saywright/solver"
)

// What a normal form does not carry, and the answer is to begin with: here the line is looked at once more, after it was read, for nothing but that. It decides
// nothing of what is answered.

// climbs finds climbing that goes over a wall or up it, not between its rails, nor on it, which asks what it holds.
var climbs = regexp.MustCompile(`(?i)\bclimb(s|ing|ed)?\b(?: (?:it|that|the|wall))*(?: (through|under|underneath|between|on))?`)

// asksToClimb reports whether a line asks whether somebody can climb the wall.
func asksToClimb(line string) bool {
	m := climbs.FindStringSubmatch(line)
	return m != nil && m[2] == ""
}

// railsNamed finds a count of rails: "6 rails", "six boards".
var railsNamed = regexp.MustCompile(`(?i)(?:^|[^\w.,/'"-])(\d{1,2}|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve) (?:rails?|boards?|slats?)\b`)

var countWords = []string{"", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"}

// railsIn is the count of rails that a line names, where it names one and only one.
func railsIn(line string) (int, bool) {
	all := railsNamed.FindAllStringSubmatch(line, -1)
	if len(all) != 1 {
		return 0, false
	}
	said := strings.ToLower(all[0][1])
	for n, w := range countWords {
		if w == said {
			return n, true
		}
	}
	n, err := strconv.Atoi(said)
	return n, err == nil && n > 0
}

// notSoMany tells why is asked of a count of rails that is not the one there is.
func (r *round) notSoMany(name *solver.Name, a *solver.Answer) []solver.Fact {
	if name == nil || name.Quantity != solver.Rails || a.Verdict != solver.Fits || a.Layout == nil || a.Layout.Up == nil {
		return nil
	}
	n, ok := railsIn(r.line)
	if !ok || n == a.Layout.Rails {
		return nil
	}
	return []solver.Fact{{Key: "not so many", Nums: counts(n, a.Layout.Rails)}}
}

// notTaken tells before an answer that the line before it was asked back and changed nothing: else the answer looks as if it had been heard. A line that states
// something says by itself what it heard; a question does not. Whatever answers what was asked back, and a question that was asked back, need no such word.
func (t *Talk) notTaken(line string, read grammar.Reading) *solver.Fact {
	if t.unheard == "" || questioning(t.unheard) {
		return nil
	}
	for _, a := range read.Acts {
		if a.Kind != grammar.Ask && a.Kind != grammar.ShowAll && a.Kind != grammar.Next && a.Kind != grammar.PrintTo && a.Kind != grammar.DrawTo {
			return nil
		}
	}
	c := t.context()
	c.Pending, c.Choices = nil, nil
	if alone := grammar.Read(line, c); alone.Ask != nil || strings.Join(heard(alone.Acts), "; ") != strings.Join(heard(read.Acts), "; ") {
		return nil // it answers what was asked back
	}
	return &solver.Fact{Key: "not taken in", Names: []string{shortened(t.unheard)}}
}

// saidNothing are the questions that ask back a line in which nothing was said of the wall: thanks, other matters.
var saidNothing = map[string]bool{"dropped": true, "nothing said": true, "what to know": true, "only the wall": true}

// questions begin as a question does, or end as one.
var questions = regexp.MustCompile(`(?i)^\W*(?:so |and |but |ok |okay )*(?:what|how|why|where|which|who|when|is|are|am|do|does|did|can|could|will|would|should|shall|may|might|has|have you|tell|show|give|print|draw|list)\b|\?\s*$`)

// questioning reports whether a line asks, rather than says: then nothing of it could have been taken in.
func questioning(line string) bool { return questions.MatchString(line) }

// longestQuote is how much of a line is quoted to say which one is meant, in runes.
const longestQuote = 48

func shortened(line string) string {
	line = strings.Join(strings.Fields(line), " ")
	runes := []rune(line)
	if len(runes) <= longestQuote {
		return line
	}
	kept := string(runes[:longestQuote])
	if i := strings.LastIndexByte(kept, ' '); i > longestQuote/2 {
		kept = kept[:i]
	}
	return strings.TrimRight(kept, " ,;:") + " …"
}

// climbing tells that it is climbing that a question of children is about.
func (r *round) climbing(topic string) []solver.Fact {
	if topic != "guard" && topic != "strength" || !asksToClimb(r.line) {
		return nil
	}
	return []solver.Fact{{Key: "climbing"}}
}
