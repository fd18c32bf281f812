package parse

import (
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/solver"
)

// think takes in what follows a hesitation: in the place of a value of the same kind that is near, or beside it.
func (a *amended) think(part []Item) bool {
	chunk, rest := firstChunk(part)
	if a.repeats(chunk) {
		return false // corrected as a whole
	}
	if len(chunk) == 1 && a.similar(chunk[0]) {
		if ok, _ := a.substitute(chunk[0], rest); ok {
			return true
		}
		a.s.Ask = nil
	}
	a.acc = append(append(append([]Item{}, a.acc...), Item{Token: &lex.Token{Kind: lexicon.Comma}}), part...)
	return true
}

// similar reports whether a value is of the kind of the last one that was said, and near it, with no dimension of its own.
func (a *amended) similar(it Item) bool {
	if !it.value() || hasDim(it.lim.tail) {
		return false
	}
	for i := len(a.acc) - 1; i >= 0; i-- {
		was := a.acc[i]
		if !was.value() {
			continue
		}
		fits, _ := replaces(it.lim, was.lim)
		return fits && (it.lim.lo.Size != "" || alike(it.lim.lo, was.lim.lo))
	}
	return false
}

// alike reports whether one value is at most twice the other. A bare one is taken in the unit of the other.
func alike(a, was *measure.Amount) bool {
	v := a.Val
	if a.Unit == measure.Bare && was.Scale().Sign() > 0 {
		v = v.Mul(was.Scale())
	}
	return !v.Add(v).Less(was.Val) && !was.Val.Add(was.Val).Less(v)
}

// repeats reports whether a value and its noun follow where the same noun was said before: "six rails, um, seven rails".
func (a *amended) repeats(chunk []Item) bool {
	if len(chunk) != 2 || !chunk[0].value() || chunk[1].value() || chunk[1].Kind != lexicon.Part {
		return false
	}
	for _, was := range a.acc {
		if !was.value() && was.Kind == lexicon.Part && was.Key() == chunk[1].Key() && was.Index == chunk[1].Index {
			return true
		}
	}
	return false
}

// postfixed puts a word of correction that stands behind what it corrects in front of it: "8 feet, 7 feet rather".
func postfixed(list []Item) []Item {
	for i := 2; i < len(list); i++ {
		it := list[i]
		if it.value() || it.Kind != lexicon.Fix || !behind[it.Text] || i+1 < len(list) && !list[i+1].breaks() || !list[i-1].value() {
			continue
		}
		j := i - 1
		for j > 0 && !list[j-1].breaks() && !(list[j-1].Kind == lexicon.Fix && !list[j-1].value()) {
			j--
		}
		if j == 0 || !hasValue(list[:j]) {
			continue
		}
		fix := list[i]
		copy(list[j+1:i+1], list[j:i])
		list[j] = fix
	}
	return list
}

// behind are words of correction that may stand behind what is meant.
var behind = map[string]bool{"rather": true, "i mean": true, "sorry": true, "instead of that": true, "better": true, "i meant": true}

// rejoined makes one sentence of what a word of correction between full stops puts right: "4x4 posts. Hang on. 6x6."
func rejoined(list []Item) []Item {
	for i := 1; i+2 < len(list); i++ {
		it := list[i]
		after := stops(list[i-1]) || i > 2 && !list[i-1].value() && list[i-1].Kind == lexicon.Comma && stops(list[i-3])
		if after && !it.value() && it.Kind == lexicon.Cmd && it.As(lexicon.Fix) != nil && !list[i+1].value() && list[i+1].Kind == lexicon.Comma && placed(list[i+2]) {
			it.Kind = lexicon.Fix // "opening 36. Scratch that, 38."
		}
	}
	for i := 1; i+1 < len(list); i++ {
		if !stops(list[i]) && !questioned(list[i]) {
			continue
		}
		j := i + 1
		if !list[j].value() && list[j].Kind == lexicon.Comma && lex.Thinks[list[j].Before] && j+1 < len(list) {
			j++ // "hmm, no, …"
		}
		if list[j].value() || list[j].Kind != lexicon.Fix && list[j].Kind != lexicon.No {
			continue
		}
		all := false
		for j < len(list) && !list[j].value() && (list[j].Kind == lexicon.Fix || list[j].Kind == lexicon.No || list[j].Kind == lexicon.Comma || j > i+1 && (list[j].Kind == lexicon.Only || list[j].Kind == lexicon.It || stops(list[j]) && j+1 < len(list) && !list[j+1].value() && list[j+1].Kind == lexicon.Fix || list[j].Kind == lexicon.Head && list[j].Key() == string(act.State) && placed(list[j+1]))) {
			if stops(list[j]) {
				list[j] = comma(list[j])
			}
			all = all || takesBackAll(list, j)
			j++
		}
		bare := j+1 < len(list) && stops(list[j]) && placed(list[j+1])
		bare = bare && stops(list[i])
		if j < len(list) && list[j].value() && !all && strings.HasPrefix(list[j-1].Text, "make") && (hasDim(list[j].lim.tail) && !sameDim(list[:i], list[j]) || j+1 < len(list) && !list[j+1].value() && (list[j+1].Kind == lexicon.Part || list[j+1].Kind == lexicon.Dim)) {
			continue // "… six. Make it 5 rails": another thing
		}
		if bare || j < len(list) && (stops(list[i]) && (placed(list[j]) || all && !stops(list[j])) || all && (opens(list[j]) || asksOn(list[j]))) {
			list[i] = comma(list[i])
		}
		if bare {
			list[j] = comma(list[j])
		}
	}
	return list
}

// opens reports whether an item opens another question or command.
func opens(it Item) bool {
	return !it.value() && (it.Kind == lexicon.Quest || it.Kind == lexicon.Wh || it.Kind == lexicon.Where || it.Kind == lexicon.Cmd || it.Kind == lexicon.Head)
}

// asksOn reports whether a value is asked about: "would seven".
func asksOn(it Item) bool {
	if !it.value() {
		return false
	}
	before := it.Before
	if len(it.lim.lead) > 0 {
		before = it.lim.lead[0].Before
	}
	return modal[lex.FirstWord(before)]
}

func questioned(it Item) bool { return !it.value() && it.Kind == lexicon.QMark }

// placed reports whether an item can take the place of another by itself: a value, a side.
func placed(it Item) bool {
	return it.value() || it.Kind == lexicon.Side || it.Kind == lexicon.FromSide || it.Kind == lexicon.Ordinal
}

func stops(it Item) bool { return !it.value() && it.Kind == lexicon.Stop }

// comma is a break in the place of a full stop.
func comma(it Item) Item {
	t := *it.Token
	t.Kind = lexicon.Comma
	return Item{Token: &t}
}

// trailingFix drops words of correction and breaks at the end of what is taken back.
func trailingFix(list []Item) []Item {
	for list = strip(list); len(list) > 0; list = strip(list) {
		it := list[len(list)-1]
		if it.value() || it.Kind != lexicon.Fix && it.Kind != lexicon.No {
			break
		}
		list = list[:len(list)-1]
	}
	return list
}

// takesBack reports whether a line is no more than another value for what was spoken of last: "no, 2", "sorry, on the
// right". It returns the line without its word of correction.
func (s *Speech) takesBack(list []Item) ([]Item, bool) {
	if s.C.Subject == nil || len(list) < 2 || list[0].value() || list[0].Kind != lexicon.Fix && list[0].Kind != lexicon.No || len(s.Acts) > 0 {
		return list, false
	}
	rest := strip(list[1:])
	if list[0].Kind == lexicon.No && (len(rest) == len(list)-1 || list[1].Kind != lexicon.Comma) {
		return list, false // "no 2 inch gaps"
	}
	for len(rest) > 0 && !rest[0].value() && (rest[0].Kind == lexicon.Fix || rest[0].Kind == lexicon.It) {
		rest = strip(rest[1:])
	}
	return rest, len(rest) == 1 && placed(rest[0])
}

// subject is what a side can be said of where the line before spoke of an opening.
func (s *Speech) subject() []lexicon.Sense {
	if n := s.C.Subject; n != nil && strings.HasPrefix(string(n.Quantity), "opening") && n.Quantity != solver.Openings {
		return []lexicon.Sense{lexicon.Meaning("opening, openings | opening side, opening from left, opening from right")}
	}
	return nil
}

// sameDim reports whether the last value of a list has the dimension of another: "40 high. Make it 42 high".
func sameDim(list []Item, it Item) bool {
	dim := func(it Item) string {
		for _, t := range it.lim.tail {
			if t.Kind == lexicon.Dim {
				return t.Key()
			}
		}
		return ""
	}
	for i := len(list) - 1; i >= 0; i-- {
		if list[i].value() {
			return dim(list[i]) == dim(it)
		}
	}
	return false
}
