package explain

import "saywright/solver"

// options says every count that can hold, and what it leaves.
func (v *voice) options() {
	o := v.a.Options
	if o == nil || len(o.Up)+len(o.Along) == 0 {
		v.open()
		return
	}
	switch {
	case len(o.Up) == 1:
		v.p.say("Only "+plural(o.Up[0].Rails, "rail goes", "rails go"), good)
	case len(o.Up) > 0:
		v.p.say(countsOf(o.Up)+" rails go", good)
	}
	v.optionsTable()
	if len(o.Along) > 0 {
		v.p.hear(sentence("along the wall, " + postsOf(o.Along)))
	}
}

// countsOf lists counts: "five to seven", "five or seven".
func countsOf(list []solver.UpOption) string {
	first, last := list[0].Rails, list[len(list)-1].Rails
	if last-first == len(list)-1 && len(list) > 2 {
		return count(first) + " to " + count(last)
	}
	var words []string
	for _, o := range list {
		words = append(words, count(o.Rails))
	}
	return joined(words, "or")
}

// postsOf says how many posts can be added.
func postsOf(list []solver.AlongOption) string {
	first, last := list[0].AddedPosts, list[len(list)-1].AddedPosts
	switch {
	case first == last:
		return plural(first, "added post", "added posts")
	case last == first+1:
		return count(first) + " or " + count(last) + " added posts"
	}
	return plural(first, "added post", "added posts") + " or more"
}

// optionsTable lays the counts side by side, with the range left to each length.
func (v *voice) optionsTable() {
	o := v.a.Options
	if o == nil {
		return
	}
	v.upOptions(o)
	if len(o.Along) > 0 {
		t := newTable("posts", "bays", "<each bay", "<opening", "<stiffeners")
		for i, a := range o.Along {
			if i == mostRows && len(o.Along) > mostRows+1 && !v.a.To.Full {
				break
			}
			opening := ""
			if a.Opening != nil {
				opening = v.span(*a.Opening)
			}
			t.row(mark(plain, itoa(a.AddedPosts)), mark(plain, itoa(a.Bays)), v.span(a.Bay), opening, stiffenerRange(a.Stiffeners))
		}
		v.p.add(*t)
		if len(t.rows) < len(o.Along) {
			v.p.note("And so on, to " + count(o.Along[len(o.Along)-1].AddedPosts) + " added posts (`show it all` lists them)")
		}
	}
}

// mostUp is how many counts of rails a table shows: few beside a question, more where they were asked for.
func (v *voice) mostUp() int {
	switch {
	case v.a.To.Full:
		return len(v.a.Options.Up)
	case v.a.To.Topic == "options":
		return 2 * mostRows
	}
	return mostRows
}

// mostRows is how many numbers of posts a table shows: nobody sets more than a few.
const mostRows = 5

func stiffenerRange(list []int) string {
	switch {
	case len(list) < 2:
		return ""
	case list[0] == list[1]:
		return mark(plain, itoa(list[0]))
	}
	return mark(plain, itoa(list[0])) + " to " + mark(plain, itoa(list[1]))
}

// span says a range: "2-1/2", "2 to 2-3/5", "over 2, under 4", "2 or more".
func (v *voice) span(r solver.Range) string {
	lo, hi := r[0], r[1]
	switch {
	case lo.None && hi.None:
		return "any"
	case hi.None:
		return v.end(lo, "over ", " or more")
	case lo.None:
		return v.end(hi, "under ", " or less")
	case lo.Val.Eq(hi.Val):
		return v.length(lo.Val)
	case !lo.Open && !hi.Open:
		return v.length(lo.Val) + " to " + v.length(hi.Val)
	case lo.Open && hi.Open:
		return "over " + v.length(lo.Val) + ", under " + v.length(hi.Val)
	case hi.Open:
		return v.length(lo.Val) + " to under " + v.length(hi.Val)
	}
	return "over " + v.length(lo.Val) + " to " + v.length(hi.Val)
}

func (v *voice) end(e solver.End, open, closed string) string {
	if e.Open {
		return open + v.length(e.Val)
	}
	return v.length(e.Val) + closed
}

// heightOpen tells in a sentence, where neither the height nor the rails are known yet, what each rail adds: any number of them goes, and a table of all says
// no more. It reports whether that is so. Who asks for the options gets the table.
func (v *voice) heightOpen() bool {
	o := v.a.Options
	if v.a.Ask == nil || v.a.Ask.Key != "want height" || v.a.To.Topic == "options" || v.a.To.Full || len(o.Up) <= mostRows {
		return false
	}
	least, most := o.Up[0].Rails, o.Up[len(o.Up)-1].Rails
	if most < listed || most-least != len(o.Up)-1 {
		return false
	}
	one, many := o.Up[mostRows-2], o.Up[mostRows-1]
	text := "Without a height any number of rails goes"
	if least > 1 {
		text += ", from " + count(least) + " on"
	}
	if a, b := one.WallHeight, many.WallHeight; pointed(a) && pointed(b) {
		text += ": " + count(one.Rails) + " make a wall of " + v.both(a[0].Val) + ", " + count(many.Rails) + " one of " + v.both(b[0].Val)
	}
	if v.first("any number of rails: " + text) {
		v.p.note(text)
	}
	return true
}

// listed is where the list of options stops (answers.md).
const listed = 60

// pointed reports whether a range is one figure.
func pointed(r solver.Range) bool { return !r[0].None && !r[1].None && r[0].Val.Eq(r[1].Val) }

// upOptions lists the counts of rails that hold, and what is left to each.
func (v *voice) upOptions(o *solver.Options) {
	if len(o.Up) == 0 || v.heightOpen() {
		return
	}
	t := newTable("rails", "<gap", "<underneath", "<wall")
	for i, u := range o.Up {
		if i == v.mostUp() && len(o.Up) > v.mostUp()+1 {
			break
		}
		t.row(mark(plain, itoa(u.Rails)), v.span(u.Gap), v.span(u.BottomGap), v.span(u.WallHeight))
	}
	v.p.add(*t)
	if len(t.rows) < len(o.Up) {
		v.p.note("And so on, to " + plural(o.Up[len(o.Up)-1].Rails, "rail", "rails") + " (`show it all` lists them)")
	}
}
