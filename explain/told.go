package explain

import (
	"slices"

	"saywright/solver"
)

// told returns what an answer speaks of: defaults and cautions about the rest are in the data, and not in its text.
func (v *voice) told() map[aspect]bool {
	to := v.a.To
	switch to.Kind {
	case "ask", "why", "why not":
		if to.Kind != "why not" && to.Name == nil {
			return topicTold[to.Topic]
		}
		set := map[aspect]bool{}
		if to.Name != nil {
			set[aspects[to.Name.Quantity]] = true
		}
		return set
	case "check", "teach", "tolerance":
		return nil
	}
	up, along := v.parts()
	return map[aspect]bool{aboutUp: up, aboutAlong: along, aboutCode: true}
}

// topicTold says what each table speaks of.
var topicTold = map[string]map[aspect]bool{
	"":           {aboutUp: true, aboutAlong: true, aboutCode: true},
	"that":       {aboutUp: true, aboutAlong: true, aboutCode: true},
	"layout":     {aboutUp: true, aboutAlong: true, aboutCode: true},
	"options":    {aboutUp: true, aboutAlong: true},
	"marks":      {aboutUp: true},
	"spacer":     {aboutUp: true},
	"story pole": {aboutUp: true},
	"posts":      {aboutAlong: true},
	"anchors":    {aboutBases: true},
	"cuts":       {aboutCuts: true},
	"shopping":   {aboutBuying: true},
	"plan":       {aboutBuying: true},
	"cost":       {aboutBuying: true},
	"hardware":   {aboutBuying: true},
	"finish":     {aboutBuying: true},
}

// cautionAbout says what a caution is about.
var cautionAbout = map[string][]aspect{
	"off the floor": {aboutUp}, "brackets touch": {aboutUp}, "other brackets": {aboutUp}, "face off": {aboutUp, aboutBuying},
	"narrow opening": {aboutAlong}, "squeeze": {aboutAlong}, "barrow": {aboutAlong}, "stiffeners far": {aboutAlong},
	"leans in": {aboutAlong, aboutCuts}, "post low": {aboutAlong}, "many posts": {aboutAlong}, "long boards": {aboutAlong},
	"free post": {aboutAlong, aboutBases}, "drilling": {aboutAlong, aboutBases},
	"utilities": {aboutBases}, "anchor instructions": {aboutBases}, "base plates": {aboutBases}, "slab too thin": {aboutBases},
	"edge too near":       {aboutBases},
	"posts leaning alike": {aboutCuts}, "stiffeners apart": {aboutCuts},
	"lumber": {aboutBuying},
	"guard":  {aboutCode, aboutUp}, "guard set aside": {aboutCode, aboutUp}, "guard opening": {aboutCode, aboutAlong}, "pool": {aboutCode, aboutUp},
}

// concerns says which quantities an answer about one of them must warn of.
var concerns = map[string][]solver.Quantity{
	"off the floor":  {solver.BottomGap},
	"brackets touch": {solver.Gap, solver.Rails},
	"other brackets": {solver.RailSize, solver.BracketClearance}, "face off": {solver.RailFace, solver.RailSize},
	"narrow opening": {solver.Opening}, "squeeze": {solver.Opening}, "barrow": {solver.Opening}, "leans in": {solver.Opening, solver.PostLeans},
	"stiffeners far": {solver.Stiffeners, solver.StiffenerSpacing},
	"post low":       {solver.PostHeight},
	"free post":      {solver.AddedPosts, solver.PostHeight, solver.PostFromLeft, solver.PostFromRight},
	"many posts":     {solver.AddedPosts}, "long boards": {solver.Bay, solver.Bays},
	"guard":         {solver.WallHeight, solver.Gap, solver.BottomGap, solver.Drop},
	"guard opening": {solver.Opening, solver.Openings},
	"pool":          {solver.WallHeight, solver.Gap, solver.Pool},
}

// warns reports whether a caution stands in the text of this answer.
func (v *voice) warns(c solver.Caution) bool {
	to := v.a.To
	switch {
	case to.Full || to.Topic == "cautions":
		return true
	case to.Kind == "check" || to.Kind == "why not" || to.Kind == "teach" || to.Kind == "tolerance":
		return slices.ContainsFunc(to.Statements, func(s solver.Statement) bool { return slices.Contains(concerns[c.Key], s.Name.Quantity) })
	case to.Name != nil:
		return slices.Contains(concerns[c.Key], to.Name.Quantity)
	case to.Kind == "ask" && to.Topic == "steps", to.Kind == "command" && to.Topic == "next":
		return false // each step has its own
	case v.onlyNoted() && v.saysOf(solver.PostLeans) && slices.Contains(concerns[c.Key], solver.Opening):
		return c.Key != "guard opening"
	case v.onlyNoted():
		return v.spoken()[aboutCode] && slices.Contains(cautionAbout[c.Key], aboutCode)
	}
	about, known := cautionAbout[c.Key]
	told := v.told()
	return !known || slices.ContainsFunc(about, func(a aspect) bool { return told[a] })
}

// leansOn reports whether what was told hangs on a default near enough to be named.
func (v *voice) leansOn(s string) bool {
	if v.a.To.Full {
		return true
	}
	f := read(s)
	_, q, _ := thingOf(f.name)
	about := aspects[q]
	switch s {
	case "most rails":
		about = aboutUp
	case "fewest posts", "equal bays":
		about = aboutAlong
	}
	told := v.told()
	if v.a.Layout == nil && v.a.To.Kind == "state" {
		return true
	}
	switch q {
	case solver.BracketReach:
		return told[aboutUp] && (len(v.a.Marks) > 0 || v.hasLine("off the mark"))
	case solver.BracketClearance, solver.Gap:
		return told[aboutUp] && (v.cautioned("brackets touch") || slices.Contains(v.a.Assumed, "most rails") || v.a.To.Topic == "options")
	case solver.RailSize, solver.Tape:
		return told[about] || told[aboutCuts]
	case solver.StiffenerSize:
		return told[about] && len(v.a.Marks) == 0
	}
	return told[about]
}

func (v *voice) hasLine(note string) bool {
	_, ok := v.line(note)
	return ok
}

func (v *voice) cautioned(key string) bool {
	return slices.ContainsFunc(v.a.Cautions, func(c solver.Caution) bool { return c.Key == key })
}
