package reread

import (
	"sync"

	"saywright/grammar/act"
	"saywright/grammar/chunk"
	"saywright/grammar/gist"
	"saywright/grammar/hear"
	"saywright/grammar/idiom"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// A line that names one table, list or picture and beside it holds nothing but light words and, where somebody bids, one word of no
// table, wants to see it: "trot out the shopping list", "back to the marks", "I think it's time for the drawing", "let me get a gander
// at the layout". To show a table changes nothing; but what judges, denies or takes back weighs, and leaves the line to be asked back.

// wantedBook finds the names of tables.
var wantedBook = sync.OnceValue(func() *phrase.Book { return phrase.BookOf([]phrase.Placed{{Said: "!TOPIC", Plain: "$1"}}) })

// besideWanted are light words that may stand beside the name of what is wanted.
var besideWanted = scan.WordSet(`a an the my our your this that please kindly ok okay so and now then again just me us you i we it its to at of on in for with by from up out over off here there
	back next ready handy yet let have has got get give is are am be been will would could can may might shall do does 's 'd 'll 're 've want need see look peek like time chance any what
	how where know tell show hear hand bring pull put go switch turn return move jump along ahead right all think guess well forward onto screen moment please thanks`)

// behindWanted are light words that may stand behind the name.
var behindWanted = scan.WordSet("up out over here there now again then please thanks next ready handy yet for me us on the my this screen time i think guess ok okay so if you would could")

// bidsWanted are words behind which a word of no table may stand as what is done with what is wanted.
var bidsWanted = scan.WordSet("me us to a just please and then now let you i'd can could would mind")

// ReadWanted reads a line that only names what is to be shown.
func ReadWanted(atoms []scan.Atom, c act.Context) (act.Reading, bool) {
	if len(atoms) > 14 {
		return act.Reading{}, false
	}
	m := phrase.Match{Atoms: atoms, Awake: wantedBook().Awakened(wantedBook().LookUp(atoms))}
	at, end := -1, 0
	for i := 0; i < len(atoms); i++ {
		if p, next := wantedBook().Best(&m, i, nil); p != nil {
			if at >= 0 {
				return act.Reading{}, false
			}
			at, end, i = i, next, next-1
		}
	}
	if at < 0 {
		return act.Reading{}, false
	}
	strange := 0
	for i, a := range atoms {
		switch {
		case i >= at && i < end:
		case a.Kind == scan.Sign && (a.Text == "," || a.Text == "." || a.Text == "!" || a.Text == "-" || a.Text == ":" || i == len(atoms)-1 && a.Text == "?"):
		case a.Kind != scan.Word:
			return act.Reading{}, false
		case i < at && besideWanted[a.Text], i >= end && behindWanted[a.Text]:
		case i < at && strange == 0 && (chunk.ClauseBeginsAt(atoms, i) || bidsWanted[atoms[i-1].Text]) && i+1 < at && gist.Noise(a) && !phrase.Turning[a.Text] && !idiom.Withheld[a.Text] && !undone[a.Text]:
			strange++
		default:
			return act.Reading{}, false
		}
	}
	if strange == 0 && end-at == len(atoms) {
		return act.Reading{}, false
	}
	r := hear.Atoms(append(gist.WordAtoms([]string{"show", "me"}, atoms[at]), atoms[at:end]...), c)
	return r, onlyAsks(r)
}

// undone are verbs by which a table is not wanted.
var undone = scan.WordSet("burn shred tear rip trash lose hide bury ignore delete destroy bin crumple misplace lost burned ditched hated hates loathe")
