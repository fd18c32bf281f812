package explain

import (
	"saywright/solver"
	"saywright/solver/exact"
)

// guard words that the wall is a guard, and what one must be.
func (v *voice) guard(facts []solver.Fact) string {
	if d, ok := dropOf(facts); ok {
		return "The ground beyond lies " + v.length(d) + " lower, so this wall is a guard" + v.guardRules(facts)
	}
	return "The ground beyond drops, so this wall is a guard" + v.guardRules(facts)
}

// noCode words that no published limit is in force, and when one would be.
func (v *voice) noCode(facts []solver.Fact) string {
	over := "Where the ground beyond drops"
	if f, ok := ruleOf(facts); ok {
		over += " more than " + v.length(f.Nums[0])
	}
	d, told := dropOf(facts)
	if !told {
		return "No published limit is in force, as no drop and no pool was told. " + over + " the wall is a guard" + v.guardRules(facts)
	}
	lies := "The ground beyond was told to lie no lower"
	if d.Sign() > 0 {
		lies = "The ground beyond was told to lie " + v.both(d) + " lower"
	}
	return "No published limit is in force. " + lies + ". " + over + " the wall is a guard" + v.guardRules(facts)
}

// guardRules words the limits of a guard, which the solver tells with the caution.
func (v *voice) guardRules(facts []solver.Fact) string {
	f, ok := ruleOf(facts)
	if !ok {
		return ". Local code decides."
	}
	push := number(f.Nums[3]) + " pounds"
	if v.Metric {
		push = number(f.Nums[4]) + " newtons"
	}
	return ": " + v.length(f.Nums[1]) + " high or more, no gap that lets a " + v.ball(f.Nums[2]) + " ball through, and posts that stand a push of " +
		push + " at the top. Its rails climb like a ladder. Local code decides."
}

func ruleOf(facts []solver.Fact) (solver.Fact, bool) {
	for _, f := range facts {
		if f.Key == "guard rules" && len(f.Nums) > 4 {
			return f, true
		}
	}
	return solver.Fact{}, false
}

func dropOf(facts []solver.Fact) (exact.Rat, bool) {
	for _, f := range facts {
		if f.Key == "drop" && len(f.Nums) > 0 {
			return f.Nums[0], true
		}
	}
	return exact.Rat{}, false
}
