package grammar

import "sync"

// A line that names one table, list or picture and beside it holds nothing but light words and, where somebody bids, one word of no
// table, wants to see it: "trot out the shopping list", "back to the marks", "I think it's time for the drawing", "let me get a gander
// at the layout". To show a table changes nothing; but what judges, denies or takes back weighs, and leaves the line to be asked back.

// wantedBook finds the names of tables.
var wantedBook = sync.OnceValue(func() *phrasebook { return phrasebookOf([]placedPhrase{{said: "!TOPIC", plain: "$1"}}) })

// besideWanted are light words that may stand beside the name of what is wanted.
var besideWanted = wordSet(`a an the my our your this that please kindly ok okay so and now then again just me us you i we it its to at of on in for with by from up out over off here there
	back next ready handy yet let have has got get give is are am be been will would could can may might shall do does 's 'd 'll 're 've want need see look peek like time chance any what
	how where know tell show hear hand bring pull put go switch turn return move jump along ahead right all think guess well forward onto screen moment please thanks`)

// behindWanted are light words that may stand behind the name.
var behindWanted = wordSet("up out over here there now again then please thanks next ready handy yet for me us on the my this screen time i think guess ok okay so if you would could")

// bidsWanted are words behind which a word of no table may stand as what is done with what is wanted.
var bidsWanted = wordSet("me us to a just please and then now let you i'd can could would mind")

// readWanted reads a line that only names what is to be shown.
func readWanted(atoms []atom, c Context) (Reading, bool) {
	if len(atoms) > 14 {
		return Reading{}, false
	}
	m := phraseMatch{atoms: atoms, awake: wantedBook().awakened(wantedBook().lookUp(atoms))}
	at, end := -1, 0
	for i := 0; i < len(atoms); i++ {
		if p, next := wantedBook().best(&m, i, nil); p != nil {
			if at >= 0 {
				return Reading{}, false
			}
			at, end, i = i, next, next-1
		}
	}
	if at < 0 {
		return Reading{}, false
	}
	strange := 0
	for i, a := range atoms {
		switch {
		case i >= at && i < end:
		case a.kind == aSign && (a.text == "," || a.text == "." || a.text == "!" || a.text == "-" || a.text == ":" || i == len(atoms)-1 && a.text == "?"):
		case a.kind != aWord:
			return Reading{}, false
		case i < at && besideWanted[a.text], i >= end && behindWanted[a.text]:
		case i < at && strange == 0 && (clauseBeginsAt(atoms, i) || bidsWanted[atoms[i-1].text]) && i+1 < at && noise(a) && !turning[a.text] && !withheld[a.text] && !undone[a.text]:
			strange++
		default:
			return Reading{}, false
		}
	}
	if strange == 0 && end-at == len(atoms) {
		return Reading{}, false
	}
	r := readAtoms(append(wordAtoms([]string{"show", "me"}, atoms[at]), atoms[at:end]...), c)
	return r, onlyAsks(r)
}

// undone are verbs by which a table is not wanted.
var undone = wordSet("burn shred tear rip trash lose hide bury ignore delete destroy bin crumple misplace lost burned ditched hated hates loathe")
