package grammar

import "github.com/alecthomas/participle/v2/lexer"

// tokenKind is the class of a token, as the syntax sees it.
type tokenKind = lexer.TokenType

// The classes of token. What each is said with stands in the tables.
const (
	kNum      tokenKind = iota + 1 // a value: "2-1/2 in", "12 foot 6", "six"
	kSize                          // a lumber size
	kPart                          // a part of the wall, or a quantity of it
	kLoc                           // a place that says which quantity is meant
	kDim                           // a dimension: high, wide, apart
	kOrdinal                       // first, second, 3rd
	kIndex                         // the number of a bay, rail, post or opening
	kSide                          // left, right, middle
	kFromSide                      // from the left post
	kRel                           // at least, no more than, =
	kUnder                         // under, below
	kOver                          // over, above
	kLim                           // min, max: on either side of a value
	kBound                         // or more, tops: after a value
	kAbout                         // about, give or take
	kBetween
	kFrom
	kTo
	kAnd
	kBut
	kOr
	kDots
	kDash
	kNot
	kNo
	kFix // a word of correction
	kUp
	kDown
	kOff
	kOut
	kMove
	kChange
	kMore
	kThanNow
	kThan
	kAnother
	kFactor
	kTimes
	kSame
	kRest
	kBest
	kBestTail
	kVague
	kHead
	kWhere
	kTail
	kWhyFill // "so small", after why
	kTheirs
	kEnter
	kGoesIn
	kWh
	kQuest
	kTeachHead
	kTailFill
	kCmd
	kForgetTail
	kWayOut
	kGoal
	kUnits
	kCsv
	kUnclear
	kComma
	kStop
	kQMark
	kIt
	kOnly
	kFill
	kName // a name in somebody's own words
	kWall // a named wall
	kUnit // a unit without a number
	kX
	kHave
	kHaveTail
	kExtra
	kSell
	kSellMore
	kSellLess
	kStockWord
	kPriceVerb
	kEach
	kItem
	kBoxOf
	kMeasured
	kAt
	kShort
	kFixed
	kTop
	kLean
	kLeanWay
	kFall
	kPerFoot
	kPer
	kFloorAt
	kOffEach
	kOffTail
	kRunWide
	kRunNarrow
	kReason
	kKnowing
	kCutWord
	kLevel // of a floor that does not fall
	kUnknown
)

// symbols names the classes that the syntax speaks of; all others are words to it.
var symbols = map[string]tokenKind{
	"EOF": lexer.EOF, "Num": kNum, "Size": kSize, "Part": kPart, "Loc": kLoc, "Dim": kDim, "Ordinal": kOrdinal, "Index": kIndex,
	"Rel": kRel, "Under": kUnder, "Over": kOver, "Lim": kLim, "Bound": kBound, "About": kAbout, "Between": kBetween, "From": kFrom,
	"To": kTo, "And": kAnd, "Dots": kDots, "Dash": kDash, "Comma": kComma, "Word": wordKind,
}

// wordKind stands for every class that the syntax does not tell apart.
const wordKind tokenKind = 1000

// told are the classes that the syntax tells apart.
var told = func() map[tokenKind]bool {
	m := map[tokenKind]bool{}
	for _, k := range symbols {
		m[k] = true
	}
	return m
}()

// mayBeginValue are the classes with which a value may begin, mayStandInValue those that may stand in one.
var (
	mayBeginValue   = kindSet(kNum, kSize, kRel, kUnder, kOver, kAbout, kBetween, kFrom, kTo)
	mayStandInValue = kindSet(kNum, kSize, kRel, kUnder, kOver, kAbout, kBetween, kFrom, kTo, kPart, kDim, kBound, kAnd, kDots, kDash)
)

func kindSet(kinds ...tokenKind) (set [kUnknown + 1]bool) {
	for _, k := range kinds {
		set[k] = true
	}
	return set
}

// token is a word, a phrase or a value of the line, with what it means and where it stands.
type token struct {
	kind    tokenKind
	found   []found // entries of the tables, the likeliest first
	amt     *amount
	index   int   // of a part that is told by number
	indexes []int // of several
	text    string
	before  string // the empty word right before it
	at, end int    // runes
	first   int    // its first atom
	glued   bool
}

// as returns the entry of kind k that the token can be read as, nil when it cannot.
func (t *token) as(k tokenKind) *entry {
	for _, f := range t.found {
		if f.entry.kind == k {
			return f.entry
		}
	}
	return nil
}

// is reports whether the token is, or can be read as, kind k.
func (t *token) is(k tokenKind) bool { return t.kind == k || t.as(k) != nil }

// key is what the token says: the key of its entry, or its text.
func (t *token) key() string {
	if len(t.found) == 0 {
		return t.text
	}
	if e := t.as(t.kind); e != nil {
		return e.key
	}
	return t.found[0].entry.key
}

// plural reports whether the noun that the token ends in speaks of several.
func (t *token) plural() bool {
	n := len(t.text)
	return n > 2 && t.text[n-1] == 's' && t.text[n-2] != 's' || n > 1 && t.text[n-2:] == "pcs"
}
