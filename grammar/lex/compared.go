package lex

import (
	"slices"
	"strings"

	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
)

// Comparands splits what is compared: "garden and driveway", "this with the one saved as shed".
func Comparands(names, head string) []string {
	if head == asTold {
		return strings.Split(names, ", ")
	}
	names = " " + names + " "
	if rest, ok := strings.CutPrefix(strings.ToLower(head), "how do"); ok && (rest == "" || rest == "es") {
		cut := false
		for _, verb := range comparing {
			if strings.Contains(names, verb) {
				names, cut = strings.Replace(names, verb, " with ", 1), true
			}
		}
		for _, verb := range []string{" compare ", " stack up ", " measure up ", " differ "} {
			if rest, ok := strings.CutSuffix(names, verb); ok {
				names, cut = rest+" ", true
			}
		}
		if !cut {
			return nil
		}
	}
	if lead, rest, ok := strings.Cut(names, ","); ok && Nameless(strings.TrimSpace(lead)) && strings.TrimSpace(lead) != "" {
		names = rest // "the two I kept, landing and ferry"
	}
	for _, w := range []string{" with ", " to ", " against ", " vs ", " versus ", " and ", ", "} {
		if a, b, ok := strings.Cut(names, w); ok {
			list := []string{comparand(a, pointedAt(a) || !endsNumbered(b)), comparand(b, pointedAt(b))}
			if list[0] == "" {
				list[0] = "this"
			}
			if list[1] == "" || list[0] == list[1] {
				return nil // "open permit 114 and compare it with this one"
			}
			return list
		}
	}
	if one := comparand(names, pointedAt(names)); one != "" && one != "this" && (strings.Contains(head, "this") || strings.Contains(head, "mine") || strings.Contains(head, "it")) {
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

// pointedAt reports whether a name has an article, or a word of whose it is, before it: "the contractor one".
func pointedAt(s string) bool {
	w := FirstWord(strings.TrimSpace(s))
	return Owned[w] || lexicon.Vocab().Articles[w]
}

// endsNumbered reports whether a name ends in a number: "bidder two".
func endsNumbered(s string) bool {
	w := LastWord(strings.TrimSpace(s))
	return scan.Ones[w] > 1 || strings.Trim(w, "0123456789") == "" && w != ""
}

// comparand takes a name out of the words around it: "" where they name nothing. The "one" behind a name that is pointed at is no
// part of it.
func comparand(s string, pointed bool) string {
	s = strings.TrimSpace(s)
	if thisWall(s) {
		return "this"
	}
	if name := savedAs(s); name != s && !Nameless(name) {
		return strings.TrimPrefix(name, "the ") // what is saved as "mine" is no wall at hand
	}
	for _, lead := range []string{"the one saved as ", "the one i saved as ", "one i saved as ", "the plan called ", "the one called ", "one saved as ", "the "} {
		s = strings.TrimSpace(strings.TrimPrefix(s+" ", lead))
	}
	if thisWall(s) {
		return "this"
	}
	if rest, ok := strings.CutSuffix(s, " one"); ok && pointed && !circles[rest] && !numberedGroup[rest] {
		s = rest // "the contractor one", but "bidder one"
	}
	if s = strings.TrimSuffix(s, " 's"); Nameless(s) {
		return ""
	}
	return s
}

// numberedGroup are nouns with which "one" is a number: "period one", "counter one".
var numberedGroup = scan.WordSet("period counter station plan option version lot unit wall section room building house job number row student level round phase lesson class grade group team hour try draft take table attempt trial sample")

// thisWall reports whether words stand for the wall that is being worked on: "this one", "what I've got now".
func thisWall(s string) bool {
	s = strings.TrimSpace(s)
	s = strings.TrimPrefix(s, "the ")
	if w := FirstWord(s); (w == "i" || w == "we" || w == "in" || w == "front" || w == "that" || w == "which") && onlyAtHand(strings.Fields(s)) {
		return true // "the one | I have got here"
	}
	own := strings.HasPrefix(s, "my ") || strings.HasPrefix(s, "our ")
	if own {
		_, s, _ = strings.Cut(s, " ")
	}
	f := strings.Fields(s)
	if len(f) == 0 {
		return false
	}
	if own && len(f) == 1 && planNouns[f[0]] && f[0] != "plan" && f[0] != "wall" {
		return true // "my version"
	}
	switch f[0] {
	case "this", "it", "mine", "ours":
		return len(f) == 1 || len(f) == 2 && planNouns[f[1]]
	case "current", "present", "own":
		return len(f) == 2 && planNouns[f[1]]
	case "version", "layout", "design", "setup":
		return len(f) == 1
	case "what", "one", "plan":
		return onlyAtHand(f[1:]) || strings.Contains(s+" ", " have now ") || strings.Contains(s, "looking at") || strings.Contains(s, "working on") || strings.HasSuffix(s, " at hand") || strings.HasSuffix(s, "have here") ||
			f[0] == "what" && len(f) > 2 && len(f) < 8 && (f[1] == "i" || f[1] == "we") && (f[2] == "have" || f[2] == "got") && !slices.ContainsFunc(f[3:], func(w string) bool {
				return !strings.Contains(" got now here so far at present up to on the go ", " "+w+" ")
			})
	}
	return strings.Contains(s+" ", "looking at ") || strings.HasSuffix(s, " at hand") || strings.HasSuffix(s, "have here")
}

// onlyAtHand reports whether words behind "the one" say no more than that it is the one at hand: "I have got open here".
func onlyAtHand(f []string) bool {
	for _, w := range f {
		if !nowAtHand[w] {
			return false
		}
	}
	return len(f) > 1
}

var nowAtHand = scan.WordSet("i we have got here now open in front of me us so far on the table screen page up that which is am are at present today just drew drawn drawing sketched worked working")

// planNouns are what a plan is called.
var planNouns = map[string]bool{"one": true, "plan": true, "wall": true, "layout": true, "design": true, "version": true, "setup": true, "job": true, "house": true, "time": true}

// Nameless reports whether words point at a plan without its name: "the other one", "them".
func Nameless(s string) bool {
	f := strings.Fields(s)
	if len(f) > 0 && f[0] == "the" {
		f = f[1:]
	}
	if len(f) == 0 {
		return true
	}
	switch f[0] {
	case "other", "another", "that", "those", "these", "last", "previous", "first", "second", "third", "next", "earlier", "old", "older", "original", "different", "any", "each", "both", "all", "every", "some":
		return len(f) == 1 || len(f) == 2 && (planNouns[strings.TrimSuffix(f[1], "s")] || f[1] == "other" || f[1] == "two" || f[1] == "ones" || f[1] == "plans")
	case "two", "saved":
		return len(f) < 6 && (len(f) == 1 || planNouns[strings.TrimSuffix(f[1], "s")] || f[1] == "i" || f[1] == "we" || f[1] == "saved" || f[1] == "that" || f[1] == "which")
	case "them", "others", "one", "his", "hers", "theirs", "himself", "something", "anything", "it", "ones", "rest", "plan", "plans", "is", "they", "possible", "before", "usual", "planned", "follows", "well", "pair":
		return len(f) == 1 || f[0] == "it" || f[0] == "one" && f[1] == "from"
	}
	return false
}

// heldAgainst is the command of plans that are held against each other without one.
var heldAgainst = &lexicon.Entry{Kind: lexicon.Cmd, Key: "compare"}

// notNames are words that no plan's name begins with.
var notNames = func() map[string]bool {
	m := map[string]bool{}
	for _, w := range strings.Fields(`how what which who why when where put set lay hold show see have get stack line view want run compare is are was do does did can could would will
		to would i we you please love like want now ok should if make keep use let me us give tell look at as but so too than from between going go take try there`) {
		m[w] = true
	}
	return m
}()

// manyOf reports whether a word speaks of lumber by its feet or inches: "sixes", "twelves".
func manyOf(w string) bool {
	for _, end := range []string{"s", "es"} {
		if n, ok := strings.CutSuffix(w, end); ok && (scan.Ones[n] > 2 || measure.Tens[n] > 0) {
			return true
		}
	}
	return false
}

// NamesPart reports whether words that could name a plan speak of a part of the wall, of a side or of a number.
func (l *lexing) namesPart(name string) bool {
	var r measure.Reader
	for _, w := range strings.Fields(name) {
		r.Atoms = append(r.Atoms, scan.Atom{Text: w, Kind: scan.Word})
	}
	if first := r.Word(0); notNames[first] || r.Word(len(r.Atoms)-1) == "up" {
		return true
	}
	for i := range r.Atoms {
		if w := r.Word(i); w == "not" || w == "no" || len(r.Atoms) == 1 && manyOf(w) || (scan.Ones[w] > 0 || measure.Tens[w] > 0) && i == 0 {
			return true
		}
		for _, f := range lexicon.Vocab().Match(r.Atoms, i) {
			switch f.Entry.Kind {
			case lexicon.Part, lexicon.Loc, lexicon.FromSide, lexicon.Side, lexicon.Goal, lexicon.Theirs, lexicon.Head, lexicon.Dim, lexicon.Rel, lexicon.It:
				if k := f.Entry.Key; k == "floor" || k == "off floor" || k == "pool" || k == "wall" || k == "of wall" || f.Entry.Kind == lexicon.Side && len(r.Atoms) > 1 {
					continue
				}
				return true
			}
		}
	}
	return false
}
