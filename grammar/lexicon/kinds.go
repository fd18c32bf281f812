package lexicon

import "github.com/alecthomas/participle/v2/lexer"

// Kind is the class of a token, as the syntax sees it.
type Kind = lexer.TokenType

// The classes of token. What each is said with stands in the tables.
const (
	Num      Kind = iota + 1 // a value: "2-1/2 in", "12 foot 6", "six"
	Size                     // a lumber size
	Part                     // a part of the wall, or a quantity of it
	Loc                      // a place that says which quantity is meant
	Dim                      // a dimension: high, wide, apart
	Ordinal                  // first, second, 3rd
	Index                    // the number of a bay, rail, post or opening
	Side                     // left, right, middle
	FromSide                 // from the left post
	Rel                      // at least, no more than, =
	Under                    // under, below
	Over                     // over, above
	Lim                      // min, max: on either side of a value
	Bound                    // or more, tops: after a value
	About                    // about, give or take
	Between
	From
	To
	And
	But
	Or
	Dots
	Dash
	Not
	No
	Fix // a word of correction
	Up
	Down
	Off
	Out
	Move
	Change
	More
	ThanNow
	Than
	Another
	Factor
	Times
	Same
	Rest
	Best
	BestTail
	Vague
	Head
	Where
	Tail
	WhyFill // "so small", after why
	Theirs
	Enter
	GoesIn
	Wh
	Quest
	TeachHead
	TailFill
	Cmd
	ForgetTail
	WayOut
	Goal
	Units
	Csv
	Unclear
	Comma
	Stop
	QMark
	It
	Only
	Fill
	Name // a name in somebody's own words
	Wall // a named wall
	Unit // a unit without a number
	X
	Have
	HaveTail
	Extra
	Sell
	SellMore
	SellLess
	StockWord
	PriceVerb
	Each
	Item
	BoxOf
	Measured
	At
	Short
	Fixed
	Top
	Lean
	LeanWay
	Fall
	PerFoot
	Per
	FloorAt
	OffEach
	OffTail
	RunWide
	RunNarrow
	Reason
	Knowing
	CutWord
	Level // of a floor that does not fall
	Unknown
)

// Symbols names the classes that the syntax speaks of; all others are words to it.
var Symbols = map[string]Kind{
	"EOF": lexer.EOF, "Num": Num, "Size": Size, "Part": Part, "Loc": Loc, "Dim": Dim, "Ordinal": Ordinal, "Index": Index,
	"Rel": Rel, "Under": Under, "Over": Over, "Lim": Lim, "Bound": Bound, "About": About, "Between": Between, "From": From,
	"To": To, "And": And, "Dots": Dots, "Dash": Dash, "Comma": Comma, "Word": WordKind,
}

// WordKind stands for every class that the syntax does not tell apart.
const WordKind Kind = 1000

// Told are the classes that the syntax tells apart.
var Told = func() map[Kind]bool {
	m := map[Kind]bool{}
	for _, k := range Symbols {
		m[k] = true
	}
	return m
}()

// MayBeginValue are the classes with which a value may begin, MayStandInValue those that may stand in one.
var (
	MayBeginValue   = kindSet(Num, Size, Rel, Under, Over, About, Between, From, To)
	MayStandInValue = kindSet(Num, Size, Rel, Under, Over, About, Between, From, To, Part, Dim, Bound, And, Dots, Dash)
)

func kindSet(kinds ...Kind) (set [Unknown + 1]bool) {
	for _, k := range kinds {
		set[k] = true
	}
	return set
}
