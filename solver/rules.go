package solver

import (
	"slices"

	"saywright/solver/exact"
	"saywright/solver/lumber"
)

// field is a part of the wall that is solved by itself, as long as no rule ties it to the other.
type field uint8

const (
	upField field = 1 << iota
	alongField
	bothFields = upField | alongField
)

// law is one rule in force: what the answer names, and the statement that it amounts to.
type law struct {
	Rule
	said  Statement
	field field
	soft  bool // a default that gives way to what the person said
}

// set holds laws by index.
type set [4]uint64

const maxLaws = 256

func (s *set) add(i int)        { s[i>>6] |= 1 << (i & 63) }
func (s *set) remove(i int)     { s[i>>6] &^= 1 << (i & 63) }
func (s set) has(i int) bool    { return s[i>>6]&(1<<(i&63)) != 0 }
func (s set) within(t set) bool { return s[0]&^t[0]|s[1]&^t[1]|s[2]&^t[2]|s[3]&^t[3] == 0 }
func (s set) union(t set) set {
	return set{s[0] | t[0], s[1] | t[1], s[2] | t[2], s[3] | t[3]}
}
func (s set) list() []int {
	var out []int
	for i := range maxLaws {
		if s.has(i) {
			out = append(out, i)
		}
	}
	return out
}

// problem is a wall ready to be solved: all laws in force, and what the statements mention.
type problem struct {
	book    Book
	laws    []law
	hard    set // laws that never give way
	wishes  []Statement
	parts   map[Quantity]exact.Rat // parts with a plain value: constants of every sum
	spoken  int                    // openings that are spoken of, by the highest named; 0: none
	split   bool                   // rails that are placed by name: the gaps between them go each its own way
	placed  []int                  // rails that are placed by name, ascending
	sizes   map[Quantity]lumber.Size
	faces   map[string]exact.Rat // by size, as looked up
	named   namedParts
	linked  bool // a law ties the heights to the lengths
	unknown error
	full    bool // more rules than one proof can take
	spent   *int // systems solved so far for one answer, over all problems that it poses
}

// upQuantities are solved up the wall; what else is a length or a count of the wall is solved along it.
var upQuantities = map[Quantity]bool{
	WallHeight: true, Rails: true, RailSize: true, RailFace: true, RailTop: true, FixedRail: true, Gap: true,
	BottomGap: true, PostHeight: true, BracketEar: true, BracketClearance: true, FloorAtRight: true,
}

var alongQuantities = map[Quantity]bool{
	Span: true, Overall: true, Centers: true, PostSize: true, EndPostSize: true, AddedPostSize: true, AddedPosts: true,
	PostFromLeft: true, PostFromRight: true, Bays: true, Bay: true, Opening: true, Openings: true,
	OpeningFromLeft: true, OpeningFromRight: true, OpeningSide: true, Stiffeners: true, StiffenerSpacing: true,
}

// partQuantities are figures of parts and habits that stand outside the geometry. They are constants, unless they are
// limited or tied, when they are solved up the wall like any other length.
var partQuantities = map[Quantity]bool{
	BracketReach: true, BracketThickness: true, Fit: true, Kerf: true, Trim: true, Tape: true, Drop: true,
	BaseHeight: true, ScrewLength: true, SlabThickness: true, EdgeDistance: true, AnchorSize: true,
}

func fieldOf(q Quantity) field {
	switch {
	case upQuantities[q] || partQuantities[q]:
		return upField
	case alongQuantities[q]:
		return alongField
	}
	return 0
}

// posed is another problem for the same answer.
func (p *problem) posed(b Book) *problem {
	q := pose(b)
	q.spent = p.spent
	return q
}

// pose reads a book into a problem. Every law has its kind and its source.
func pose(b Book) *problem {
	p := &problem{spent: new(int), book: b, parts: map[Quantity]exact.Rat{}, sizes: map[Quantity]lumber.Size{},
		faces: map[string]exact.Rat{}}
	p.takeParts()
	for _, s := range b.said {
		p.hear(s)
	}
	p.addDefaults()
	p.addCode()
	p.addHabits()
	p.mergeTwins()
	for i, l := range p.laws {
		if !l.soft {
			p.hard.add(i)
		}
		if l.field == bothFields {
			p.linked = true
		}
	}
	p.takeNames()
	slices.Sort(p.placed)
	return p
}

// takeParts settles the parts that have a plain value, said or by default.
func (p *problem) takeParts() {
	for q := range partQuantities {
		if v, plain := p.plainPart(q); plain {
			p.parts[q] = v
		}
	}
}

func (p *problem) plainPart(q Quantity) (exact.Rat, bool) {
	n, found := 0, exact.Rat{}
	for _, s := range p.book.said {
		if s.Name.Quantity != q {
			continue
		}
		if s.Op != Eq && s.Op != Near || s.Value.Of != nil {
			return exact.Rat{}, false
		}
		n, found = n+1, s.Value.Num
	}
	if n > 0 {
		return found, true
	}
	d, ok := defaultOf(q)
	return d.Value.Num, ok
}

// hear makes the law of one statement; wishes and what is no law of the layout are set apart.
func (p *problem) hear(s Statement) {
	q := s.Name.Quantity
	if openingWords[q] {
		p.spoken = max(p.spoken, 1, s.Name.Opening)
	}
	if q == Openings && s.Op == Eq && s.Value.Num.Sign() == 0 {
		p.spoken = 0
	}
	if s.Op == Near {
		if fieldOf(q) != 0 && !partQuantities[q] {
			p.wishes = append(p.wishes, s)
		}
		return
	}
	if q == Goal {
		p.hearGoal(s)
		return
	}
	if _, constant := p.parts[q]; constant {
		return
	}
	f := fieldOf(q)
	if f == 0 && q != Stock && q != FloorFalls {
		return
	}
	if q == RailTop || q == FixedRail {
		p.placed = append(p.placed, s.Name.Rail)
	}
	if s.Value.Of != nil {
		if _, constant := p.parts[s.Value.Of.Quantity]; !constant {
			f |= fieldOf(s.Value.Of.Quantity)
		}
		if openingWords[s.Value.Of.Quantity] {
			p.spoken = max(p.spoken, 1)
		}
	}
	if q == FloorFalls {
		f = bothFields
	}
	if q == Stock {
		if !p.limitsRails(s) {
			return
		}
		f = alongField
	}
	if !p.knownSize(s) {
		return
	}
	p.add(law{Rule: yours(s), said: s, field: f})
}

func yours(s Statement) Rule {
	return Rule{Rule: s.Name.String(), Kind: Yours, Says: s.String(), From: &s}
}

var openingWords = map[Quantity]bool{
	Opening: true, Openings: true, OpeningSide: true, OpeningFromLeft: true, OpeningFromRight: true,
}

// hearGoal: equal bays bind; other goals only choose.
func (p *problem) hearGoal(s Statement) {
	if s.Value.Word == "equal bays" {
		p.add(law{Rule: Rule{Rule: "equal bays", Kind: Yours, Says: s.String(), From: &s}, said: s, field: alongField})
		return
	}
	if _, q, ok := GoalOf(s); ok && openingWords[q] {
		p.spoken = max(p.spoken, 1)
	}
	p.wishes = append(p.wishes, s)
}

func (p *problem) add(l law) {
	if len(p.laws) == maxLaws {
		p.full = true
		return
	}
	p.laws = append(p.laws, l)
}

// knownSize looks a size up; an unknown one is told, and makes no law.
func (p *problem) knownSize(s Statement) bool {
	if KindOf(s.Name.Quantity) != Size || s.Op != Eq {
		return true
	}
	size, err := lumber.Find(s.Value.Word)
	if err != nil {
		p.unknown = err
		return false
	}
	p.sizes[s.Name.Quantity] = size
	return true
}

// limitsRails reports whether a stock statement speaks of the rails' lumber.
func (p *problem) limitsRails(s Statement) bool {
	return s.Op == Eq && (s.Name.Item == "" || s.Name.Item == p.railSizeName()) && len(listOf(s.Value)) > 0
}

func (p *problem) railSizeName() string {
	for i := len(p.book.said) - 1; i >= 0; i-- {
		if s := p.book.said[i]; s.Name.Quantity == RailSize && s.Op == Eq {
			return s.Value.Word
		}
	}
	return defaultWord(RailSize)
}

func defaultWord(q Quantity) string {
	d, _ := defaultOf(q)
	return d.Value.Word
}

// speaksOf reports whether anything was said of a quantity, named or not.
func (p *problem) speaksOf(qs ...Quantity) bool {
	for _, s := range p.book.said {
		if slices.Contains(qs, s.Name.Quantity) {
			return true
		}
		if _, q, ok := GoalOf(s); ok && slices.Contains(qs, q) {
			return true
		}
	}
	return false
}

func (p *problem) addDefault(q Quantity, v Value, kind RuleKind, name, says string) {
	s := Of(q, Eq, v)
	if says == "" {
		says = s.String()
	}
	p.add(law{Rule: Rule{Rule: name, Kind: kind, Says: says, Source: NoSource, From: &s}, said: s, field: fieldOf(q)})
}

// addDefaults adds the parts that were not spoken of. They hold like what was said: a part is what it is.
func (p *problem) addDefaults() {
	for _, q := range []Quantity{RailSize, PostSize, StiffenerSize} {
		if size, err := lumber.Find(defaultWord(q)); err == nil && !p.speaksOf(q) {
			p.sizes[q] = size
			if q == RailSize && p.speaksOf(RailFace) || q == PostSize && p.speaksOf(EndPostSize) && p.speaksOf(AddedPostSize) {
				continue
			}
			if q != StiffenerSize {
				p.addDefault(q, Value{Word: defaultWord(q)}, Practice, string(q), "")
			}
		}
	}
	if !p.speaksOf(BracketClearance) {
		d, _ := defaultOf(BracketClearance)
		p.addDefault(BracketClearance, d.Value, Part, "bracket clearance", "gap >= "+d.Value.String())
	}
	if !p.speaksOf(BracketEar) {
		half := exact.New(1, 2)
		v := Value{Of: &Name{Quantity: BracketClearance}, Mult: &half, Unit: Inch}
		s := Of(BracketEar, Eq, v)
		p.add(law{Rule: Rule{Rule: "bracket ear", Kind: Part, Says: s.String(),
			Source: "by symmetry: a bracket stands past its rail by half the clearance", From: &s}, said: s, field: upField})
	}
	if !p.speaksOf(FloorAtRight, FloorFalls) {
		p.parts[FloorAtRight] = exact.Rat{}
	}
}

// addHabits adds the rules of thumb that fill in what was left open, those first that are kept longest: the reverse
// of the order in which the trade notes set them aside.
func (p *problem) addHabits() {
	habit := func(s Statement, name string) {
		p.add(law{Rule: Rule{Rule: name, Kind: Practice, Says: s.String(), Source: NoSource, From: &s},
			said: s, field: fieldOf(s.Name.Quantity), soft: true})
	}
	if !slices.ContainsFunc(p.book.said, func(s Statement) bool { return s.Name.Quantity == Stock && p.limitsRails(s) }) {
		s := Of(Stock, Eq, Value{List: DefaultStock()})
		p.add(law{Rule: Rule{Rule: "stock", Kind: Practice, Says: s.String(), Source: NoSource, From: &s},
			said: s, field: alongField, soft: true})
	}
	if !p.speaksOf(StiffenerSpacing) {
		habit(Of(StiffenerSpacing, LE, inches("48")), "stiffener spacing")
	}
	if !p.speaksOf(Opening) {
		habit(Of(Opening, GE, inches("24")), "opening")
	}
	if !p.speaksOf(PostHeight) {
		v := inches("2")
		v.Of = &Name{Quantity: WallHeight}
		habit(Of(PostHeight, Eq, v), "post height")
	}
	if !p.speaksOf(BottomGap) {
		habit(Of(BottomGap, Eq, Value{Of: &Name{Quantity: Gap}, Unit: Inch}), "bottom gap")
		habit(Of(BottomGap, GE, inches("2")), "off the floor")
	}
}

// mergeTwins makes one law of two that say the same, and keeps both sources.
func (p *problem) mergeTwins() {
	for i := 0; i < len(p.laws); i++ {
		for j := i + 1; j < len(p.laws); j++ {
			a, b := &p.laws[i], p.laws[j]
			if a.said.String() != b.said.String() || a.soft != b.soft {
				continue
			}
			if b.Source != "" && b.Source != a.Source {
				if a.Source != "" {
					a.Source += "; "
				}
				a.Source += b.Rule.Rule + ": " + b.Source
			}
			p.laws = slices.Delete(p.laws, j, j+1)
			j--
		}
	}
}
