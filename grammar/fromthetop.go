package grammar

import (
	"regexp"
	"slices"
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/measure"
	"saywright/grammar/parse"
	"saywright/solver"
	"saywright/solver/exact"
)

// Rails are numbered from the bottom. "The third rail from the top" is another one, which only the number of rails tells: with seven it is the fifth.

const placesDown = `(first|second|third|fourth|fifth|sixth|seventh|eighth|ninth|tenth|1st|2nd|3rd|[4-9]th|10th)`

var (
	ordinalDown = regexp.MustCompile(`\b` + placesDown + ` (?:rail|board|slat|plank|one)(?:,? (?:down )?(?:counting |counted )?from (?:the )?(?:very )?top(?: down| rail| board| one)?\b|,? (?:counting|counted) down\b| down(?: from (?:the )?top)?\b)`)
	placeDown   = regexp.MustCompile(`\b` + placesDown + ` (?:from (?:the )?top|down) (?:rail|board|slat|plank)\b|\b(?:rail|board|slat|plank|one) (?:that is |which is |that's )?` + placesDown + ` from (?:the )?top\b`)
	numberDown  = regexp.MustCompile(`\b(?:rail|board|slat|plank)(?: number| no\.?)? ([0-9]{1,2}|two|three|four|five|six|seven|eight|nine|ten) (?:down )?from (?:the )?top\b`)
	countedDown = regexp.MustCompile(`\b(?:counting|counted|numbered|going) (?:down )?from (?:the )?top(?: down)?\b`)
	picksOne    = regexp.MustCompile(`^(?:ok(?:ay)? |let's |i'll |i )*(?:take|pick|choose|use|go|want|like|try)\b.*\bone\b`)
)

// whichRail asks for the number that the rail has from the bottom.
func whichRail() *solver.Question {
	return &solver.Question{Text: "Which rail is that, counted from the bottom?", Example: "where is rail 3"}
}

// fromTheTop reads a line that tells a rail by its place below the top one.
func fromTheTop(line string, c act.Context) (act.Reading, bool) {
	said := strings.ToLower(strings.Join(strings.Fields(line), " "))
	if !strings.Contains(said, "top") && !strings.Contains(said, "down") || picksOne.MatchString(said) {
		return act.Reading{}, false
	}
	for _, way := range []*regexp.Regexp{ordinalDown, placeDown, numberDown} {
		at := way.FindStringSubmatchIndex(said)
		if at == nil || strings.HasPrefix(said[at[1]:], " to ") { // "cut the second board down to 40"
			continue
		}
		word := ""
		for g := 2; g+1 < len(at); g += 2 {
			if at[g] >= 0 {
				word = said[at[g]:at[g+1]]
			}
		}
		from, known := railFromBottom(word, c)
		if !known || countedDown.MatchString(said[:at[0]]+said[at[1]:]) {
			return act.Reading{Ask: whichRail()}, true
		}
		plain := ordinalOf(from) + " rail"
		return railTold(Read(said[:at[0]]+plain+said[at[1]:], c), act.Taken{Was: said[at[0]:at[1]], Now: plain, At: len([]rune(said[:at[0]]))}), true
	}
	if countedDown.MatchString(said) && strings.Contains(said, "rail") {
		return act.Reading{Ask: whichRail()}, true
	}
	return act.Reading{}, false
}

// railFromBottom is the number from the bottom of the rail that has this place from the top, where the rails of the wall are counted.
func railFromBottom(place string, c act.Context) (exact.Rat, bool) {
	n, ok := placeDownOf(place)
	if !ok || c.Now == nil {
		return exact.Rat{}, false
	}
	rails, ok := c.Now(solver.Name{Quantity: solver.Rails})
	from := rails.Add(exact.Int(1 - n))
	return from, ok && from.Sign() > 0
}

// railTold lets a question stand. What is set by such a place is asked about: when it stands the rails may be more or fewer, and that rail another one.
func railTold(r act.Reading, took act.Taken) act.Reading {
	if r.Ask != nil {
		return act.Reading{Ask: whichRail()}
	}
	sets, ofRails := false, true
	for _, a := range r.Acts {
		for _, st := range a.Statements {
			sets = true
			switch st.Name.Quantity {
			case solver.RailTop, solver.FixedRail, solver.Measured:
			default:
				ofRails = false
			}
		}
	}
	if !sets {
		r.Taken = append(r.Taken, took)
		return r
	}
	q := whichRail()
	if ofRails {
		q.Choices, q.Example = []string{parse.Normal(r.Acts)}, "yes"
	}
	return act.Reading{Ask: q, Own: true}
}

// placeDownOf is the number that a place is said with: "third", "3rd", "three", "3".
func placeDownOf(word string) (int, bool) {
	if n, ok := measure.Ordinals[word]; ok {
		return n, true
	}
	if n := slices.Index(strings.Fields("zero one two three four five six seven eight nine ten"), word); n > 0 {
		return n, true
	}
	return measure.Atoi(strings.TrimRight(word, "stndrh"))
}

// ordinalOf is how the place of a rail is said.
func ordinalOf(n exact.Rat) string {
	for word, is := range measure.Ordinals {
		if n.Eq(exact.Int(is)) {
			return word
		}
	}
	return n.String() + "th"
}
