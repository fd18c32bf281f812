package solver

import "saywright/solver/exact"

// Quantity names one thing that a person can speak of, as the normal form writes it.
type Quantity string

// The quantities of a wall. Lengths are in inches.
const (
	WallHeight       Quantity = "wall height" // floor to the top edge of the top rail, at the left end post
	Rails            Quantity = "rails"       // how many rails stack up in a bay
	RailSize         Quantity = "rail size"   // nominal
	RailFace         Quantity = "rail face"   // measured face width of a rail
	RailTop          Quantity = "rail top"    // "rail 3 top": floor to the top edge of a named rail
	Gap              Quantity = "gap"         // clear space between neighboring rails
	BottomGap        Quantity = "bottom gap"  // floor to the underside of the bottom rail
	Span             Quantity = "span"        // clear between the two end posts
	Overall          Quantity = "overall"     // outside to outside of the end posts
	Centers          Quantity = "centers"     // center to center of the end posts
	PostSize         Quantity = "post size"   // nominal, of all posts
	EndPostSize      Quantity = "end post size"
	AddedPostSize    Quantity = "added post size"
	AddedPosts       Quantity = "added posts" // posts set between the end posts
	PostFromLeft     Quantity = "post from left"
	PostFromRight    Quantity = "post from right"
	Bays             Quantity = "bays" // stretches between posts that are filled with rails
	Bay              Quantity = "bay"  // clear width of a bay
	Opening          Quantity = "opening"
	Openings         Quantity = "openings"
	OpeningFromLeft  Quantity = "opening from left" // left end post's face to the near edge
	OpeningFromRight Quantity = "opening from right"
	OpeningSide      Quantity = "opening side"
	PostHeight       Quantity = "post height" // floor to the top of an added post
	BaseHeight       Quantity = "base height" // floor to the underside of an added post
	Stiffeners       Quantity = "stiffeners"  // in each bay
	StiffenerSpacing Quantity = "stiffener spacing"
	StiffenerSize    Quantity = "stiffener size"
	BracketEar       Quantity = "bracket ear"
	BracketClearance Quantity = "bracket clearance"
	BracketReach     Quantity = "bracket reach"
	BracketThickness Quantity = "bracket thickness"
	Fit              Quantity = "fit"
	Stock            Quantity = "stock"
	Kerf             Quantity = "kerf"
	Trim             Quantity = "trim"
	Spare            Quantity = "spare"
	Tape             Quantity = "tape"
	Drop             Quantity = "drop"
	FloorAtRight     Quantity = "floor at right"
	Budget           Quantity = "budget"

	CapSize       Quantity = "cap size"
	SlabThickness Quantity = "slab thickness"
	EdgeDistance  Quantity = "edge distance"
	AnchorSize    Quantity = "anchor size"
	ScrewLength   Quantity = "screw length"
	Coats         Quantity = "coats"
	Coverage      Quantity = "coverage"
	WindSpeed     Quantity = "wind speed"
	Exposure      Quantity = "exposure"
	Species       Quantity = "species"
	BaseRating    Quantity = "base rating"
	Pool          Quantity = "pool"

	Tolerance Quantity = "tolerance" // how far each rail may be off: a question, never a rule of the wall

	// The names below stand in statements of their own shape.
	Measured   Quantity = "measured"       // measured bay 1 rail 3 = 68-3/8 in
	FixedRail  Quantity = "fixed rail top" // fixed rail 2 top = 16 in
	Price      Quantity = "price"          // price 2x6 192 in = 14.50
	Have       Quantity = "have"           // have 2x6 144 in x 6
	Extra      Quantity = "extra"          // extra 2x6 45-1/2 in x 12
	FloorFalls Quantity = "floor falls"    // floor falls 1/8 in per 12 in
	PostLeans  Quantity = "post leans"     // left post leans 3/8 in right in 48 in
	Units      Quantity = "units"          // units = metric
	Goal       Quantity = "goal"           // a bare goal: equal bays, even gaps, same length, cheapest, smallest gap, …
	Short      Quantity = "short"          // short bay 1 rail 3 = 1/4 in: a piece that came out too short

	// The names below are only claimed, never set: check cut bay 1 = 66-1/8 in.
	CutOf   Quantity = "cut"    // cut bay 1; cut post; cut stiffener
	MarksOf Quantity = "marks"  // a list of bracket holes from the floor
	Boards  Quantity = "boards" // boards 2x6 144 in = 10
	CostOf  Quantity = "cost"
)

// Kind says what values a quantity takes.
type Kind uint8

// The kinds of value.
const (
	Length  Kind = iota + 1
	Count        // a whole number, 0 or more
	Size         // nominal lumber size, "2x6"
	Side         // left, right, middle
	Percent      // 10%; or a count (spare boards)
	Money        // two decimals, no currency
	Lengths      // a list of lengths
	Word         // one of a few words
	Plain        // a plain number
)

// About is what the vocabulary knows of a quantity.
type About struct {
	Quantity Quantity
	Kind     Kind
	What     string // what it is, in a few words
	// Lo and Hi are the plausible range of a length in inches; what lies outside is asked back, never taken.
	// Both zero: anything from 0 up is plausible.
	Lo, Hi exact.Rat
}

func about(q Quantity, k Kind, what string) About { return About{Quantity: q, Kind: k, What: what} }

func (a About) within(lo, hi int) About {
	a.Lo, a.Hi = exact.Int(lo), exact.Int(hi)
	return a
}

// Vocabulary lists every quantity that a plain statement can set, in the order in which help tells them.
// The plausible ranges are those of this program: common sense, no source.
var Vocabulary = []About{
	about(WallHeight, Length, "floor to the top of the top rail").within(12, 144),
	about(Rails, Count, "how many rails stack up in a bay"),
	about(Gap, Length, "clear space between rails").within(0, 24),
	about(BottomGap, Length, "floor to the underside of the bottom rail"),
	about(RailSize, Size, "lumber size of the rails"),
	about(RailFace, Length, "measured face width of a rail"),
	about(RailTop, Length, "floor to the top edge of a named rail"),
	about(Span, Length, "clear between the end posts").within(24, 1200),
	about(Overall, Length, "outside to outside of the end posts"),
	about(Centers, Length, "center to center of the end posts"),
	about(PostSize, Size, "lumber size of all posts"),
	about(EndPostSize, Size, "lumber size of the end posts"),
	about(AddedPostSize, Size, "lumber size of the added posts"),
	about(AddedPosts, Count, "posts set between the end posts"),
	about(PostFromLeft, Length, "left end post's face to the near face of an added post"),
	about(PostFromRight, Length, "right end post's face to the near face of an added post"),
	about(Bays, Count, "stretches between posts filled with rails"),
	about(Bay, Length, "clear width of a bay").within(8, 480),
	about(Opening, Length, "clear width of the walk-through").within(8, 240),
	about(Openings, Count, "how many walk-throughs"),
	about(OpeningFromLeft, Length, "left end post's face to the opening"),
	about(OpeningFromRight, Length, "right end post's face to the opening"),
	about(OpeningSide, Side, "left, right or middle"),
	about(PostHeight, Length, "floor to the top of an added post"),
	about(BaseHeight, Length, "floor to the underside of an added post"),
	about(Stiffeners, Count, "upright stiffeners in each bay"),
	about(StiffenerSpacing, Length, "on center, along the bay"),
	about(StiffenerSize, Size, "lumber size of the stiffeners"),
	about(BracketClearance, Length, "the least gap at which brackets do not meet"),
	about(BracketEar, Length, "how far a bracket stands past its rail"),
	about(BracketReach, Length, "top hole's center above the rail's top edge"),
	about(BracketThickness, Length, "thickness of one bracket"),
	about(Fit, Length, "how much shorter than its space a rail is cut, in all"),
	about(Stock, Lengths, "lumber lengths on sale"),
	about(Kerf, Length, "width of the saw cut"),
	about(Trim, Length, "lost per board to square its end"),
	about(Spare, Percent, "extra lumber to buy"),
	about(Tape, Length, "smallest mark worked to"),
	about(Drop, Length, "floor down to the ground beyond"),
	about(FloorAtRight, Length, "floor at the right end post against the left"),
	about(Budget, Money, "most that the material may cost"),
	about(CapSize, Size, "board laid flat on top"),
	about(SlabThickness, Length, "thickness of the concrete slab"),
	about(EdgeDistance, Length, "anchor to the slab's edge"),
	about(AnchorSize, Length, "diameter of an anchor"),
	about(ScrewLength, Length, "length of a screw through a stiffener"),
	about(Coats, Count, "coats of stain"),
	about(Coverage, Plain, "area that a gallon covers, square feet"),
	about(Pool, Word, "whether the wall fences a pool"),
	about(Units, Word, "customary or metric"),
}

var byQuantity = func() map[Quantity]About {
	m := make(map[Quantity]About, len(Vocabulary))
	for _, a := range Vocabulary {
		m[a.Quantity] = a
	}
	return m
}()

// KindOf returns what values q takes, 0 for a quantity with a statement shape of its own.
func KindOf(q Quantity) Kind { return byQuantity[q].Kind }

// Tell returns what the vocabulary knows of q.
func Tell(q Quantity) About { return byQuantity[q] }
