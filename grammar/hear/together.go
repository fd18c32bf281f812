package hear

import (
	"slices"
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/grammar/chunk"
	"saywright/grammar/lex"
	"saywright/grammar/paraphrase"
	"saywright/grammar/parse"
	"saywright/grammar/scan"
	"saywright/solver"
	"saywright/solver/exact"
)

// What is done by one line must go together: a word that only talks may look like a command, and an act too many is a misreading.

// Together asks back where the acts of a line do not go together: something is taken back and brought back, a farewell or a call for
// help stands in the middle of what is said, a name is no name.
func Together(r act.Reading, atoms []scan.Atom) act.Reading {
	if r.Ask != nil {
		return r
	}
	r.Acts = answeredAtOnce(takenAtOnce(r.Acts), atoms)
	r.Acts = withoutEchoes(withoutFollowUp(withoutTalk(r.Acts, atoms), atoms), atoms)
	for i := range r.Acts {
		if q := oddOne(r.Acts, i, atoms); q != nil {
			at := r.Acts[i].At
			q.At = &at
			return act.Reading{Ask: q}
		}
	}
	r.Acts = setAnew(r.Acts, atoms)
	if q := measuredTwice(r.Acts); q != nil {
		return act.Reading{Ask: q}
	}
	if q := leftUnsaid(r.Acts, atoms); q != nil {
		return act.Reading{Ask: q}
	}
	if q := trulyOpen(r.Acts, atoms); q != nil {
		return act.Reading{Ask: q}
	}
	return r
}

// withoutEchoes leaves out a question for the very thing that a "why" is after ("why has the list got that many boards on it"), and
// a quantity after one limit of it.
func withoutEchoes(acts []act.Act, atoms []scan.Atom) []act.Act {
	var out []act.Act
	for i, a := range acts {
		if i > 0 && a.Kind == act.Ask && acts[i-1].Kind == act.Why && a.Topic != "" && a.Topic == acts[i-1].Topic && a.As == "" && !asksAnew(a, atoms) {
			continue
		}
		if n := len(out); n > 0 && a.Kind == act.Why && a.Topic == "that" && out[n-1].Kind == act.Why {
			continue // "how you got that many rails, would you explain it"
		}
		if len(acts) > 1 && a.Kind == act.Ask && a.Topic == "shopping" && a.As == "" && onlyGoes(a, atoms) {
			continue // "print the plan, I'm off to the yard"
		}
		if n := len(out); n > 0 && a.Kind == act.Forget && out[n-1].Kind == act.Forget && a.Name != nil && len(out[n-1].Statements) == 1 && out[n-1].Statements[0].Name == *a.Name {
			continue // "lose the 3 inch max on the gap but leave the rest"
		}
		if n := len(out); n > 0 && a.Kind == act.StartOver && out[n-1].Kind == act.Forget && wipesWhatWasNamed(atoms[max(AtomAt(atoms, a.At), 0):]) {
			continue // "never mind the gap, wipe it"
		}
		if i+1 < len(acts) && a.Kind == act.Ask && a.Topic == "drawing" && a.As == "" && acts[i+1].Kind == act.PrintTo && slices.ContainsFunc(atoms, func(x scan.Atom) bool { return x.Text == "paper" }) {
			continue // "I need it all on paper, print to sheet.html"
		}
		if n := len(out); n > 0 && a.Kind == act.WhatIf && out[n-1].Kind == act.WhatIf && len(out[n-1].Statements) < len(a.Statements) && triesAllOf(out[n-1], a) {
			out[n-1] = a // "would four boards look better, suppose we had four, three inches apart"
			continue
		}
		if n := len(out); n > 0 && a.Kind == act.TakeThat && out[n-1].Kind == act.Save {
			if at := AtomAt(atoms, a.At); at > 1 && (scan.StandAt(atoms, at-1, "and", "keep") || scan.StandAt(atoms, at, "and", "keep")) {
				continue // "call this one patio and keep it"
			}
		}
		if n := len(out); n > 0 && a.Kind == act.State && out[n-1].Kind == act.WhyNot && parse.Normal([]act.Act{{Kind: act.State, Statements: a.Statements}}) == parse.Normal([]act.Act{{Kind: act.State, Statements: out[n-1].Statements}}) {
			continue // "why can't I have eight boards? I was really hoping for eight"
		}
		out = append(out, a)
	}
	return out
}

// onlyGoes reports whether somebody says no more than that he goes to buy: "I'm off to the yard".
func onlyGoes(a act.Act, atoms []scan.Atom) bool {
	i := AtomAt(atoms, a.At)
	if i < 0 {
		return false
	}
	for k := i; k < len(atoms) && atoms[k].At < a.End; k++ {
		switch atoms[k].Text {
		case "off", "heading", "headed", "going", "driving", "leaving":
			for k = max(i-2, 0); k < len(atoms) && !(k > i && chunk.BreaksClause(atoms, k)); k++ {
				if asksOfBuying[atoms[k].Text] {
					return false
				}
			}
			return true
		}
	}
	return false
}

// asksOfBuying are words of a question for what to buy.
var asksOfBuying = scan.WordSet("what need needs list how which tell show ?")

// triesAllOf reports whether all that one trial tries is tried in another.
func triesAllOf(one, other act.Act) bool {
	for _, st := range one.Statements {
		if !slices.ContainsFunc(other.Statements, func(s solver.Statement) bool { return s.String() == st.String() }) {
			return false
		}
	}
	return true
}

// asksAnew reports whether a question begins with its own word of asking after a break: "how did you arrive at the number of posts,
// and where does the new one stand".
func asksAnew(a act.Act, atoms []scan.Atom) bool {
	i := AtomAt(atoms, a.At)
	if i < 1 || atoms[i-1].Kind != scan.Sign && atoms[i-1].Text != "and" {
		return false
	}
	switch atoms[i].Text {
	case "where", "whereabouts", "how", "what", "which", "give", "show":
		return true
	case "then":
		return i+1 < len(atoms) && (atoms[i+1].Text == "what" || atoms[i+1].Text == "how")
	}
	return false
}

// oddOne is the question that one act of several raises, nil where there is none.
func oddOne(acts []act.Act, i int, atoms []scan.Atom) *solver.Question {
	a := acts[i]
	switch a.Kind {
	case act.State, act.WhatIf, act.Check, act.WhyNot:
		for _, st := range a.Statements {
			if a.Kind != act.State && st.Name.Quantity == solver.Rails && st.Op == solver.Eq && st.Value.Of == nil && exact.Int(50).Less(st.Value.Num) {
				return new(askback.RailsStack.Ask()) // "why are the rails 58 and not 60" is of their length
			}
			if solver.KindOf(st.Name.Quantity) == solver.Count && (st.Value.Of != nil && solver.KindOf(st.Value.Of.Quantity) == solver.Length || st.Value.Unit == solver.Inch || st.Value.Unit == solver.Millimeter) {
				return &solver.Question{Text: "How many " + string(st.Name.Quantity) + "?", Example: string(st.Name.Quantity) + " 2"} // a count is no length
			}
		}
		if a.Kind == act.State && len(a.Statements) == 1 && a.Statements[0].String() == "openings = 0" && slipsThrough(atoms) {
			return &solver.Question{Text: "No opening at all, or gaps that it can't get through?", Choices: []string{"openings = 0"}, Example: "gap under 4"}
		}
	case act.Ask:
		if a.Name != nil && (a.Name.Quantity == solver.Have || a.Name.Quantity == solver.Extra) {
			return new(askback.HowManyOf.Offering("how many rails", "ask rails", "ask shopping"))
		}
	case act.Redo:
		for _, b := range acts {
			if b.Kind == act.Undo {
				return &solver.Question{Text: "Take it back, or bring it back?", Choices: []string{"undo", "redo"}, Example: "undo"}
			}
		}
	case act.Save, act.Open, act.SameAs:
		if len(a.Words) > 0 && (noName(a.Words[0]) || namesMore(a.Words[0])) {
			return new(askback.WhichName.Offering(string(a.Kind) + " porch"))
		}
	case act.Quit:
		if i+1 < len(acts) {
			return &solver.Question{Text: "Are you done, or is that meant another way?", Choices: []string{"quit"}, Example: "that's all"}
		}
		if i > 0 && inTheMiddle(a, atoms) {
			return &solver.Question{Text: "Are you done, or is that meant another way?", Choices: []string{"quit"}, Example: "that's all"}
		}
	case act.Next:
		if at := AtomAt(atoms, a.At); i > 0 && at > 0 && (atoms[at-1].Text == "the" || atoms[at-1].Text == "each") {
			return &solver.Question{Text: "The next what?", Example: "gap 2-1/2"}
		}
	case act.HelpMe:
		if i > 0 && a.Topic == "" && a.Name == nil && inTheMiddle(a, atoms) {
			return new(askback.HelpWith.Ask())
		}
	}
	return nil
}

// OpensNoName are words that no name of a plan begins with.
var OpensNoName = scan.WordSet("at in by with from of so how what it up out a an we i you they he she because if when then now won to for is was and or but not like below beneath less than above beside er her him em them things some whole nothing anything something nobody somebody someone anybody")

// pronounOfWall are words that stand for the wall and name none: "open er up".
var pronounOfWall = scan.WordSet("er her him em")

func noName(name string) bool {
	first, rest, _ := strings.Cut(strings.ToLower(name), " ")
	return OpensNoName[first] && rest != "" || rest == "" && pronounOfWall[first] || strings.Count(name, " ") > 4
}

// namesMore reports whether a name runs on into what is told behind it: "save it as porch and six rails".
func namesMore(name string) bool {
	_, more, ok := strings.Cut(strings.ToLower(name)+" ", " and ")
	first, _, _ := strings.Cut(more, " ")
	return ok && (first == "" || first == "no" || first == "equal" || first == "thanks" || first == "thank" || chunk.SpelledNumber(first) || first[0] >= '0' && first[0] <= '9')
}

// inTheMiddle reports whether a command of one word stands where no clause begins: "so the boys only set the stop once".
func inTheMiddle(a act.Act, atoms []scan.Atom) bool {
	i := AtomAt(atoms, a.At)
	if i < 1 || atoms[i-1].Kind == scan.Sign {
		return false
	}
	words := 0
	for _, b := range atoms[i:] {
		if b.At < a.End && b.Kind == scan.Word {
			words++
		}
	}
	switch atoms[i-1].Text {
	case "and", "then", "so", "now", "please", "ok", "okay", "thanks", "just":
		return false
	}
	return words == 1
}

// withoutTalk leaves out a command that only talks: a "that's it" behind a list of lengths, a "never mind" before what is forgotten.
func withoutTalk(acts []act.Act, atoms []scan.Atom) []act.Act {
	n := len(acts)
	if n < 2 {
		return acts
	}
	if last := acts[n-1]; last.Kind == act.Quit && paraphrase.SetsStock(act.Reading{Acts: acts[n-2 : n-1]}) {
		if i := AtomAt(atoms, last.At); i > 0 && atoms[i-1].Kind != scan.Sign && atoms[i].Text == "that" {
			return acts[:n-1]
		}
	}
	if last := acts[n-1]; last.Kind == act.Ask && last.Topic == "cautions" && acts[n-2].Kind == act.Check && pointsAt(last, atoms) && !careAbout(last, atoms) {
		return acts[:n-1] // "they say 24, is anything wrong with that"
	}
	if i := AtomAt(atoms, acts[0].At); acts[0].Kind == act.Undo && acts[1].Kind == act.Forget && i >= 0 && atoms[i].Text == "never" {
		return acts[1:]
	}
	return acts
}

// careAbout reports whether a question for cautions asks what to be careful about, and not whether a claim is right.
func careAbout(a act.Act, atoms []scan.Atom) bool {
	for _, x := range atoms {
		if x.At >= a.At {
			switch x.Text {
			case "careful", "cautious", "watch", "danger", "dangerous", "hazards", "safe", "safety", "hurt", "bite", "worried", "worry":
				return true
			}
		}
	}
	return false
}

// slipsThrough reports whether somebody small is to be kept from getting through: that asks for small gaps rather than for no opening.
func slipsThrough(atoms []scan.Atom) bool {
	small, through := false, false
	for _, a := range atoms {
		small, through = small || paraphrase.Creatures[a.Text], through || a.Text == "through" || a.Text == "thru"
	}
	return small && through
}

// pointsAt reports whether a question is of what was said just before it: "is anything wrong with that".
func pointsAt(a act.Act, atoms []scan.Atom) bool {
	for i := AtomAt(atoms, a.At); i >= 0 && i < len(atoms) && i < AtomAt(atoms, a.At)+8; i++ {
		if (atoms[i].Text == "with" || atoms[i].Text == "about" || atoms[i].Text == "in") && i+1 < len(atoms) && (lex.Pointing[atoms[i+1].Text] || atoms[i+1].Text == "those" || atoms[i+1].Text == "them") {
			return true
		}
	}
	return false
}

// takenAtOnce leaves out what was set and taken back in the same breath, before it was set anew: "six rails. hmm, scratch that, five".
func takenAtOnce(acts []act.Act) []act.Act {
	for i := 0; i+2 < len(acts); i++ {
		was, now := acts[i], acts[i+2]
		if acts[i+1].Kind == act.Undo && was.Kind == act.State && now.Kind == act.State && len(was.Statements) == 1 && len(now.Statements) == 1 &&
			was.Statements[0].Name == now.Statements[0].Name && !parse.Changes(now.Statements[0].Op) {
			return takenAtOnce(append(acts[:i:i], acts[i+2:]...))
		}
	}
	return acts
}

// setAnew leaves out a value that is corrected in the next sentence: "let's make the gaps 2 1/2. Actually, I'd rather have 2 1/4."
func setAnew(acts []act.Act, atoms []scan.Atom) []act.Act {
	for i := 0; i+1 < len(acts); i++ {
		if !equalsOne(acts[i]) || !equalsOne(acts[i+1]) || acts[i].Statements[0].Name != acts[i+1].Statements[0].Name {
			continue
		}
		begun := false
		for k, a := range atoms {
			begun = begun || a.At >= acts[i].End && k > 0 && chunk.EndsSentence(atoms, k-1)
			if begun && a.At <= acts[i+1].At+1 && rethinks[a.Text] {
				return append(append([]act.Act{}, acts[:i]...), acts[i+1:]...)
			}
		}
	}
	return acts
}

// rethinks are words by which somebody says that another value takes the place of the one before.
var rethinks = scan.WordSet("actually rather sorry forgive really instead correction oops mistake wait")

func equalsOne(a act.Act) bool {
	return a.Kind == act.State && len(a.Statements) == 1 && a.Statements[0].Op == solver.Eq && a.Statements[0].Name.Quantity != solver.Measured
}
