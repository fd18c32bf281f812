package solver

import "saywright/solver/exact"

// Coverage of a penetrating stain, square feet to a gallon: smooth wood 200 to 400, saw-textured or weathered 100 to 200.
const stainSource = "Wood Handbook FPL-GTR-190, chapter 16, penetrating stain"

var (
	smoothLow, smoothHigh = exact.Int(200), exact.Int(400)
	roughLow, roughHigh   = exact.Int(100), exact.Int(200)
)

// gallon is 231 cubic inches exactly (NIST Handbook 44, appendix C); a liter is a tenth of a meter cubed.
var (
	gallon = exact.Int(231)
	liter  = exact.Must("1000000").Div(PerInch.Mul(PerInch).Mul(PerInch))
)

// Finish returns the area of all faces and ends that are cut, and the stain it takes: a range by published coverage, or a
// figure where the coverage was told. One coat is taken unless told.
func (s *Site) Finish() Findings {
	cuts := s.Cuts()
	if cuts.Ask != nil || len(cuts.Conflicts) > 0 {
		return Findings{Ask: cuts.Ask, Conflicts: cuts.Conflicts}
	}
	return s.finish(cuts.Cuts)
}

func (s *Site) finish(cuts []Cut) (f Findings) {
	var total []Expr
	for _, c := range cuts {
		thick, face, ok := s.dressed(c.Size)
		if !ok {
			f.Facts = append(f.Facts, Fact{Key: "size not known", Names: []string{c.Size}})
			continue
		}
		sides := Product(Product(Tally(2), Sum(Num(thick), Num(face))), Num(c.Length))
		ends := Product(Product(Tally(2), Num(thick)), Num(face))
		area := Product(Tally(c.Count), Sum(sides, ends))
		f.Work = append(f.Work, Line(pieceName(c), "faces and ends", area))
		total = append(total, Scalar(area.Value))
	}
	if len(total) == 0 {
		return f
	}
	all := Sum(total...)
	feet := Quotient(all, Tally(144))
	f.Work = append(f.Work, Line("finish", "all faces", all), Line("finish", "square feet", feet))
	f.and(s.volume(feet.Value))
	return f
}

// volume turns an area in square feet into gallons, least and most.
func (s *Site) volume(feet exact.Rat) (f Findings) {
	coats := 1
	if s.Coats != nil {
		coats = *s.Coats
	} else {
		f.Assumed = []string{Of(Coats, Eq, Number(1)).String()}
	}
	coated := Product(Tally(coats), Scalar(feet))
	told := func(key, source string, low, high exact.Rat) {
		least, most := Quotient(coated, Scalar(high)), Quotient(coated, Scalar(low))
		f.Work = append(f.Work, sourced(Line("finish", key+" least", least), source))
		if !low.Eq(high) {
			f.Work = append(f.Work, sourced(Line("finish", key+" most", most), source))
		}
		f.Facts = append(f.Facts, Fact{Key: key, Names: []string{source}, Nums: []exact.Rat{
			feet, exact.Int(coats), low, high, least.Value, most.Value, liters(least.Value), liters(most.Value)}})
	}
	if s.Coverage != nil && s.Coverage.Sign() > 0 {
		told("coverage told", "", *s.Coverage, *s.Coverage)
		return f
	}
	told("smooth wood", stainSource, smoothLow, smoothHigh)
	told("rough wood", stainSource, roughLow, roughHigh)
	return f
}

func sourced(w Work, source string) Work {
	w.From = source
	return w
}

func liters(gallons exact.Rat) exact.Rat { return gallons.Mul(gallon).Div(liter) }

// buyFinish puts whole gallons on the list where coats were told: enough for smooth wood at its thirstiest.
func (s *Site) buyFinish(cuts []Cut, t *till) (f Findings) {
	if s.Coats == nil || *s.Coats <= 0 {
		return f
	}
	f = s.finish(cuts)
	for _, fact := range f.Facts {
		if fact.Key == "smooth wood" || fact.Key == "coverage told" {
			n, _ := fact.Nums[5].Ceil().Int64()
			t.put("finish", nil, int(n), s.priceOfPart("finish"))
		}
	}
	return f
}
