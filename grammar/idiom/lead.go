package idiom

import "saywright/grammar/scan"

// LeadWords are words that begin a line and say nothing.
var LeadWords = scan.WordSet("so ok okay and well um umm uh er erm hm hmm mm then also now alright alrighty hey look oh ah but anyway anyhow listen plus")

// meantWith are words that give a leading word a meaning of its own: "so far", "so that", "now what", "then what", "and then".
var meantWith = map[string]map[string]bool{
	"so":   scan.WordSet("that far much many as long be it"),
	"now":  scan.WordSet("and that then"),
	"look": scan.WordSet("at for like into"),
	"then": scan.WordSet("and"),
	"oh":   scan.WordSet("no"),
	"and":  scan.WordSet("then"),
	"well": scan.WordSet("done"),
}

// leadClauses begin a line before a sign, and say nothing.
var leadClauses = [][]string{
	{"hiya"}, {"heya"}, {"okey", "doke"}, {"okey", "dokey"}, {"righto"}, {"righty", "ho"}, {"hi", "again"}, {"hello", "again"}, {"hey", "again"}, {"greetings"}, {"yoohoo"}, {"hiya", "there"}, {"howdy", "there"},
	{"goodness"}, {"my", "goodness"}, {"oh", "goodness"}, {"goodness", "me"}, {"goodness", "gracious"}, {"oh", "my", "goodness"}, {"oh", "my"}, {"dear", "me"}, {"oh", "dear"}, {"heavens"}, {"good", "heavens"}, {"oh", "boy"}, {"oh", "gosh"}, {"my", "word"},
	{"hi", "there"}, {"hello", "there"}, {"hey", "there"}, {"hi"}, {"hello"}, {"howdy"}, {"good", "morning"}, {"good", "afternoon"}, {"good", "evening"}, {"good", "day"}, {"morning"}, {"evening"},
	{"thanks"}, {"thank", "you"}, {"great"}, {"perfect"}, {"fine"}, {"good"}, {"nice"}, {"cool"}, {"right", "then"}, {"alright", "then"}, {"ok", "then"}, {"okay", "then"}, {"well", "then"}, {"now", "then"}, {"very", "well"},
	{"one", "more", "thing"}, {"another", "thing"}, {"oh", "one", "more", "thing"}, {"by", "the", "way"}, {"as", "i", "said"}, {"like", "i", "said"}, {"next"}, {"first"}, {"first", "off"}, {"first", "of", "all"},
	{"i", "forgot"}, {"i", "forget"}, {"i", "have", "forgotten"}, {"we", "forgot"}, {"remind", "me"},
	{"sorry", "to", "bother", "you"}, {"sorry", "to", "trouble", "you"}, {"excuse", "me"}, {"let", "us", "see"}, {"let", "me", "see"}, {"for", "this", "wall"}, {"for", "the", "wall"}, {"here"}, {"if", "you", "please"},
}

// clauseAt is how many atoms a leading clause and its sign take: 0 where there is none, or nothing follows.
func clauseAt(atoms []scan.Atom) int {
	for _, t := range leadClauses {
		n := len(t)
		if len(atoms) < n+2 || atoms[n].Kind != scan.Sign {
			continue
		}
		switch atoms[n].Text {
		case ",", ".", "!", ":", ";", "-", "--":
		default:
			continue
		}
		same := true
		for i, w := range t {
			same = same && atoms[i].Text == w
		}
		if same {
			return n + 1
		}
	}
	return 0
}

// PastLead leaves out what only leads a line on. also reports whether an "also" was among it.
func PastLead(atoms []scan.Atom) (rest []scan.Atom, also bool) {
	rest = atoms
	for len(rest) > 1 {
		if n := clauseAt(rest); n > 0 {
			rest = rest[n:]
			continue
		}
		switch w := rest[0].Text; {
		case rest[0].Kind == scan.Sign && (w == "," || w == "." || w == "!" || w == "-" || w == "--") && len(rest) < len(atoms):
			rest = rest[1:]
		case len(rest) > 3 && w == "you" && rest[1].Text == "know" && rest[2].Text == ",":
			rest = rest[3:]
		case rest[0].Kind == scan.Word && LeadWords[w] && !meantWith[w][rest[1].Text] && (!rest[1].Glued || rest[1].Kind == scan.Sign && rest[1].Text != "'" && rest[1].Text != "-"):
			also = also || w == "also" || w == "plus"
			rest = rest[1:]
		default:
			return rest, also
		}
	}
	return rest, also
}
