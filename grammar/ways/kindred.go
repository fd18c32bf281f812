package ways

import (
	"strings"

	"saywright/grammar/scan"
)

// irregular are the past and the participle of verbs that do not end in -ed.
var irregular = func() map[string][2]string {
	out := map[string][2]string{}
	for _, row := range strings.Split(`arise arose arisen|cling clung clung|dig dug dug|eat ate eaten|be was been|become became become|begin began begun|bid bid bid|break broke broken|bring brought brought|build built built|buy bought bought|
		catch caught caught|choose chose chosen|come came come|cost cost cost|cut cut cut|deal dealt dealt|do did done|draw drew drawn|drive drove driven|fall fell fallen|feel felt felt|
		find found found|forget forgot forgotten|get got got|give gave given|go went gone|grow grew grown|hang hung hung|have had had|hear heard heard|hold held held|keep kept kept|
		know knew known|lay laid laid|lead led led|lean leant leant|leave left left|lend lent lent|let let let|light lit lit|lose lost lost|make made made|mean meant meant|meet met met|
		overrun overran overrun|pay paid paid|put put put|quit quit quit|read read read|rise rose risen|run ran run|say said said|see saw seen|sell sold sold|send sent sent|set set set|
		shake shook shaken|show showed shown|shrink shrank shrunk|shut shut shut|sit sat sat|speak spoke spoken|spend spent spent|split split split|spread spread spread|stand stood stood|
		stick stuck stuck|strike struck struck|swing swung swung|take took taken|teach taught taught|tell told told|think thought thought|throw threw thrown|undo undid undone|
		understand understood understood|wear wore worn|wind wound wound|write wrote written|redo redid redone|rebuild rebuilt rebuilt|foresee foresaw foreseen|grind ground ground|hit hit hit|
		rid rid rid|sink sank sunk|slide slid slid|spit spat spat|spring sprang sprung|steal stole stolen|sweep swept swept|tear tore torn|withdraw withdrew withdrawn|outdo outdid outdone|
		overshoot overshot overshot|shoot shot shot|cast cast cast|fit fit fit|bind bound bound|bend bent bent|seek sought sought|weave wove woven|
		sling slung slung|fling flung flung|freeze froze frozen|forgo forwent forgone|forego forewent foregone|input input input`, "|") {
		f := strings.Fields(row)
		out[f[0]] = [2]string{f[1], f[2]}
	}
	return out
}()

// VerbForms returns the base, the -s, the -ing, the past and the participle of a verb.
func VerbForms(w string) [5]string {
	n := len(w)
	es, ing, ed := w+"s", w+"ing", w+"ed"
	switch {
	case n > 1 && w[n-1] == 'y' && !vowel(w[n-2]):
		es, ed = w[:n-1]+"ies", w[:n-1]+"ied"
	case strings.HasSuffix(w, "s") || strings.HasSuffix(w, "x") || strings.HasSuffix(w, "z") || strings.HasSuffix(w, "sh") || strings.HasSuffix(w, "ch") || w == "do" || w == "go" || w == "undo" || w == "redo" ||
		w == "forgo" || w == "forego":
		es = w + "es"
	case strings.HasSuffix(w, "ie"):
		ing, ed = w[:n-2]+"ying", w+"d"
	case strings.HasSuffix(w, "ee"):
		ed = w + "d"
	case n > 2 && w[n-1] == 'e':
		ing, ed = w[:n-1]+"ing", w+"d"
	case doubles(w):
		ing, ed = w+w[n-1:]+"ing", w+w[n-1:]+"ed"
	}
	past := [2]string{ed, ed}
	if p, ok := irregular[w]; ok {
		past = p
	}
	if w == "have" {
		es = "has"
	}
	if w == "be" {
		es, ing = "is", "being"
	}
	return [5]string{w, es, ing, past[0], past[1]}
}

// doubling are verbs of several syllables that double their last letter, as the stress is on it.
var doubling = scan.WordSet("permit admit commit begin forget allot refit reset omit rejig prefer infer occur incur input")

// doubles reports whether a verb doubles its last letter: of one syllable, a vowel before one consonant.
func doubles(w string) bool {
	n := len(w)
	if n < 3 || vowel(w[n-1]) || !vowel(w[n-2]) || vowel(w[n-3]) && w[n-3] != 'u' || strings.ContainsRune("wxy", rune(w[n-1])) {
		return false
	}
	for i := 0; i < n-3; i++ {
		if vowel(w[i]) {
			return doubling[w]
		}
	}
	return true
}

func vowel(c byte) bool { return strings.IndexByte("aeiou", c) >= 0 }

// PluralOf returns the plural of a noun.
func PluralOf(w string) string {
	for _, p := range [][2]string{{"child", "children"}, {"man", "men"}, {"wife", "wives"}, {"foot", "feet"}} {
		if stem, ok := strings.CutSuffix(w, p[0]); ok && w != "human" {
			return stem + p[1]
		}
	}
	return VerbForms(w)[1]
}
