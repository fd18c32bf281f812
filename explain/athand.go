package explain

import (
	"slices"
	"strings"

	"saywright/solver"
)

// askAtHand asks how much of a part is there already: so much comes off the list.
func (v *voice) askAtHand(q solver.Question, parts []string) string {
	posts := slices.Contains(parts, "post")
	holds := func(key string) bool {
		return slices.ContainsFunc(q.Facts, func(f solver.Fact) bool { return f.Key == key })
	}
	off := holds("not on the list")
	switch {
	case len(q.Choices) > 0 && posts:
		return "The end posts are never on the list. What is there of the added ones? It comes off the list then."
	case len(q.Choices) > 0:
		return "Is this there already? It comes off the list then."
	case holds("end posts alone"):
		return "The end posts are never on the list, so nothing comes off it. What else is there?"
	case off && posts:
		return "The end posts are never on the list, and this wall has no other post. What else is there?"
	case off:
		return "The list has none of that, so nothing comes off it. What else is there?"
	}
	for _, p := range parts {
		if p == "post" || p == "stiffener" || p == "rail" || p == "lumber" {
			return "How many are there, and how long? They come off the list then."
		}
	}
	return "How many are there? They come off the list then."
}

// noneComesOff tells, before what the line asks for, that the list has none of what is there.
func (v *voice) noneComesOff() {
	f, ok := v.fact("none comes off")
	switch {
	case !ok:
	case slices.Contains(f.Names, "post"):
		v.p.say("The end posts are never on the list, so nothing comes off it for them", noInk)
	default:
		v.p.say("The list has none of that, so nothing comes off it", noInk)
	}
}

// atHandAloud says the choices by number, each in words.
func (v *voice) atHandAloud(choices []string) string {
	parts := make([]string, len(choices))
	for i, c := range choices {
		parts[i] = partsOf(c)
	}
	if len(choices) == 1 {
		return v.offeredAloud(parts[0]) + ". Say yes, or how many there are"
	}
	return "say " + v.choicesAloud(parts)
}

// partsOf leaves out of a choice what the line asked for besides the parts.
func partsOf(choice string) string {
	forms, _, _ := strings.Cut(choice, "; ask ")
	return forms
}

// comesOff tells, by a list, how to say what is there already; once a conversation, and not to who has said so.
func (v *voice) comesOff() {
	if _, said := v.fact("told at hand"); said {
		return
	}
	say := "`I have the brackets`"
	if v.buys("post base") {
		say = "`the posts are up` or " + say
	}
	if v.first("what is there comes off") {
		v.p.note("What is there already comes off the list: say " + say)
	}
}

// tooShort tells, by a list, of what is there and no longer long enough, so that it does not go from the sums without a word.
func (v *voice) tooShort() {
	for _, f := range v.facts("too short at hand") {
		if len(f.Names) == 0 || len(f.Nums) < 3 {
			continue
		}
		n, what := ints(f.Nums[:1])[0], size(f.Names[0])+" of "+v.onTapeOrExact(f.Nums[1])
		is := " is too short: "
		if n != 1 {
			what, is = count(n)+" "+what, " are too short: "
		}
		v.p.say("Your "+what+is+v.both(f.Nums[2])+" is needed", warning)
	}
}
