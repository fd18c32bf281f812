package solver

import (
	"strings"

	"saywright/solver/exact"
)

// fitting is one kind of hardware: how many are needed, and the sum that says so.
type fitting struct {
	item  string
	count int
	work  Work
}

// The default screw, and how many go where: common practice, no source.
var defaultScrew = exact.New(13, 8)

const (
	screwsInPost    = 2 // per bracket, into the post
	screwsInEnd     = 2 // per bracket, into the rail's end
	screwsAtCross   = 2 // per stiffener, at each rail
	bracketsPerRail = 2
)

// Hardware returns brackets, screws, post bases, post caps and anchors, each with the sum of its count, and refuses a
// screw that would come out of the far side. Prices and what is at hand are left to Buying.
func (s *Site) Hardware() Findings {
	f := s.hardware(s.Cuts())
	return f
}

func (s *Site) hardware(cuts Findings) (f Findings) {
	if cuts.Ask != nil {
		f.Ask = cuts.Ask
		return f
	}
	for _, p := range s.parts(cuts.Cuts) {
		f.Shopping = append(f.Shopping, Buy{Item: p.item, Count: p.count})
		f.Work = append(f.Work, p.work)
	}
	f.and(s.screwRefused(cuts.Cuts))
	f.and(s.hardwareTold(cuts.Cuts))
	return f
}

// parts counts the hardware of a cut list.
func (s *Site) parts(cuts []Cut) (parts []fitting) {
	rails, stiffeners, posts := countOf(cuts, "rail"), countOf(cuts, "stiffener"), countOf(cuts, "post")
	brackets := Product(Tally(bracketsPerRail), Tally(rails))
	add := func(item, note string, e Expr) {
		if n, ok := e.Value.Int64(); ok && n > 0 {
			parts = append(parts, fitting{item, int(n), Line(item, note, e)})
		}
	}
	add("bracket", "brackets", brackets)
	into := Product(Tally(bracketsPerRail*rails), Tally(screwsInPost+screwsInEnd))
	across := Product(Product(Tally(stiffeners), Tally(s.railsStanding())), Tally(screwsAtCross))
	if long := s.screw(); long.Eq(defaultScrew) {
		add("screws", "screws", nonzero(into, across))
	} else {
		add("screws "+Fraction(defaultScrew)+" in", "bracket screws", into)
		add("screws "+Fraction(long)+" in", "stiffener screws", across)
	}
	add("post base", "post bases", Tally(posts))
	add("post cap", "post caps", Tally(posts))
	for _, e := range s.Extra {
		if n, ok := howMany(e); ok && e.Name.Long == nil {
			parts = addParts(parts, hardwareName(e.Name.Item), n)
		}
	}
	return parts
}

// nonzero adds the terms that are not 0.
func nonzero(terms ...Expr) Expr {
	var some []Expr
	for _, t := range terms {
		if t.Value.Sign() != 0 {
			some = append(some, t)
		}
	}
	if len(some) == 0 {
		return Tally(0)
	}
	return Sum(some...)
}

// addParts puts extra hardware to the parts of its kind: a person who counted the anchors of a base says so as an extra.
func addParts(parts []fitting, item string, n int) []fitting {
	for i, p := range parts {
		if p.item == item {
			e := Sum(p.work.Expr, Tally(n))
			parts[i] = fitting{item, p.count + n, Line(item, p.work.Note, e)}
			return parts
		}
	}
	return append(parts, fitting{item, n, Line(item, "as told", Tally(n))})
}

// PartName is the one name of a part: "rail brackets" are "bracket". A size of lumber has its own name.
func PartName(item string) string { return hardwareName(item) }

// hardwareName is the one name of a part: "brackets" and "rail bracket" are "bracket".
func hardwareName(item string) string {
	switch name := strings.ToLower(strings.TrimSpace(item)); name {
	case "brackets", "rail bracket", "rail brackets":
		return "bracket"
	case "post bases", "base", "bases":
		return "post base"
	case "post caps":
		return "post cap"
	case "anchors":
		return "anchor"
	case "screw":
		return "screws"
	case "stain", "coating", "oil":
		return "finish"
	default:
		return name
	}
}

func countOf(cuts []Cut, piece string) (n int) {
	for _, c := range cuts {
		if c.Piece == piece {
			n += c.Count
		}
	}
	return n
}

// railsStanding is how many rails each stiffener crosses, those that were up before among them.
func (s *Site) railsStanding() int {
	if up := s.up(); up != nil {
		return len(up.Tops)
	}
	return 0
}

func (s *Site) screw() exact.Rat {
	if s.ScrewLength.Sign() == 0 {
		return defaultScrew
	}
	return s.ScrewLength
}

// shorterScrews are lengths that screws for outdoors are also sold in, inches: common practice, no source.
var shorterScrews = []exact.Rat{exact.New(5, 4), exact.Int(1), exact.New(3, 4)}

// screwThatFits is the screw taken where none was told: the usual one, or the longest of the shorter ones that stays inside stiffener and rail
// and is under a limit (0: none).
func (s *Site) screwThatFits(under exact.Rat) exact.Rat {
	thin, _, ok1 := s.dressed(s.StiffenerSize)
	thick, _, ok2 := s.dressed(s.RailSize)
	fits := func(long exact.Rat) bool {
		return (!ok1 || !ok2 || long.Less(thin.Add(thick))) && (under.Sign() == 0 || long.Less(under))
	}
	for _, long := range append([]exact.Rat{defaultScrew}, shorterScrews...) {
		if fits(long) {
			return long
		}
	}
	return defaultScrew
}

// screwRefused holds the screw against what it goes through: it must be shorter than stiffener and rail together.
func (s *Site) screwRefused(cuts []Cut) (f Findings) {
	if countOf(cuts, "stiffener") == 0 {
		return f
	}
	thin, _, ok1 := s.dressed(s.StiffenerSize)
	thick, _, ok2 := s.dressed(s.RailSize)
	if !ok1 || !ok2 {
		f.Facts = append(f.Facts, Fact{Key: "thickness unknown", Names: []string{s.StiffenerSize, s.RailSize}})
		return f
	}
	through := Sum(Num(thin), Num(thick))
	line := Line(string(ScrewLength), "screw stays inside", Compare(Num(s.screw()), "<", through))
	if s.screw().Sign() < 0 {
		line = Line(string(ScrewLength), "screw has a length", Compare(Num(s.screw()), ">", Num(exact.Rat{})))
	}
	if line.Expr.Holds() {
		f.Work = append(f.Work, line)
		return f
	}
	said := Of(ScrewLength, Eq, Inches(s.screw()))
	f.Conflicts = []Conflict{{About: "screws", Work: []Work{line}, Rules: []Rule{
		{Rule: string(ScrewLength), Kind: Yours, Says: said.String(), From: &said},
		{Rule: string(StiffenerSize), Kind: Part, Says: Of(StiffenerSize, Eq, Value{Word: s.StiffenerSize}).String()},
		{Rule: string(RailSize), Kind: Part, Says: Of(RailSize, Eq, Value{Word: s.RailSize}).String()},
	}}}
	mend := Of(ScrewLength, LT, Inches(through.Value))
	f.Ways = []Way{{Changes: []Change{{Rule: string(ScrewLength), From: said.String(), To: mend.String(),
		By: s.screw().Sub(through.Value).String(), Old: said, New: mend, Kind: Yours}}}}
	return f
}

// hardwareTold lists where each screw goes, and what only the base itself can tell.
func (s *Site) hardwareTold(cuts []Cut) (f Findings) {
	rails, stiffeners, posts := countOf(cuts, "rail"), countOf(cuts, "stiffener"), countOf(cuts, "post")
	screws := func(where string, n int, long exact.Rat) {
		if n > 0 {
			f.Facts = append(f.Facts, Fact{Key: "screws", Names: []string{where}, Nums: []exact.Rat{exact.Int(n), long}})
		}
	}
	screws("into the post", bracketsPerRail*rails*screwsInPost, defaultScrew)
	screws("into the rail's end", bracketsPerRail*rails*screwsInEnd, defaultScrew)
	screws("through a stiffener", stiffeners*s.railsStanding()*screwsAtCross, s.screw())
	if posts > 0 && !s.anchorsTold() {
		f.Facts = append(f.Facts, Fact{Key: "anchors as the base asks", Nums: []exact.Rat{exact.Int(posts)}})
	}
	if n := countOf(cuts, "cap"); n > 0 {
		f.Facts = append(f.Facts, Fact{Key: "cap fasteners not counted", Nums: []exact.Rat{exact.Int(n)}})
	}
	if rails+stiffeners+posts > 0 {
		f.Cautions = append(f.Cautions, Caution{Key: "lumber", Source: lumberCaution})
	}
	if rails+stiffeners > 0 {
		f.Assumed = s.leaned(ScrewLength)
	}
	return f
}

func (s *Site) anchorsTold() bool {
	for _, e := range s.Extra {
		if hardwareName(e.Name.Item) == "anchor" {
			return true
		}
	}
	return false
}
