package idiom

import "saywright/grammar/phrase"

// What is stretched, put on or taken out by an amount is changed by it, a fraction of another quantity is a share of it and no inches, and what
// may be so is tried. Everyday speech, no source.

const (
	lengthened = "!(gap|gaps|opening|doorway|bay|bays|span|(bottom gap)|(bay 1)|(bay 2)|(bay 3)|(bay 4)|(bay one)|(bay two)|(bay three)|(bay four))"
	someLength = "!(((a|an|half a|half an|another|one more) (inch|foot|yard|quarter|half|eighth|sixteenth))|((quarter|half|eighth|sixteenth) inch))"
)

// movedOrMade are such turns.
var movedOrMade = []phrase.Placed{
	{"stretch|extend|lengthen [out] [the|my|our|all the|each|every] !(bay|bays|span|(bay 1)|(bay 2)|(bay 3)|(bay 4)) [by] # $", "widen the $1 by $2", nil},
	{"put " + someLength + " [more|extra] on|onto [the|my|our|all the|each|every] " + lengthened + " $", "widen the $2 by $1", nil},
	{"lose|remove|(take out)|(take off)|(leave out)|pull|omit a|one !(rail|board|slat|plank|stiffener) in|from|of [the] bay ## $", "take one $1 out of bay $2", nil},
	{"the drop is # less $", "reduce the drop by $1", nil},
	{"^^ [the|our|make the] !((bottom gap)|gap|opening|span) [is|=] 1 / 2 [of] the !((bottom gap)|gap|opening|span) $$", "$1 is half of the $2", nil},
	{"^^ [the|our|make the] !((bottom gap)|gap|opening|span) [is|=] 3 / 4 [of] the !((bottom gap)|gap|opening|span) $$", "$1 is three quarters of the $2", nil},
	{"^^ [the|our|make the] !((bottom gap)|gap|opening|span) [is|=] 1 / 4 [of] the !((bottom gap)|gap|opening|span) $$", "$1 is a quarter of the $2", nil},
	{"^^ [the|our|make the] !((bottom gap)|gap|opening|span) [is|=] 1 / 3 [of] the !((bottom gap)|gap|opening|span) $$", "$1 is a third of the $2", nil},
	{"^^ [the|our|make the] !((bottom gap)|gap|opening|span) [is|=] 2 / 3 [of] the !((bottom gap)|gap|opening|span) $$", "$1 is two thirds of the $2", nil},
	{"^^ [so|and|but|well] [the|my|our] !(opening|doorway|walkthrough) might|may|could [just|also|well|maybe|still] go|be|sit|stand ?on|at|in|to [the] !(left|right|middle) [end|side] $$", "what if the opening side is $2", nil},
}
