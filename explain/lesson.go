package explain

import (
	"saywright/solver"
	"saywright/solver/exact"
)

// taught says one step of a lesson: what was right, what went wrong and how, and the next question.
func (v *voice) taught() {
	right, isRight := v.fact("right")
	wrong, isWrong := v.fact("wrong")
	_, over := v.fact("proved")
	var sums []solver.Work
	var slip string
	for _, w := range v.a.Work {
		if w.Note == "slip" {
			slip = v.sentenceSum(w.Expr)
		} else {
			sums = append(sums, w)
		}
	}
	if isRight {
		v.rightFigures(right, sums, isWrong)
	}
	if isWrong {
		v.wrongFigure(wrong, slip, sums, isRight)
	}
	if q, ok := v.fact("lesson"); ok && len(q.Names) > 1 {
		text := v.lessonQuestion(q, isRight)
		if isWrong && !isRight && len(wrong.Nums) == 1 {
			text = "So?" // the same question again
		}
		v.p.say(text, bold)
	}
	v.p.run()
	if over {
		v.proved(isRight || isWrong)
	}
}

// rightFigures says what was right, with the line that shows it.
func (v *voice) rightFigures(f solver.Fact, sums []solver.Work, more bool) {
	lead := "Right"
	if more && len(f.Nums) == 1 {
		lead = v.plainOrLength(f.Nums[0]) + " is right"
	}
	var shown string
	for _, w := range sums {
		if w.Expr.IsComparison() || w.Expr.Op == "" || toldInWords[w.Note] || afterLesson[w.Note] {
			continue
		}
		if shown != "" {
			shown += "; "
		}
		shown += v.sentenceSum(w.Expr)
	}
	switch {
	case shown == "":
	case more:
		lead += ": " + shown
	default:
		lead += ", " + shown
	}
	v.p.say(lead, good)
}

// afterLesson are lines that belong to the end of a lesson.
var afterLesson = map[string]bool{"spare": true}

// plainOrLength writes a figure of a lesson, which may be a length or a count.
func (v *voice) plainOrLength(r exact.Rat) string { return v.bare(r) }

// wrongFigure says which slip gives the wrong figure, and after the second try what is right.
func (v *voice) wrongFigure(f solver.Fact, slip string, sums []solver.Work, besideRight bool) {
	if len(f.Names) == 0 {
		return
	}
	text := v.slipOf(f, slip)
	if text == "" {
		text = "That is not it"
		if len(f.Nums) > 0 {
			text = v.plainOrLength(f.Nums[0]) + " is not it"
		}
	}
	v.p.say(text, noInk)
	if len(f.Nums) > 1 && !besideRight {
		v.p.say("It is "+v.plainOrLength(f.Nums[1]), noInk)
		v.p.lay(v.work(sums))
	}
}

// slipOf tells a slip to somebody who made it: plainly, and without blame.
func (v *voice) slipOf(f solver.Fact, slip string) string {
	shown := ""
	if slip != "" {
		shown = "That's " + slip + ", "
	}
	u := (*solver.Up)(nil)
	if v.a.Layout != nil {
		u = v.a.Layout.Up
	}
	switch f.Names[0] {
	case "nominal size":
		if name := v.a.To.Name; name != nil && aspects[name.Quantity] == aboutAlong && v.a.Layout != nil && v.a.Layout.Along != nil {
			return shown + "the name. The post is " + v.length(v.a.Layout.PostFace) + " wide"
		}
		if u != nil && u.RailSize != "" {
			return shown + "the name. A " + mark(sized, u.RailSize) + " is " + v.length(u.RailFace) + " on the face"
		}
		return shown + "the name. A board measures less than its name"
	case "bottom gap forgotten":
		if len(f.Nums) > 1 {
			return count(ints(f.Nums)[0]) + " lie between the rails; the one underneath makes " + count(ints(f.Nums)[1])
		}
		return shown + "without the gap underneath"
	case "one gap too many":
		return shown + "one gap too many"
	case "one gap too few":
		return shown + "one gap too few"
	case "post face forgotten":
		return shown + "without the post's own face"
	case "stiffeners themselves":
		return shown + "shared by the stiffeners: they leave one space more than there are of them"
	case "how many":
		return "One figure is still wanted"
	}
	return ""
}

// lessonQuestion asks the next figure.
func (v *voice) lessonQuestion(f solver.Fact, goingOn bool) string {
	n := f.Nums
	num := func(i int) int { return ints(n[i : i+1])[0] }
	switch key := f.Names[1]; {
	case key == "wood" && len(n) >= 3 && goingOn:
		return "How much of the " + v.length(n[2]) + " is wood?"
	case key == "wood" && len(n) >= 3:
		return plural(num(0), "rail", "rails") + ", wall " + v.length(n[2]) + ". How much of the " + v.length(n[2]) + " is wood?"
	case key == "left":
		return "What is left, and how many gaps share it?"
	case key == "share":
		return "So each is?"
	case key == "bays" && len(n) >= 4:
		return "The span is " + v.length(n[0]) + v.takenBy(n) + ". What is left for rails?"
	case key == "each" && len(n) >= 2:
		return count(num(1)) + " bays share it. What is each?"
	case key == "apart" && len(n) >= 2:
		return "The bay is " + v.length(n[0]) + ", with " + plural(num(1), "stiffener", "stiffeners") + ". How far apart do they stand?"
	case key == "above" && len(n) >= 2:
		return "The wall is " + v.length(n[0]) + ", and the post stands " + v.length(n[1]) + " above it. How high is the post?"
	}
	return "What comes next?"
}

// takenBy says what openings and posts take of a span.
func (v *voice) takenBy(n []exact.Rat) string {
	s := ""
	if n[1].Sign() > 0 {
		s += ", " + v.length(n[1]) + " of it stays open"
	}
	if k := ints(n[2:3])[0]; k > 0 {
		s += ", with " + plural(k, "added post", "added posts") + " of " + v.length(n[3])
	}
	return s
}

// proved ends a lesson at the proof, and at what a tape can show of it.
func (v *voice) proved(said bool) {
	if !said {
		v.p.say("That lesson is over", noInk)
		return
	}
	if w, ok := v.line("spare"); ok {
		v.p.note("Against what the brackets need, " + v.sentenceSum(w.Expr) + " to spare")
	}
	if l := v.a.Layout; l != nil && l.Up != nil {
		if name := v.a.To.Name; name != nil && aspects[name.Quantity] == aboutUp {
			v.onTape(l.Up)
		}
	}
}
