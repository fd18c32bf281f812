package explain

import "saywright/solver"

// askedBack words a question by its key and figures; "" for a key that is not known here.
func (v *voice) askedBack(q solver.Question) string {
	if q.Key == "want height" && v.a.Options != nil && len(v.a.Options.Up) == 1 {
		return "How high is the wall to be, or how wide the gaps?"
	}
	if q.Key == "offered" {
		return map[bool]string{true: "Do you mean this?", false: "Which of these do you mean?"}[len(q.Choices) == 1]
	}
	if q.Key == "want bays" {
		return "How wide is the opening to be, or each bay?"
	}
	if s, ok := plainQuestions[q.Key]; ok {
		return s
	}
	var f solver.Fact
	if len(q.Facts) > 0 {
		f = q.Facts[0]
	}
	if s := v.askMissing(q.Key, f); s != "" {
		return s
	}
	if s := v.askMeasured(q.Key, f); s != "" {
		return s
	}
	return v.askTalk(q, f)
}

// plainQuestions need no figure.
var plainQuestions = map[string]string{
	"want height":      "How high is the wall to be, or how many rails?",
	"want gap":         "How wide are the gaps to be, or how high the wall?",
	"want span":        "How far apart do the end posts stand?",
	"nothing said":     "What wall do you want?",
	"not UTF-8":        "From here on the line is no text that I can read. Say it again?",
	"which one":        "Which one? Say its number.",
	"dropped":          "Dropped, and nothing is changed. What next?",
	"nothing to undo":  "There is nothing to take back. What next?",
	"nothing to redo":  "There is nothing to bring back. What next?",
	"nothing tried":    "Nothing was tried that I could keep. What do you want to try?",
	"nothing blocked":  "Nothing is in the way that wants a way out. What do you want to know?",
	"nothing answered": "There is nothing to show yet. What do you want to know?",
	"nothing to save":  "Nothing stands that I could save. What wall do you want?",
	"no lesson":        "What is that figure meant to be?",
	"no steps yet":     "There is no wall to build yet. How high, and how far between the posts?",
	"one wall":         "That speaks of two walls at once. Which one is to be tried?",
}

// Wanted names the quantities that an answer's question asks for: any one of them answers it.
func Wanted(a *solver.Answer) []solver.Name {
	if a.Ask == nil {
		return nil
	}
	of := func(list ...solver.Quantity) (names []solver.Name) {
		for _, q := range list {
			names = append(names, solver.Name{Quantity: q})
		}
		return names
	}
	switch a.Ask.Key {
	case "want height":
		if a.Options != nil && len(a.Options.Up) == 1 {
			return of(solver.WallHeight, solver.Gap)
		}
		return of(solver.WallHeight, solver.Rails)
	case "want gap":
		return of(solver.Gap, solver.WallHeight)
	case "want bays":
		return of(solver.Opening, solver.Bay)
	case "want span":
		return of(solver.Span)
	case "layout first", "slab first":
		var list []solver.Quantity
		for _, f := range a.Ask.Facts {
			if f.Key == "missing" {
				for _, n := range f.Names {
					list = append(list, solver.Quantity(n))
				}
			}
		}
		return of(list...)
	}
	return nil
}

func first(list []string) string {
	if len(list) == 0 {
		return ""
	}
	return list[0]
}

// askMissing asks for what must be known first.
func (v *voice) askMissing(key string, f solver.Fact) string {
	var names []string
	for _, n := range f.Names {
		names = append(names, v.wanted(n))
	}
	switch key {
	case "layout first":
		return "For that I need " + and(names) + " first. What is it?"
	case "slab first":
		return "Before any depth I need " + and(names) + ". What is it?"
	case "prices first":
		return "A budget wants prices, and none was told. What do they cost?"
	case "height first":
		return "Where on the wall was that measured? Tell me the wall's height first, or the rails."
	case "too much to try":
		return "I tried long and found neither a layout nor the rule that stops it. What else is known of it?"
	case "too many rules":
		if len(f.Nums) > 0 {
			return "That is more than the " + number(f.Nums[0]) + " rules that I can hold at once. Which may go?"
		}
	case "no boards":
		if len(f.Names) > 0 && len(f.Nums) > 0 {
			return "No " + size(f.Names[0]) + " is on sale or at hand, and the longest piece is " + v.length(f.Nums[0]) + ". Which lengths are there?"
		}
	case "no plan":
		return "I found no way to cut that. What may change?"
	}
	return ""
}

// wanted names what is missing, as a person would ask for it.
func (v *voice) wanted(name string) string {
	switch solver.Quantity(name) {
	case solver.WallHeight:
		return "the wall's height"
	case solver.Span:
		return "the span between the end posts"
	}
	return v.the(name)
}

// askMeasured asks about a measurement that cannot be as it was said.
func (v *voice) askMeasured(key string, f solver.Fact) string {
	two := func() (string, string) { return v.measuredName(f.Names[0]), v.itself(read(f.Names[1]).name) }
	switch {
	case key == "neighbors apart" && len(f.Names) > 1 && len(f.Nums) > 2:
		a, b := two()
		return a + " measures " + v.length(f.Nums[0]) + " and " + b + " " + v.length(f.Nums[1]) + ": they differ by " +
			v.length(f.Nums[2]) + ", more than a leaning post makes. Which one is right?"
	case key == "leans and widths" && len(f.Nums) > 2:
		return "The widths say the bay changes by " + v.length(f.Nums[0]) + ", and the leans by " + v.length(f.Nums[1]) + ". Which is right?"
	case key == "span missed" && len(f.Nums) > 2:
		return "As measured it comes to " + v.length(f.Nums[0]) + " along the wall, and the span is " + v.length(f.Nums[1]) + ": " +
			v.length(f.Nums[2].Abs()) + " apart. Which one is right?"
	case key == "no such bay" && len(f.Nums) > 1:
		return "There is no bay " + number(f.Nums[0]) + ": the wall has " + plural(ints(f.Nums)[1], "bay", "bays") + ". Which one was it?"
	case key == "no such rail" && len(f.Nums) > 1:
		return "There is no rail " + number(f.Nums[0]) + ": the wall has " + plural(ints(f.Nums)[1], "rail", "rails") + ". Which one was it?"
	case key == "no such opening" && len(f.Nums) > 1:
		return "There is no opening " + number(f.Nums[0]) + ": the wall has " + plural(ints(f.Nums)[1], "opening", "openings") + ". Which one was it?"
	case key == "width not positive" && len(f.Nums) > 0:
		return v.measuredName(first(f.Names)) + " can't be " + v.length(f.Nums[0]) + " wide. What does it measure?"
	case key == "bad figure" && len(f.Names) > 1 && len(f.Nums) > 0:
		return upper(v.the(f.Names[1])) + " can't be " + v.length(f.Nums[0]) + ". What is it?"
	case key == "short by how much" && len(f.Nums) > 0:
		return "That would leave " + v.length(f.Nums[0]) + " of the rail. By how much did it come out short?"
	}
	return ""
}

// measuredName says where a measurement was taken: "bay 1 at the bottom", "rail 3 of bay 1".
func (v *voice) measuredName(form string) string {
	return upper(v.itself(read(form).name))
}

// askTalk asks where a command has nothing to act on.
func (v *voice) askTalk(q solver.Question, f solver.Fact) string {
	name := quoted(first(f.Names))
	reason := ""
	if len(f.Names) > 1 {
		reason = quoted(f.Names[1])
	}
	switch q.Key {
	case "at hand":
		return v.askAtHand(q, f.Names)
	case "too long":
		if len(f.Nums) > 0 {
			return "That line is longer than the " + number(f.Nums[0]) + " characters that I read. Can you say it in parts?"
		}
	case "nothing to change":
		return "Nothing was said of " + v.the(name) + ", so there is nothing to change. What is it to be?"
	case "cannot change":
		return "That can't be changed so: " + reason + ". What is it to be?"
	case "not known there":
		return "I don't know " + v.the(name) + " there yet. What is it?"
	case "fewer ways":
		if len(f.Nums) > 1 {
			return "There is no way " + number(f.Nums[0]) + "; I told " + number(f.Nums[1]) + ". Which one?"
		}
	case "nothing to forget":
		return "Nothing like that stands. What is to go?"
	case "not saved":
		return "Nothing is saved as " + name + v.savedNames(q) + ". Which one?"
	case "cannot save":
		return "It could not be saved as " + name + ": " + reason + ". Another name?"
	case "cannot open":
		return "It could not be opened as " + name + ": " + reason + ". Another name?"
	case "cannot write":
		return "It could not be written: " + quoted(f.Names[len(f.Names)-1]) + ". Where else?"
	case "file in the way":
		if reason == "" {
			reason = "it is no drawing of mine"
		}
		return "I won't write over " + name + ": " + reason + ". Another name?"
	case "nothing to draw":
		return "There is nothing to draw yet: how high is the wall, and how far apart are the posts?"
	case "same wall":
		return "That is this very wall. Which other one?"
	case "nothing to teach":
		return "For a lesson on " + v.the(name) + " I need a wall that has one. What wall is it?"
	}
	return ""
}

// savedNames tells what is saved, where that is not among the choices.
func (v *voice) savedNames(q solver.Question) string {
	for _, f := range q.Facts {
		if f.Key != "saved" || len(q.Choices) > 0 {
			continue
		}
		var list []string
		for _, n := range f.Names {
			list = append(list, quoted(n))
		}
		if len(list) > 0 {
			return "; there is " + and(list)
		}
		return "; nothing is saved yet"
	}
	return ""
}
