package guard

import (
	"regexp"
	"slices"
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/grammar/hear"
	"saywright/solver"
	"saywright/solver/exact"
)

// Lines of which something is heard though something else is said: what is not asked for ("no need to tell me why the gap is what it is"), what
// is asked of the hearer's own work, help with a lift, rails that are gone, a count that reads as inches ("can I get six in there").

// countWord is a count that may stand without its noun.
const countWord = `(?:one|two|three|four|five|six|seven|eight|nine|ten|[0-9]+)`

// heardAmiss are such lines, each with what is heard of it.
var heardAmiss = []hear.OpenWay{
	{Looks: hear.KindOf(act.Ask, act.Why, act.Teach, act.ShowAll), Way: regexp.MustCompile(`\b(?:no need|do not bother|no point|no use) (?:to|in|for you to) (?:tell|telling|show|showing|explain|explaining|say|give|list|draw|read|go)\b`), Ask: askback.WhatToKnow.Open("gap 2-1/2")},
	{Looks: asksAny, Way: regexp.MustCompile(`\byour own (?:fence|wall|deck|porch|house|place|gate|garden|yard)\b`), Ask: askback.OnlyTheWall.Open("how many rails")},
	{Looks: hear.KindOf(act.Forget), Way: regexp.MustCompile(`\b(?:lift|hold|move|carry|grab|raise) (?:this|that|these|those) (?:[a-z]+|[0-9]+) (?:by|x) (?:[a-z]+|[0-9]+)`), Ask: askback.ForgetWhat.Open("forget gap")},
	{Looks: hear.Stated(solver.Span), Way: regexp.MustCompile(`\bbetween\b.*\b(?:comes?|goes?|stands?|sits?|is|are|stays?|posts) (?:one|two|three|1|2|3|another) more\b`), Ask: askback.Meant.Open("one more added post")},
	{Looks: valued, Way: regexp.MustCompile(`\bneither (?:the |my |our )?[a-z ]+ nor (?:the |my |our )?[a-z ]+ (?:is|are|equals?|measures?) `), Not: regexp.MustCompile(`\b(?:under|over|below|above|more|less) `), Ask: askback.Meant.Open("gap at most 3, bottom gap at most 3")},
	{Looks: hear.Stated(solver.Rails, solver.Opening, solver.AddedPosts, solver.Gap, solver.Stiffeners), Way: regexp.MustCompile(`\b(?:rails?|boards?|slats?|planks?|posts?|stiffeners?|[0-9/]+|` + countWord + `) (?:gone|missing|stolen)(?: now| already| again)?(?: [.!])*$`), Ask: askback.Meant.Open("one rail fewer")},
	{Looks: hear.Stated(solver.Bay), Way: regexp.MustCompile(`\bbay ` + countWord + ` [^,]*, (?:and )?(?:the )?next (?:one )?(?:is |at )?` + countWord), Ask: askback.WhichBayIs.Open("bay 2 is 50")},
	{Looks: hear.Stated(solver.Gap, solver.BottomGap, solver.WallHeight), Way: regexp.MustCompile(`^(?:and |but |so )*no more (?:rails|boards|slats|planks|posts|bays|stiffeners|brackets)\b`), Ask: askback.Meant.Open("rails at most 6")},
	{Looks: hear.KindOf(act.Check), Way: regexp.MustCompile(`\b(?:top|bottom|lowest|highest) (?:one|rail|board|slat|plank)s?\b.*\b(?:longer|shorter)\b`), Ask: askback.Meant.Open("cut list")},
	{Looks: hear.Stated(solver.BottomGap), Way: regexp.MustCompile(`\bhow (?:high|far|low|tall)(?: up)? ?(?:is|'s|does|do) (?:the|that) (?:bottom|lowest|first|low) one\b`), Ask: askback.Meant.Open("how high is the bottom rail")},
	{Looks: triesLength, Way: regexp.MustCompile(`\b(?:get|fit|put|squeeze|have|cram) ` + countWord + ` in (?:there|here|it|each|every|all|under)\b`), Ask: askback.Meant.Open("what if six rails")},
	{Looks: wideGap, Way: regexp.MustCompile(`\b(?:rails|boards|slats|planks) at (?:[0-9]|two|three|four|five|six|seven|eight|nine|ten|eleven)`), Not: regexp.MustCompile(`\b(?:gaps?|apart|spaced|spacing|spaces?)\b`), Ask: hear.OpenQuestion("Is that the gap between them, or how wide each is?", "6 rails 5-1/2 wide")},
	{Looks: hear.ChangesLength, Way: regexp.MustCompile(`\b(?:heads?|balls?|dogs?|cats?|toddlers?|kids?|fist|hand|wheelbarrow|barrow)\b.*\b(?:less|smaller|tighter|narrower|more|bigger|wider) than (?:that|this|it)\b`), Ask: askback.HowMuchIs.Open("gap under 3-1/2", "that")},
	{Looks: hear.Stated(solver.BottomGap), Way: regexp.MustCompile(`\boff (?:of )?the (?:floor|slab|ground|concrete|deck) ?,? (?:and |with )?(?:the |its )?top (?:is )?at\b`), Ask: hear.OpenQuestion("Is that the top of the wall, or of the bottom rail?", "bottom gap 2, wall 48 high")},
	{Looks: raisesCount, Way: regexp.MustCompile(`\b(?:lift|raise|lower|hoist|drop|sink|bring|move|push|shift) (?:all )?(?:the |those |these |my |our |your )?(?:rails|boards|slats|planks) (?:up |down |back )?(?:to|at)\b`), Ask: hear.OpenQuestion("How many rails, or where they sit?", "six rails", "top rail at 40")},
	{Looks: hear.KindOf(act.WhatIf), Way: regexp.MustCompile(`\b(?:once|when|after|as soon as) (?:i|we) (?:have|had|get|got|'ve)(?: got)? (?:all )?(?:the |my |our )?` + countWord + ` (?:rails|boards|slats|planks|stiffeners|posts) (?:all )?(?:cut|up|on|in|mounted|fitted|hung|done)\b`), Ask: askback.Meant.Open("what do I do first")},
	{Looks: raisesCount, Way: regexp.MustCompile(`\b(?:meter|metre|m)s? (?:[a-z]+|[0-9]+) (?:boards|lengths|rails|planks|pieces)\b`), Ask: hear.OpenQuestion("Are those counted, or of that length?", "stock 4.2 m")},
	{Looks: hear.ChangesLength, Way: regexp.MustCompile(`\b(?:closer|nearer) to (?:[0-9]|two|three|four|five|six|seven|eight|nine|ten|a (?:half|quarter)|an inch)`), Ask: askback.Meant.Open("gap about 2")},
	{Looks: hear.Stated(solver.Gap), Way: regexp.MustCompile(`\bbetween (?:the )?(?:rails|boards|slats|planks) for (?:the |my |our |those )?brackets\b`), Ask: hear.OpenQuestion("Is that the gap, or what the brackets need?", "brackets need 2")},
	{Looks: hear.KindOf(act.Open), Way: regexp.MustCompile(`\b(?:old|former|previous|earlier|original|first|last) (?:gaps?|opening|doorway|heights?|span|rails|posts?|bays?|stiffeners|size|width|figures?|numbers?)\b`), Ask: hear.OpenQuestion("Take back the last change, or open a saved wall?", "undo", "undo")},
	{Looks: tightGap, Way: regexp.MustCompile(`\bspread (?:out )?(?:all |of |the |those |these |my )*(?:rails|boards|slats|planks|them)\b.*\bapart\b`), Ask: toOrBy},
	{Looks: asksAny, Way: regexp.MustCompile(`\bwhen\b.*\b(?:ever|first) (?:built|invented|made|put up|erected)\b|\bwhen (?:was|were|did) .*\b(?:built|invented|erected|put up)\b`), Ask: askback.OnlyTheWall.Open("how many rails")},
	{Looks: hear.ChangesLength, Way: regexp.MustCompile(`\b(?:higher|taller|lower|wider|narrower|shorter|bigger|smaller) and (?:the |my |our |a )?(?:[a-z]+ ){1,2}(?:the )?(?:same|likewise|alike|as well|too)\b`), Ask: askback.Meant.Open("wall 2 higher, post 2 higher")},
	{Looks: hear.AsksTopic("steps"), Way: regexp.MustCompile(`\b(?:is|does|will|would|are) (?:the |my |our )?first (?:bay|post|rail|board|slat|opening|doorway|stiffener|gap|bracket)\b(?: \?)*$|\bfirst (?:bay|post|rail|board|opening|stiffener) (?:measure|come to|be)\b|\b(?:goes|is|fits) in (?:the )?first bay\b`), Ask: askback.WhatToKnow.Open("how wide is bay 1")},
	{Looks: triesTwo, Way: regexp.MustCompile(`\b(?:and|or|then)\b|,`), Ask: hear.OpenQuestion("Which of the two shall I try?", "what if five rails")},
	{Looks: countsFar, Way: regexp.MustCompile(`\b(?:up to|under|below|inside|within|less than|over|above) (?:[0-9]|[a-z]+)`), Ask: hear.OpenQuestion("Is that how many, or how high?", "most rails, wall under 40 high")},
	{Looks: setsOneLength, Way: regexp.MustCompile(`\b(?:raise|lower|lift|drop|widen|narrow|tighten|loosen|increase|decrease|reduce|grow|shrink|bump|open|close|heighten|shorten|enlarge)\b [^,.;]* and (?:the|my|our) (?:[a-z]+ ){1,3}(?:[0-9]|one|two|three|four|five|six|seven|eight|nine|ten)[^,.;]*$`), Not: regexp.MustCompile(`\band (?:the|my|our) (?:[a-z]+ )*(?:to|at|by|is|be|should|stays?|=) `), Ask: hear.OpenQuestion("Is the second what it shall be, or by how much it changes?", "raise the wall by 2 and the gap by 1/4")},
	{Looks: triesItsGoal, Way: regexp.MustCompile(`\bwith\b`), Ask: askback.Meant.Open("what if five rails")},
}

// wideGap reports whether a gap is set that is more like the face of a rail: "six rails at 5-1/2".
func wideGap(a act.Act) bool {
	return a.Kind == act.State && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool {
		return s.Name.Quantity == solver.Gap && s.Op == solver.Eq && s.Value.Of == nil && !s.Value.Num.Less(gapLikeFace)
	})
}

// gapLikeFace is 3-1/2 in, the face of the narrowest common rail.
var gapLikeFace = exact.Int(7).Div(exact.Int(2))

// triesLength reports whether a length is tried.
func triesLength(a act.Act) bool {
	return a.Kind == act.WhatIf && solver.KindOf(a.Statements[0].Name.Quantity) == solver.Length
}

// countsFar reports whether rails are limited to more of them than a wall commonly has: as a height it is likelier.
func countsFar(a act.Act) bool {
	return slices.ContainsFunc(a.Statements, func(s solver.Statement) bool {
		return s.Name.Quantity == solver.Rails && s.Op != solver.Eq && s.Value.Of == nil && exact.Int(15).Less(s.Value.Num)
	})
}

// tightGap reports whether a gap of less than an inch is set.
func tightGap(a act.Act) bool {
	return a.Kind == act.State && len(a.Statements) == 1 && a.Statements[0].Name.Quantity == solver.Gap && a.Statements[0].Op == solver.Eq && a.Statements[0].Value.Of == nil && a.Statements[0].Value.Num.Less(exact.Int(1))
}

// triesTwo reports whether one quantity is tried at two values at once: "the gap for five rails and for six".
func triesTwo(a act.Act) bool {
	if a.Kind != act.WhatIf {
		return false
	}
	for i, st := range a.Statements {
		if st.Op == solver.Eq && st.Name.Quantity != solver.Goal && slices.ContainsFunc(a.Statements[:i], func(s solver.Statement) bool { return s.Op == solver.Eq && s.Name == st.Name }) {
			return true
		}
	}
	return false
}

// raisesCount reports whether a count of rails of more than a wall commonly has is set: as a height it is likelier.
func raisesCount(a act.Act) bool {
	return a.Kind == act.State && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool {
		return s.Name.Quantity == solver.Rails && s.Value.Of == nil && exact.Int(10).Less(s.Value.Num)
	})
}

// triesItsGoal reports whether the best of a quantity is tried together with a value of it: "the biggest gap with five".
func triesItsGoal(a act.Act) bool {
	if a.Kind != act.WhatIf {
		return false
	}
	for _, goal := range a.Statements {
		for _, st := range a.Statements {
			if goal.Name.Quantity == solver.Goal && st.Name.Quantity != solver.Goal && strings.HasSuffix(goal.Value.Word, " "+string(st.Name.Quantity)) {
				return true
			}
		}
	}
	return false
}
