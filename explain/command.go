package explain

import (
	"slices"
	"strings"

	"saywright/solver"
)

// command answers what was done: undone, kept, forgotten, saved. What stands now is told after it, where that changed.
func (v *voice) command() {
	for _, f := range v.a.Facts {
		v.done(f)
	}
	switch v.a.To.Topic {
	case "next":
		v.steps()
	case "compare":
		v.compared()
	case "recap", "help", "quit", "save", "draw to", "print to", "set aside":
		v.finished()
		if v.a.To.Topic == "set aside" {
			v.standsNow()
		}
	default:
		v.standsNow()
	}
}

// finished says what a command with nothing else to tell has done.
func (v *voice) finished() {
	_, recap := v.fact("recap")
	switch {
	case v.a.To.Topic == "recap" && !recap:
		v.p.say("Nothing stands yet", noInk)
	case v.a.To.Topic == "quit":
		v.p.say("Good building", noInk)
	}
}

// standsNow tells what stands after a command.
func (v *voice) standsNow() {
	_, over := v.fact("started over")
	switch {
	case over || v.a.Layout == nil && len(v.a.Conflicts)+len(v.a.Because) == 0 && v.a.Options == nil:
		return
	}
	v.stated()
}

func (v *voice) phrases(list []string) string {
	var out []string
	for _, s := range list {
		out = append(out, v.donePhrase(s))
	}
	return and(out)
}

// donePhrase says an act that was done: "forget gap" is forgetting the gap.
func (v *voice) donePhrase(s string) string {
	verb, rest, _ := strings.Cut(s, " ")
	switch {
	case s == "start over":
		return "starting over"
	case verb == "open":
		return "opening " + quoted(rest)
	case strings.HasPrefix(s, "same as "):
		return "the same as " + quoted(strings.TrimPrefix(s, "same as "))
	case strings.HasPrefix(s, "forget all but "):
		var kept []string
		for _, name := range strings.Split(strings.TrimPrefix(s, "forget all but "), ", ") {
			kept = append(kept, v.the(name))
		}
		return "forgetting all but " + and(kept)
	case verb != "forget":
		return v.actPhrase(s)
	}
	wall, bare, of := strings.Cut(rest, ": ")
	if !of {
		bare = rest
	}
	said := v.the(bare)
	if read(bare).op != "" || said == quoted(bare) { // one statement, or a wish
		said = v.phrase(bare)
	}
	if of {
		said += " of " + quoted(wall)
	}
	return "forgetting " + said
}

// actPhrase says a normal form that may be an act of its own, such as "forget gap".
func (v *voice) actPhrase(s string) string {
	if limit, ok := strings.CutPrefix(s, "set aside "); ok {
		return "the " + quoted(limit) + "'s limits set aside"
	}
	for _, verb := range []string{"forget all but ", "forget ", "start over", "take ", "open ", "same as "} {
		if strings.HasPrefix(s, verb) {
			return "“" + quoted(s) + "”"
		}
	}
	return v.phrase(s)
}

func (v *voice) done(f solver.Fact) {
	name := quoted(first(f.Names))
	switch f.Key {
	case "undone":
		v.p.say("Taken back: "+v.phrases(f.Names), noInk)
	case "trial dropped":
		v.p.say("What was tried is dropped; nothing had been changed", noInk)
		if len(f.Names) > 0 {
			v.p.note("The last change stands: " + v.phrases(f.Names) + forEye(" (`undo` takes it back)"))
		}
	case "redone":
		v.p.say("Back again: "+v.phrases(f.Names), noInk)
	case "kept":
		if !v.allReplaced(f.Names) {
			v.p.say("Kept: "+v.phrases(f.Names), noInk)
		}
	case "forgot":
		v.p.say("Forgotten: "+v.phrases(f.Names), noInk)
	case "set aside":
		v.p.say("The "+name+"'s limits are set aside: they block no more, and the caution stays", noInk)
	case "started over":
		v.p.say("All forgotten. What wall do you want?", noInk)
	case "saved":
		v.p.say("Saved as "+name, noInk)
	case "saved before":
		if len(f.Names) > 1 {
			v.p.note("The one before is kept as " + quoted(f.Names[1]))
		}
	case "opened":
		v.p.say(name+" is open", noInk)
	case "same as":
		if len(f.Names) > 1 {
			v.p.say("Taken over from "+orThis(name)+": "+v.phrases(f.Names[1:]), noInk)
		}
	case "drawn":
		v.p.say("Drawn"+forEye(" to "+name), noInk)
	case "printed":
		v.p.say("The job sheet is ready"+forEye(", in "+name), noInk)
	case "steps done":
		v.p.say("That was the last step", good)
	case "recap":
		v.recap(f)
	case "help":
		v.help(f)
	}
}

// allReplaced reports whether what was kept is told anyway, as what takes the place of something.
func (v *voice) allReplaced(forms []string) bool {
	for _, s := range forms {
		if !slices.ContainsFunc(v.a.Replaced, func(r solver.Replaced) bool { return r.New.String() == s && r.Old.String() != s }) {
			return false
		}
	}
	return true
}

// whichWall names the wall that the answer is about, where the conversation knows several.
func (v *voice) whichWall() {
	if f, ok := v.fact("wall"); ok {
		v.p.say(upper(quoted(orThis(first(f.Names)))), noInk)
	}
}

func orThis(name string) string {
	if name == "" {
		return "the wall without a name"
	}
	return name
}

// recap says all that stands, in words, with the normal form beside it.
func (v *voice) recap(f solver.Fact) {
	if len(f.Names) < 2 {
		return
	}
	title := "What stands:"
	if f.Names[0] != "" {
		title = upper(quoted(f.Names[0])) + ":"
	}
	t := newTable("<", "<")
	t.title = title
	var aloud []string
	for _, s := range f.Names[1:] {
		words := v.actPhrase(s)
		aloud = append(aloud, words)
		t.row(quoted(s), words)
	}
	v.p.add(*t)
	v.p.hear(sentence(strings.TrimSuffix(title, ":") + ": " + strings.Join(aloud, ", ")))
}

func (v *voice) help(f solver.Fact) {
	if len(f.Names) < 2 {
		v.p.say("I have no help on that; `help` alone tells what there is", noInk)
		return
	}
	for i, line := range f.Names[1:] {
		line = quoted(line)
		text := strings.TrimLeft(line, " ")
		v.p.add(para{lead: line[:len(line)-len(text)], text: text, own: i < 2})
	}
}

// compared lays two walls side by side.
func (v *voice) compared() {
	f, ok := v.fact("compared")
	if !ok || len(f.Names) < 2 {
		return
	}
	a, b := quoted(f.Names[0]), quoted(f.Names[1])
	if vs, ok := v.fact("verdicts"); ok && len(vs.Names) > 1 {
		v.p.say(upper(a)+" "+verdictWord[vs.Names[0]]+", "+b+" "+verdictWord[vs.Names[1]], noInk)
	}
	if len(v.a.Change) == 0 {
		v.p.say("Nothing differs that I can tell", noInk)
		return
	}
	t := newTable("<", a, b)
	for _, m := range v.a.Change {
		_, q, _ := thingOf(m.Of)
		t.row(v.columnName(m.Of), v.valueOf(q, m.From), v.valueOf(q, m.To))
	}
	v.p.add(*t)
}

var verdictWord = map[string]string{"fits": "fits", "blocked": "is blocked", "open": "is still open", "unclear": "is still open"}

// Greeting is what a conversation begins with.
func Greeting(o Options) string {
	p := page{}
	p.add(para{text: "Say what wall you want, such as: wall 48 high, gap two and a half. `help` tells more, `quit` leaves."})
	return p.text(o)
}

// ReadBack says aloud what was heard, before it is taken: each statement in words, a -teen or a -ty also digit by digit,
// because ears mix those up.
func ReadBack(heard []string, metric bool) string {
	v := &voice{a: &solver.Answer{Metric: metric}}
	v.Style.Metric = metric
	var list []string
	for _, s := range heard {
		list = append(list, v.actPhrase(s))
	}
	return readBack(strings.Join(list, "; "), v.Style)
}
