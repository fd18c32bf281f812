package explain

import (
	"slices"
	"strings"

	"saywright/solver"
	"saywright/solver/exact"
)

// cautions says the warnings, each with its source where that is a published one.
func (v *voice) cautions() {
	more := false
	for _, c := range v.a.Cautions {
		if !v.warns(c) {
			continue
		}
		text := v.warned(c)
		if text == "" {
			text = quoted(c.Text)
		}
		inThese, others := v.first("worded: "+text), false
		if text == "" || !v.tellsCaution(c.Key, v.sameCaution(c)) {
			if c.Key != "free post" || !inThese || !ofSeveralPosts(c) {
				continue
			}
			others = true
			text = "These posts, too, are held only at their feet: tie their tops, or get bases made for it." // more of them than before
		}
		if hardCautions[c.Key] && v.a.Verdict != solver.Blocked {
			v.p.hear(firstSentence(text))
		}
		if brief, cut := v.inBrief(c, text, !v.first("of the kind: "+c.Key)); cut && !others {
			text, more = brief, true
		} else if published(c.Source) {
			text += forEye(" (" + quoted(c.Source) + ")")
		}
		v.p.add(para{lead: "Caution: ", text: text, ink: warning})
	}
	if more {
		v.p.note(forEye("`ask cautions` tells more of these"))
	}
}

// inBrief is a caution as it comes up by itself where the answer is to stay in sight, in a narrow terminal and, again, for other figures: its first sentence,
// without its source, and of those that begin with the danger only that. Who asks for cautions hears all of it.
func (v *voice) inBrief(c solver.Caution, text string, again bool) (string, bool) {
	if v.a.To.Full || v.a.To.Kind == "ask" && v.a.To.Name == nil && topicTold[v.a.To.Topic] == nil {
		return text, false
	}
	if !v.narrow && !again && c.Key != "drilling" {
		return text, false
	}
	brief := sentenceOf(text, ".")
	switch c.Key {
	case "free post":
		brief = strings.TrimSuffix(sentenceOf(text, ".;:"), ".") + ": I can't call it safe."
	case "drilling":
		brief = sentenceOf(text, ".;:")
	case "face off":
		return text, false // what is said of the other board is what to do
	}
	if strings.Contains(c.Source, "local code decides") && !strings.Contains(brief, "local code decides") {
		brief += " Local code decides."
	}
	return brief, brief != text || published(c.Source)
}

// sentenceOf is a text up to the first of its stops.
func sentenceOf(s, stops string) string {
	if i := strings.IndexAny(s, stops); i > 0 {
		return s[:i] + "."
	}
	return s
}

// ofSeveralPosts reports whether a caution counts more than one post.
func ofSeveralPosts(c solver.Caution) bool {
	return slices.ContainsFunc(c.Facts, func(f solver.Fact) bool {
		return f.Key == "posts" && len(f.Nums) > 0 && exact.Int(1).Less(f.Nums[0])
	})
}

// hardCautions are those that are said aloud too.
var hardCautions = map[string]bool{"guard": true, "guard opening": true, "free post": true, "pool": true, "slab too thin": true, "leans in": true}

// firstSentence is as much of a caution as is said aloud: up to its first stop.
func firstSentence(s string) string {
	if i := strings.IndexAny(s, ".;:"); i > 0 {
		return sentence(s[:i])
	}
	return sentence(s)
}

// published reports whether a source is one to name: a code, a standard, a handbook, not a habit.
func published(source string) bool {
	switch source {
	case "", solver.NoSource, "geometry", "as measured":
		return false
	}
	return !strings.HasPrefix(source, "common practice")
}

func (v *voice) fillCaution(c *solver.Caution) {
	if s := v.warned(*c); s != "" {
		c.Text = written(s, v.Style)
	}
}

// cautionsAsked answers what to watch out for.
func (v *voice) cautionsAsked() {
	if len(v.a.Cautions) == 0 {
		v.p.say("Nothing that I know of, but I can't call it safe, as "+notStrength, noInk)
		return
	}
	v.p.say("I can't call it safe, as "+notStrength, noInk)
	var same []string
	for _, c := range v.a.Cautions {
		if v.before["asked: "+v.sameCaution(c)] && !v.a.To.Full && shortCautions[c.Key] != "" {
			same = append(same, shortCautions[c.Key])
		}
	}
	things, told := plural(len(v.a.Cautions)-len(same), "thing", "things"), strings.Join(same, "; ")+forEye(" (`show it all` tells it again)")
	switch {
	case len(same) == 0:
		v.p.say(things+" to watch out for", noInk)
	case len(same) == len(v.a.Cautions):
		v.p.say("Nothing new to watch out for. As I told you: "+told, noInk)
	default:
		v.p.say(things+" to watch out for that I have not told yet", noInk)
	}
	v.cautions()
	if n := len(same); n > 0 && n < len(v.a.Cautions) {
		v.p.note("And as I told you: " + told)
	}
}

// sameCaution is what a caution is known by: its words, but one post held at its foot is the same danger as several.
func (v *voice) sameCaution(c solver.Caution) string {
	if c.Key == "free post" {
		return freePostMore
	}
	if text := v.warned(c); text != "" {
		return text
	}
	return quoted(c.Text)
}

// tellsCaution reports whether a caution is to be told in full: not again in the same words, though who asks for all of them hears even those
// that came up by themselves.
func (v *voice) tellsCaution(key, text string) bool {
	first := v.first("caution: " + text)
	if v.a.To.Topic != "cautions" {
		return first
	}
	return v.first("asked: "+text) || shortCautions[key] == ""
}

// warned words a caution, with its sums where it has some.
func (v *voice) warned(c solver.Caution) string {
	if c.Key == "leans in" {
		return v.leansIn(c)
	}
	return v.warning(c.Key, c.Facts)
}

// warning words a caution by its key; an unknown key says nothing.
func (v *voice) warning(key string, facts []solver.Fact) string {
	switch key {
	case "face off":
		return v.faceOff(facts)
	case "guard":
		return v.guard(facts)
	case "code":
		return v.noCode(facts)
	}
	for _, f := range facts {
		if len(f.Nums) > 1 && (f.Key == "limit" || f.Key == key) {
			return v.warningOf(key, f.Nums)
		}
	}
	for _, f := range facts {
		if s := v.counting(key, f); s != "" {
			return s
		}
	}
	return standingCautions[key]
}

// faceOff tells which board is bought for rails that were told narrower or wider than their size, and what that means at the saw.
func (v *voice) faceOff(facts []solver.Fact) string {
	if len(facts) == 0 || len(facts[0].Names) == 0 || len(facts[0].Nums) < 3 {
		return ""
	}
	f := facts[0]
	board, told, has, off := size(f.Names[0]), v.both(f.Nums[0]), v.length(f.Nums[1]), v.onMarkOrExact(f.Nums[2])
	other := "If it is another board, tell me its size"
	if len(f.Names) > 1 && len(f.Nums) > 3 {
		other = "A " + size(f.Names[1]) + " is " + v.length(f.Nums[3]) + ": say `rails " + f.Names[1] + "` if that is your board"
	}
	if f.Nums[1].Less(f.Nums[0]) {
		return "A " + board + " is only " + has + " on the face, and you told " + told + ": no such board gives that. " + other + "."
	}
	return "A " + board + " is " + has + " on the face, and you told " + told + ": the list buys " + board + ", and " + off + " is to be ripped off each rail. " + other + "."
}

// warningOf words a caution that has a figure and the limit beside it.
func (v *voice) warningOf(key string, n []exact.Rat) string {
	is, limit := v.both(n[0]), v.length(n[1])
	if ruleOfThumb[key] {
		limit = v.thumb(n[1])
	}
	if len(n) > 2 && (key == "narrow opening" || key == "squeeze" || key == "barrow") {
		is = v.downTo(n[0])
	}
	switch key {
	case "off the floor":
		return "The bottom rail is " + is + " off the floor; under " + limit + " it stays wet."
	case "narrow opening":
		return "The opening is " + is + "; it takes " + limit + " to walk through."
	case "squeeze":
		return is + " is a squeeze to walk through; " + limit + " is not."
	case "barrow":
		return is + " is tight for a barrow or a walking frame; they want " + limit + "."
	case "stiffeners far":
		if len(n) > 2 && n[2].Sign() == 0 {
			return "The rails run " + is + " without a stiffener; " + limit + " or less is usual."
		}
		return "The stiffeners stand " + is + " apart; " + limit + " or less is usual."
	case "post low":
		return "The post stands only " + is + " above the wall; " + limit + " is usual."
	case "brackets touch":
		if n[0].Eq(n[1]) {
			return "With gaps of " + is + " the brackets just touch: no room for error."
		}
		return "The gaps are " + is + " and the brackets need " + limit + ": hardly any room for error."
	case "long boards":
		return "A bay of " + is + " wants boards longer than " + limit + ", the longest usually sold."
	case "stiffeners apart":
		if len(n) > 2 {
			return "As bay " + number(n[0]) + " was measured its stiffeners stand " + v.both(n[1]) + " apart; " + v.length(n[2]) + " was the limit."
		}
	case "slab too thin":
		if len(n) > 3 {
			return "The slab is " + v.length(n[0]) + ", and a hole of " + v.length(n[1]) + " is deeper than the " + v.both(n[2]) +
				" that it allows without tests of the anchor; a slab of " + v.both(n[3]) + " would do. The anchor's own instructions decide."
		}
	case "edge too near":
		return "The anchor is " + is + " from the slab's edge; without the maker's figures it wants " + limit + " (from memory). Its own instructions decide."
	}
	return standingCautions[key]
}

// ruleOfThumb are the cautions whose limit is what carpenters go by, not a published one.
var ruleOfThumb = map[string]bool{"off the floor": true, "narrow opening": true, "squeeze": true, "barrow": true, "stiffeners far": true, "post low": true}

// thumb says the limit of a rule of thumb. The rules are in whole inches; in millimeters a tenth of one decides nothing, so it is told as about so many tens
// (solver.Thumb judges by the same).
func (v *voice) thumb(r exact.Rat) string {
	if !v.Metric {
		return v.length(r)
	}
	return "about " + v.length(solver.Thumb(r, true))
}

// counting words a caution that has one figure: how many posts, how far a drop.
func (v *voice) counting(key string, f solver.Fact) string {
	if len(f.Nums) != 1 {
		return ""
	}
	switch {
	case key == "free post" && f.Key == "posts" && !f.Nums[0].Eq(exact.Int(1)):
		return "The added posts are held only at their feet; a base holds a post down, not upright. " + freePostMore
	case key == "many posts" && f.Key == "posts":
		return count(ints(f.Nums)[0]) + " added posts are more than anybody would set: look at the span and the bays again."
	case key == "other brackets" && f.Key == "clearance":
		return "I kept " + v.length(f.Nums[0]) + " for the brackets; a " + size(first(f.Names)) + "'s bracket is another part: measure it."
	}
	return ""
}

const freePostMore = "Without the base's rating I can't call it safe: tie its top to the structure, or get a base made for it."

var standingCautions = map[string]string{
	"free post":           "The added post is held only at its foot; a base holds it down, not upright. " + freePostMore,
	"drilling":            "Drilling concrete makes silica dust: a shroud on the drill, and a vacuum with a HEPA filter.",
	"guard set aside":     "You had the guard's limits set aside: they block no more, and the drop is still there.",
	"pool":                "Around a pool, rails on the outside climb like a ladder, whatever the gap: as a pool barrier this wall fails. Local code decides.",
	"guard opening":       "An opening in a guard is a hole: it wants stairs or a gate.",
	"wind":                "A wall catches wind, and so does the structure it hangs on.",
	"lumber":              "Treated wood eats plain steel: hot-dip galvanized or stainless, brackets and screws alike. A cut end wants preservative. Wet lumber shrinks, and the gaps open.",
	"tools":               "Eyes, ears and lungs covered at the saw; a helper or a spacer block under a long board.",
	"utilities":           "Have buried lines located before any hole.",
	"posts leaning alike": "Two widths don't show posts that lean the same way: hold a level to each.",
	"anchor instructions": "These are general figures; the anchor's own instructions decide.",
	"base plates":         "The base's side plates reach up where the lowest bracket may want to sit: turn them away from the bay, or pre-drill.",
	"slab too thin":       "The slab is too thin for that anchor.",
	"many posts":          "That is more added posts than anybody would set.",
}
