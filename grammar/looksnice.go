package grammar

import "strings"

// How something looks, and what it stands beside, is no part of what is wished: "…, it looks better from the street", "next to his
// gate", "so it lines up with the steps". These are left out before a line is read.

// landmarks are what stands round about a wall and is none of it.
var landmarks = wordSet(`street road house porch yard garden kitchen window windows driveway path sidewalk shed garage barn tree trees hedge lake river pond steps stairs stair stoop
	pool lawn mailbox faucet spigot tap bib hydrant flowerbed bed beds carport cabin alley bushes bush patio grill barbecue picnic table bench bin bins chimney light lamp switch outlet meter drain downspout ramp dock landing
	neighbors neighbor`)

// lookWords are the other words of such a clause.
var lookWords = wordSet(`
	it that this which they looks look would will is are 's feels feel seems seem works work sits sit stands stand lines line faces face ends comes up out
	so much far just way a lot bit little really better nicer best nice good neater neat prettier pretty tidier cleaner lovelier handier handy easier safer right stronger simpler fine great
	that like this to me us from for with near by next opposite facing across in front of clear the my our his her their 's hose water back other and even`)

// likings are words that praise.
var likings = wordSet("better nicer best nice good neater neat prettier pretty tidier cleaner lovelier handier handy easier safer stronger simpler fine great")

// asItLooks leaves out a clause, behind another, that only tells how something looks or what it lines up with.
func asItLooks(atoms []atom) []atom {
	for i := 3; i+2 < len(atoms); i++ {
		switch atoms[i].text {
		case "it", "that", "this", "which", "they":
		default:
			continue
		}
		from := i - 1
		switch before := atoms[from].text; {
		case before == "because" || before == "since" || before == "so" || before == "as" || before == "cause":
			if atoms[from-1].text == "," {
				from--
			}
		case before == "that" && atoms[from-1].text == "so":
			from--
		case before == "," || before == ";":
		default:
			continue
		}
		if w := atoms[i+1].text; !lookVerbs[w] && !(i+2 < len(atoms) && (w == "would" || w == "will") && lookVerbs[atoms[i+2].text]) {
			continue
		}
		told, is := false, atoms[i+1].text == "is" || atoms[i+1].text == "'s"
		j := i
		for ; j < len(atoms) && atoms[j].kind == aWord && (lookWords[atoms[j].text] || landmarks[atoms[j].text] || j > i+2 && atoms[j-1].text != "and" && (outsiders[atoms[j].text] || isPerson(atoms[j].text))); j++ {
			told = told || likings[atoms[j].text] && !(is && !strings.HasSuffix(atoms[j].text, "er")) || landmarks[atoms[j].text]
		}
		if told && endsPart(atoms, j) && !(j < len(atoms) && atoms[j].text == "?") {
			return cutOut(atoms, from, j)
		}
	}
	return atoms
}

var lookVerbs = wordSet("looks look is 's feels feel seems seem works work sits sit stands stand lines line faces face")

// besideWords lead to what something stands beside.
var besideWords = [][]string{{"next", "to"}, {"beside"}, {"near"}, {"close", "to"}, {"facing"}, {"opposite"}, {"across", "from"}, {"in", "front", "of"}, {"in", "line", "with"}, {"on", "account", "of"}, {"because", "of"}, {"by"}}

// besideWhat leaves out, at the end of a clause, beside which thing that is none of the wall something stands.
func besideWhat(atoms []atom) []atom {
	placed := false
	for i := 0; i+1 < len(atoms); i++ {
		placed = placed || placings[atoms[i].text] && i+1 < len(atoms) && !isPerson(atoms[i].text)
		if i < 3 || !placed {
			continue
		}
		for _, lead := range besideWords {
			if !standAt(atoms, i, lead...) {
				continue
			}
			j := i + len(lead)
			owner := ""
			for j < len(atoms) && (owned[atoms[j].text] || vocab().articles[atoms[j].text] || isPerson(atoms[j].text) || lookAside[atoms[j].text]) {
				if owner == "" || owned[atoms[j].text] {
					owner = atoms[j].text
				}
				j++
			}
			k := j
			for k < len(atoms) && (landmarks[atoms[k].text] || whose[owner] && (atoms[k].text == "gate" || atoms[k].text == "fence" || atoms[k].text == "wall" || atoms[k].text == "door")) {
				k++
			}
			if k == j || !endsPart(atoms, k) && !behindNone[atoms[k].text] {
				continue
			}
			from := i
			if atoms[from-1].text == "," {
				from--
			}
			return cutOut(atoms, from, k)
		}
	}
	return atoms
}

// lookAside tell one such thing from another.
var lookAside = wordSet("back front side old new big little hose water picnic garden 's")

// placings are words of where the opening, or a post, is put.
var placings = wordSet("walk opening openings doorway doorways walkthrough passage gateway entry entrance left right middle center centre")
