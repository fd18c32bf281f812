package explain

import (
	"slices"

	"saywright/solver"
)

// aspect says which part of a wall a quantity is about.
type aspect uint8

const (
	aboutUp    aspect = iota + 1
	aboutAlong        // posts, bays, openings
	aboutCuts         // what a piece's length hangs on
	aboutBuying
	aboutBases
	aboutCode
	aboutSpeech // units
)

var aspects = map[solver.Quantity]aspect{
	solver.WallHeight: aboutUp, solver.Rails: aboutUp, solver.RailSize: aboutUp, solver.RailFace: aboutUp, solver.RailTop: aboutUp,
	solver.FixedRail: aboutUp, solver.Gap: aboutUp, solver.BottomGap: aboutUp, solver.BracketEar: aboutUp,
	solver.BracketClearance: aboutUp, solver.BracketReach: aboutUp, solver.FloorAtRight: aboutUp, solver.FloorFalls: aboutUp,
	solver.Tape: aboutUp,
	solver.Span: aboutAlong, solver.Overall: aboutAlong, solver.Centers: aboutAlong, solver.PostSize: aboutAlong,
	solver.EndPostSize: aboutAlong, solver.AddedPostSize: aboutAlong, solver.AddedPosts: aboutAlong,
	solver.PostFromLeft: aboutAlong, solver.PostFromRight: aboutAlong, solver.Bays: aboutAlong, solver.Bay: aboutAlong,
	solver.Opening: aboutAlong, solver.Openings: aboutAlong, solver.OpeningFromLeft: aboutAlong,
	solver.OpeningFromRight: aboutAlong, solver.OpeningSide: aboutAlong, solver.PostHeight: aboutAlong,
	solver.Stiffeners: aboutAlong, solver.StiffenerSpacing: aboutAlong, solver.StiffenerSize: aboutAlong,
	solver.Measured: aboutCuts, solver.PostLeans: aboutCuts, solver.Short: aboutCuts, solver.Fit: aboutCuts,
	solver.BracketThickness: aboutCuts, solver.BaseHeight: aboutCuts, solver.CapSize: aboutCuts,
	solver.Stock: aboutBuying, solver.Kerf: aboutBuying, solver.Trim: aboutBuying, solver.Spare: aboutBuying, solver.Price: aboutBuying,
	solver.Have: aboutBuying, solver.Extra: aboutBuying, solver.Budget: aboutBuying, solver.ScrewLength: aboutBuying,
	solver.Coats: aboutBuying, solver.Coverage: aboutBuying,
	solver.SlabThickness: aboutBases, solver.EdgeDistance: aboutBases, solver.AnchorSize: aboutBases, solver.BaseRating: aboutBases,
	solver.Drop: aboutCode, solver.Pool: aboutCode, solver.WindSpeed: aboutCode, solver.Exposure: aboutCode, solver.Species: aboutCode,
	solver.Units: aboutSpeech,
}

// aspectOf is what a statement is about; a goal is about what it wants.
func aspectOf(s solver.Statement) aspect {
	q := s.Name.Quantity
	if q == solver.Goal {
		if _, about, ok := solver.GoalOf(s); ok {
			return aspects[about]
		}
		switch s.Value.Word {
		case "equal bays":
			return aboutAlong
		case "even gaps":
			return aboutUp
		case "same length":
			return aboutCuts
		}
		return aboutBuying
	}
	return aspects[q]
}

// spoken is the set of what this line was about.
func (v *voice) spoken() map[aspect]bool {
	set := map[aspect]bool{}
	for _, s := range v.a.To.Statements {
		set[aspectOf(s)] = true
	}
	return set
}

// onlyNoted reports whether all that was said bears on no layout: it is noted, and the layout is not told again.
func (v *voice) onlyNoted() bool {
	if _, moved := v.fact("moved"); moved || v.a.To.Kind == "what if" && len(v.a.Change) > 0 {
		return false // it changed the layout, and that is told
	}
	set := v.spoken()
	return (v.a.To.Kind == "state" || v.a.To.Kind == "what if") && len(set) > 0 && !set[aboutUp] && !set[aboutAlong]
}

// whereNext is the question that shows what a note changes.
var whereNext = map[aspect]string{
	aboutCuts: "ask cuts", aboutBuying: "ask shopping", aboutBases: "ask anchors", aboutCode: "ask cautions",
}

// noted says back what was heard, and which question it bears on.
func (v *voice) noted() {
	var list []string
	for _, s := range v.a.To.Statements {
		list = append(list, v.phrase(s.String()))
	}
	set := v.spoken()
	if set[aboutSpeech] && len(set) == 1 {
		if v.Metric {
			v.p.say("Millimeters from here on", noInk)
		} else {
			v.p.say("Inches from here on", noInk)
		}
		return
	}
	text := "Noted: " + and(list)
	for _, a := range []aspect{aboutCuts, aboutBuying, aboutBases} {
		if set[a] && v.a.Layout != nil {
			text += forEye(" (`" + whereNext[a] + "` has it in)")
			break
		}
	}
	v.p.say(text, noInk)
	v.costsCompared()
}

// costsCompared tells what the lowest cost, where that is wanted, was found among.
func (v *voice) costsCompared() {
	if !v.cheapestWanted() || v.a.Layout == nil || v.a.Layout.Up == nil || v.a.Layout.Along == nil {
		return
	}
	f, ok := v.fact("cheapest of")
	if !ok || len(f.Nums) < 2 {
		v.p.say("Costs can't be compared before everything on the list has a price"+forEye(" (`ask cost` tells what has none)"), noInk)
		return
	}
	n := ints(f.Nums[:1])[0]
	switch of := plural(n, "layout", "layouts"); {
	case len(f.Names) > 0:
		text := "Prices are missing, so I went by the lumber: of " + of + " none takes less than " + v.onTapeOrExact(f.Nums[1])
		if len(f.Nums) > 2 {
			text += ", in " + plural(ints(f.Nums[2:3])[0], "board", "boards")
		}
		if len(f.Nums) > 3 && len(f.Names) > 1 {
			text += forEye(". Tell a price so: " + v.priceLine(f.Names[1], f.Nums[3]))
		} else {
			text += forEye(" (`ask cost` tells what has none)")
		}
		v.p.say(text, noInk)
	default:
		v.p.say("Of "+of+" that I worked out none costs less than "+money(f.Nums[1]), noInk)
	}
}

// cheapestWanted reports whether the lowest cost is wanted.
func (v *voice) cheapestWanted() bool {
	return slices.ContainsFunc(v.a.To.Statements, func(s solver.Statement) bool {
		return s.Name.Quantity == solver.Goal && s.Value.Word == "cheapest"
	})
}
