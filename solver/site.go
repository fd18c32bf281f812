package solver

import "saywright/solver/exact"

// Site is all that measuring, cutting, buying and building need of a wall: the layout chosen, and what stands about its
// parts, its measurements and its lumber. Lengths are inches, money has no currency. What nobody said and no default
// fills is nil, "" or empty. Every default that was filled in is listed in Defaults too, so that answers can name it.
type Site struct {
	Wall   string  // "" is the wall at hand
	Layout *Layout // nil, or with Up or Along nil, where too little is known: pieces alone can still be bought

	RailSize      string // nominal, as said: "2x6", "90x45"
	AddedPostSize string
	EndPostSize   string
	StiffenerSize string
	CapSize       string // "": no board on top

	BracketThickness exact.Rat
	Fit              exact.Rat // how much shorter than its space a rail is cut, in all
	Kerf             exact.Rat
	Trim             exact.Rat // lost per board to square its end
	Tape             exact.Rat // the smallest mark worked to; 0 is taken as 1/16 in

	Measured []Statement // measured bay 1 rail 3 = …, measured bay 1 bottom = …, measured opening 1 = …
	Leans    []Statement // left post leans 3/8 in right in 48 in; post 1 leans …
	Fixed    []int       // rails that are up already, in every bay: neither cut nor bought
	Short    []Statement // short bay 1 rail 3 = 1/4 in

	StiffenerLimit *exact.Rat // the most that stiffeners may stand apart
	SameLength     bool       // all rails of a bay to one length
	EvenGaps       bool       // gaps exact, each mark rounded by itself

	Stock  []Statement // "stock = …" (Name.Item "") and "stock 4x4 = …" with Value.List, changes already worked in
	Prices []Statement // price 2x6 192 in, price rails 192 in, price bracket, price screws 100, …
	Have   []Statement // have 2x6 144 in x 6, Op Each
	Extra  []Statement // extra 2x6 45-1/2 in x 12, Op Each
	Spare  *Statement  // spare = 10%, spare = 2
	Budget *exact.Rat

	ScrewLength exact.Rat // of the screws through a stiffener; 0 is taken as 1-5/8 in
	AnchorSize  *exact.Rat
	Slab        *exact.Rat // thickness of the slab
	Edge        *exact.Rat // center of the nearest anchor to the slab's edge
	Coats       *int
	Coverage    *exact.Rat // square feet that a gallon covers

	Metric   bool
	Defaults []Statement // the defaults filled in above, as statements
}

// Findings are the parts of an answer that one question about the site brings. Empty parts have nothing to say.
// A Conflict blocks; each of its sums ends in a comparison that is false. Ask is a question that comes first.
type Findings struct {
	Cuts      []Cut
	Plan      []Board
	Shopping  []Buy
	Cost      *Cost
	Steps     []StepOf
	Marks     []PostMark
	Work      []Work
	Facts     []Fact
	Cautions  []Caution
	Assumed   []string
	Conflicts []Conflict
	Ways      []Way
	Check     []Claim
	Buying    []Bought
	Ask       *Question
}

// AddTo puts the findings into an answer, behind what it already holds. A conflict makes it blocked; a question with
// nothing else found makes it open.
func (f Findings) AddTo(a *Answer) {
	a.Cuts = append(a.Cuts, f.Cuts...)
	a.Plan = append(a.Plan, f.Plan...)
	a.Shopping = append(a.Shopping, f.Shopping...)
	if f.Cost != nil {
		a.Cost = f.Cost
	}
	a.Steps = append(a.Steps, f.Steps...)
	a.Marks = append(a.Marks, f.Marks...)
	a.Work = append(a.Work, f.Work...)
	a.Facts = append(a.Facts, f.Facts...)
	a.Check = append(a.Check, f.Check...)
	a.Buying = append(a.Buying, f.Buying...)
	for _, c := range f.Cautions {
		a.Cautions = addCaution(a.Cautions, c)
	}
	for _, s := range f.Assumed {
		a.Assumed = addOnce(a.Assumed, s)
	}
	f.conclude(a)
}

func (f Findings) conclude(a *Answer) {
	for _, c := range f.Conflicts {
		a.Conflicts = append(a.Conflicts, c)
		a.Because = append(a.Because, c.Rules)
		a.Verdict = Blocked
	}
	a.Ways = append(a.Ways, f.Ways...)
	if f.Ask == nil {
		return
	}
	if a.Ask == nil {
		a.Ask = f.Ask
	}
	if len(f.Cuts)+len(f.Plan)+len(f.Steps)+len(f.Marks)+len(f.Facts) == 0 && a.Verdict == Fits {
		a.Verdict = Open
	}
}

// and puts what g found behind what f found.
func (f *Findings) and(g Findings) {
	f.Cuts = append(f.Cuts, g.Cuts...)
	f.Plan = append(f.Plan, g.Plan...)
	f.Shopping = append(f.Shopping, g.Shopping...)
	if g.Cost != nil {
		f.Cost = g.Cost
	}
	f.Steps = append(f.Steps, g.Steps...)
	f.Marks = append(f.Marks, g.Marks...)
	f.Work = append(f.Work, g.Work...)
	f.Facts = append(f.Facts, g.Facts...)
	f.Conflicts = append(f.Conflicts, g.Conflicts...)
	f.Ways = append(f.Ways, g.Ways...)
	f.Check = append(f.Check, g.Check...)
	f.Buying = append(f.Buying, g.Buying...)
	for _, c := range g.Cautions {
		f.Cautions = addCaution(f.Cautions, c)
	}
	for _, s := range g.Assumed {
		f.Assumed = addOnce(f.Assumed, s)
	}
	if f.Ask == nil {
		f.Ask = g.Ask
	}
}

func addOnce(list []string, s string) []string {
	for _, have := range list {
		if have == s {
			return list
		}
	}
	return append(list, s)
}

func addCaution(list []Caution, c Caution) []Caution {
	for _, have := range list {
		if have.Key != "" && have.Key == c.Key {
			return list
		}
	}
	return append(list, c)
}

// leaned returns the normal forms of the defaults among what an answer leans on, in the order asked.
func (s *Site) leaned(on ...Quantity) []string {
	var out []string
	for _, q := range on {
		for _, d := range s.Defaults {
			if d.Name.Quantity == q {
				out = addOnce(out, d.String())
			}
		}
	}
	return out
}

// mark is the smallest mark worked to.
func (s *Site) mark() exact.Rat {
	if s.Tape.Sign() > 0 {
		return s.Tape
	}
	return exact.New(1, 16)
}

// down rounds a length down to the tape: a piece to cut is never rounded up.
func (s *Site) down(r exact.Rat) exact.Rat {
	t := s.mark()
	return r.Div(t).Floor().Mul(t)
}
