package explain

import (
	"slices"
	"strings"

	"saywright/solver"
	"saywright/solver/exact"
)

// leansIn warns of a post that leans into an opening: how wide it still is at its narrowest, and how that is reckoned.
func (v *voice) leansIn(c solver.Caution) (text string) {
	for i, f := range c.Facts {
		if f.Key != "narrows" || len(f.Nums) < 5 {
			continue
		}
		opening := "the opening"
		if !f.Nums[4].Eq(exact.Int(1)) {
			opening = "opening " + number(f.Nums[0])
		}
		var posts []string
		for _, p := range f.Names {
			posts = append(posts, postNamed(p))
		}
		leans := " leans"
		if len(posts) > 1 {
			leans = " lean"
		}
		s := upper(opening) + " is only " + v.downTo(f.Nums[2]) + " wide " + v.about(f.Nums[3]) + " up, as " + and(posts) + leans + " into it"
		if i < len(c.Work) {
			s += ": " + v.sentenceSum(c.Work[i].Expr)
		}
		text += s + ". "
	}
	if text == "" {
		return ""
	}
	added := slices.ContainsFunc(c.Facts, func(f solver.Fact) bool {
		return slices.ContainsFunc(f.Names, func(p string) bool { return strings.HasPrefix(p, "post ") })
	})
	if added {
		return text + "Set the post plumb before it is fixed, or make the opening wider by what the lean takes."
	}
	return text + "Make the opening wider by what the lean takes, if it is to be clear all the way up."
}

// narrowest tells, where an opening's width was asked for, what is left of it where a post leans into it.
func (v *voice) narrowest() {
	if v.a.To.Name == nil || v.a.To.Name.Quantity != solver.Opening {
		return
	}
	for _, c := range v.a.Cautions {
		if c.Key != "leans in" {
			continue
		}
		for i, f := range c.Facts {
			if len(f.Nums) > 3 && i < len(c.Work) {
				v.p.say("That is at the floor; "+v.about(f.Nums[3])+" up it is "+v.downTo(f.Nums[2])+": "+v.sentenceSum(c.Work[i].Expr), noInk)
			}
		}
	}
}

// postNamed says a post with its article: "the right end post", "post 1".
func postNamed(name string) string {
	if strings.HasPrefix(name, "post ") {
		return quoted(name)
	}
	return "the " + quoted(name)
}

// downTo writes a clear width: what a tape does not show is rounded down, never up.
func (v *voice) downTo(r exact.Rat) string {
	if _, on := v.Near(r); on {
		return v.length(r)
	}
	return forEye("about ") + mark(cutDown, r.String()) // aloud it says so itself
}
