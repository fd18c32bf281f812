package gist

import (
	"slices"

	"saywright/grammar/act"
	"saywright/grammar/scan"
)

// A figure may come without its quantity, behind what named it: what was a slip is set right ("I wrote 12 feet for the space between the
// posts, when in fact it is 11 feet 9"), one says this and the other that ("the old drawing says 2 for the gap, the new one says 3"),
// what is claimed was measured ("his sheet lists the face as 5 1/4, I put a ruler on it and it is 5 7/16").

// amendSenses are the senses of words by which a figure takes the place of another.
const amendSenses = `
slip: first_i_wanted first_we_wanted first_i_said first_we_said at_first_i_wanted at_first_we_wanted at_first_i_said i_first_wanted we_first_wanted first_i_had first_we_had first_i_thought
slip: i_said we_said i_told_you we_told_you i_wrote we_wrote i_typed i_entered i_put_down i_gave_you i_have_said i_have_told_you i_had_said i_had_told_you i_had_written i_had_wanted we_had_wanted i_had_hoped i_had_planned we_had_planned i_had_thought i_had_in_mind
slip: i_wanted we_wanted i_thought we_thought we_first_thought i_first_thought we_had_thought i_was_thinking we_were_thinking i_was_going_to we_were_going_to did_i_say did_i_write did_i_put did_i_tell_you i_mistakenly_said mistakenly by_mistake wrongly in_error erroneously i_misspoke
slip: earlier originally at_first previously i_first_said i_meant_to_say wrong_height wrong_width wrong_figure wrong_number wrong the_wrong talked_me_out_of talked_us_out_of i_assumed i_guessed i_believed
truly: i_meant we_meant meant in_truth in_reality should_have_been should_have_said ought_to_have_been talked_me_into talked_us_into persuaded_me_to won_me_over_to we_are_going_with i_am_going_with
truly: we_will_go_with i_will_go_with go_with we_have_settled_on i_have_settled_on it_turns_out_to_be turns_out_to_be it_turns_out it_came_out_to it_came_to correct_figure correct_number right_figure right_number the_right_one the_correct_one correctly
light+truly: in_fact i_mean should_be ought_to_be is_to_be make_that make_it make_them we_want i_want it_is it_be it_really_is it_actually_is they_are that_is actually really truly now it_must_be it_has_to_be
ratherthan: rather_than instead_of in_place_of in_lieu_of as_opposed_to and_not
were: was were wasn't
agree: she_is_right he_is_right they_are_right she_was_right he_was_right and_rightly_so i_agree we_agree i_see_why i_must_say i_must_admit i_have_to_admit i_admit sorry my_mistake my_error my_fault silly_me forgive_me excuse_me
but: but
who: who whoever
mine: my_tape my_tape_says my_tape_measure my_level by_my_level my_ruler i_put_a_ruler_on i_put_a_tape_on i_put_my_tape_on a_ruler on_mine mine
light+mine: i_measured i_measured_it we_measured i_measure i_taped i_make_it i_find i_found i_checked i_checked_it i_get i_got we_get we_got
ours: mine it
`

// amendMay are the senses, beside those of the quantity, of what may stand where a slip is set right.
const amendMay = "slip truly were agree but person once"

// figuresAt are the items that are figures.
func figuresAt(items []gistItem) (at []int) {
	for i := range items {
		if items[i].figure != 0 {
			at = append(at, i)
		}
	}
	return at
}

// amended reads a stretch with two figures, one of which takes the place of the other.
func (g *gist) amended(items []gistItem) (gistAct, bool) {
	at := figuresAt(items)
	if len(at) != 2 || items[len(items)-1].sign == "?" || !likeFigures(items[at[0]], items[at[1]]) {
		return gistAct{}, false
	}
	b := g.book
	slip, truly, instead := -1, -1, -1
	for i := range items {
		s := items[i].senses
		switch {
		case s.has(b.sense("slip")) && slip < 0:
			slip = i
		case s.has(b.sense("truly")) && i > at[0]:
			truly = i
		case i > at[0] && i < at[1] && (s.has(b.sense("ratherthan")) && g.onlyLight(items[i+1:at[1]]) || i == at[1]-1 && g.atoms[items[i].from].Text == "not"):
			instead = i
		}
	}
	old, standing := at[0], at[1]
	switch {
	case instead >= 0:
		old, standing = at[1], at[0]
	case slip < 0 || slip > at[1] || truly < slip:
		return gistAct{}, false
	}
	may := b.set(amendMay)
	var found gistAct
	for _, moved := range []bool{false, true} {
		var rest []gistItem
		where := 0
		for i := range items {
			switch {
			case items[i].sign != "" || i == instead:
			case i == standing && !moved || i == old && moved:
				where = len(rest)
				rest = append(rest, items[standing])
			case i != old && i != standing:
				rest = append(rest, items[i])
			}
		}
		told, n, ok := g.statement(rest, where, may)
		if !ok || n == 0 {
			continue
		}
		a := gistAct{act: act.State, told: [][]scan.Atom{told}, amends: &g.atoms[items[standing].from]}
		if found.told != nil && !sameGist(a, found) {
			return gistAct{}, false
		}
		found = a
	}
	return found, found.told != nil
}

// likeFigures reports whether a figure may take the place of another: a unit that was said is said again.
func likeFigures(was, is gistItem) bool {
	return was.figure&is.figure != 0 || was.figure&(figBare|figCount) != 0 && is.figure == figLength
}

func (g *gist) onlyLight(items []gistItem) bool {
	for i := range items {
		if !items[i].senses.meets(g.book.light) {
			return false
		}
	}
	return true
}

// carried reads what goes on after a claim with a figure and no quantity of its own: another's claim, or what was measured.
func (g *gist) carried(left, right []gistItem) (gistAct, bool) {
	was, is := figuresAt(left), figuresAt(right)
	if len(was) != 1 || len(is) != 1 || !likeFigures(left[was[0]], right[is[0]]) {
		return gistAct{}, false
	}
	b := g.book
	may := b.set("says person paper kindof truly but next mine ours check added ruler atleast atmost were").with(b.light)
	did := gistAct{act: act.Check, amends: &g.atoms[right[is[0]].from]}
	says, who := false, false
	for i := range right {
		s := right[i].senses
		switch {
		case i == is[0] || right[i].sign != "":
		case !s.meets(may):
			return gistAct{}, false
		case s.has(b.sense("mine")):
			did.act = act.State
		}
		says = says || s.has(b.sense("says"))
		who = who || s.meets(b.set("person paper kindof next"))
	}
	if did.act == act.Check && !(says && who) || did.act == act.State && right[len(right)-1].sign == "?" {
		return gistAct{}, false
	}
	rest := append([]gistItem{}, left...)
	rest[was[0]] = right[is[0]]
	told, _, ok := g.statement(trimSigns(rest), was[0]-leadingSigns(rest), b.set("says person paper kindof check could tell were"))
	did.told = [][]scan.Atom{told}
	return did, ok
}

// sourceSenses are the senses of what may stand in the name of who, or what, says something: "the drawing pinned to the door".
const sourceSenses = `person paper from think design draw kindof seller spare cost budget wood floor who next added noise light old buy`

// withoutSource leaves out what tells of the one who claims something but for the one himself.
func (g *gist) withoutSource(items []gistItem) []gistItem {
	b := g.book
	says, who, source := b.sense("says"), b.set("person paper"), b.set(sourceSenses)
	named, clause := -1, false
	for i := range items {
		switch s := items[i].senses; {
		case items[i].figure != 0:
			return items
		case items[i].sign == ",":
			if named < 0 || !clause && (i+1 == len(items) || !items[i+1].senses.has(b.sense("who"))) {
				return items
			}
			clause = !clause
		case items[i].sign != "":
			return items
		case clause:
		case named >= 0 && s.has(says):
			return append([]gistItem{items[named]}, items[i:]...)
		case !s.meets(source):
			return items
		case named < 0 && s.meets(who):
			named = i
		}
	}
	return items
}

// ownBefore reports whether a sentence with a figure goes before the one that tells who claims something: it claims nothing.
func (g *gist) ownBefore(items []gistItem) bool {
	who, figure, over := g.book.set("person paper says"), false, false
	for i := range items {
		switch {
		case items[i].figure != 0:
			figure = true
		case items[i].senses.meets(who) && !items[i].senses.meets(g.book.light):
			return over
		case items[i].sign != "" && items[i].sign != ",":
			over = over || figure
		}
	}
	return false
}

// asksOn returns the item behind a figure at which a question begins, 0 where none does: "five boards, what does that do to the gap".
func (g *gist) asksOn(items []gistItem) int {
	asks, figure := g.book.set("what how"), false
	for i := range items {
		figure = figure || items[i].figure != 0
		if figure && items[i].senses.meets(asks) && !items[i].senses.meets(g.book.light) {
			return i
		}
	}
	return 0
}

// deniedOnce reports whether no more than one word of a stretch denies: "nothing would happen without stiffeners" tries nothing.
func (g *gist) deniedOnce(items []gistItem) bool {
	not, n := g.book.sense("not"), 0
	for i := range items {
		if items[i].senses.has(not) {
			n++
		}
	}
	return n <= 1
}

// statedBefore reports whether a figure goes before the word that tries: "wall 48 high, 5 rails, what if posts are 8 feet apart" states it.
func (g *gist) statedBefore(items []gistItem) bool {
	tries := g.book.set("if whether")
	for i := range items {
		if items[i].figure != 0 {
			return slices.ContainsFunc(items[i:], func(it gistItem) bool { return it.senses.meets(tries) })
		}
		if items[i].senses.meets(tries) {
			break
		}
	}
	return false
}
