package aside

import (
	"slices"
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/chunk"
	"saywright/grammar/hear"
	"saywright/grammar/idiom"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// Meantimes begin a clause that tells what else goes on at the time: "before the boys unload the truck".
var Meantimes = scan.WordSet("before while whilst once after")

// WithoutJoint leaves out the joints and signs that a clause begins with.
func WithoutJoint(part []scan.Atom) []scan.Atom {
	for len(part) > 1 && (chunk.Joints[part[0].Text] || part[0].Kind == scan.Sign) {
		part = part[1:]
	}
	return part
}

// PlansFor are verbs that bid somebody plan for something, behind a "so".
var PlansFor = scan.WordSet("figure add buy order allow plan include count throw")

// StepBefore are words that may stand before what a clause begins with.
var StepBefore = map[string]bool{"before": true, "while": true, "that": true, "then": true, "also": true, "now": true, "well": true, "look": true, "see": true, "oh": true, "ok": true, "okay": true, "uh": true, "um": true, "honestly": true, "please": true, "just": true, "you": true}

// Scheduled reports whether words tell when something is done: "the bases get anchored today".
func Scheduled(w []string) bool {
	switch w[len(w)-1] {
	case "today", "tonight", "tomorrow", "morning", "afternoon", "evening", "already", "soon", "week", "now":
		return !slices.ContainsFunc(w, func(v string) bool { return hear.Wishing[v] })
	}
	return false
}

// Narrates reports whether words begin with a subject that has a verb.
func Narrates(w []string, reason bool) bool {
	switch {
	case lex.Speakers[w[0]] || lex.OtherOnes[w[0]]:
		return true
	case lex.Pointing[w[0]]:
		return reason
	case len(w) > 4 && lex.Owned[w[0]] && chunk.IsPerson(w[1]) && w[2] == "and" && lex.Speakers[w[3]]:
		return true // "my daughter and I start on Saturday"
	case reason && chunk.IsPerson(w[0]), (lex.Owned[w[0]] || chunk.Noun[w[0]]) && chunk.IsPerson(w[1]) && reason:
		return true // "before the boys unload the truck"
	case lex.Auxiliary[w[1]] && !lex.Auxiliary[w[0]] && ForeignSubject(w[0]):
		return true // "kids are yelling"
	case lex.Owned[w[0]] || chunk.Noun[w[0]] || reason:
		for i, v := range w[1:] {
			if lex.Auxiliary[v] || v == "'s" || i > 0 && len(v) > 3 && (strings.HasSuffix(v, "ed") || strings.HasSuffix(v, "s") && !strings.HasSuffix(v, "ss")) {
				return true
			}
		}
	}
	return false
}

// ForeignSubject reports whether a word may name who or what a clause tells of without an article: "kids", "supper".
func ForeignSubject(w string) bool {
	switch w {
	case "what", "which", "who", "how", "where", "when", "why", "not", "no", "none", "nothing", "nobody", "if", "to", "please", "let":
		return false
	}
	return !lex.Pointing[w] && !phrase.Turning[w] && !idiom.Withheld[w] && !idiom.Viewed[w]
}

// NothingOfTheWall reports whether the tokens of a clause hold nothing that could be set, asked or ordered, and a word that no
// table knows. A reason, and what leads up to a wish, may speak of parts.
func NothingOfTheWall(list []lex.Token, reason, led, wished bool) bool {
	unknown, figures, parts, wall := 0, false, false, false
	for i := range list {
		switch t := &list[i]; t.Kind {
		case lexicon.Comma, lexicon.Stop, lexicon.And, lexicon.But, lexicon.Or, lexicon.It, lexicon.Fill, lexicon.Only, lexicon.Out, lexicon.Over, lexicon.Under, lexicon.Up, lexicon.Down, lexicon.Off, lexicon.At, lexicon.From, lexicon.To, lexicon.Reason, lexicon.Theirs, lexicon.Move, lexicon.Top, lexicon.X, lexicon.Measured, lexicon.About, lexicon.Between:
		case lexicon.StockWord, lexicon.CutWord, lexicon.Level, lexicon.GoesIn:
		case lexicon.Bound: // "the boss is fussy about it looking even, so …"
			if !led || t.Key() != "=" {
				return false
			}
		case lexicon.Where, lexicon.Wh: // "because that's where the steps start"
			if !reason {
				return false
			}
		case lexicon.Have:
			if t.As(lexicon.Sell) != nil {
				unknown++ // "we bought the lumber"
			}
		case lexicon.Sell, lexicon.PriceVerb:
			unknown++ // "we bought the lumber"
		case lexicon.Quest:
			if !led && !reason {
				return false
			}
		case lexicon.Num: // "the wheelbarrow is 29 wide, so …"
			if !led || list[0].Kind != lexicon.Unknown {
				return false
			}
			figures = true
		case lexicon.Head:
			if t.Key() != string(act.State) {
				return false
			}
			wished = true
		case lexicon.Vague:
			if t.Text != "some" {
				return false // "a bit": of what?
			}
		case lexicon.Part, lexicon.Loc, lexicon.Dim, lexicon.Side, lexicon.Item, lexicon.Not, lexicon.No, lexicon.More, lexicon.Fixed, lexicon.Tail:
			parts = parts || t.Kind != lexicon.Dim
			wall = wall || t.Kind == lexicon.Part && t.Key() != "kerf" && t.Key() != "tape" && t.Key() != "through"
			if !reason && !led {
				if t.Kind != lexicon.Part || t.Key() != "rail" && t.Key() != "size" && t.Key() != "tape" && t.Key() != "beyond" && t.Key() != "through" {
					return false
				}
			}
		case lexicon.Unknown:
			if !chunk.IsPerson(t.Text) && (!hear.Foreign(t) || lex.Words().Numberish(t.Text)) {
				return false
			}
			unknown++
		default:
			return false
		}
	}
	return (unknown > 0 || led || reason) && !(figures && parts) && !(wished && wall && !led)
}
