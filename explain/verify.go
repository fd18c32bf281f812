package explain

import (
	"regexp"
	"slices"
	"strings"

	"saywright/solver"
	"saywright/solver/exact"
)

// checked answers claims: the verdict first, then a table, then the slips behind what is wrong.
func (v *voice) checked() {
	if f, ok := v.fact("claims clash"); ok {
		v.p.say("These contradict each other, whatever stands: "+v.phrases(f.Names), bad)
	}
	switch len(v.a.Check) {
	case 0:
		v.p.say("There is nothing to check it against yet", noInk)
	case 1:
		v.oneClaim(v.a.Check[0])
	default:
		v.manyClaims()
	}
	v.eitherWay()
	v.cautions()
}

// tooMuch are questions whether something is too much, to which a yes or a no would say the opposite of what is meant.
var tooMuch = regexp.MustCompile(`(?i)\btoo (?:many|few|much|little|high|low|tall|wide|narrow|tight|big|small|large|long|short|close)\b`)

// oneClaim answers a single claim in a sentence.
func (v *voice) oneClaim(c solver.Claim) {
	claim := v.phrase(c.Claim)
	switch {
	case c.Holds == nil:
		v.p.say("I can't judge "+claim+" from what is known", noInk)
	case *c.Holds && len(v.facts("otherwise now")) > 0:
		v.p.say("It can be: "+claim, good)
		v.setBeside()
	case *c.Holds:
		v.p.say(map[bool]string{true: "That fits: ", false: "Yes: "}[tooMuch.MatchString(v.a.Said)]+claim, good)
	default:
		text := "No"
		if s := v.shouldBeFull(c); s != "" && tooMuch.MatchString(v.a.Said) {
			text = "That won't go: " + s + " would"
		} else if s != "" {
			text += ", " + s
		} else {
			text += ", " + claim + " does not hold"
		}
		if s := slipWords(c); s != "" {
			text += ": " + s
		}
		v.p.say(text, bad)
		if r, tape := v.onlyRounded(c); tape {
			v.p.note("It is off by " + v.length(r) + ", less than a tape shows; marks made from the floor don't add that up")
		} else if s := v.offBy(c); s != "" && c.Slip == "" {
			v.p.note("It is off by " + s)
		}
	}
	v.p.lay(v.work(c.Work))
}

// onlyRounded tells by how much a claim is off that is as near as a tape shows the figure.
func (v *voice) onlyRounded(c solver.Claim) (exact.Rat, bool) {
	by, err := exact.Parse(c.By)
	_, q, _ := thingOf(read(c.Claim).name)
	if err != nil || !lengthLike(q) || by.Sign() == 0 || v.Nearest(by).Sign() != 0 {
		return by, false
	}
	return by, true
}

// setBeside tells what the layout has in the place of claims that can hold.
func (v *voice) setBeside() {
	var now []string
	for _, f := range v.facts("otherwise now") {
		switch {
		case len(f.Names) > 2:
			now = append(now, v.wordValue(f.Names[1], f.Names[2]))
		case len(f.Names) < 2 || len(f.Nums) == 0:
		case solver.KindOf(solver.Quantity(f.Names[1])) == solver.Count:
			there := "there are "
			if f.Nums[0].Eq(exact.Int(1)) {
				there = "there is "
			}
			now = append(now, there+v.figure(solver.Fact{Names: f.Names[1:], Nums: f.Nums}))
		case len(v.a.Check) == 1 && lengthLike(solver.Quantity(f.Names[1])):
			now = append(now, "it is "+v.both(f.Nums[0]))
		default:
			now = append(now, v.figure(solver.Fact{Names: f.Names[1:], Nums: f.Nums}))
		}
	}
	if len(now) > 0 {
		v.p.note("Now " + and(now))
	}
}

// manyClaims answers several: how many hold, a table, and what lies behind those that don't.
func (v *voice) manyClaims() {
	hold, fail, open := 0, 0, 0
	for _, c := range v.a.Check {
		switch {
		case c.Holds == nil:
			open++
		case *c.Holds:
			hold++
		default:
			fail++
		}
	}
	v.p.say(v.claimsVerdict(hold, fail, open), map[bool]ink{true: good, false: bad}[fail == 0])
	t := newTable("<claim", "<", "<should be", "off by")
	for _, c := range v.a.Check {
		t.row(v.phrase(c.Claim), v.claimWord(c), v.shouldBe(c), v.offBy(c))
	}
	v.p.add(*t)
	v.setBeside()
	for _, c := range v.a.Check {
		if s := slipWords(c); s != "" {
			v.p.note(v.phrase(c.Claim) + ": " + s)
		}
		v.p.lay(v.work(c.Work))
	}
}

// claimsVerdict says how it stands with several claims; one or two that fail are named with what they should be.
func (v *voice) claimsVerdict(hold, fail, open int) string {
	switch {
	case fail == 0 && open == 0 && len(v.facts("otherwise now")) > 0:
		return "All of it can be, and not all of it is so now"
	case fail == 0 && open == 0:
		return "Yes, all of it holds"
	case fail == 0 && hold == 0:
		return "None of that can be judged yet: too little is known of the wall"
	case fail == 0:
		return count(open) + " can't be judged yet" + doOr(hold, "; the other one holds", "; the rest holds")
	case fail > 2:
		return "No: " + count(fail) + " of " + count(hold+fail+open) + " don't hold"
	}
	var list []string
	for _, c := range v.a.Check {
		if c.Holds == nil || *c.Holds {
			continue
		}
		text := v.the(read(c.Claim).name) + " is another"
		if s := v.shouldBe(c); s != "" {
			text = v.the(read(c.Claim).name) + " should be " + s
		}
		list = append(list, text)
	}
	text := "No: " + and(list)
	switch {
	case open > 0:
		text += "; " + count(open) + " can't be judged yet"
	case hold > 0:
		text += "; the rest holds"
	}
	return text
}

func doOr(n int, one, many string) string {
	if n == 1 {
		return one
	}
	return many
}

func (v *voice) claimWord(c solver.Claim) string {
	switch {
	case c.Holds != nil && *c.Holds && slices.ContainsFunc(v.facts("otherwise now"), func(f solver.Fact) bool { return first(f.Names) == c.Claim }):
		return "can be"
	case c.Holds == nil:
		return "can't tell"
	case *c.Holds:
		return "holds"
	}
	return "no"
}

// shouldBe says what a claim's figure should be: exactly, and as a tape shows it.
func (v *voice) shouldBe(c solver.Claim) string {
	if c.ShouldBe == "" {
		return ""
	}
	_, q, _ := thingOf(read(c.Claim).name)
	if q == "" {
		q = solver.Quantity(strings.Fields(read(c.Claim).name)[0])
	}
	for _, op := range []string{">=", "<=", ">", "<"} {
		if rest, ok := strings.CutPrefix(c.ShouldBe, op+" "); ok {
			return related(op, v.valueOf(q, rest), "")
		}
	}
	if lo, hi, ok := strings.Cut(c.ShouldBe, ".."); ok {
		return v.valueOf(q, lo) + " to " + v.valueOf(q, hi)
	}
	var list []string
	for _, s := range strings.Split(c.ShouldBe, ", ") {
		if r, err := exact.Parse(s); err == nil && q == solver.MarksOf {
			list = append(list, mark(nearest, r.String()))
		} else {
			list = append(list, v.valueOf(q, s))
		}
	}
	return and(list)
}

// shouldBeFull is shouldBe with the nearest mark beside a figure that no tape shows.
func (v *voice) shouldBeFull(c solver.Claim) string {
	_, q, _ := thingOf(read(c.Claim).name)
	if r, err := exact.Parse(c.ShouldBe); err == nil && lengthLike(q) {
		return v.both(r)
	}
	return v.shouldBe(c)
}

func (v *voice) offBy(c solver.Claim) string {
	if c.By == "" || c.Holds == nil || *c.Holds {
		return ""
	}
	_, q, _ := thingOf(read(c.Claim).name)
	if q == "" {
		q = solver.Quantity(strings.Fields(read(c.Claim).name)[0])
	}
	if r, tape := v.onlyRounded(c); tape {
		return v.length(r)
	}
	return v.valueOf(q, c.By)
}

// slips tells the common slip that gives exactly the wrong figure.
var slips = map[string]string{
	"nominal size":           "that takes a board at its name; its face is smaller",
	"bottom gap forgotten":   "the gap underneath was left out, and it is one gap more",
	"one gap too many":       "one gap too many was counted",
	"one gap too few":        "one gap too few was counted",
	"post face forgotten":    "the post's own face was left out",
	"nominal post":           "that takes the post at its name; it measures less",
	"brackets not deducted":  "the brackets were not taken off",
	"one bracket deducted":   "only one bracket was taken off, and there are two",
	"fit forgotten":          "the play was not taken off",
	"base height forgotten":  "the base lifts the post, and that was left out",
	"as high as the wall":    "that is the wall's height, and the post stands above it",
	"hardware left out":      "the hardware was left out",
	"stiffeners themselves":  "it was shared by the stiffeners, and they leave one space more than there are of them",
	"same gap counted twice": "a gap was counted twice",
}

func slipWords(c solver.Claim) string { return slips[c.Slip] }

// eitherWay tells what stands in the way whatever was claimed.
func (v *voice) eitherWay() {
	if _, ok := v.fact("rest blocked"); !ok {
		return
	}
	for _, c := range v.a.Conflicts {
		if !slices.ContainsFunc(c.Rules, v.isClaim) {
			v.p.say("Either way it doesn't stand: "+v.dispute(c).lead(), bad)
			return
		}
	}
}

func (v *voice) isClaim(r solver.Rule) bool {
	return slices.ContainsFunc(v.a.Check, func(c solver.Claim) bool { return c.Claim == r.Says })
}
