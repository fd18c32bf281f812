package guard

import (
	"regexp"
	"slices"

	"saywright/grammar/act"
	"saywright/grammar/hear"
	"saywright/solver"
	"saywright/solver/exact"
)

// Figures that are put to the wrong thing: boards that a yard has are none that one owns, what is lost at each end of a board is lost twice, what
// brackets take up is no play of the rails, posts that stand on centers are no end posts. What may be either is asked. Common practice, no source.

// misplaced are such lines, each with what is heard of it.
var misplaced = []hear.OpenWay{
	{Looks: hear.Stated(solver.Have), Way: regexp.MustCompile(`\b(?:(?:on|in|at|from|off) (?:the|their) (?:rack|racks|stock|store|yard|shop|counter|shelf|shelves|lumberyard)|in stock|on sale|for (?:another|someone|somebody|a customer|the neighbor|other)|^they have)\b`), Not: regexp.MustCompile(`\b(?:my|our|we|i) (?:rack|shop|shelf|shelves|yard|racks)\b|\b(?:i|we) (?:already |still )?(?:(?:have|got|own|bought|picked up|found|grabbed))\b|\balready\b`), Ask: hear.OpenQuestion("Are those yours, or on sale?", "I have six 2x6 twelve footers")},
	{Looks: hear.Stated(solver.Have), Way: regexp.MustCompile(`\b(?:(?:got|have|going|need|ought) to (?:buy|get|order|pick up|haul|return|find|borrow)|use for|a (?:price|quote|deal|bid) on|room for|an eye on|my eye on)\b`), Not: regexp.MustCompile(`\b(?:else|still|no need|already)\b`), Ask: hear.OpenQuestion("Do you have them, or are they to be bought?", "I have six 2x6 twelve footers")},
	{Looks: hear.Stated(solver.BracketThickness), Way: regexp.MustCompile(`\bthick(?:ness)?(?: is| of|,)* (?:a |an )?[a-z0-9/ -]{1,20} (?:in all|total|in total|altogether|together|both ends|both sides|a pair|per pair)\b`), Ask: hear.OpenQuestion("How thick is one bracket?", "brackets are an eighth thick")},
	{Looks: fits, Way: regexp.MustCompile(`\bbrackets? (?:(?:will|would) )?(?:take|takes|use|uses|eat|eats|add|adds|cost|costs|steal|steals)\b`), Ask: hear.OpenQuestion("How thick is one bracket?", "brackets are an eighth thick")},
	{Looks: hear.Stated(solver.Trim), Way: regexp.MustCompile(`\b(?:each|both|either|every) ends?\b`), Not: regexp.MustCompile(`\b(?:a|per|each|every) (?:board|plank|stick|length)\b|\bin all\b`), Ask: hear.OpenQuestion("How much of a board in all, both ends together?", "trim an inch a board")},
	{Looks: fits, Way: regexp.MustCompile(`\b(?:cut|cuts) .*\b(?:over|oversize|proud)(?: (?:size))?(?: (?:[.!]))*$|\b(?:have|got) .*, (?:one|two|1|2) short\b`), Ask: hear.OpenQuestion("Longer or shorter, and what?", "cut the rails a quarter short")},
	{Looks: closeCenters, Way: regexp.MustCompile(`\b(?:posts?|uprights?) (?:on|at|every) .*\bcenters\b|\b(?:posts?|uprights?) .*\b(?:o ?\. ?c|on center)\b`), Not: regexp.MustCompile(`\bend posts?\b|\bcenter to center\b|\btwo posts\b|\bboth posts\b`), Ask: hear.OpenQuestion("The end posts, or those between them?", "end posts 144 center to center")},
	{Looks: limitsSpan, Way: regexp.MustCompile(`\b(?:between|apart)\b`), Not: regexp.MustCompile(`\bend posts?\b|\bend to end\b`), Ask: hear.OpenQuestion("The end posts, or every bay?", "no bay longer than 8 feet")},
	{Looks: hear.Stated(solver.Stock), Way: regexp.MustCompile(`\b(?:low|short) on\b`), Ask: hear.OpenQuestion("Are they out of them?", "they are out of tens")},
	{Looks: bottomOfOne, Way: regexp.MustCompile(`\b(?:bottom|lowest|lower) one\b`), Ask: hear.OpenQuestion("How high is it off the floor?", "bottom gap 2")},
	{Looks: hear.Stated(solver.ScrewLength), Way: regexp.MustCompile(`\bscrews ,? ?(?:two|three|four|five|six|[2-6]) (?:in|per|at|to|for|on) `), Ask: hear.OpenQuestion("How long, or how many?", "screws are 1-5/8 long")},
	{Looks: hear.Stated(solver.Spare), Way: regexp.MustCompile(`\b(?:one|two|1|2) (?:(?:board|boards|extra) )?(?:in|out of|of|per|every|for every) (?:ten|five|twenty|eight|six|[0-9]+)\b`), Not: regexp.MustCompile(`\bone in (?:ten|five|twenty|[0-9]+)\b`), Ask: hear.OpenQuestion("How many in all, or what share?", "10% spare")},
	{Looks: hear.Stated(solver.BottomGap, solver.Gap), Way: regexp.MustCompile(`\bat the bottom (?:and|but|,) (?:.*)\bat the top\b`), Not: regexp.MustCompile(`\b(?:bay|measures|measured|leans?|plumb|posts?)\b`), Ask: hear.OpenQuestion("All gaps are the same here. Which shall it be?", "gap 2-1/2")},
	{Looks: hear.Stated(solver.RailSize), Way: regexp.MustCompile(`\b(?:bottom|top|lowest|highest|first|last|second|third|middle) (?:one|rail|board|slat) (?:(?:is|as|a|of|from) )*(?:[0-9]+ x [0-9]|two (?:by|x)|one (?:by|x))`), Ask: hear.OpenQuestion("All rails have one size here. Which shall it be?", "rails 2x6")},
	{Looks: checksRails, Way: regexp.MustCompile(`\b(?:for|of) (?:` + hear.HowMany + `) (?:boards|planks|pieces|sticks|lengths)\b`), Not: regexp.MustCompile(`\b(?:high|per bay|in each|each bay|stacked)\b`), Ask: hear.OpenQuestion("Boards to buy, or rails in each bay?", "they say six rails")},
}

// fits are acts that tell or change how much shorter a rail is cut.
func fits(a act.Act) bool {
	return valued(a) && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool { return s.Name.Quantity == solver.Fit })
}

// closeCenters reports whether the end posts would stand as close as those of a bay.
func closeCenters(a act.Act) bool {
	return hear.Stated(solver.Centers)(a) && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool {
		return s.Name.Quantity == solver.Centers && !exact.Int(120).Less(s.Value.Num)
	})
}

// limitsSpan reports whether the distance between the end posts is bound to what a bay may be.
func limitsSpan(a act.Act) bool {
	return slices.ContainsFunc(a.Statements, func(s solver.Statement) bool {
		return s.Name.Quantity == solver.Span && (s.Op == solver.LE || s.Op == solver.LT) && s.Value.Of == nil && !exact.Int(120).Less(s.Value.Num)
	})
}

// bottomOfOne reports whether the gap under the lowest rail is one inch: the "one" may be the rail.
func bottomOfOne(a act.Act) bool {
	return slices.ContainsFunc(a.Statements, func(s solver.Statement) bool {
		return s.Name.Quantity == solver.BottomGap && s.Value.Of == nil && s.Value.Num.Eq(exact.Int(1))
	})
}

// checksRails reports whether a count of rails is claimed beside what it all costs.
func checksRails(a act.Act) bool {
	has := func(q solver.Quantity) bool {
		return slices.ContainsFunc(a.Statements, func(s solver.Statement) bool { return s.Name.Quantity == q })
	}
	return a.Kind == act.Check && has(solver.Rails) && has(solver.CostOf)
}
