package reread

import (
	"slices"
	"sync"

	"saywright/grammar/act"
	"saywright/grammar/gist"
	"saywright/grammar/hear"
	"saywright/grammar/idiom"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// A line that asks and names one thing that can be told or shown asks for that, whatever verb it asks with: "on which spots do the posts
// stand", "do you happen to know the number of planks by heart". Beside the name stand light words and at most two words of no table, none
// of them right beside it ("the opening ceremony" is none of the wall). What is asked changes nothing; but what denies, compares, tries,
// or tells of others and of what was, has no place here, and leaves the line to be asked back.

// namedBook finds what is asked for, and sets it to its question.
var namedBook = sync.OnceValue(func() *phrase.Book {
	return phrase.BookOf([]phrase.Placed{
		{Said: "(number|count|amount|tally|total|sum|(sum total)|quantity|headcount) of [the|my|our|these|those] !(RAIL|STIFF|posts|bays)", Plain: "how many $1"},
		{Said: "how many !(RAIL|STIFF|posts|bays)\n!(rail|board|slat|stiffener|post|bay) count|tally|number|total", Plain: "how many $1"},
		{Said: "!ASKED", Plain: "what is $1"},
		{Said: "!TOPIC", Plain: "show me $1"},
		{Said: "marks|ticks|(pencil (marks|lines))", Plain: "where do my marks go"},
		{Said: "where|(what|which) (spot|spots|place|places|point|points|position) [do|does|is|are|should|will|must|shall] [the|my|our|each|this|that] [added|new|extra|middle] POST", Plain: "where do the posts go"},
	})
})

// besideNamed are light words that may stand beside what is asked for.
var besideNamed = scan.WordSet(`a an the my our your this that us me you i we it its to at of on in for with by from up out over off here there now again then just ok okay so and well please kindly
	is are am be will would could can may might shall do does 's 'd 'll 're 've want need like have has got get give tell say show see look hear let know read call name hand point happen come comes came
	turn turned work worked end ended right what where how which thanks thank time moment second minute once more all told exactly precisely about any idea straight heart offhand friend stand stands sit sits go goes land lands belong belongs get gets write jot down where's measure measures`)

// toldOfIt begin what is told of a thing, where it was named behind a question word.
var toldOfIt = scan.WordSet("is are was were will would can could should has have depends matters")

// subjectAsked are words behind which a verb asks for more than a value: "what accounts for the rail count" asks why.
var subjectAsked = scan.WordSet("what which how who")

// asksWith are words by which a line asks.
var asksWith = scan.WordSet("what where how which tell give show read call name point list say remind spell hand please")

// ReadNamed reads a line that asks for one thing by its name.
func ReadNamed(atoms []scan.Atom, c act.Context) (act.Reading, bool) {
	if len(atoms) < 3 || len(atoms) > 16 {
		return act.Reading{}, false
	}
	m := phrase.Match{Atoms: atoms, Awake: namedBook().Awakened(namedBook().LookUp(atoms))}
	at, end := -1, 0
	for i := 0; i < len(atoms); i++ {
		if p, next := namedBook().Best(&m, i, nil); p != nil {
			if at >= 0 {
				return act.Reading{}, false
			}
			at, end, i = i, next, next-1
		}
	}
	if at < 0 || at > 0 && end+1 < len(atoms) && atoms[end+1].Kind == scan.Word && toldOfIt[atoms[end].Text] { // "what are the steps is up to me" tells of it
		return act.Reading{}, false
	}
	strange, asked := 0, idiom.AskOpeners[atoms[at].Text] || atoms[at].Text == "which"
	for i, a := range atoms {
		switch {
		case i >= at && i < end:
		case a.Kind == scan.Sign && (a.Text == "," || a.Text == "." || a.Text == "!" || a.Text == "-" || a.Text == ":" || i == len(atoms)-1 && a.Text == "?"):
			asked = asked || a.Text == "?"
		case a.Kind != scan.Word:
			return act.Reading{}, false
		case a.Text == "and" && i > 0:
			return act.Reading{}, false
		case besideNamed[a.Text]:
			asked = asked || asksWith[a.Text] && i < at
		case strange < 2 && i+1 != at && i != end && (i == 0 || !subjectAsked[atoms[i-1].Text]) && a.Text != "open" && (i == 0 || atoms[i-1].Text != "of") && gist.Noise(a) && !phrase.Turning[a.Text] && !idiom.Withheld[a.Text] && !idiom.Viewed[a.Text] && !idiom.Bending[a.Text] && !undone[a.Text]:
			strange++
		default:
			return act.Reading{}, false
		}
	}
	if !asked {
		return act.Reading{}, false
	}
	r := hear.Atoms(namedBook().SetIn(slices.Clone(atoms[at:end])), c)
	return r, onlyAsks(r)
}
