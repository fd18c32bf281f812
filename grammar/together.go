package grammar

import (
	"slices"
	"strings"

	"saywright/solver"
	"saywright/solver/exact"
)

// What is done by one line must go together: a word that only talks may look like a command, and an act too many is a misreading.

// together asks back where the acts of a line do not go together: something is taken back and brought back, a farewell or a call for
// help stands in the middle of what is said, a name is no name.
func together(r Reading, atoms []atom) Reading {
	if r.Ask != nil {
		return r
	}
	r.Acts = answeredAtOnce(takenAtOnce(r.Acts), atoms)
	r.Acts = withoutEchoes(withoutFollowUp(withoutTalk(r.Acts, atoms), atoms), atoms)
	for i := range r.Acts {
		if q := oddOne(r.Acts, i, atoms); q != nil {
			at := r.Acts[i].At
			q.At = &at
			return Reading{Ask: q}
		}
	}
	r.Acts = setAnew(r.Acts, atoms)
	if q := measuredTwice(r.Acts); q != nil {
		return Reading{Ask: q}
	}
	if q := leftUnsaid(r.Acts, atoms); q != nil {
		return Reading{Ask: q}
	}
	if q := trulyOpen(r.Acts, atoms); q != nil {
		return Reading{Ask: q}
	}
	return r
}

// withoutEchoes leaves out a question for the very thing that a "why" is after ("why has the list got that many boards on it"), and
// a quantity after one limit of it.
func withoutEchoes(acts []Act, atoms []atom) []Act {
	var out []Act
	for i, a := range acts {
		if i > 0 && a.Kind == Ask && acts[i-1].Kind == Why && a.Topic != "" && a.Topic == acts[i-1].Topic && a.As == "" && !asksAnew(a, atoms) {
			continue
		}
		if n := len(out); n > 0 && a.Kind == Why && a.Topic == "that" && out[n-1].Kind == Why {
			continue // "how you got that many rails, would you explain it"
		}
		if len(acts) > 1 && a.Kind == Ask && a.Topic == "shopping" && a.As == "" && onlyGoes(a, atoms) {
			continue // "print the plan, I'm off to the yard"
		}
		if n := len(out); n > 0 && a.Kind == Forget && out[n-1].Kind == Forget && a.Name != nil && len(out[n-1].Statements) == 1 && out[n-1].Statements[0].Name == *a.Name {
			continue // "lose the 3 inch max on the gap but leave the rest"
		}
		if n := len(out); n > 0 && a.Kind == StartOver && out[n-1].Kind == Forget && wipesWhatWasNamed(atoms[max(atomAt(atoms, a.At), 0):]) {
			continue // "never mind the gap, wipe it"
		}
		if i+1 < len(acts) && a.Kind == Ask && a.Topic == "drawing" && a.As == "" && acts[i+1].Kind == PrintTo && slices.ContainsFunc(atoms, func(x atom) bool { return x.text == "paper" }) {
			continue // "I need it all on paper, print to sheet.html"
		}
		if n := len(out); n > 0 && a.Kind == WhatIf && out[n-1].Kind == WhatIf && len(out[n-1].Statements) < len(a.Statements) && triesAllOf(out[n-1], a) {
			out[n-1] = a // "would four boards look better, suppose we had four, three inches apart"
			continue
		}
		if n := len(out); n > 0 && a.Kind == TakeThat && out[n-1].Kind == Save {
			if at := atomAt(atoms, a.At); at > 1 && (standAt(atoms, at-1, "and", "keep") || standAt(atoms, at, "and", "keep")) {
				continue // "call this one patio and keep it"
			}
		}
		if n := len(out); n > 0 && a.Kind == State && out[n-1].Kind == WhyNot && Normal([]Act{{Kind: State, Statements: a.Statements}}) == Normal([]Act{{Kind: State, Statements: out[n-1].Statements}}) {
			continue // "why can't I have eight boards? I was really hoping for eight"
		}
		out = append(out, a)
	}
	return out
}

// onlyGoes reports whether somebody says no more than that he goes to buy: "I'm off to the yard".
func onlyGoes(a Act, atoms []atom) bool {
	i := atomAt(atoms, a.At)
	if i < 0 {
		return false
	}
	for k := i; k < len(atoms) && atoms[k].at < a.End; k++ {
		switch atoms[k].text {
		case "off", "heading", "headed", "going", "driving", "leaving":
			for k = max(i-2, 0); k < len(atoms) && !(k > i && breaksClause(atoms, k)); k++ {
				if asksOfBuying[atoms[k].text] {
					return false
				}
			}
			return true
		}
	}
	return false
}

// asksOfBuying are words of a question for what to buy.
var asksOfBuying = wordSet("what need needs list how which tell show ?")

// triesAllOf reports whether all that one trial tries is tried in another.
func triesAllOf(one, other Act) bool {
	for _, st := range one.Statements {
		if !slices.ContainsFunc(other.Statements, func(s solver.Statement) bool { return s.String() == st.String() }) {
			return false
		}
	}
	return true
}

// asksAnew reports whether a question begins with its own word of asking after a break: "how did you arrive at the number of posts,
// and where does the new one stand".
func asksAnew(a Act, atoms []atom) bool {
	i := atomAt(atoms, a.At)
	if i < 1 || atoms[i-1].kind != aSign && atoms[i-1].text != "and" {
		return false
	}
	switch atoms[i].text {
	case "where", "whereabouts", "how", "what", "which", "give", "show":
		return true
	case "then":
		return i+1 < len(atoms) && (atoms[i+1].text == "what" || atoms[i+1].text == "how")
	}
	return false
}

// oddOne is the question that one act of several raises, nil where there is none.
func oddOne(acts []Act, i int, atoms []atom) *solver.Question {
	a := acts[i]
	switch a.Kind {
	case State, WhatIf, Check, WhyNot:
		for _, st := range a.Statements {
			if a.Kind != State && st.Name.Quantity == solver.Rails && st.Op == solver.Eq && st.Value.Of == nil && exact.Int(50).Less(st.Value.Num) {
				return new(qRailsStack.ask()) // "why are the rails 58 and not 60" is of their length
			}
			if solver.KindOf(st.Name.Quantity) == solver.Count && (st.Value.Of != nil && solver.KindOf(st.Value.Of.Quantity) == solver.Length || st.Value.Unit == solver.Inch || st.Value.Unit == solver.Millimeter) {
				return &solver.Question{Text: "How many " + string(st.Name.Quantity) + "?", Example: string(st.Name.Quantity) + " 2"} // a count is no length
			}
		}
		if a.Kind == State && len(a.Statements) == 1 && a.Statements[0].String() == "openings = 0" && slipsThrough(atoms) {
			return &solver.Question{Text: "No opening at all, or gaps that it can't get through?", Choices: []string{"openings = 0"}, Example: "gap under 4"}
		}
	case Ask:
		if a.Name != nil && (a.Name.Quantity == solver.Have || a.Name.Quantity == solver.Extra) {
			return new(qHowManyOf.offering("how many rails", "ask rails", "ask shopping"))
		}
	case Redo:
		for _, b := range acts {
			if b.Kind == Undo {
				return &solver.Question{Text: "Take it back, or bring it back?", Choices: []string{"undo", "redo"}, Example: "undo"}
			}
		}
	case Save, Open, SameAs:
		if len(a.Words) > 0 && (noName(a.Words[0]) || namesMore(a.Words[0])) {
			return new(qWhichName.offering(string(a.Kind) + " porch"))
		}
	case Quit:
		if i+1 < len(acts) {
			return &solver.Question{Text: "Are you done, or is that meant another way?", Choices: []string{"quit"}, Example: "that's all"}
		}
		if i > 0 && inTheMiddle(a, atoms) {
			return &solver.Question{Text: "Are you done, or is that meant another way?", Choices: []string{"quit"}, Example: "that's all"}
		}
	case Next:
		if at := atomAt(atoms, a.At); i > 0 && at > 0 && (atoms[at-1].text == "the" || atoms[at-1].text == "each") {
			return &solver.Question{Text: "The next what?", Example: "gap 2-1/2"}
		}
	case HelpMe:
		if i > 0 && a.Topic == "" && a.Name == nil && inTheMiddle(a, atoms) {
			return new(qHelpWith.ask())
		}
	}
	return nil
}

// opensNoName are words that no name of a plan begins with.
var opensNoName = wordSet("at in by with from of so how what it up out a an we i you they he she because if when then now won to for is was and or but not like below beneath less than above beside er her him em them things some whole nothing anything something nobody somebody someone anybody")

// pronounOfWall are words that stand for the wall and name none: "open er up".
var pronounOfWall = wordSet("er her him em")

func noName(name string) bool {
	first, rest, _ := strings.Cut(strings.ToLower(name), " ")
	return opensNoName[first] && rest != "" || rest == "" && pronounOfWall[first] || strings.Count(name, " ") > 4
}

// namesMore reports whether a name runs on into what is told behind it: "save it as porch and six rails".
func namesMore(name string) bool {
	_, more, ok := strings.Cut(strings.ToLower(name)+" ", " and ")
	first, _, _ := strings.Cut(more, " ")
	return ok && (first == "" || first == "no" || first == "equal" || first == "thanks" || first == "thank" || spelledNumber(first) || first[0] >= '0' && first[0] <= '9')
}

// inTheMiddle reports whether a command of one word stands where no clause begins: "so the boys only set the stop once".
func inTheMiddle(a Act, atoms []atom) bool {
	i := atomAt(atoms, a.At)
	if i < 1 || atoms[i-1].kind == aSign {
		return false
	}
	words := 0
	for _, b := range atoms[i:] {
		if b.at < a.End && b.kind == aWord {
			words++
		}
	}
	switch atoms[i-1].text {
	case "and", "then", "so", "now", "please", "ok", "okay", "thanks", "just":
		return false
	}
	return words == 1
}

// withoutTalk leaves out a command that only talks: a "that's it" behind a list of lengths, a "never mind" before what is forgotten.
func withoutTalk(acts []Act, atoms []atom) []Act {
	n := len(acts)
	if n < 2 {
		return acts
	}
	if last := acts[n-1]; last.Kind == Quit && setsStock(Reading{Acts: acts[n-2 : n-1]}) {
		if i := atomAt(atoms, last.At); i > 0 && atoms[i-1].kind != aSign && atoms[i].text == "that" {
			return acts[:n-1]
		}
	}
	if last := acts[n-1]; last.Kind == Ask && last.Topic == "cautions" && acts[n-2].Kind == Check && pointsAt(last, atoms) && !careAbout(last, atoms) {
		return acts[:n-1] // "they say 24, is anything wrong with that"
	}
	if i := atomAt(atoms, acts[0].At); acts[0].Kind == Undo && acts[1].Kind == Forget && i >= 0 && atoms[i].text == "never" {
		return acts[1:]
	}
	return acts
}

// careAbout reports whether a question for cautions asks what to be careful about, and not whether a claim is right.
func careAbout(a Act, atoms []atom) bool {
	for _, x := range atoms {
		if x.at >= a.At {
			switch x.text {
			case "careful", "cautious", "watch", "danger", "dangerous", "hazards", "safe", "safety", "hurt", "bite", "worried", "worry":
				return true
			}
		}
	}
	return false
}

// creatures are those who are kept from slipping through gaps.
var creatures = wordSet("cat cats dog dogs puppy puppies kid kids child children toddler toddlers baby babies rabbit rabbits deer raccoon raccoons critter critters animal animals pet pets hen hens chicken chickens grandkids")

// slipsThrough reports whether somebody small is to be kept from getting through: that asks for small gaps rather than for no opening.
func slipsThrough(atoms []atom) bool {
	small, through := false, false
	for _, a := range atoms {
		small, through = small || creatures[a.text], through || a.text == "through" || a.text == "thru"
	}
	return small && through
}

// pointsAt reports whether a question is of what was said just before it: "is anything wrong with that".
func pointsAt(a Act, atoms []atom) bool {
	for i := atomAt(atoms, a.At); i >= 0 && i < len(atoms) && i < atomAt(atoms, a.At)+8; i++ {
		if (atoms[i].text == "with" || atoms[i].text == "about" || atoms[i].text == "in") && i+1 < len(atoms) && (pointing[atoms[i+1].text] || atoms[i+1].text == "those" || atoms[i+1].text == "them") {
			return true
		}
	}
	return false
}

// takenAtOnce leaves out what was set and taken back in the same breath, before it was set anew: "six rails. hmm, scratch that, five".
func takenAtOnce(acts []Act) []Act {
	for i := 0; i+2 < len(acts); i++ {
		was, now := acts[i], acts[i+2]
		if acts[i+1].Kind == Undo && was.Kind == State && now.Kind == State && len(was.Statements) == 1 && len(now.Statements) == 1 &&
			was.Statements[0].Name == now.Statements[0].Name && !changes(now.Statements[0].Op) {
			return takenAtOnce(append(acts[:i:i], acts[i+2:]...))
		}
	}
	return acts
}

// setAnew leaves out a value that is corrected in the next sentence: "let's make the gaps 2 1/2. Actually, I'd rather have 2 1/4."
func setAnew(acts []Act, atoms []atom) []Act {
	for i := 0; i+1 < len(acts); i++ {
		if !equalsOne(acts[i]) || !equalsOne(acts[i+1]) || acts[i].Statements[0].Name != acts[i+1].Statements[0].Name {
			continue
		}
		begun := false
		for k, a := range atoms {
			begun = begun || a.at >= acts[i].End && k > 0 && endsSentence(atoms, k-1)
			if begun && a.at <= acts[i+1].At+1 && rethinks[a.text] {
				return append(append([]Act{}, acts[:i]...), acts[i+1:]...)
			}
		}
	}
	return acts
}

// rethinks are words by which somebody says that another value takes the place of the one before.
var rethinks = wordSet("actually rather sorry forgive really instead correction oops mistake wait")

func equalsOne(a Act) bool {
	return a.Kind == State && len(a.Statements) == 1 && a.Statements[0].Op == solver.Eq && a.Statements[0].Name.Quantity != solver.Measured
}
