package ways

import (
	"strings"

	"saywright/grammar/scan"
)

// verbUse is what a verb can do in a sentence of a wall.
type verbUse uint8

const (
	// sideUse: it may stand before the word of a side, as may its -s: "don't let it drop below 2 or go past 3".
	sideUse verbUse = 1 << iota
	// notUse: it may stand between a "not" and what that compares: "may not sit closer together than two".
	notUse
	// notDoneUse: its participle may stand there: "may not be spaced wider than two".
	notDoneUse
	// soUse: a "so" tells its manner: "don't build it so the gap is over four" denies the gap.
	soUse
	// wishUse: it tells another's wish, as does its -s: "she wants six rails".
	wishUse
	// wishedUse: its past tells another's wish: "he raised the wall to 44".
	wishedUse

	wishesUse = wishUse | wishedUse
)

// verbUses are the verbs, in their base form.
var verbUses = []struct {
	uses  verbUse
	verbs string
}{
	{sideUse, "dip fall sink climb stray stretch"},
	{sideUse | notUse, "be go come run rise"},
	{sideUse | notUse | wishesUse, "get"},
	{sideUse | wishedUse, "drop"},
	{notUse, "sit end stand lie contain hold include exceed afford use reach turn finish work stay"},
	{notUse | wishesUse, "measure take accept"},
	{notUse | notDoneUse | wishesUse, "allow"},
	{notUse | soUse | wishesUse, "have want need make set put cut"},
	{notDoneUse, "mount fix stack"},
	{notDoneUse | soUse, "space place build hang lay leave"},
	{soUse, "do arrange fit"},
	{soUse | wishUse, "keep"},
	{soUse | wishesUse, "like"},
	{wishUse, "fancy"}, // "kept" and "fancied" tell of what was
	{wishesUse, "find love prefer ask wish insist require order demand expect choose pick settle decide agree change care request hope let approve okay aim tell say please mind"},
	{wishesUse, "give call bump raise lower add trim read"}, // who gives a figure wants it
}

// The places of forms in what VerbForms returns; that in -ing is asked for by none.
const (
	baseForm = iota
	sForm
	_
	pastForm
	doneForm
)

// useForm is a use and the form of a verb that has it.
type useForm struct {
	use  verbUse
	form int
}

// verbsFor returns some words and, of the verbs, the forms that are used so. The forms of "be" tell what is there, and are none of them.
func verbsFor(also string, list ...useForm) map[string]bool {
	out := scan.WordSet(also)
	for _, row := range verbUses {
		for _, v := range strings.Fields(row.verbs) {
			for _, u := range list {
				if row.uses&u.use != 0 && (v != "be" || u.form == baseForm) {
					out[VerbForms(v)[u.form]] = true
				}
			}
		}
	}
	return out
}

var (
	// SideVerbs are verbs that may stand before the word of a side.
	SideVerbs = verbsFor("", useForm{sideUse, baseForm}, useForm{sideUse, sForm})
	// UnderNot are words that may stand between a "not" and what it compares.
	UnderNot = verbsFor("up out in with any at", useForm{notUse, baseForm}, useForm{notDoneUse, doneForm})
	// DoneSo are verbs whose manner a "so" tells.
	DoneSo = verbsFor("", useForm{soUse, baseForm})
	// WishingVerbs are words that tell another's wish.
	WishingVerbs = verbsFor("must should would will wills willed shall ought 'd 'll is was 's up ups upped", useForm{wishUse, baseForm}, useForm{wishUse, sForm}, useForm{wishedUse, pastForm})
)
