package idiom

import (
	"strings"

	"saywright/grammar/lexicon"
	"saywright/grammar/scan"
)

// PointsBack are words that point back at what was spoken of.
var PointsBack = scan.WordSet("it its they their he his she her him them that this those these")

// AsksNext are words that open a question or ask for a table.
var AsksNext = scan.WordSet("what where how which when tell show give read")

// Withheld are words by which a clause may deny, judge or compare what is said beside it.
var Withheld = scan.WordSet(`
	not no never none nobody nothing nor neither without hardly cannot rather wrong mistake misread mistaken incorrect error off
	guess wonder wondering torn curious playing thinking considering mulling entertaining
	more less fewer bigger smaller tighter wider narrower taller shorter higher lower longer closer farther further half twice double same most least exactly
	ridiculous nuts crazy nonsense silly stupid awful terrible horrible bad worse refuse reject object disagree complain complains
	hate hates dislike dislikes impossible overkill
`)

// Viewed are words by which somebody's view is told, so that what stands beside it may be a claim.
var Viewed = scan.WordSet(`
	say says said saying claim claims claimed tell tells told think thinks thought reckon reckons reckoned suggest suggests suggested recommend recommends recommended
	propose proposes proposed insist insists insisted advise advises advised drew draw draws drawing drawn sketch sketched plan plans planned blueprint design designed
	quote quoted quotes bid estimate estimated invoice according sheet spec specs list lists listed asks asked asking show shows showed shown figure figures figured calculated
	wrote written text texted mark marks marked proposal swears swore believes believed worked note notes noted paper
	argue argues argued believe expert chart table book code rule rules
`)

// Bids are words that begin a wish, an order or a question of what is wanted.
var Bids = scan.WordSet(`please let keep make put set get give use leave go hold take have allow count add show tell cut plan build run bring call figure
	what how where which could can would will should must shall`)

// Wishers are those whose wish it is, and wishes what they do.
var (
	Wishers   = scan.WordSet("i we")
	WishVerbs = scan.WordSet("want need would will should must have like prefer am are shall")
)

// CoinNames are names of money that stand behind a figure.
var CoinNames = scan.WordSet("dollars dollar bucks buck")

// CentsWritten reports whether figures are written as money is, with two decimals.
func CentsWritten(digits string) bool {
	dot := strings.IndexAny(digits, ".,")
	return dot > 0 && dot == len(digits)-3
}

// AskingWords begin a question where they stand before what it is about: "is the gap 2".
var AskingWords = scan.WordSet("say is are was were am will would do does did should shall ought can could may might must")

// IsOf reports whether a word is of a class, told by its number.
func IsOf(word string, class int) bool {
	for _, c := range lexicon.Vocab().Classes[word] {
		if c == class {
			return true
		}
	}
	return false
}

// AskOpeners are words that begin a plain question or a wish to see something.
var AskOpeners = scan.WordSet("what how show let give tell which remind where")

var MayAsk = scan.WordSet("any anything is are can could do does will would show give tell read let")

// SidesNamed are the sides of a wall.
var SidesNamed = scan.WordSet("left right middle")
