package scan

import (
	"strings"

	"saywright/grammar/spelling"
)

// endings of contracted words, with the word that each stands for.
var endings = []struct{ end, word string }{
	{"n't", "not"}, {"'re", "are"}, {"'ve", "have"}, {"'ll", "will"}, {"'d", "would"}, {"'s", "is"}, {"'m", "am"},
}

// pronouns are words after which 's is "is". After a noun it may be "is" or a possessive, and is stepped over.
var pronouns = map[string]bool{"it": true, "that": true, "this": true, "what": true, "he": true, "she": true, "there": true, "where": true, "who": true, "how": true, "here": true,
	"why": true, "when": true, "which": true, "let": true, "everything": true, "somebody": true, "someone": true}

// Unmarked are contractions as they are typed without the mark, and words run together.
var Unmarked = map[string]string{
	"dont": "do not", "doesnt": "does not", "didnt": "did not", "cant": "can not", "cannot": "can not", "wont": "will not",
	"isnt": "is not", "arent": "are not", "wasnt": "was not", "shouldnt": "should not", "wouldnt": "would not", "couldnt": "could not",
	"mustnt": "must not", "aint": "is not", "hasnt": "has not", "havent": "have not", "whats": "what is", "thats": "that is",
	"wheres": "where is", "hows": "how is", "whys": "why is", "heres": "here is", "theres": "there is", "im": "i am", "ive": "i have", "i'e": "i have", "i'v": "i have", "i'ev": "i have", "i'vee": "i have", "i'vve": "i have", "we'v": "we have", "we'e": "we have", "we'ev": "we have",
	"hes": "he is", "shes": "she is", "theyre": "they are", "youre": "you are", "weve": "we have", "theyve": "they have",
	"itll": "it will", "thatll": "that will", "whatll": "what will", "howd": "how did", "wont've": "will not have", "can't": "can not",
	"won't": "will not", "ain't": "is not", "shan't": "shall not", "let's": "let us", "lets": "let us", "gonna": "going to", "gotta": "got to", "wanna": "want to",
	"hafta": "have to", "oughta": "ought to", "gimme": "give me", "lemme": "let me", "outta": "out of", "kinda": "kind of", "sorta": "sort of", "whaddya": "what do you",
	"y'all": "you", "it's": "it is", "its": "its", "'em": "them", "em": "them", "em's": "them is", "ya": "you", "o'clock": "oclock",
	"bc": "because", "cuz": "because", "coz": "because", "thx": "thanks", "tx": "thanks", "ty": "thanks", "u": "you", "ur": "your", "tho": "though",
	"hw": "how", "teh": "the", "hte": "the", "adn": "and", "taht": "that", "ths": "this", "thsi": "this", "waht": "what", "hwat": "what", "wat": "what", "hwo": "how",
	"wich": "which", "ther": "there", "thier": "their", "shoud": "should", "shuld": "should", "wuld": "would", "woud": "would", "coud": "could",
	"cud": "could", "wud": "would", "shud": "should", "srry": "sorry", "sry": "sorry", "ment": "meant", "wiht": "with", "rly": "really", "gud": "good",
	"neighbouring": "neighboring", "neighbour": "neighbor", "neighbours": "neighbors", "greyed": "grayed",
	"whatcha": "what are you", "dunno": "do not know", "s'pose": "suppose", "spose": "suppose", "coulda": "could have", "woulda": "would have", "shoulda": "should have",
	"whatve": "what have", "whered": "where did", "whyd": "why did", "howre": "how are", "whyre": "why are", "itd": "it would", "theyd": "they would", "youd": "you would", "howm": "how am",
	"thru": "through", "mat'l": "material", "matl": "material", "mtl": "material", "mtrl": "material", "clr": "clear", "rnd": "round", "lmk": "let me know", "pls": "please", "dwg": "drawing", "dwgs": "drawings", "b4": "before", "rt": "right", "ct": "count", "cts": "counts", "opt": "option", "dbl": "double", "oall": "overall", "pic": "picture", "pics": "pictures", "abv": "above", "blw": "below",
	"btm": "bottom", "bot": "bottom", "btmst": "bottom", "eql": "equal", "ctrd": "centered", "ok'd": "okayed", "okd": "okayed", "exist'g": "existing", "req'd": "required", "reqd": "required",
	"mnay": "many", "whre": "where", "wehre": "where", "jsut": "just", "thsoe": "those", "betwene": "between", "betwen": "between", "cna": "can", "yuo": "you", "hav": "have", "alredy": "already", "wnat": "want", "wiat": "wait",
	"woudl": "would", "coudl": "could", "shoudl": "should", "becuase": "because", "becasue": "because", "abotu": "about", "agian": "again", "htis": "this", "tihs": "this", "fomr": "from", "frm": "from", "moer": "more", "eahc": "each",
	"som": "some", "giv": "give", "plese": "please", "thansk": "thanks", "alot": "lots", "opne": "open", "mkae": "make", "amke": "make", "taek": "take", "befor": "before", "thign": "thing", "peice": "piece", "peices": "pieces", "lenght": "length", "widht": "width", "hieght": "height",
	"nvm": "never mind", "nevermind": "never mind", "wehn": "when", "whne": "when", "enuf": "enough", "nuff": "enough", "mebbe": "maybe", "gotcha": "ok", "prolly": "probably", "cuzz": "because", "insted": "instead", "maek": "make", "smae": "same", "tehre": "there", "tehy": "they", "hwere": "where", "whta": "what", "hwich": "which", "knwo": "know", "liek": "like", "jus": "just", "jst": "just", "wll": "will", "owrk": "work", "wrok": "work",
	"idk": "i do not know", "imo": "i think", "tbh": "honestly", "iirc": "i think", "lol": "anyhow", "lmao": "anyhow", "haha": "anyhow", "hahaha": "anyhow", "omg": "anyhow", "fyi": "anyhow", "asap": "anyhow", "ikr": "anyhow", "plz": "please", "pleez": "please", "ppl": "people", "abt": "about", "bout": "about", "prob": "probably", "probs": "probably", "def": "definitely", "evry": "every", "evrything": "everything", "sth": "something", "smth": "something", "gd": "good",
	"poss": "possible", "typ": "throughout", "nte": "max", "lgth": "length", "lgths": "lengths", "ctr": "center", "ctrs": "centers", "cntr": "center", "cntrs": "centers", "addl": "additional", "add'l": "additional", "addtl": "additional",
	"shouldn't've": "should not have", "wouldn't've": "would not have", "couldn't've": "could not have", "hadn't've": "had not have", "should've": "should have", "oughtn't": "ought not",
	"naw": "no", "nuh": "no", "layin": "laying", "sittin": "sitting", "standin": "standing", "leanin": "leaning", "puttin": "putting", "gettin": "getting", "diggin": "digging", "lookin": "looking",
	"t'other": "the other", "tother": "the other", "c'mon": "come on", "d'you": "do you", "mustn't": "must not", "needn't": "need not",
}

// basic are words that need no entry of a table.
var basic = func() map[string]bool {
	m := map[string]bool{"leaning": true, "lying": true, "laying": true, "talking": true, "fixing": true, "squaring": true, "losing": true, "measuring": true, "cutting": true, "marking": true, "spending": true}
	for _, w := range strings.Fields("using sawing carrying selling stocking hauling buying setting putting getting sticking reading standing sloping adding spacing costing charging paying asking") {
		m[w] = true
	}
	for _, w := range strings.Fields(NeutralWords) {
		m[w] = true
	}
	return m
}()

// Contractions writes contracted words out, each part with the place of the whole.
func Contractions(in []Atom) []Atom {
	out := make([]Atom, 0, len(in)+4)
	for i, a := range in {
		if a.Text == "/" && a.Glued && i > 0 && in[i-1].Text == "w" && !(in[i-1].Glued && i > 1 && in[i-2].Kind == Digits) {
			continue // "6 rls w/ 2-1/2 gaps"
		}
		if a.Kind == Word && a.Text == "w" && i+1 < len(in) && in[i+1].Text == "/" && in[i+1].Glued && !(a.Glued && i > 0 && in[i-1].Kind == Digits) {
			a.Text = "with"
			if i+2 < len(in) && in[i+2].Text == "o" && in[i+2].Glued {
				a.Text = "without"
			}
		}
		if a.Text == "" {
			continue
		}
		if a.Text == "2" && !a.Glued && i > 0 && i+1 < len(in) && beforeTo[in[i-1].Text] && afterTo[in[i+1].Text] && !in[i+1].Glued {
			a.Text, a.Kind = "to", Word // "the gap has 2 be under 4"
		}
		if a.Kind != Word {
			if a.Text == "'" && i+1 < len(in) && (in[i+1].Text == "em" || in[i+1].Text == "til") && in[i+1].Glued && !(a.Glued && i > 0 && in[i-1].Kind == Digits) {
				in[i+1].Glued = false
				continue // "cut 'em"
			}
			out = append(out, a)
			continue
		}
		if pointLost(in, i) {
			in[i+1].Text = ""
		}
		if strings.HasSuffix(a.Text, "in") && len(a.Text) > 3 && !basic[a.Text] && (basic[a.Text+"g"] || spelling.English()[a.Text+"g"] && !spelling.English()[a.Text]) {
			a.Text += "g" // "layin", "squarin"
			if i+1 < len(in) && in[i+1].Text == "'" && in[i+1].Glued && (i+2 == len(in) || !in[i+2].Glued) {
				in[i+1].Text = "" // "layin'"
			}
		}
		if a.Text == "o" && a.Glued && i > 1 && in[i-1].Text == "/" && in[i-2].Text == "w" {
			continue
		}
		if w := chatWord(in, i); w != "" {
			a.Text = w
		}
		if w := drawnOut(a.Text); w != "" {
			a.Text = w
		}
		if (a.Text == "what'd" || a.Text == "when'd") && i+1 < len(in) && (Subjects[in[i+1].Text] || in[i+1].Text == "you") && in[i+1].Text != "it" && in[i+1].Text != "that" && in[i+1].Text != "this" {
			out = appendWords(out, a, a.Text[:4]+" did") // "what'd we say"; "what'd it cost" is a would
			continue
		}
		if w, ok := Unmarked[a.Text]; ok && !(a.Glued && i > 0 && in[i-1].Kind == Digits) {
			out = appendWords(out, a, w)
			continue
		}
		if stem, ok := strings.CutSuffix(a.Text, "'s"); ok && i+1 < len(in) && doing[in[i+1].Text] && len(stem) > 2 {
			out = appendWords(out, a, stem+" is") // "the gentleman's putting in a wall"
			continue
		}
		out = appendContracted(out, a)
	}
	return out
}

// drawnOut is a word of English whose letter was drawn out ("nooo", "pleeease"), "" where there is none. A number is not made of it.
func drawnOut(w string) string {
	from, n := -1, 1
	for i := 1; i < len(w); i++ {
		if w[i] != w[i-1] {
			n = 1
		} else if n++; n == 3 {
			from = i - 2
		}
	}
	if from < 0 || w[from] < 'a' || w[from] > 'z' || spelling.English()[w] {
		return ""
	}
	end := from
	for end < len(w) && w[end] == w[from] {
		end++
	}
	for _, short := range []string{w[:from+1] + w[end:], w[:from+2] + w[end:]} {
		if _, number := Ones[short]; !number && short != "teen" && (spelling.English()[short] || short == "no" || short == "so" || short == "oh") {
			return short
		}
	}
	return ""
}

// Comparatives are words after which "then" was meant as "than".
var Comparatives = map[string]bool{"less": true, "more": true, "fewer": true, "greater": true, "wider": true, "narrower": true, "taller": true, "shorter": true,
	"higher": true, "lower": true, "bigger": true, "smaller": true, "longer": true, "larger": true, "tighter": true, "closer": true}

// beforeTo and afterTo are words that a "to" stands between, which some type as a figure.
var beforeTo, afterTo = WordSet("has have had want wants need needs got going used ought"), WordSet("be know see buy do make get")

// chatWord writes out what is shortened to one letter in a message, where its neighbors let it: "2 n a half", "how big r the
// gaps", "y 6 rails"; "" where it stands for itself.
func chatWord(in []Atom, i int) string {
	before, after := "", ""
	if i > 0 {
		before = in[i-1].Text
	}
	if i+1 < len(in) {
		after = in[i+1].Text
	}
	_, counted := Ones[after]
	number := i+1 < len(in) && in[i+1].Kind == Digits || counted
	alone := !in[i].Glued && (i+1 >= len(in) || !in[i+1].Glued || after == "," || after == ";")
	switch w := in[i].Text; {
	case w == "then" && Comparatives[before] && after != "" && !(i+1 < len(in) && in[i+1].Kind == Sign):
		return "than"
	case w == "n" && (after == "then" || i > 0 && alone && goesOn[after]):
		return "and"
	case w == "were" && doing[after] && (i == 0 || leadsUp[before]):
		return "we're"
	case w == "its" && number:
		return "it's" // "and its 60 1/2 at the top"
	case w == "btw" && (after == "" || i+1 < len(in) && in[i+1].Kind == Sign && after != "\"" || i == 0 && !number):
		return "anyway" // "by the way", and not "between"
	case !alone || len(w) > 1 || after == "" && !SidesBefore[before]:
		return ""
	case w == "n" && number && (before == "sold" || before == "stocked" || before == "available" || before == "come" || before == "comes"):
		return "in"
	case w == "n" && i > 0 && (number || after == "a"): // else it may be a "no" cut short
		return "and"
	case w == "w" && i > 0 && after != "":
		return "with"
	case w == "h" && number && (i == 0 || in[i-1].Kind == Sign):
		return "height" // `H 44", 4 rls`
	case w == "l" && after == "to" && i+2 < len(in) && (in[i+2].Text == "r" || in[i+2].Text == "right" || in[i+2].Text == "rh"):
		return "left" // "falls L to R"
	case (w == "l" || w == "r") && (after == "post" || after == "pst" || after == "end" || after == "side" || SidesBefore[before] && (i+1 == len(in) || in[i+1].Kind != Word || in[i+1].Text == "by")):
		return map[string]string{"l": "left", "r": "right"}[w]
	case w == "r" && before != "the" && before != "to" && before != "on" && before != "at" && before != "" && before != "from" && before != "," && after != "post":
		return "are"
	case w == "y" && (i == 0 && number || whyBefore[after] && (i == 0 || in[i-1].Kind == Sign && in[i-1].Text != "-")): // else it may be a "my"
		return "why"
	}
	return ""
}

// goesOn are words behind an "and" that no "no" stands before; leadsUp stand before a new clause.
var (
	goesOn  = WordSet("y why draw make tell give put keep set what what's whats how show also want wants open use leave save change let's lets")
	leadsUp = WordSet("ok okay so and but well , . ;")
)

// whyBefore are words that stand behind a "why", and not behind a "my".
var whyBefore = WordSet("tho though not is are was were cant can't can could do does did dont don't doesnt doesn't isnt isn't wont won't will would so that")

// SidesBefore are words after which a lone letter is a side: "leans L", "on R".
var SidesBefore = WordSet("on at @ to from off of leans lean leaning op opening st nd rd")

func appendContracted(out []Atom, a Atom) []Atom {
	if strings.ContainsAny(a.Text, "./-") && abbreviations[letters(a.Text)] {
		a.Text = letters(a.Text)
		return append(out, a)
	}
	for _, e := range endings {
		if stem, ok := strings.CutSuffix(a.Text, e.end); ok && stem != "" {
			if e.end == "'d" && (stem == "how" || stem == "where" || stem == "why") {
				return appendWords(out, a, stem+" did")
			}
			if e.end == "'s" && !pronouns[stem] {
				return appendWords(out, a, stem+" 's")
			}
			return appendWords(out, a, stem+" "+e.word)
		}
	}
	return append(out, a)
}

func letters(s string) string {
	return strings.Map(func(r rune) rune {
		if strings.ContainsRune("./-", r) {
			return -1
		}
		return r
	}, s)
}

func appendWords(out []Atom, a Atom, words string) []Atom {
	for i, w := range strings.Fields(words) {
		b := a
		b.Text, b.Glued = w, a.Glued && i == 0
		out = append(out, b)
	}
	return out
}

// pointedShort are words written short with a point behind them that ends nothing where more of the note follows.
var pointedShort = WordSet("clr vert horiz btm bot add'l addl thk btwn exist ext")

// pointLost reports whether the point behind a word written short is to be left out: "CLR. SPAN 12'", "BTM. RAIL", "BRACKET THK. 1/8".
func pointLost(in []Atom, i int) bool {
	if i+2 >= len(in) || in[i+1].Text != "." || !in[i+1].Glued || in[i+2].Glued {
		return false
	}
	if w := in[i+2].Text; (in[i].Text == "min" || in[i].Text == "max") && (w == "clear" || w == "clr") {
		return true
	}
	if !pointedShort[in[i].Text] {
		return false
	}
	if in[i].Text == "thk" {
		return in[i+2].Kind == Digits && (i == 0 || in[i-1].Kind == Word)
	}
	for k := i - 1; k >= 0 && in[k].Text != "," && in[k].Text != "." && in[k].Text != ";" && in[k].Text != ":"; k-- {
		if in[k].Kind == Word && in[k].Text != "x" {
			return in[i-1].Kind == Word // "span 144 clr. opening 36" says two things
		}
	}
	return true
}

// Ones are the words of numbers below twenty.
var Ones = map[string]int{
	"zero": 0, "one": 1, "two": 2, "three": 3, "four": 4, "five": 5, "six": 6, "seven": 7, "eight": 8, "nine": 9, "ten": 10, "eleven": 11,
	"twelve": 12, "thirteen": 13, "fourteen": 14, "fifteen": 15, "sixteen": 16, "seventeen": 17, "eighteen": 18, "nineteen": 19,
}

// Subjects are words that, after a verb that helps another, make a question of a sentence: "should we", "is that".
var Subjects = map[string]bool{"i": true, "we": true, "it": true, "that": true, "this": true, "they": true, "he": true, "she": true, "there": true, "the": true, "those": true, "these": true, "my": true, "our": true}

// doing are verbs before which 's stands for "is", whoever does it.
var doing = WordSet("putting building making planning thinking wanting getting going looking using asking wondering taking buying having saying telling sitting doing adding hanging running keeping cutting leaving setting installing paying calling after")
