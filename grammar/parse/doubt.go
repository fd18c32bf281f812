package parse

import (
	"saywright/grammar/askback"
	"saywright/grammar/measure"
	"saywright/solver"
	"saywright/solver/exact"
)

// plausible is the range, in inches or pieces, outside of which a value is asked back. Those that language.md fixes come
// from the vocabulary; the others are as wide as a half wall can need (common sense, no source).
var plausible = func() map[solver.Quantity][2]exact.Rat {
	m := map[solver.Quantity][2]exact.Rat{}
	for _, a := range solver.Vocabulary {
		if a.Hi.Sign() > 0 {
			m[a.Quantity] = [2]exact.Rat{a.Lo, a.Hi}
		}
	}
	for q, r := range map[solver.Quantity][2]string{
		solver.BottomGap: {"0", "48"}, solver.Overall: {"24", "1200"}, solver.Centers: {"24", "1200"}, solver.Bay: {"6", "480"},
		solver.RailFace: {"1/2", "16"}, solver.RailTop: {"1", "150"}, solver.FixedRail: {"1", "150"}, solver.PostFromLeft: {"0", "1200"}, solver.PostFromRight: {"0", "1200"},
		solver.OpeningFromLeft: {"0", "1200"}, solver.OpeningFromRight: {"0", "1200"}, solver.PostHeight: {"12", "240"}, solver.BaseHeight: {"0", "12"},
		solver.StiffenerSpacing: {"3", "144"}, solver.BracketClearance: {"0", "12"}, solver.BracketEar: {"0", "12"}, solver.BracketReach: {"0", "12"},
		solver.BracketThickness: {"0", "1"}, solver.Fit: {"0", "6"}, solver.Kerf: {"0", "1/2"}, solver.Trim: {"0", "12"}, solver.Tape: {"1/128", "1"},
		solver.Drop: {"0", "240"}, solver.FloorAtRight: {"-36", "36"}, solver.SlabThickness: {"1", "36"}, solver.EdgeDistance: {"1/2", "240"},
		solver.AnchorSize: {"1/8", "2"}, solver.ScrewLength: {"1/2", "8"}, solver.Measured: {"1", "1200"}, solver.CutOf: {"1", "1200"}, solver.Short: {"0", "24"}, solver.Tolerance: {"0", "1"},
		solver.Rails: {"1", "60"}, solver.AddedPosts: {"0", "16"}, solver.Bays: {"1", "17"}, solver.Openings: {"0", "9"}, solver.Stiffeners: {"0", "12"}, solver.Coats: {"0", "9"},
	} {
		if _, ok := m[q]; !ok {
			m[q] = [2]exact.Rat{exact.Must(r[0]), exact.Must(r[1])}
		}
	}
	return m
}()

func within(q solver.Quantity, v exact.Rat) bool {
	r, ok := plausible[q]
	return !ok || !v.Less(r[0]) && !r[1].Less(v)
}

// doubt returns the question to ask where a value cannot be meant as read, nil where it can.
func (s *Speech) doubt(m made, lo, hi measure.Amount) *solver.Question {
	q, v := m.st.Name.Quantity, m.st.Value
	if s.Metric && m.kind == solver.Length && lo.Unit == measure.Bare && v.Of == nil && v.List == nil && m.st.Op != solver.In && inchFraction(lo) {
		return s.inchesMeant(m, lo)
	}
	r, known := plausible[q]
	if !known || v.Of != nil || v.List != nil || m.st.Op == solver.Plus || m.st.Op == solver.Minus || m.st.Op == solver.Times {
		return nil
	}
	if s.Mixed && !s.Metric && m.kind == solver.Length && lo.Unit == measure.Bare && !lo.Frac && v.Num.Sign() > 0 {
		return s.question(m, lo, hi) // "opening 90 cm, span 340"
	}
	if s.InCentimeters && m.kind == solver.Length && lo.Unit == measure.Bare && v.Num.Sign() > 0 && within(q, v.Num.Mul(exact.Int(10))) {
		return s.question(m, lo, hi) // "I work in centimeters, gap 5"
	}
	if s.Metric && tooTightForMillimeters(m, lo) {
		return s.question(m, lo, hi) // "I work in millimeters, make the gaps 3"
	}
	if q == solver.AddedPosts && r[1].Less(v.Num) && limits(m.st.Op) {
		return highOrAlong(m.st)
	}
	switch m.st.Op {
	case solver.LT, solver.LE:
		if q == solver.Stiffeners && r[1].Less(v.Num) && v.Num.Less(plausible[solver.StiffenerSpacing][1]) {
			other := m.st
			other.Name.Quantity, other.Value.Unit = solver.StiffenerSpacing, solver.Inch
			return &solver.Question{Text: "So many stiffeners, or so far apart?", Choices: []string{other.String(), m.st.String()}, Example: other.String()}
		}
		if q == solver.Bays && r[1].Less(v.Num) && !v.Num.Less(plausible[solver.Bay][0]) {
			other := m.st
			other.Name.Quantity, other.Value.Unit = solver.Bay, solver.Inch
			return &solver.Question{Text: "So many bays, or so wide?", Choices: []string{other.String(), m.st.String()}, Example: other.String()}
		}
		if !v.Num.Less(r[0]) || v.Num.Sign() == 0 && r[0].Sign() == 0 {
			return nil
		}
	case solver.GT, solver.GE:
		if !r[1].Less(v.Num) && !(lo.Unit == measure.Bare && v.Num.Less(r[0]) && within(q, v.Num.Mul(measure.Twelve)) && v.Num.Sign() > 0 && m.kind == solver.Length) {
			return nil
		}
	case solver.In:
		if within(q, v.Num) && within(q, m.st.Upper.Num) {
			return nil
		}
	default:
		if within(q, v.Num) && !s.fused(q, lo) {
			return nil
		}
	}
	return s.question(m, lo, hi)
}

// limits reports whether a sign bounds on one side.
func limits(op solver.Op) bool {
	return op == solver.LT || op == solver.LE || op == solver.GT || op == solver.GE
}

// highOrAlong asks what a figure is of an added post that can count none: "50 tops for the new post".
func highOrAlong(st solver.Statement) *solver.Question {
	q := &solver.Question{Text: "Is that how high the new post is, or how far along it stands?"}
	for _, of := range []solver.Quantity{solver.PostHeight, solver.PostFromLeft, solver.PostFromRight} {
		other := st
		other.Name.Quantity, other.Value.Unit = of, solver.Inch
		if of != solver.PostHeight {
			other.Name.Post = 1
		}
		q.Choices = append(q.Choices, other.String())
	}
	q.Example = q.Choices[0]
	return q
}

// tooTightForMillimeters: a gap of less than 10 mm that was said without its unit is more likely one in inches or centimeters. None at all is
// meant as it is said.
func tooTightForMillimeters(m made, lo measure.Amount) bool {
	switch m.st.Name.Quantity {
	case solver.Gap, solver.BottomGap:
	default:
		return false
	}
	return !limits(m.st.Op) && lo.Unit == measure.Bare && lo.Val.Sign() > 0 && lo.Val.Less(exact.Int(10))
}

// inchFraction reports whether a figure is one of an inch tape: quarters, eighths, sixteenths and finer, said as such.
func inchFraction(a measure.Amount) bool {
	if !a.Frac || a.Point {
		return false
	}
	for _, d := range []int64{4, 8, 16, 32, 64} {
		if n := a.Val.Mul(exact.Int(int(d))); n.IsInt() && !a.Val.Mul(exact.Int(2)).IsInt() {
			return true
		}
	}
	return false
}

// inchesMeant asks which unit a fraction has where millimeters are worked in: nobody marks 3/32 of a millimeter.
func (s *Speech) inchesMeant(m made, lo measure.Amount) *solver.Question {
	inch := m.st
	inch.Value.Num, inch.Value.Unit = lo.Val, solver.Inch
	said := solver.Fraction(lo.Val)
	return &solver.Question{Text: said + " in or " + said + " mm?", Choices: []string{inch.String(), m.st.String()}, Example: inch.String()}
}

// fused reports whether digits may be feet and inches run together by dictation: "126" for 12 foot 6. By eye only the
// likeliest are doubted, by ear all that can be.
func (s *Speech) fused(q solver.Quantity, a measure.Amount) bool {
	if a.Unit != measure.Bare || len(a.Plain) != 3 || s.Metric || a.Plain[0] != '1' {
		return false
	}
	n, ok := measure.Atoi(a.Plain)
	if !ok || n%12 == 0 || a.Plain[2] == '0' || !s.C.Ear && a.Plain[2] != '6' {
		return false
	}
	for _, f := range measure.FusedFeet(a.Plain) {
		if within(q, f) && exact.Int(24).Less(f) {
			return plausible[q][1].Cmp(exact.Int(144)) > 0 || q == solver.WallHeight
		}
	}
	return false
}

// doubtChange returns the question to ask where a change is larger than the quantity itself can be.
func (s *Speech) doubtChange(m made, a measure.Amount) *solver.Question {
	if s.Metric && m.kind == solver.Length && a.Unit == measure.Bare && inchFraction(a) {
		return s.inchesMeant(m, a)
	}
	r, known := plausible[m.st.Name.Quantity]
	if !known || m.kind == solver.Money || !r[1].Less(m.st.Value.Num) {
		return nil
	}
	return s.question(m, a, measure.Amount{})
}

// other is another way to understand a value.
type otherValue struct {
	lo, hi exact.Rat
	unit   solver.Unit
	says   string
}

// question offers the value as read and every other reading of it that is plausible.
func (s *Speech) question(m made, lo, hi measure.Amount) *solver.Question {
	read := []otherValue{{m.st.Value.Num, m.st.Upper.Num, m.st.Value.Unit, lo.Says(s.Metric)}}
	if m.kind == solver.Length {
		if s.Mixed && !s.Metric && lo.Unit == measure.Bare {
			read[0].says += " in" // beside metric lengths a bare "85" tells nothing
		}
		read = append(read, s.others(m, lo, hi)...)
	} else if m.kind == solver.Count {
		read = append(read, twins(m, lo)...)
	}
	var choices []string
	text := ""
	for i, o := range read {
		st := m.st
		st.Value.Num, st.Value.Unit = o.lo, o.unit
		if st.Op == solver.In {
			st.Upper.Num, st.Upper.Unit = o.hi, o.unit
		}
		if i > 3 {
			break
		}
		if i > 0 {
			text += " or "
		}
		text += o.says
		choices = append(choices, st.String())
	}
	q := solver.Question{Text: text + "?"}
	if len(read) == 1 {
		q = askback.ReallyMeant.Ask(text, string(m.st.Name.Quantity))
	}
	q.Choices, q.Example = choices, choices[len(choices)-1]
	return &q
}

// others lists what else a length may have been: feet, meters, millimeters, a -teen for a -ty, digits run together.
func (s *Speech) others(m made, lo, hi measure.Amount) []otherValue {
	var out []otherValue
	q := m.st.Name.Quantity
	said := lo.Val
	if lo.Per.Sign() > 0 {
		said = said.Div(lo.Per)
	}
	upper := hi.Val
	if hi.Per.Sign() > 0 {
		upper = upper.Div(hi.Per)
	}
	add := func(per exact.Rat, u solver.Unit, name string) {
		v, w := said.Mul(per), upper.Mul(per)
		if v.Eq(m.st.Value.Num) || !within(q, v) || v.Sign() <= 0 || m.st.Op == solver.In && !within(q, w) {
			return
		}
		out = append(out, otherValue{v, w, u, solver.Decimal(said) + " " + name})
		if u == solver.Inch {
			out[len(out)-1].says = solver.Fraction(said) + " " + name
		}
	}
	add(measure.Twelve, solver.Inch, "ft")
	if s.Metric {
		add(exact.Int(1), solver.Inch, "in")
	}
	add(measure.Mm(1000), solver.Millimeter, "m")
	add(measure.Mm(10), solver.Millimeter, "cm")
	add(measure.Mm(1), solver.Millimeter, "mm")
	if lo.Unit == measure.Bare && !s.Metric {
		if len(out) > 0 && out[0].says == solver.Fraction(said)+" ft" && !lo.Frac {
			out = out[:1]
		}
		for _, f := range append(measure.FusedFraction(lo.Plain), measure.FusedFeet(lo.Plain)...) {
			if within(q, f) && !f.Eq(m.st.Value.Num) && !(q == solver.WallHeight && f.Less(exact.Int(24))) {
				out = append(out, otherValue{lo: f, unit: solver.Inch, says: solver.Fraction(f) + " in"})
			}
		}
	}
	if lo.Words {
		out = append(out, twins(m, lo)...)
	}
	return out
}

// twins lists the -teen for a -ty and the -ty for a -teen.
func twins(m made, a measure.Amount) []otherValue {
	n, ok := a.Val.Int64()
	if !ok || !a.Words {
		return nil
	}
	var twin int64
	switch {
	case n >= 13 && n <= 19:
		twin = (n - 10) * 10
	case n >= 30 && n <= 90 && n%10 == 0:
		twin = n/10 + 10
	default:
		return nil
	}
	v := exact.Int(int(twin))
	if !within(m.st.Name.Quantity, v) {
		return nil
	}
	unit := m.st.Value.Unit
	says := v.String()
	if unit == solver.Inch {
		says += " in"
	}
	return []otherValue{{lo: v, unit: unit, says: says}}
}

// longWall returns the question to ask where a wall of many feet is spoken of and neither its height nor its length is
// named: "a 12 foot wall".
func (k *clause) longWall(m made) *solver.Question {
	v := m.st.Value
	if m.st.Name.Quantity != solver.WallHeight || m.st.Op != solver.Eq || m.lim.lo.Unit != measure.Feet || v.Num.Less(exact.Int(84)) || v.Of != nil || len(k.dims) > 0 || hasDim(m.lim.tail) || !k.about("wall") || len(k.things) != 1 {
		return nil
	}
	q := &solver.Question{Text: "Is the wall " + m.lim.lo.Says(false) + " high, or that long?"}
	for _, quantity := range []solver.Quantity{solver.WallHeight, solver.Span, solver.Overall} {
		st := m.st
		st.Name.Quantity = quantity
		q.Choices = append(q.Choices, st.String())
	}
	q.Example = q.Choices[1]
	return q
}
