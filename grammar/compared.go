package grammar

import (
	"regexp"
	"slices"
	"strings"
	"sync"
)

// comparands splits what is compared: "garden and driveway", "this with the one saved as shed".
func comparands(names, head string) []string {
	names = " " + names + " "
	if rest, ok := strings.CutPrefix(strings.ToLower(head), "how do"); ok && (rest == "" || rest == "es") {
		for _, verb := range comparing {
			names = strings.Replace(names, verb, " with ", 1)
		}
		cut := strings.Contains(names, " with ")
		for _, verb := range []string{" compare ", " stack up ", " measure up ", " differ "} {
			if rest, ok := strings.CutSuffix(names, verb); ok {
				names, cut = rest+" ", true
			}
		}
		if !cut {
			return nil
		}
	}
	for _, w := range []string{" with ", " to ", " against ", " vs ", " versus ", " and ", ", "} {
		if a, b, ok := strings.Cut(names, w); ok {
			list := []string{comparand(a), comparand(b)}
			if list[0] == "" {
				list[0] = "this"
			}
			if list[1] == "" {
				return nil
			}
			return list
		}
	}
	if one := comparand(names); one != "" && (strings.Contains(head, "this") || strings.Contains(head, "mine") || strings.Contains(head, "it")) {
		return []string{"this", one}
	}
	return nil
}

// savedAs takes a name out of "the plan we saved as shed", "one called shed".
func savedAs(s string) string {
	words := strings.Fields(s)
	for i, w := range words {
		switch w {
		case "saved", "called", "named", "stored", "filed", "kept":
			if i+1 < len(words) && (words[i+1] == "as" || words[i+1] == "under") {
				i++
			}
			if i+1 < len(words) {
				return strings.Join(words[i+1:], " ")
			}
		}
		if i > 4 {
			break
		}
	}
	return s
}

// comparing are the words between two names that are compared: "how does garage stack up against patio".
var comparing = []string{" compare with ", " compare to ", " compare against ", " stack up against ", " stack up to ", " stack up with ", " measure up to ", " measure up against ", " differ from ", " hold up against ", " look next to ", " stack up next to ", " stack up beside ", " stack up alongside ", " hold up next to ", " compare next to ", " do against ", " measure up with ", " square up against "}

// comparand takes a name out of the words around it: "" where they name nothing.
func comparand(s string) string {
	s = strings.TrimSpace(s)
	if thisWall(s) {
		return "this"
	}
	s = savedAs(s)
	for _, lead := range []string{"the one saved as ", "the one i saved as ", "one i saved as ", "the plan called ", "the one called ", "one saved as ", "the "} {
		s = strings.TrimSpace(strings.TrimPrefix(s+" ", lead))
	}
	if thisWall(s) {
		return "this"
	}
	if nameless(s) {
		return ""
	}
	return s
}

// thisWall reports whether words stand for the wall that is being worked on: "this one", "what I've got now".
func thisWall(s string) bool {
	s = strings.TrimSpace(s)
	for _, lead := range []string{"the ", "my ", "our "} {
		s = strings.TrimPrefix(s, lead)
	}
	f := strings.Fields(s)
	if len(f) == 0 {
		return false
	}
	switch f[0] {
	case "this", "it", "mine", "ours":
		return len(f) == 1 || len(f) == 2 && planNouns[f[1]]
	case "current", "present":
		return len(f) == 2 && planNouns[f[1]]
	case "what", "one", "plan":
		return strings.Contains(s+" ", " have now ") || strings.Contains(s, "looking at") || strings.Contains(s, "working on") || strings.HasSuffix(s, " at hand") || strings.HasSuffix(s, "have here") ||
			f[0] == "what" && len(f) < 8 && (f[1] == "i" || f[1] == "we") && (f[2] == "have" || f[2] == "got") && !slices.ContainsFunc(f[3:], func(w string) bool {
				return !strings.Contains(" got now here so far at present up to on the go ", " "+w+" ")
			})
	}
	return strings.Contains(s+" ", "looking at ") || strings.HasSuffix(s, " at hand") || strings.HasSuffix(s, "have here")
}

// planNouns are what a plan is called.
var planNouns = map[string]bool{"one": true, "plan": true, "wall": true, "layout": true, "design": true, "version": true, "setup": true}

// nameless reports whether words point at a plan without its name: "the other one", "them".
func nameless(s string) bool {
	f := strings.Fields(s)
	if len(f) > 0 && f[0] == "the" {
		f = f[1:]
	}
	if len(f) == 0 {
		return true
	}
	switch f[0] {
	case "other", "another", "that", "those", "these", "last", "previous", "first", "second", "third", "next", "earlier", "old", "older", "original", "different", "any", "each", "both", "all", "every", "some":
		return len(f) == 1 || len(f) == 2 && (planNouns[f[1]] || f[1] == "other" || f[1] == "two" || f[1] == "ones" || f[1] == "plans")
	case "them", "two", "others", "one", "his", "hers", "theirs", "himself", "something", "anything", "it", "ones", "rest", "plan", "plans", "is", "they", "possible", "before", "usual", "planned", "follows", "well", "pair":
		return len(f) == 1 || f[0] == "it" || f[0] == "one" && f[1] == "from"
	}
	return false
}

// paired finds two plans that are held against each other without a command in front: "porch against shed, how do they stack
// up", "put plan a and plan b side by side". The names are what the first and the second group match.
var pairedWays = sync.OnceValue(func() []*regexp.Regexp {
	name := `((?:[a-z][a-z0-9]* ?){1,3}?|[a-z][a-z0-9]* [0-9])`
	join := `(?:and|with|against|vs|versus|or|next to|beside|alongside|up against)`
	beside := `(?:next to|beside|alongside|against|up against)`
	tail := `(?:how (?:do|would|will) (?:they|those|these|the two|both)(?: of them)? (?:compare|stack up|differ|measure up|line up|look)|(?:compare|cmp)(?: them| the two| both| those| these)?|` +
		`(?:which|what)(?: one)?(?: of (?:them|the two))? (?:is|comes out|works out|would be|costs) (?:the )?(?:cheaper|better|taller|longer|bigger|less|more|dearer|simpler|wider|tighter|cheapest|best)|` +
		`what is the difference|side by side|compared|next to each other|alongside each other|head to head|against each other|beside each other|together for comparison)`
	lead := `(?:put|set|lay|hold|show|see|have|get|stack|line up|view|look at|want|run)`
	var out []*regexp.Regexp
	for _, way := range []string{
		name + ` ` + join + ` ` + name + `(?: ,)? ` + tail,
		lead + ` (?:me |us )?` + name + ` (?:and|with|` + beside + `) ` + name + `(?: ,)? ` + tail,
		`(?:put|set|lay|hold|stack|place) ` + name + ` (?:up )?` + beside + ` ` + name,
		name + ` (?:vs|versus) ` + name,
		`(?:which|what)(?: one)? (?:is|comes out|works out|would be|costs) (?:the )?(?:cheaper|better|taller|longer|bigger|less|more|dearer|simpler) ?,? ` + name + ` or ` + name,
	} {
		out = append(out, regexp.MustCompile(`^(?:(?:please|now|ok|so|then|can|could|would|you|i|we|let|me|us|want|to|love|like|just) )*?`+way+`(?: ,)?(?: please)?$`))
	}
	return out
})

// pair reads two plans held against each other at the beginning of a sentence. It returns the atom after it, and i where
// there are none.
func (l *lexing) pair(i int) int {
	if t := l.last(); l.before != "" || t != nil && t.kind != kStop && t.kind != kQMark {
		return i
	}
	end := i
	for end < len(l.atoms) && l.word(end) != "." && l.word(end) != "?" && l.word(end) != "!" && end < i+24 {
		end++
	}
	var said strings.Builder
	for k := i; k < end; k++ {
		if k > i && !(l.glued(k) && l.kind(k) == aDigits) {
			said.WriteByte(' ')
		}
		said.WriteString(l.word(k))
	}
	for _, way := range pairedWays() {
		m := way.FindStringSubmatch(said.String())
		if m == nil {
			continue
		}
		a, b := comparand(m[1]), comparand(m[2])
		if a == "" || b == "" || l.namesPart(a) || l.namesPart(b) {
			continue
		}
		t := l.add(kCmd, i, end)
		t.found, t.text = []found{{entry: heldAgainst}}, "compare"
		l.add(kName, end-1, end).text = a + " with " + b
		return end
	}
	return i
}

// heldAgainst is the command of plans that are held against each other without one.
var heldAgainst = &entry{kind: kCmd, key: "compare"}

// notNames are words that no plan's name begins with.
var notNames = func() map[string]bool {
	m := map[string]bool{}
	for _, w := range strings.Fields(`how what which who why when where put set lay hold show see have get stack line view want run compare is are was do does did can could would will
		to would i we you please love like want now ok should if make keep use let me us give tell look at as but so too than from between going go take try there`) {
		m[w] = true
	}
	return m
}()

// namesPart reports whether words that could name a plan speak of a part of the wall, of a side or of a number.
func (l *lexing) namesPart(name string) bool {
	var r reader
	for _, w := range strings.Fields(name) {
		r.atoms = append(r.atoms, atom{text: w, kind: aWord})
	}
	if first := r.word(0); notNames[first] || r.word(len(r.atoms)-1) == "up" {
		return true
	}
	for i := range r.atoms {
		if w := r.word(i); w == "not" || w == "no" || (units[w] > 0 || tens[w] > 0) && i == 0 {
			return true
		}
		for _, f := range vocab().match(r, i) {
			switch f.entry.kind {
			case kPart, kLoc, kFromSide, kSide, kGoal, kTheirs, kHead, kDim, kRel, kIt:
				if k := f.entry.key; k == "floor" || k == "off floor" || k == "pool" || k == "wall" || k == "of wall" || f.entry.kind == kSide && len(r.atoms) > 1 {
					continue
				}
				return true
			}
		}
	}
	return false
}
