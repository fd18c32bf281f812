package solver

import (
	"slices"

	"saywright/solver/exact"
	"saywright/solver/lumber"
)

// The cautions that a layout raises, each under the key by which package explain words it. Figures are in Facts.
// The limits in inches are rules of thumb: for who works in millimeters they go through Thumb.
//
//	key              when                                              facts
//	off the floor    bottom rail under 2 in                            "limit": Nums the bottom gap, 2
//	narrow opening   an opening under 24 in                            "limit": Nums the opening, 24
//	squeeze          under 32 in                                       "limit": Nums the opening, 32
//	barrow           under 36 in                                       "limit": Nums the opening, 36; for all three its width at the floor, where a post leans in
//	leans in         a post told to lean into an opening               "narrows": see passage.go
//	stiffeners far   stiffeners more than 48 in apart                  "limit": Nums the spacing, 48, how many stiffeners
//	post low         an added post that stands less than 2 in above    "limit": Nums above the wall, 2
//	brackets touch   a gap less than 1/8 in over the clearance         "limit": Nums the gap, the clearance
//	other brackets   rails of another size than brackets are known of  "clearance": Names the size, Nums what is kept for them
//	face off         rails told much narrower or wider than their size  "face off": Names the size, a size that has that face, if any;
//	                                                                   Nums the face told, that of the size, how far off, that of the other
//	free post        an added post, held only at its foot              "posts": Nums how many
//	drilling         the same: holes in concrete
//	guard            the ground beyond drops more than 30 in           "guard rules", "drop": Nums the drop
//	guard set aside  the same, the limit settled by the person
//	guard opening    an opening in a guard
//	pool             the wall fences a pool
//	many posts       more posts than anyone would set                  "posts": Nums how many
//	long boards      a bay longer than boards usually sold             "limit": Nums the bay, the longest board
//	code             asked for cautions, with no drop and no pool that  "guard rules": Nums the drop above which a wall is a guard, its
//	                 bring limits of their own                         height, the ball, the push in pounds and in newtons;
//	                                                                   "drop": Nums the drop, where it was told
//	wind             asked for cautions
//	lumber           asked for cautions: treated wood, cut ends, wet lumber
//	tools            asked for cautions
//	utilities        asked for cautions, with added posts
const safetySource = "OSHA fact sheet on 29 CFR 1926.1153, Table 1; the anchor's own instructions decide"

// Sources of cautions, from the published values: 3.1–3.8, 3.15–3.20, 8.1, 8.4, 8.6, 8.8.
const (
	guardCaution  = "IRC 2018 R312.1 and Table R301.5; local code decides"
	poolCaution   = "ISPSC 305.2.5 and local ordinances; local code decides"
	postCaution   = "common practice: a post base is not rated to keep a post from turning over"
	lumberCaution = "IBC 2304.9.5.1, IRC R317.3.1: fasteners in treated wood"
	callCaution   = "state one-call laws: locate utilities before digging or drilling"
)

// Thumb is the limit of a rule of thumb, inches, as it is held to what a person works in: the rules are told in whole inches, and who works in millimeters
// goes by the nearest ten of them. Published limits are never rounded.
func Thumb(limit exact.Rat, metric bool) exact.Rat {
	if !metric {
		return limit
	}
	ten := exact.Int(10)
	return limit.Mul(PerInch).Div(ten).Add(exact.New(1, 2)).Floor().Mul(ten).Div(PerInch)
}

// thumb is Thumb for a limit in whole inches, as this wall is worked on.
func (v *solved) thumb(inches int) exact.Rat { return Thumb(exact.Int(inches), v.p.book.Metric()) }

func limitFact(a, b exact.Rat) []Fact { return []Fact{{Key: "limit", Nums: []exact.Rat{a, b}}} }

// tellCautions adds the cautions that a layout raises; none where it does not apply.
func (v *solved) tellCautions(a *Answer) {
	add := func(key, source string, facts ...Fact) {
		a.Cautions = addCaution(a.Cautions, Caution{Key: key, Source: source, Facts: facts})
	}
	v.guardCautions(a, add)
	if a.Layout == nil {
		return
	}
	if u := a.Layout.Up; u != nil {
		v.heightCautions(u, add)
		v.bracketCaution(u, add)
		v.faceCaution(u, add)
	}
	if al := a.Layout.Along; al != nil {
		list := v.openingsClear(al, a.Layout.Up)
		leaningCautions(a, list)
		v.lengthCautions(al, a.Layout.Up, list, add)
	}
}

func (v *solved) guardCautions(a *Answer, add func(string, string, ...Fact)) {
	if v.p.guard() {
		facts := []Fact{guardRules()}
		if d, ok := v.p.parts[Drop]; ok {
			facts = append(facts, Fact{Key: "drop", Nums: []exact.Rat{d}})
		}
		add("guard", guardCaution, facts...)
		if slices.Contains(v.p.book.aside, "guard") {
			add("guard set aside", guardCaution)
		}
		if a.Layout != nil && a.Layout.Along != nil && len(a.Layout.Openings) > 0 || v.p.spoken > 0 {
			add("guard opening", guardCaution)
		}
	}
	if v.p.pool() {
		add("pool", poolCaution)
	}
}

func (v *solved) heightCautions(u *Up, add func(string, string, ...Fact)) {
	two := v.thumb(2)
	if low := exact.Min(u.BottomGap, u.BottomGap.Add(u.Fall)); low.Less(two) {
		add("off the floor", NoSource, limitFact(low, two)...)
	}
	if u.Rails > 1 && u.Gap.Sub(u.Clearance).Less(spareRoom) {
		add("brackets touch", NoSource, limitFact(u.Gap, u.Clearance)...)
	}
}

// bracketCaution asks for a look at the brackets where the clearance was not told and the rails are not those that it is
// known for: a bracket is made for one size of board.
func (v *solved) bracketCaution(u *Up, add func(string, string, ...Fact)) {
	usual, _ := defaultOf(RailSize)
	told := slices.ContainsFunc(v.p.book.said, func(s Statement) bool { return s.Name.Quantity == BracketClearance })
	if u.Rails > 1 && u.RailSize != "" && u.RailSize != usual.Value.Word && !told {
		add("other brackets", NoSource, Fact{Key: "clearance", Names: []string{u.RailSize}, Nums: []exact.Rat{u.Clearance}})
	}
}

// ripsBeyond is how far a board's face may be off its size before it is another board, or a ripped one: wet and dry boards differ by less
// (common practice, no source).
var ripsBeyond = exact.New(1, 4)

// faceCaution warns of rails whose face was told so far off their size that the boards on the list don't have it.
func (v *solved) faceCaution(u *Up, add func(string, string, ...Fact)) {
	size, err := lumber.Find(u.RailSize)
	if err != nil || !v.says(RailFace) {
		return
	}
	off := u.RailFace.Sub(size.Face).Abs()
	if !ripsBeyond.Less(off) {
		return
	}
	f := Fact{Key: "face off", Names: []string{u.RailSize}, Nums: []exact.Rat{u.RailFace, size.Face, off}}
	if other, ok := sizeWithFace(u.RailFace, size, v.p.book.Metric()); ok {
		f.Names, f.Nums = append(f.Names, other.Name), append(f.Nums, other.Face)
	}
	add("face off", NoSource, f)
}

// sizeWithFace finds the size about as thick as another that comes nearest to a face that was told, within a sixteenth.
func sizeWithFace(face exact.Rat, like lumber.Size, metric bool) (best lumber.Size, ok bool) {
	near := exact.New(1, 16)
	for _, s := range lumber.All() {
		off := s.Face.Sub(face).Abs()
		if s.Metric == metric && s.Thickness.Sub(like.Thickness).Abs().Less(exact.New(1, 2)) && (off.Less(near) || !ok && off.Eq(near)) {
			best, near, ok = s, off, true
		}
	}
	return best, ok
}

// lengthCautions are those along the wall; list holds the openings where they are narrowest.
func (v *solved) lengthCautions(a *Along, u *Up, list []clear, add func(string, string, ...Fact)) {
	for _, o := range list {
		for _, c := range []struct {
			key  string
			most int
		}{{"narrow opening", 24}, {"squeeze", 32}, {"barrow", 36}} {
			if most := v.thumb(c.most); o.least.Less(most) {
				facts := limitFact(o.least, most)
				if o.height.Sign() != 0 {
					facts[0].Nums = append(facts[0].Nums, o.floor)
				}
				add(c.key, NoSource, facts...)
				break
			}
		}
	}
	far := v.thumb(48)
	for _, b := range a.Bays {
		if s := b.Width.Div(exact.Int(len(b.Stiffeners) + 1)); far.Less(s) {
			facts := limitFact(s, far)
			facts[0].Nums = append(facts[0].Nums, exact.Int(len(b.Stiffeners)))
			add("stiffeners far", NoSource, facts...)
			break
		}
	}
	v.boardCaution(a, add)
	if len(a.Posts) == 0 {
		return
	}
	n := Fact{Key: "posts", Nums: []exact.Rat{exact.Int(len(a.Posts))}}
	if a.PostHeight != nil && u != nil {
		if above := a.PostHeight.Sub(u.WallHeight); above.Less(v.thumb(2)) {
			add("post low", NoSource, limitFact(above, v.thumb(2))...)
		}
	}
	add("free post", postCaution, n)
	add("drilling", safetySource)
	if len(a.Posts) > mostPostsListed {
		add("many posts", NoSource, n)
	}
}

// boardCaution: the usual boards were set aside, because what was said leaves a bay longer than any of them.
func (v *solved) boardCaution(a *Along, add func(string, string, ...Fact)) {
	for _, o := range v.fields {
		for _, i := range o.dropped {
			if l := v.p.laws[i].said; l.Name.Quantity == Stock {
				widest := a.Bays[0].Width
				for _, b := range a.Bays {
					widest = exact.Max(widest, b.Width)
				}
				add("long boards", NoSource, limitFact(widest, v.p.longest(l))...)
			}
		}
	}
}

// askedCautions adds what only an answer to "what should I watch out for" tells.
func (v *solved) askedCautions(a *Answer) {
	add := func(key, source string) {
		a.Cautions = addCaution(a.Cautions, Caution{Key: key, Source: source})
	}
	v.codeCaution(a)
	add("wind", NoSource)
	add("lumber", lumberCaution)
	add("tools", NoSource)
	if a.Layout != nil && a.Layout.Along != nil && len(a.Layout.Posts) > 0 {
		add("utilities", callCaution)
	}
}
