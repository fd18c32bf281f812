package paraphrase

import (
	"strings"

	"saywright/grammar/chunk"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/parse"
	"saywright/grammar/scan"
)

// How something looks, and what it stands beside, is no part of what is wished: "…, it looks better from the street", "next to his
// gate", "so it lines up with the steps". These are left out before a line is read.

// landmarks are what stands round about a wall and is none of it.
var landmarks = scan.WordSet(`street road house porch yard garden kitchen window windows driveway path sidewalk shed garage barn tree trees hedge lake river pond steps stairs stair stoop
	pool lawn mailbox faucet spigot tap bib hydrant flowerbed bed beds carport cabin alley bushes bush patio grill barbecue picnic table bench bin bins chimney light lamp switch outlet meter drain downspout ramp dock landing
	neighbors neighbor`)

// lookWords are the other words of such a clause.
var lookWords = scan.WordSet(`
	it that this which they looks look would will is are 's feels feel seems seem works work sits sit stands stand lines line faces face ends comes up out
	so much far just way a lot bit little really better nicer best nice good neater neat prettier pretty tidier cleaner lovelier handier handy easier safer right stronger simpler fine great
	that like this to me us from for with near by next opposite facing across in front of clear the my our his her their 's hose water back other and even`)

// likings are words that praise.
var likings = scan.WordSet("better nicer best nice good neater neat prettier pretty tidier cleaner lovelier handier handy easier safer stronger simpler fine great")

// asItLooks leaves out a clause, behind another, that only tells how something looks or what it lines up with.
func asItLooks(atoms []scan.Atom) []scan.Atom {
	for i := 3; i+2 < len(atoms); i++ {
		switch atoms[i].Text {
		case "it", "that", "this", "which", "they":
		default:
			continue
		}
		from := i - 1
		switch before := atoms[from].Text; {
		case before == "because" || before == "since" || before == "so" || before == "as" || before == "cause":
			if atoms[from-1].Text == "," {
				from--
			}
		case before == "that" && atoms[from-1].Text == "so":
			from--
		case before == "," || before == ";":
		default:
			continue
		}
		if w := atoms[i+1].Text; !lookVerbs[w] && !(i+2 < len(atoms) && (w == "would" || w == "will") && lookVerbs[atoms[i+2].Text]) {
			continue
		}
		told, is := false, atoms[i+1].Text == "is" || atoms[i+1].Text == "'s"
		j := i
		for ; j < len(atoms) && atoms[j].Kind == scan.Word && (lookWords[atoms[j].Text] || landmarks[atoms[j].Text] || j > i+2 && atoms[j-1].Text != "and" && (lex.Outsiders[atoms[j].Text] || chunk.IsPerson(atoms[j].Text))); j++ {
			told = told || likings[atoms[j].Text] && !(is && !strings.HasSuffix(atoms[j].Text, "er")) || landmarks[atoms[j].Text]
		}
		if told && chunk.EndsPart(atoms, j) && !(j < len(atoms) && atoms[j].Text == "?") {
			return scan.CutOut(atoms, from, j)
		}
	}
	return atoms
}

var lookVerbs = scan.WordSet("looks look is 's feels feel seems seem works work sits sit stands stand lines line faces face")

// besideWords lead to what something stands beside.
var besideWords = [][]string{{"next", "to"}, {"beside"}, {"near"}, {"close", "to"}, {"facing"}, {"opposite"}, {"across", "from"}, {"in", "front", "of"}, {"in", "line", "with"}, {"on", "account", "of"}, {"because", "of"}, {"by"}}

// besideWhat leaves out, at the end of a clause, beside which thing that is none of the wall something stands.
func besideWhat(atoms []scan.Atom) []scan.Atom {
	placed := false
	for i := 0; i+1 < len(atoms); i++ {
		placed = placed || placings[atoms[i].Text] && i+1 < len(atoms) && !chunk.IsPerson(atoms[i].Text)
		if i < 3 || !placed {
			continue
		}
		for _, lead := range besideWords {
			if !scan.StandAt(atoms, i, lead...) {
				continue
			}
			j := i + len(lead)
			owner := ""
			for j < len(atoms) && (lex.Owned[atoms[j].Text] || lexicon.Vocab().Articles[atoms[j].Text] || chunk.IsPerson(atoms[j].Text) || lookAside[atoms[j].Text]) {
				if owner == "" || lex.Owned[atoms[j].Text] {
					owner = atoms[j].Text
				}
				j++
			}
			k := j
			for k < len(atoms) && (landmarks[atoms[k].Text] || parse.Whose[owner] && (atoms[k].Text == "gate" || atoms[k].Text == "fence" || atoms[k].Text == "wall" || atoms[k].Text == "door")) {
				k++
			}
			if k == j || !chunk.EndsPart(atoms, k) && !behindNone[atoms[k].Text] {
				continue
			}
			from := i
			if atoms[from-1].Text == "," {
				from--
			}
			return scan.CutOut(atoms, from, k)
		}
	}
	return atoms
}

// lookAside tell one such thing from another.
var lookAside = scan.WordSet("back front side old new big little hose water picnic garden 's")

// placings are words of where the opening, or a post, is put.
var placings = scan.WordSet("walk opening openings doorway doorways walkthrough passage gateway entry entrance left right middle center centre")
