package solver

import (
	"encoding/json"

	"saywright/solver/exact"
)

// Verdict says how an answer stands.
type Verdict string

// The verdicts.
const (
	Fits    Verdict = "fits"    // all that is known can hold together
	Blocked Verdict = "blocked" // it cannot
	Open    Verdict = "open"    // nothing blocks, and too little is known for a layout
	Unclear Verdict = "unclear" // the words were not understood; nothing was changed
)

// Answer is all that is known of one reply. The words, the pictures and the JSON are all made from it.
// A part that has nothing to say is empty.
type Answer struct {
	Said      string     `json:"said"`
	Heard     []string   `json:"heard"`
	Verdict   Verdict    `json:"verdict"`
	Ask       *Question  `json:"ask,omitempty"`
	Layout    *Layout    `json:"layout,omitempty"`
	Options   *Options   `json:"options,omitempty"`
	Because   [][]Rule   `json:"because,omitempty"`
	Ways      []Way      `json:"ways,omitempty"`
	Work      []Work     `json:"work,omitempty"`
	Assumed   []string   `json:"assumed,omitempty"`
	Change    []Moved    `json:"change,omitempty"`
	Check     []Claim    `json:"check,omitempty"`
	Cuts      []Cut      `json:"cuts,omitempty"`
	Plan      []Board    `json:"plan,omitempty"`
	Shopping  []Buy      `json:"shopping,omitempty"`
	Cost      *Cost      `json:"cost,omitempty"`
	Steps     []StepOf   `json:"steps,omitempty"`
	Cautions  []Caution  `json:"cautions,omitempty"`
	Marks     []PostMark `json:"post marks,omitempty"`
	Text      string     `json:"text"`
	Spoken    string     `json:"spoken,omitempty"`
	Buying    []Bought   `json:"-"` // plan by size, with the proof that no plan is better
	Conflicts []Conflict `json:"-"` // because, with the sums that show each
	Facts     []Fact     `json:"-"` // what words need beyond the fields above: see facts.go
	To        Reply      `json:"-"` // what it replies to
	Metric    bool       `json:"-"` // lengths are shown in millimeters
	Tape      exact.Rat  `json:"-"` // smallest mark worked to, inches
	Replaced  []Replaced `json:"-"` // what this line put in the place of what stood
}

// Reply says what an answer replies to, so that words and pictures can lead with it.
type Reply struct {
	Kind       string      // "state", "what if", "why", "why not", "check", "ask", "teach", "tolerance", "command"
	Topic      string      // of an ask or a why: "layout", "cuts", "shopping", …; of a command: its name
	Name       *Name       // the quantity asked after
	Statements []Statement // what was tried, claimed or said
	Full       bool        // the whole derivation was asked for
	As         string      // "csv": as data for another program, in place of words
	Units      string      // in which this answer alone was asked for: "metric", "customary"
}

// Question is what is asked back. At is the place in the line, in runes from 0; nil where there is none.
type Question struct {
	At      *int     `json:"at,omitempty"`
	Text    string   `json:"text"`
	Choices []string `json:"choices,omitempty"` // normal forms
	Example string   `json:"-"`                 // a line that works
	Key     string   `json:"-"`                 // which question it is; "" where nothing needs to tell it from others. explain writes the Text of those it knows
	Facts   []Fact   `json:"-"`                 // its figures
}

// Replaced tells which statement took the place of which.
type Replaced struct{ Old, New Statement }

// Layout is the layout chosen: up the wall, along it, or both. Lengths are inches.
type Layout struct {
	*Up
	*Along
}

// Up is a layout up the wall.
type Up struct {
	WallHeight   exact.Rat   `json:"wall height"`
	Rails        int         `json:"rails"`
	RailSize     string      `json:"rail size,omitempty"`
	RailFace     exact.Rat   `json:"rail face"`
	Gap          exact.Rat   `json:"gap"`
	Gaps         []exact.Rat `json:"gaps,omitempty"` // where they differ on purpose, from the bottom, bottom gap not among them
	BottomGap    exact.Rat   `json:"bottom gap"`
	Marks        []exact.Rat `json:"marks"`                    // top hole of each rail's bracket, bottom rail first
	MarksAtRight []exact.Rat `json:"marks at right,omitempty"` // where the floor falls
	Tops         []exact.Rat `json:"-"`                        // top edge of each rail, from the floor at the left end post
	Fall         exact.Rat   `json:"-"`                        // how much lower the floor lies at the right end post; negative: higher
	Clearance    exact.Rat   `json:"-"`                        // bracket clearance
	Ear          exact.Rat   `json:"-"`                        // bracket ear
	Reach        exact.Rat   `json:"-"`                        // bracket reach

	RailThickness    exact.Rat `json:"-"` // measured across the wall; 0 where the size is not known
	BracketThickness exact.Rat `json:"-"` // of one bracket
}

// Along is a layout along the wall. Places are measured from the left end post's inner face.
type Along struct {
	Span          exact.Rat  `json:"span"`
	PostFace      exact.Rat  `json:"post face"` // of an added post
	EndPostFace   exact.Rat  `json:"end post face"`
	PostHeight    *exact.Rat `json:"post height,omitempty"` // with added posts, where the wall's height is known
	BaseHeight    exact.Rat  `json:"-"`
	Posts         []Place    `json:"posts,omitempty"`
	Openings      []Stretch  `json:"openings,omitempty"`
	Bays          []Stretch  `json:"bays"`
	StiffenerSize string     `json:"stiffener size,omitempty"`
	StiffenerFace exact.Rat  `json:"-"`

	StiffenerThickness exact.Rat `json:"-"` // across the wall; 0 where the size is not known
	PostDepth          exact.Rat `json:"-"` // of an added post, across the wall; 0 where not known
	EndPostDepth       exact.Rat `json:"-"`
	Base               *PostBase `json:"-"` // what is known of the added posts' bases; nil: nothing
}

// PostBase is a post base in plan. Lengths are inches, 0 where not known.
type PostBase struct {
	Long, Wide exact.Rat // of its plate, along the wall and across it
	Holes      []Hole    // anchor holes; none: they are marked through the base itself
	Anchor     exact.Rat // diameter of an anchor
	Deep       exact.Rat // depth of its hole, from the top of the concrete
}

// Hole is the center of one anchor, from the post's center: right along the wall, and away from the viewer.
type Hole struct{ Right, Back exact.Rat }

// Place is where an added post's near (left) face is.
type Place struct {
	FromLeft exact.Rat `json:"from left"`
}

// Stretch is a bay or an opening. Stiffeners holds the center lines of a bay's stiffeners, from the bay's left.
type Stretch struct {
	FromLeft   exact.Rat   `json:"from left"`
	Width      exact.Rat   `json:"width"`
	Stiffeners []exact.Rat `json:"stiffeners,omitempty"`
}

// End is one end of a range. It is written "2", "<4" or ">2" for an end that is not reached, null where nothing bounds it.
type End struct {
	Val   exact.Rat
	Open  bool // not reached
	None  bool // nothing bounds it
	Lower bool // this is the lower end: decides which way an open end is written
}

// MarshalJSON writes the end as the JSON answer has it.
func (e End) MarshalJSON() ([]byte, error) {
	switch {
	case e.None:
		return []byte("null"), nil
	case e.Open && e.Lower:
		return json.Marshal(">" + e.Val.String())
	case e.Open:
		return json.Marshal("<" + e.Val.String())
	}
	return json.Marshal(e.Val.String())
}

// Range is all that a length can be: lower end, upper end.
type Range [2]End

// Options lists every count that can hold, ascending, with the range left to each length.
type Options struct {
	Up    []UpOption    `json:"up,omitempty"`
	Along []AlongOption `json:"along,omitempty"`
}

// UpOption is one rail count and what it leaves.
type UpOption struct {
	Rails      int   `json:"rails"`
	Gap        Range `json:"gap"`
	BottomGap  Range `json:"bottom gap"`
	WallHeight Range `json:"wall height"`
}

// AlongOption is one number of posts and bays and what it leaves, over all arrangements; Bay is any one bay.
// Stiffeners holds the fewest at the two ends of Bay; nil where nothing says how far apart they may be.
type AlongOption struct {
	AddedPosts int    `json:"added posts"`
	Bays       int    `json:"bays"`
	Openings   int    `json:"openings"`
	Bay        Range  `json:"bay"`
	Opening    *Range `json:"opening,omitempty"`
	Stiffeners []int  `json:"stiffeners,omitempty"`
}

// RuleKind says who made a rule, and so whether it bends.
type RuleKind string

// The kinds of rule.
const (
	Yours    RuleKind = "yours"    // said by the person
	Geometry RuleKind = "geometry" // always true
	Part     RuleKind = "part"     // what a part can do
	Practice RuleKind = "practice" // a rule of thumb
	Code     RuleKind = "code"     // a published limit; local code decides
)

// Rule is one rule as an answer names it.
type Rule struct {
	Rule   string     `json:"rule"`
	Kind   RuleKind   `json:"kind"`
	Says   string     `json:"says"` // normal form
	Source string     `json:"source,omitempty"`
	From   *Statement `json:"-"` // the statement that it says
}

// Way is one smallest change that mends a blocked wall.
type Way struct {
	Changes []Change `json:"changes"`
	Layout  *Layout  `json:"-"` // what it leads to, solved again
	Book    Book     `json:"-"` // what would stand
}

// Change is one rule changed: from one normal form to another. By is the amount, in inches or pieces.
type Change struct {
	Rule string    `json:"rule"`
	From string    `json:"from"`
	To   string    `json:"to"`
	By   string    `json:"by,omitempty"`
	Old  Statement `json:"-"`
	New  Statement `json:"-"`
	Kind RuleKind  `json:"-"`

	// OnTape is the figure on the safe side of New that a tape shows and that mends it too, solved again; nil where New is on the tape, or nothing near it
	// on the tape mends it.
	OnTape *exact.Rat `json:"-"`
}

// Conflict is one smallest set of rules that cannot hold together, and the sum that shows it.
type Conflict struct {
	Rules  []Rule
	About  string // "up", "along" or "both"
	Work   []Work // ends in a comparison that is false
	Proven bool   // the independent checker accepted its certificates
	Fault  error  // a proof that does not check: a fault of ours, to be reported
}

// Work is one line of arithmetic, true by itself (or false, as the last line of a conflict).
type Work struct {
	Of     string `json:"of"`
	Says   string `json:"says"` // written by explain
	Expr   Expr   `json:"expr"`
	Equals string `json:"equals"` // "33", or "true" or "false" for a comparison
	Note   string `json:"-"`      // a key that explain puts into words, such as "wood" or "gaps"
	From   string `json:"-"`      // where a figure comes from, when it is not said: a source
}

// Moved is one thing that a what-if changed.
type Moved struct {
	Of   string `json:"of"`
	From string `json:"from"`
	To   string `json:"to"`
}

// Claim is one claim held against the rest. Holds is nil where it cannot be judged.
type Claim struct {
	Claim    string `json:"claim"`
	Holds    *bool  `json:"holds"`
	ShouldBe string `json:"should be,omitempty"`
	By       string `json:"by,omitempty"`   // how far off
	Slip     string `json:"slip,omitempty"` // the common slip that gives exactly the wrong figure
	Work     []Work `json:"-"`
}

// Cut is one piece to cut, Count alike.
type Cut struct {
	Piece  string    `json:"piece"`
	Wall   string    `json:"wall"`
	Bay    int       `json:"bay,omitempty"`
	Rail   int       `json:"rail,omitempty"`
	Post   int       `json:"post,omitempty"`
	Size   string    `json:"size"`
	Length exact.Rat `json:"length"` // to cut: rounded down to the tape
	Exact  exact.Rat `json:"-"`      // before rounding
	Count  int       `json:"count"`
	Ends   string    `json:"ends"`
}

// Board is a board and what is cut from it, Times over. Left is what remains after the last cut and its kerf.
type Board struct {
	Size   string      `json:"size"`
	Board  exact.Rat   `json:"board"`
	Times  int         `json:"times"`
	Pieces []exact.Rat `json:"pieces"`
	Names  []string    `json:"-"` // which piece of the cut list each is: "bay 1 rail 3"
	Left   exact.Rat   `json:"left"`
	Have   bool        `json:"have"`
}

// Buy is one line of the buying list. Each and Amount are money, nil without a price.
type Buy struct {
	Item   string     `json:"item"`
	Length *exact.Rat `json:"length,omitempty"`
	Count  int        `json:"count"`
	Each   *Cash      `json:"each,omitempty"`
	Amount *Cash      `json:"amount,omitempty"`
}

// Cash is money with two decimals, no currency.
type Cash struct{ exact.Rat }

// MarshalJSON writes "18.56".
func (c Cash) MarshalJSON() ([]byte, error) { return json.Marshal(Cents(c.Rat)) }

// Cost is what is bought, whether nothing cheaper exists, and the bound that was proven.
type Cost struct {
	Total   Cash `json:"total"`
	Proven  bool `json:"proven"`
	AtLeast Cash `json:"at least"`
}

// StepOf is one step in the order of work.
type StepOf struct {
	Do      string `json:"do"`                // written by explain from Key and Facts
	Caution string `json:"caution,omitempty"` // written by explain from Warn
	Key     string `json:"-"`                 // which step it is
	Facts   []Fact `json:"-"`                 // its figures for this very wall
	Warn    string `json:"-"`                 // the key of its caution
	Work    []Work `json:"-"`                 // its sums
}

// Caution is a warning that a person must see.
type Caution struct {
	Text   string `json:"text"`
	Source string `json:"source"`
	Key    string `json:"-"` // which caution it is, for words and pictures
	Facts  []Fact `json:"-"` // its figures, where explain writes Text
	Work   []Work `json:"-"` // its sums
}

// PostMark is what to pencil on one post, from the floor at that post, bottom rail first.
type PostMark struct {
	Post   string     `json:"post"` // "left end post", "post 1", "right end post"
	Floor  exact.Rat  `json:"floor"`
	Rows   []RailMark `json:"rails"`
	Spoken string     `json:"-"`
}

// RailMark is one rail's figures on one post, above the floor at that post; Hole is the bracket's top hole.
// Each is exact; words round them to the tape, each by itself from the floor.
type RailMark struct {
	Rail      int       `json:"rail"`
	Underside exact.Rat `json:"underside"`
	Top       exact.Rat `json:"top"`
	Hole      exact.Rat `json:"hole"`
}

// Fact is one more thing that an answer carries for its words: a key and its figures.
// The keys, and what stands in Names and Nums for each, are listed where they are made.
type Fact struct {
	Key   string
	Names []string
	Nums  []exact.Rat
}
