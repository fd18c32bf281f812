package grammar

import (
	"sort"
	"strings"

	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/parse"
	"saywright/solver"
)

// general is the short help: lines to say, each of which is read as it stands.
var general = []string{"wall 48 high, gap 2-1/2", "6 rails", "opening at least 30, on the right", "span 12 ft 6", "what if 7 rails", "why 6 rails", "how long do I cut them", "help gap"}

// Help returns lines of help on a topic, the name of a quantity or of a table; "" is the short general help. The names
// come from the tables that lines are read by, and every example is a line that is read. It returns nil for what is no topic.
func Help(topic string) []string {
	if topic == "" {
		return append([]string{"Say what you want, or ask. For example:"}, indented(general)...)
	}
	if topic == string(solver.Price) {
		return append([]string{"price: what lumber and hardware cost", "For example:"}, indented(Examples(topic))...)
	}
	if a := solver.Tell(solver.Quantity(topic)); a.Kind != 0 {
		lines := []string{topic + ": " + a.What}
		if names := namesOf(topic); len(names) > 0 {
			lines = append(lines, "Also called: "+strings.Join(names, ", "))
		}
		return append(append(lines, "For example:"), indented(Examples(topic))...)
	}
	for _, t := range lexicon.Tables {
		if t == topic {
			return append([]string{"To ask for " + topic + ", for example:"}, indented(Examples(topic))...)
		}
	}
	return nil
}

func indented(list []string) []string {
	out := make([]string, len(list))
	for i, s := range list {
		out[i] = "  " + s
	}
	return out
}

// sampleValues are values that each kind of quantity is shown with.
var sampleValues = map[solver.Quantity][]string{
	solver.WallHeight: {"42", "48"}, solver.Span: {"12 ft 6", "160"}, solver.Overall: {"13 ft", "14 ft"}, solver.Centers: {"12 ft 10", "13 ft"},
	solver.Opening: {"30", "36"}, solver.Bay: {"60", "96"}, solver.PostHeight: {"44", "50"}, solver.StiffenerSpacing: {"24", "32"},
	solver.OpeningFromLeft: {"40", "60"}, solver.OpeningFromRight: {"40", "60"}, solver.RailFace: {"5-3/8", "5-1/2"}, solver.Drop: {"24", "36"},
	solver.Kerf: {"3/32", "1/8"}, solver.Tape: {"1/32", "1/16"}, solver.BracketThickness: {"3/32", "1/8"}, solver.SlabThickness: {"4", "5"}, solver.EdgeDistance: {"5", "6"},
	solver.AnchorSize: {"3/8", "1/2"}, solver.Tolerance: {"1/32", "1/16"},
}

// Examples returns lines that say something of a topic; each is read as it stands.
func Examples(topic string) []string {
	q := solver.Quantity(topic)
	v := sampleValues[q]
	if v == nil {
		v = []string{"2", "3"}
	}
	switch q {
	case solver.RailTop:
		return []string{"rail 3 top = 24 in", "rail 2 top at least 14"}
	case solver.PostFromLeft:
		return []string{"post 1 from left = 60 in"}
	case solver.PostFromRight:
		return []string{"post 1 from right = 60 in"}
	case solver.FloorAtRight:
		return []string{"floor at right = -1-1/2 in", "the floor is an inch lower at the right"}
	case solver.Units:
		return []string{"units = metric", "I work in millimeters"}
	case solver.Pool:
		return []string{"pool = yes"}
	case solver.Spare:
		return []string{"spare 10%", "ask spare"}
	case solver.Stock:
		return []string{"they sell eights, twelves and sixteens", "stock = 96 in, 144 in"}
	case solver.Price:
		return []string{"sixteen foot 2x6 are 14.50", "brackets are 3.49 each", "price 2x6 192 in = 14.50"}
	case solver.Budget:
		return []string{"budget $350", "ask budget"}
	}
	switch solver.KindOf(q) {
	case solver.Length:
		return []string{topic + " " + v[1], topic + " at least " + v[0], topic + " between " + v[0] + " and " + v[1], "what if " + topic + " " + v[0], "why " + topic}
	case solver.Count:
		return []string{topic + " = 2", "why " + topic}
	case solver.Size:
		return []string{topic + " 2x6", "ask " + topic}
	case solver.Side:
		return []string{"opening on the right", topic + " = left"}
	case solver.Plain:
		return []string{topic + " = 250"}
	}
	return []string{"ask " + topic}
}

// namesOf samples the other names of a quantity from the tables.
func namesOf(topic string) []string {
	i := lexicon.AspectIndex[topic]
	var names []string
	for k := range lexicon.Parts {
		e := &lexicon.Parts[k]
		if e.Kind != lexicon.Part || !e.Sense.Sure.Has(i) || len(names) >= 6 {
			continue
		}
		for _, way := range strings.Split(strings.TrimSpace(e.Ways), "\n") {
			names = append(names, sampleWay(strings.TrimSpace(way), topic)...)
			if len(names) >= 6 {
				break
			}
		}
	}
	return names[:min(6, len(names))]
}

// sampleWay writes out a way of the tables that is a word or a class of words.
func sampleWay(way, topic string) []string {
	if strings.ContainsAny(way, "([|") {
		return nil
	}
	for _, c := range lexicon.Classes {
		if way != c.Name {
			continue
		}
		var out []string
		for _, w := range strings.Fields(c.Words) {
			if len(w) > 3 && w != topic && len(out) < 4 {
				out = append(out, w)
			}
		}
		return out
	}
	if way == strings.ToLower(way) && way != topic {
		return []string{way}
	}
	return nil
}

// Complete lists what the last word of a line can be completed to: topics after "help", "why", "ask" and "teach", words
// of the vocabulary elsewhere. Each candidate is a whole word; there are none after a space or for a word of one letter.
func Complete(line string) []string {
	at := strings.LastIndexAny(line, " \t,;:") + 1
	head, last := strings.TrimSpace(line[:at]), strings.ToLower(line[at:])
	var out []string
	switch head {
	case "help", "why", "ask", "teach", "forget":
		for _, t := range parse.Topics() {
			if strings.HasPrefix(t, last) {
				out = append(out, t)
			}
		}
		return out
	}
	if len(last) < 2 {
		return nil
	}
	for w := range lex.Words().Known {
		if len(w) > len(last) && len(w) > 3 && strings.HasPrefix(w, last) && !lexicon.Vocab().Neutral[w] {
			out = append(out, w)
		}
	}
	sort.Strings(out)
	return out[:min(len(out), 20)]
}
