package idiom

import (
	"saywright/grammar/chunk"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// Whatever verb of moving stands there, a quantity that is moved up to a figure becomes that, and one that is moved up by it grows by it: "take
// the gap down to two", "lift the wall up to 46", "put the budget up by 20 dollars". Some of these verbs have another sense beside the same
// quantity ("lift the limit", "take the gap down" to explain it, "put the gap up to three" as a limit), so they are set plain early.

// movers are the verbs, movedOnes what may be moved by them: the top of an added post is moved with it.
const (
	movers    = "(take|bring|get|move|put|push|bump|raise|lift|pull|open|drop|knock|cut|set|shrink|lower|nudge|crank|run|jack|slide|shift|ease|step|dial|turn|scale|ramp|kick|haul|send|trim|squeeze|jog|hike|tick|inch|walk|draw|let|scoot)"
	moved     = "(took|brought|got|moved|pushed|bumped|raised|lifted|pulled|opened|dropped|knocked|shrank|lowered|nudged|cranked|ran|jacked|slid|shifted|eased|stepped|dialed|turned|scaled|ramped|kicked|trimmed|squeezed|hiked)"
	movedOnes = "!(LENQ|budget|([clear] (distance|space|run) between [the] [two] [end] posts)|(overall [width|length])|kerf)"
	movedMany = "[the|our|my] [(number|count|total) of] !(COUNTQ|[the|our|my] (bays|openings))"
	movedPost = "!([the|that|this|my|our|your] (new|added|extra) (post|column))"
)

var movedTurns = []phrase.Placed{
	{movers + " " + movedOnes + " [right|straight|back|all the way|on|way] up [again|back|a bit|a little|a touch] to", "raise $1 to", phrase.BothHold(weMoveIt, phrase.AmountNext)},
	{movers + " " + movedOnes + " [right|straight|back|all the way|on|way] down [again|back|a bit|a little|a touch] to", "reduce $1 to", phrase.BothHold(weMoveIt, phrase.AmountNext)},
	{movers + " " + movedOnes + " [right|straight|back|on] up [again] [by] [another|(a further)|(an extra)] #", "raise $1 by $2", weMoveIt},
	{movers + " " + movedOnes + " [right|straight|back|on] down [again] [by] [another|(a further)|(an extra)] #", "reduce $1 by $2", weMoveIt},
	{"take " + movedOnes + " down [a (bit|little|touch|tad|hair)] [please] $", "reduce $1", weMoveIt},
	{moved + " " + movedOnes + " [right|straight|back|all the way|on|way] (up|down) [again] to", "made $1", phrase.AmountNext},
	{movers + " " + movedMany + " [right|straight|back|all the way|on|way] (up|down) [again] to ##", "$2 $1", phrase.BothHold(weMoveIt, behindCount)},
	{movers + " " + movedMany + " [right|back|on] up [again] by [another] ##", "$2 more $1", phrase.BothHold(weMoveIt, behindCount)},
	{movers + " " + movedMany + " [right|back|on] down [again] by [another] ##", "$2 fewer $1", phrase.BothHold(weMoveIt, behindCount)},
	{movers + " " + movedPost + " [right|back|on] (up|down) [again] to #", "post height : $2", phrase.BothHold(weMoveIt, noPlaceBehind)},
	{"(take|bring|get|move|put|push|bump|pull|run|nudge|crank|step) " + movedPost + " [back|on] up [by] [another|(a further)|(an extra)] #", "raise the post height by $2", phrase.BothHold(weMoveIt, noPlaceBehind)},
	{"(take|bring|get|move|put|push|pull|drop|cut|trim|knock|lower|shrink|nudge|step) " + movedPost + " [back] down [by] [another|(a further)|(an extra)] #", "reduce the post height by $2", phrase.BothHold(weMoveIt, noPlaceBehind)},
}

// notOurs are words before a verb of moving by which somebody else moves it, or nobody does.
var notOurs = scan.WordSet("not never no he she they who which that cannot nobody somebody someone")

// weMoveIt: it is we who move it, or are asked to, or may.
func weMoveIt(before, _ []scan.Atom) bool {
	for k := 1; k <= 3 && k <= len(before); k++ {
		if w := before[len(before)-k]; w.Kind != scan.Word {
			return true
		} else if notOurs[w.Text] || chunk.IsPerson(w.Text) && w.Text != "i" && w.Text != "we" && w.Text != "you" {
			return false
		}
	}
	return true
}

// behindCount: a count ends there, and no length goes on: "take the boards up to 4 inches from the top".
func behindCount(_, after []scan.Atom) bool {
	return chunk.EndsPart(after, 0) || chunk.Joints[after[0].Text]
}

// noPlaceBehind: nothing behind tells where along the wall: "up to 50 from the left".
func noPlaceBehind(_, after []scan.Atom) bool {
	for _, a := range after {
		switch a.Text {
		case "from", "left", "right", "along", "over", "middle", "center", "of", "off", "end":
			return false
		}
	}
	return true
}

// liftedUp: what is lifted goes up to a figure, and is not lifted as a limit is.
func liftedUp(before, after []scan.Atom) bool {
	for k, a := range after {
		switch {
		case a.Kind == scan.Sign, tellsNumber(a), a.Text == "limit", a.Text == "cap", a.Text == "ceiling", a.Text == "restriction", k > 9:
			return false
		case a.Text == "up":
			return true
		}
	}
	return false
}
