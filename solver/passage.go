package solver

import (
	"fmt"

	"saywright/solver/exact"
)

// How wide an opening is where it is narrowest: a post that leans into it takes some of it, at the foot or at the top.

// clear is an opening at its narrowest. Lengths are inches.
type clear struct {
	opening int       // from the left, from 1
	floor   exact.Rat // its width at the floor, as the layout has it
	least   exact.Rat // at its narrowest
	height  exact.Rat // how far up that is: as high as the added post beside it stands, 0 where it is nowhere narrower than at the floor
	sum     Expr      // how least is found
	lean    []string  // the posts that lean into it
}

// openingsClear are the openings of a layout, each where it is narrowest by the leans that were told.
func (v *solved) openingsClear(al *Along, up *Up) (list []clear) {
	for i, o := range al.Openings {
		c := clear{opening: i + 1, floor: o.Width, least: o.Width, sum: Num(o.Width)}
		v.leanInto(&c, al, up)
		list = append(list, c)
	}
	return list
}

func (v *solved) leanInto(c *clear, al *Along, up *Up) {
	left, right := v.leansBesideOpening(al, al.Openings[c.opening-1])
	rate := right.slope().Sub(left.slope())
	if rate.Sign() >= 0 {
		return // it is as wide all the way up, or wider
	}
	switch {
	case al.PostHeight != nil:
		c.height = *al.PostHeight
	case up != nil:
		c.height = up.WallHeight
	case left != nil: // nothing tells how high the posts are: as far as the level was held to one
		c.height = left.run
	default:
		c.height = right.run
	}
	before, after := postsBesideOpening(al, al.Openings[c.opening-1])
	if left != nil {
		c.sum = signed(c.sum, left.term(c.height), -left.over.Sign())
		if left.over.Sign() > 0 {
			c.lean = append(c.lean, before)
		}
	}
	if right != nil {
		c.sum = signed(c.sum, right.term(c.height), right.over.Sign())
		if right.over.Sign() < 0 {
			c.lean = append(c.lean, after)
		}
	}
	c.least = c.sum.Value
}

// postsBesideOpening names the posts at an opening's two sides.
func postsBesideOpening(al *Along, o Stretch) (before, after string) {
	n := 0
	for _, p := range al.Posts {
		if p.FromLeft.Less(o.FromLeft) {
			n++
		}
	}
	name := func(i int, end string) string {
		if i < 1 || i > len(al.Posts) {
			return end
		}
		return fmt.Sprintf("post %d", i)
	}
	return name(n, "left end post"), name(n+1, "right end post")
}

// leansBesideOpening are the leans that were told of those posts, nil where none was.
func (v *solved) leansBesideOpening(al *Along, o Stretch) (left, right *tilt) {
	before, after := postsBesideOpening(al, o)
	for _, st := range v.p.book.said {
		if st.Name.Quantity != PostLeans {
			continue
		}
		t, ok := tiltSaid(st)
		if !ok {
			continue
		}
		name := st.Name.At + " end post"
		if st.Name.Post > 0 {
			name = fmt.Sprintf("post %d", st.Name.Post)
		}
		switch name {
		case before:
			left = t
		case after:
			right = t
		}
	}
	return left, right
}

// leaningCautions warns of openings that a leaning post narrows; the sums stand in the work, and beside the caution.
//
//	Work note "narrowest": Of the opening, From its name
//	fact "narrows": Names the posts that lean in; Nums the opening, its width at the floor, its least, how far up that is, how many openings there are
func leaningCautions(a *Answer, list []clear) {
	c := Caution{Key: "leans in", Source: "geometry"}
	for _, o := range list {
		if o.height.Sign() == 0 {
			continue
		}
		w := Line(string(Opening), "narrowest", o.sum)
		w.From = Name{Quantity: Opening, Opening: o.opening}.String()
		c.Work = append(c.Work, w)
		c.Facts = append(c.Facts, Fact{Key: "narrows", Names: o.lean, Nums: []exact.Rat{exact.Int(o.opening), o.floor, o.least, o.height, exact.Int(len(list))}})
	}
	if len(c.Facts) > 0 {
		a.Work = append(a.Work, c.Work...)
		a.Cautions = addCaution(a.Cautions, c)
	}
}
