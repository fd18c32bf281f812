package grammar

import "slices"

// askedIn parts a wish for units from the question that it ends: "how long do I cut them, in mm please". It is a sentence of its own.
func (l *lexing) askedIn() {
	for i := len(l.tokens) - 1; i > 0; i-- {
		t, prev := &l.tokens[i], &l.tokens[i-1]
		if i+1 < len(l.tokens) && l.tokens[i+1].kind != kStop && l.tokens[i+1].kind != kQMark {
			continue
		}
		if !l.asksBefore(i) {
			continue
		}
		from := i
		switch {
		case t.kind == kUnits:
		case t.kind == kUnit && unitWish[t.text] != nil && (endsIn(t.before, "in") || prev.kind == kOut && prev.text == "in"):
			t.kind, t.found = kUnits, []found{{entry: unitWish[t.text]}}
			if prev.kind == kOut && prev.text == "in" {
				l.tokens = append(l.tokens[:i-1], l.tokens[i:]...)
				from--
			}
		default:
			continue
		}
		if from > 0 && l.tokens[from-1].kind == kComma {
			l.tokens = append(l.tokens[:from-1], l.tokens[from:]...)
			from--
		}
		if from == 0 {
			continue
		}
		at := l.tokens[from].at
		l.tokens[from].before = ""
		l.tokens = slices.Insert(l.tokens, from, token{kind: kStop, text: ".", at: at, end: at})
	}
}

// unitWish are the units that a table can be wished for in.
var unitWish = map[string]*entry{
	"mm": metricUnits, "millimeters": metricUnits, "millimetres": metricUnits, "cm": metricUnits, "centimeters": metricUnits, "centimetres": metricUnits, "inches": customaryUnits, "feet": customaryUnits,
}

var (
	metricUnits    = &entry{kind: kUnits, key: "metric"}
	customaryUnits = &entry{kind: kUnits, key: "customary"}
)

// asksBefore reports whether the sentence that runs up to token i asks for something, and sets and tries nothing.
func (l *lexing) asksBefore(i int) bool {
	asks := false
	for i--; i >= 0 && l.tokens[i].kind != kStop && l.tokens[i].kind != kQMark; i-- {
		switch l.tokens[i].kind {
		case kQuest, kWh, kWhere:
			asks = true
		case kHead, kNum, kUnits, kSize, kChange, kRel:
			return false
		}
	}
	return asks
}
