package explain

import (
	"strconv"
	"strings"

	"saywright/solver"
	"saywright/solver/exact"
)

// thing is what a quantity is called in a sentence.
type thing struct {
	a    string // with its value behind it: "a gap" of 2-1/2
	the  string // spoken of: "the gap"
	one  string // of a count, one of it: "rail"
	many string // of a count, several: "rails"
}

var things = map[solver.Quantity]thing{
	solver.WallHeight:       {a: "a wall", the: "the wall"},
	solver.Rails:            {the: "the rails", one: "rail", many: "rails"},
	solver.RailSize:         {a: "rails", the: "the rails' size"},
	solver.RailFace:         {a: "a rail face", the: "the rails' face"},
	solver.Gap:              {a: "a gap", the: "the gap"},
	solver.BottomGap:        {a: "a bottom gap", the: "the gap underneath"},
	solver.Span:             {a: "a span", the: "the span"},
	solver.Overall:          {a: "an overall length", the: "the length outside to outside"},
	solver.Centers:          {a: "end posts", the: "the end posts' centers"},
	solver.PostSize:         {a: "posts", the: "the posts' size"},
	solver.EndPostSize:      {a: "end posts", the: "the end posts' size"},
	solver.AddedPostSize:    {a: "added posts", the: "the added posts' size"},
	solver.AddedPosts:       {the: "the added posts", one: "added post", many: "added posts"},
	solver.Bays:             {the: "the bays", one: "bay", many: "bays"},
	solver.Bay:              {a: "a bay", the: "the bay"},
	solver.Opening:          {a: "an opening", the: "the opening"},
	solver.Openings:         {the: "the openings", one: "opening", many: "openings"},
	solver.OpeningFromLeft:  {a: "an opening from the left post by", the: "the opening's place from the left"},
	solver.OpeningFromRight: {a: "an opening from the right post by", the: "the opening's place from the right"},
	solver.OpeningSide:      {a: "the opening", the: "the opening's side"},
	solver.PostHeight:       {a: "a post height", the: "the post's height"},
	solver.BaseHeight:       {a: "a base", the: "the base's height"},
	solver.Stiffeners:       {the: "the stiffeners", one: "stiffener", many: "stiffeners"},
	solver.StiffenerSpacing: {a: "a stiffener spacing", the: "the stiffeners' spacing"},
	solver.StiffenerSize:    {a: "stiffeners", the: "the stiffeners' size"},
	solver.BracketEar:       {a: "a bracket ear", the: "the brackets' ear"},
	solver.BracketClearance: {a: "brackets with a clearance", the: "what the brackets need between rails"},
	solver.BracketReach:     {a: "a bracket reach", the: "the brackets' reach"},
	solver.BracketThickness: {a: "a bracket thickness", the: "the brackets' thickness"},
	solver.Fit:              {a: "a fit", the: "the fit"},
	solver.Stock:            {a: "boards", the: "the lengths on sale"},
	solver.Kerf:             {a: "a saw cut", the: "the saw cut"},
	solver.Trim:             {a: "a trim", the: "the trim"},
	solver.Spare:            {a: "spare lumber", the: "the spare lumber"},
	solver.Tape:             {a: "marks", the: "the smallest mark"},
	solver.Drop:             {a: "a drop", the: "the drop"},
	solver.FloorAtRight:     {a: "a floor at the right", the: "the floor at the right"},
	solver.Budget:           {a: "a budget", the: "the budget"},
	solver.CapSize:          {a: "a cap", the: "the cap's size"},
	solver.SlabThickness:    {a: "a slab", the: "the slab's thickness"},
	solver.EdgeDistance:     {a: "an edge distance", the: "the distance to the slab's edge"},
	solver.AnchorSize:       {a: "anchors", the: "the anchors' size"},
	solver.ScrewLength:      {a: "screws", the: "the screws' length"},
	solver.Coats:            {the: "the coats", one: "coat", many: "coats"},
	solver.Coverage:         {a: "a coverage", the: "the coverage"},
	solver.CostOf:           {a: "a cost", the: "the cost"},
	solver.Boards:           {a: "boards", the: "the boards"},
}

// thingOf finds what a name in a normal form speaks of: the name itself, or a part of it by number.
func thingOf(name string) (t thing, q solver.Quantity, part string) {
	if t, ok := things[solver.Quantity(name)]; ok {
		return t, solver.Quantity(name), ""
	}
	words := strings.Fields(name)
	if len(words) >= 2 {
		if _, err := strconv.Atoi(words[1]); err == nil {
			rest := strings.Join(words[2:], " ")
			for _, q := range []solver.Quantity{solver.Quantity(rest), solver.Quantity(strings.TrimSpace(words[0] + " " + rest))} {
				if t, ok := things[q]; ok {
					return t, q, words[0] + " " + words[1]
				}
			}
		}
	}
	for _, q := range []solver.Quantity{solver.Stock, solver.Boards} {
		if rest, ok := strings.CutPrefix(name, string(q)+" "); ok {
			return things[q], q, rest
		}
	}
	return thing{}, "", name
}

// the names what a normal form speaks of: "the gap", "bay 2", "rail 3's top".
func (v *voice) the(name string) string {
	t, q, part := thingOf(name)
	switch {
	case q == "" || t.the == "":
		return v.itself(name)
	case part == "":
		return t.the
	case q == solver.Bay || q == solver.Opening:
		return part
	case q == solver.Stock || q == solver.Boards:
		return "the " + part + " boards"
	case strings.HasPrefix(part, "bay"):
		return t.the + " in " + part
	}
	return part + "'s " + strings.TrimPrefix(t.the, "the ")
}

// itself says a name of a shape of its own.
func (v *voice) itself(name string) string {
	words := strings.Fields(name)
	switch {
	case strings.HasSuffix(name, " top") && strings.HasPrefix(name, "rail "):
		return "the top of rail " + words[1]
	case strings.HasPrefix(name, "fixed rail "):
		return "the top of rail " + words[2] + ", which is up"
	case strings.HasPrefix(name, "post ") && strings.Contains(name, " from "):
		return "post " + words[1] + "'s place from the " + words[len(words)-1]
	case strings.HasPrefix(name, "measured "):
		return v.measuredPlace(strings.TrimPrefix(name, "measured "))
	case strings.HasPrefix(name, "price "):
		return "the price of " + v.sold(strings.TrimPrefix(name, "price "))
	case strings.HasPrefix(name, "cut "):
		return v.cutPlace(strings.TrimPrefix(name, "cut "))
	case name == "marks":
		return "the marks"
	}
	return quoted(name)
}

// amount says what a quantity is held to: "48", "48 or more", "under 4", "about 48", "40 to 50".
func (v *voice) held(f form) string { return related(f.op, v.figureOf(f.value), v.figureOf(f.upper)) }

func related(op, value, upper string) string {
	switch op {
	case "<=":
		return value + " or less"
	case ">=":
		return value + " or more"
	case "<":
		return "less than " + value
	case ">":
		return "more than " + value
	case "~":
		return "about " + value
	case "in":
		return value + " to " + upper
	}
	return value
}

// phrase puts a normal form into words that can stand in a list: "six rails", "a gap of 2-1/2", "2x6 rails".
func (v *voice) phrase(s string) string {
	f := read(s)
	p := v.phraseOf(f)
	if f.wall != "" {
		p = quoted(f.wall) + ": " + p
	}
	return p
}

func (v *voice) phraseOf(f form) string {
	t, q, part := thingOf(f.name)
	if f.op != "" {
		if s, ok := v.shaped(f); ok {
			return s
		}
	}
	switch {
	case f.op == "":
		return v.goal(f.name)
	case leans(f.value):
		return v.leaning(f)
	case q == "":
		return v.itself(f.name) + " at " + v.held(f)
	case t.one != "":
		return v.counted(t, f) + inPart(part)
	case solver.KindOf(q) == solver.Size:
		return size(f.value) + " " + strings.TrimPrefix(strings.TrimPrefix(t.a, "a "), "an ")
	}
	return v.measured(t, q, part, f)
}

func inPart(part string) string {
	if part == "" {
		return ""
	}
	return " in " + part
}

// counted says a count: "six rails", "six rails or more", "five to seven rails".
func (v *voice) counted(t thing, f form) string {
	n, err := strconv.Atoi(f.value)
	if err != nil {
		return related(f.op, f.value, f.upper) + " " + t.many
	}
	name := t.many
	if n == 1 && f.upper == "" {
		name = t.one
	}
	switch f.op {
	case "<=":
		return count(n) + " " + name + " or fewer"
	case ">=":
		return count(n) + " " + name + " or more"
	case "<":
		return "fewer than " + count(n) + " " + name
	case "in":
		if m, err := strconv.Atoi(f.upper); err == nil {
			return count(n) + " to " + count(m) + " " + name
		}
	}
	return related(f.op, count(n), "") + " " + name
}

// measured says a length, and the few quantities whose words are their own.
func (v *voice) measured(t thing, q solver.Quantity, part string, f form) string {
	value := v.held(f)
	switch q {
	case solver.OpeningSide:
		return v.theOpening(part) + " " + sideWords(f.value)
	case solver.BracketClearance:
		return "brackets that need " + value + " between rails"
	case solver.FloorAtRight:
		if r, ok := length(f.value); ok && r.Sign() == 0 {
			return "a level floor"
		}
		return "the floor at the right at " + value
	case solver.Bay:
		if part == "" {
			return "bays of " + value
		}
		return part + " at " + value
	case solver.Opening:
		if part != "" {
			return part + " at " + value
		}
	case solver.OpeningFromLeft:
		return v.theOpening(part) + " " + value + " from the left post"
	case solver.OpeningFromRight:
		return v.theOpening(part) + " " + value + " from the right post"
	case solver.Stock:
		if part != "" {
			return part + " boards of " + value
		}
	case solver.Centers:
		return "end posts " + value + " center to center"
	case solver.Fit:
		return value + " of play in all"
	case solver.BaseHeight:
		return "a base that lifts the post " + value
	case solver.Kerf:
		return "a saw cut of " + value
	case solver.Tape:
		return "marks to " + value
	case solver.Spare:
		if strings.HasSuffix(f.value, "%") {
			return value + " of lumber to spare"
		}
		return value + " boards to spare"
	}
	if part != "" {
		return v.the(f.name) + " at " + value
	}
	return t.a + " of " + value
}

func (v *voice) theOpening(part string) string {
	if part == "" {
		return "the opening"
	}
	return part
}

func sideWords(side string) string {
	if side == "middle" {
		return "in the middle"
	}
	return "against the " + quoted(side) + " post"
}

// leans reports whether a value names another quantity.
func leans(value string) bool {
	if isLength(value) && !strings.Contains(value, " + ") && !strings.Contains(value, " - ") {
		return false
	}
	_, name, _ := leaning(value)
	_, q, _ := thingOf(name)
	return q != ""
}

// leaning takes "2 * gap + 1/2 in" apart.
func leaning(value string) (factor, name, more string) {
	name = value
	for _, sign := range []string{" + ", " - "} {
		if head, tail, ok := strings.Cut(name, sign); ok {
			name, more = head, strings.TrimSpace(sign)+" "+tail
			break
		}
	}
	if head, tail, ok := strings.Cut(name, " * "); ok {
		factor, name = head, tail
	}
	return factor, name, more
}

// leaning says a relation to another quantity: "the gap underneath the same as the gap", "posts 2 above the wall".
func (v *voice) leaning(f form) string {
	factor, name, more := leaning(f.value)
	other := v.the(name)
	amount := strings.TrimPrefix(strings.TrimPrefix(more, "+ "), "- ")
	switch {
	case f.name == string(solver.BottomGap) && f.value == string(solver.Gap) && f.op == "=":
		return "the same gap underneath"
	case f.name == string(solver.PostHeight) && name == string(solver.WallHeight) && factor == "" && strings.HasPrefix(more, "+") && f.op == "=":
		return "posts " + v.figureOf(amount) + " above the wall"
	case factor == "2":
		other = "twice " + other
	case factor == "1/2":
		other = "half of " + other
	case factor != "":
		other = factor + " times " + other
	}
	switch {
	case strings.HasPrefix(more, "+") && f.op == "=":
		return v.the(f.name) + " " + v.figureOf(amount) + " more than " + other
	case strings.HasPrefix(more, "-") && f.op == "=":
		return v.the(f.name) + " " + v.figureOf(amount) + " less than " + other
	case strings.HasPrefix(more, "+"):
		other += " and " + v.figureOf(amount)
	case strings.HasPrefix(more, "-"):
		other += " less " + v.figureOf(amount)
	}
	return v.the(f.name) + " " + relation(f.op) + " " + other
}

func relation(op string) string {
	switch op {
	case "<=":
		return "no more than"
	case ">=":
		return "no less than"
	case "<":
		return "less than"
	case ">":
		return "more than"
	case "~":
		return "about"
	}
	return "the same as"
}

// goal says a wish or a flag: "the smallest gap", "equal bays".
func (v *voice) goal(name string) string {
	for _, best := range []string{"smallest ", "largest ", "fewest ", "most ", "least "} {
		if strings.HasPrefix(name, best) {
			return "the " + quoted(name)
		}
	}
	switch name {
	case "same length":
		return "all rails of a bay cut to one length"
	case "even gaps":
		return "even gaps, each mark rounded by itself"
	case "cheapest":
		return "the lowest cost"
	}
	if strings.HasPrefix(name, "floor falls ") {
		return "a floor that " + v.unitFigures(strings.TrimPrefix(name, "floor "))
	}
	if strings.Contains(name, " leans ") {
		return "the " + v.unitFigures(name)
	}
	return quoted(name)
}

// unitFigures turns each length inside a form of its own shape into a figure: "leans 3/8 in right in 48 in".
func (v *voice) unitFigures(s string) string {
	words := strings.Fields(quoted(s))
	var out []string
	for i := 0; i < len(words); i++ {
		if i+1 < len(words) && (words[i+1] == "in" || words[i+1] == "mm") {
			if r, ok := length(words[i] + " " + words[i+1]); ok {
				out = append(out, v.length(r))
				i++
				continue
			}
		}
		out = append(out, words[i])
	}
	return strings.Join(out, " ")
}

// plural says a count with its noun: "one added post", "two bays".
func plural(n int, one, many string) string {
	if n == 1 {
		return count(n) + " " + one
	}
	return count(n) + " " + many
}

func ints(list []exact.Rat) []int {
	out := make([]int, len(list))
	for i, r := range list {
		n, _ := r.Int64()
		out[i] = int(n)
	}
	return out
}
