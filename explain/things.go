package explain

import (
	"strconv"
	"strings"

	"saywright/solver"
)

// thing is what a quantity is called in a sentence.
type thing struct {
	a    string // with its value behind it: "a gap" of 2-1/2
	the  string // spoken of: "the gap"
	one  string // of a count, one of it: "rail"
	many string // of a count, several: "rails"
}

var things = map[solver.Quantity]thing{
	solver.WallHeight:       {a: "a wall", the: "the wall"},
	solver.Rails:            {the: "the rails", one: "rail", many: "rails"},
	solver.RailSize:         {a: "rails", the: "the rails' size"},
	solver.RailFace:         {a: "a rail face", the: "the rails' face"},
	solver.Gap:              {a: "a gap", the: "the gap"},
	solver.BottomGap:        {a: "a bottom gap", the: "the gap underneath"},
	solver.Span:             {a: "a span", the: "the span"},
	solver.Overall:          {a: "an overall length", the: "the length outside to outside"},
	solver.Centers:          {a: "end posts", the: "the end posts' centers"},
	solver.PostSize:         {a: "posts", the: "the posts' size"},
	solver.EndPostSize:      {a: "end posts", the: "the end posts' size"},
	solver.AddedPostSize:    {a: "added posts", the: "the added posts' size"},
	solver.AddedPosts:       {the: "the added posts", one: "added post", many: "added posts"},
	solver.Bays:             {the: "the bays", one: "bay", many: "bays"},
	solver.Bay:              {a: "a bay", the: "the bay"},
	solver.Opening:          {a: "an opening", the: "the opening"},
	solver.Openings:         {the: "the openings", one: "opening", many: "openings"},
	solver.OpeningFromLeft:  {a: "an opening from the left post by", the: "the opening's place from the left"},
	solver.OpeningFromRight: {a: "an opening from the right post by", the: "the opening's place from the right"},
	solver.OpeningSide:      {a: "the opening", the: "the opening's side"},
	solver.PostHeight:       {a: "a post height", the: "the post's height"},
	solver.BaseHeight:       {a: "a base", the: "the base's height"},
	solver.Stiffeners:       {the: "the stiffeners", one: "stiffener", many: "stiffeners"},
	solver.StiffenerSpacing: {a: "a stiffener spacing", the: "the stiffeners' spacing"},
	solver.StiffenerSize:    {a: "stiffeners", the: "the stiffeners' size"},
	solver.BracketEar:       {a: "a bracket ear", the: "the brackets' ear"},
	solver.BracketClearance: {a: "brackets with a clearance", the: "what the brackets need between rails"},
	solver.BracketReach:     {a: "a bracket reach", the: "the brackets' reach"},
	solver.BracketThickness: {a: "a bracket thickness", the: "the brackets' thickness"},
	solver.Fit:              {a: "a fit", the: "the fit"},
	solver.Stock:            {a: "boards", the: "the lengths on sale"},
	solver.Kerf:             {a: "a saw cut", the: "the saw cut"},
	solver.Trim:             {a: "a trim", the: "the trim"},
	solver.Spare:            {a: "spare lumber", the: "the spare lumber"},
	solver.Tape:             {a: "marks", the: "the smallest mark"},
	solver.Drop:             {a: "a drop", the: "the drop"},
	solver.FloorAtRight:     {a: "a floor at the right", the: "the floor at the right"},
	solver.Budget:           {a: "a budget", the: "the budget"},
	solver.CapSize:          {a: "a cap", the: "the cap's size"},
	solver.SlabThickness:    {a: "a slab", the: "the slab's thickness"},
	solver.EdgeDistance:     {a: "an edge distance", the: "the distance to the slab's edge"},
	solver.AnchorSize:       {a: "anchors", the: "the anchors' size"},
	solver.ScrewLength:      {a: "screws", the: "the screws' length"},
	solver.Coats:            {the: "the coats", one: "coat", many: "coats"},
	solver.Coverage:         {a: "a coverage", the: "the coverage"},
	solver.CostOf:           {a: "a cost", the: "the cost"},
	solver.Boards:           {a: "boards", the: "the boards"},
}

// thingOf finds what a name in a normal form speaks of: the name itself, or a part of it by number.
func thingOf(name string) (t thing, q solver.Quantity, part string) {
	if t, ok := things[solver.Quantity(name)]; ok {
		return t, solver.Quantity(name), ""
	}
	words := strings.Fields(name)
	if len(words) >= 2 {
		if _, err := strconv.Atoi(words[1]); err == nil {
			rest := strings.Join(words[2:], " ")
			for _, q := range []solver.Quantity{solver.Quantity(rest), solver.Quantity(strings.TrimSpace(words[0] + " " + rest))} {
				if t, ok := things[q]; ok {
					return t, q, words[0] + " " + words[1]
				}
			}
		}
	}
	for _, q := range []solver.Quantity{solver.Stock, solver.Boards} {
		if rest, ok := strings.CutPrefix(name, string(q)+" "); ok {
			return things[q], q, rest
		}
	}
	return thing{}, "", name
}
