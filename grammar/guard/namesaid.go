package guard

import (
	"regexp"
	"slices"
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/grammar/hear"
	"saywright/solver"
)

// What is taken for the name of a wall and is none, and pages that nobody asked for. A name that goes on as a wish or a choice ("open porch with six
// boards", "save it as porch or deck") may hold something that is wanted; "call it good" saves nothing; who will read out the cuts does not
// ask for them. It is asked back. Common ways of speech, no source.

var (
	whichName    = askback.WhichName.Open("save porch")
	nameByItself = hear.OpenQuestion("What is the name? Please say the rest by itself.", "open porch, then six boards")
	whichPlan    = askback.WhichPlan.Open("same as porch")
	whichTwo     = askback.CompareTwo.Open("compare porch, shed")
	likeWhich    = hear.OpenQuestion("Is that like a wall that was saved?", "same as porch, then six boards")
	shallShow    = askback.WhatToKnow.Open("show me the cuts")
)

// nameSaid are such lines, each with what is heard of it.
var nameSaid = []hear.OpenWay{
	// Names that swallow what is said behind them.
	{Looks: namesMore, Way: regexp.MustCompile(`\b(?:with|without|but|then|or|not|plus|less|minus|except|only|too|over|in|at|by|to)\b`), Ask: nameByItself},
	{Looks: hear.KindOf(act.Save), Way: regexp.MustCompile(`\bfor (?:my|our|his|her|their) [a-z]+(?: [.!])*$|\b(?:name|call)(?: it| this| that)? after\b`), Ask: whichName},
	{Looks: savesThing, Way: regexp.MustCompile(`\b(?:save|call|store|keep|name|stay|file)\b`), Ask: whichName},
	{Looks: hear.KindOf(act.Save), Way: regexp.MustCompile(`\bstay(?:s|ing)? (?:under|below|within)\b`), Ask: askback.Meant.Open("gap under 4")},
	{Looks: hear.KindOf(act.SameAs), Way: regexp.MustCompile(`\bcopy (?:the )?[a-z ]+ (?:to|onto|over to|into)\b`), Ask: hear.OpenQuestion("Which of them is the wall at hand?", "same as porch")},
	{Looks: valued, Way: regexp.MustCompile(`^(?:(?:just|exactly|so|ok|do it|make it|build it) )*(?:like|same as) (?:the |our |my )?[a-z]+(?: [a-z]+)?(?: ,)? (?:but|except|only|with|without|plus|minus|less)\b`), Not: regexp.MustCompile(`\bwall\b`), Ask: unlessLike},
	{Looks: opensSeveral, Way: regexp.MustCompile(`\b(?:open|load|save|same as|like|copy|call|bring|pull|show|get|keep|name|store)\b`), Ask: whichName},
	{Looks: hear.KindOf(act.SameAs), Way: regexp.MustCompile(`\b(?:as|like) (?:yesterday|mine|yours|his|hers|the (?:drawing|sketch|sheet|plan|picture|blueprint)|last (?:time|week|year)|before|above)(?: [.!])*$`), Ask: whichPlan},
	{Looks: anyWord, Way: regexp.MustCompile(`\bsame (?:gaps?|spacing|height|opening|span|bays|rails|boards|size|posts) (?:as|like) (?:the |our |my )?(?:north|south|east|west|front|back|old|other|first|second|left|right|porch|deck|shed|house|garden|street|side) wall\b`), Ask: hear.OpenQuestion("And how much is that, in inches?", "gap 2-1/2")},
	{Looks: valued, Way: regexp.MustCompile(`^(?:(?:use|take|do|the|make it|ok|so) )*(?:porch|deck|shed|patio|veranda|barn|garage|cabin|sunroom) (?:but|with|without|except|minus|plus|only)\b`), Ask: unlessLike},

	// What is compared that are no two walls.
	{Looks: comparesOther, Way: regexp.MustCompile(`\b(?:compare|comparing|difference|differ|versus|vs|better|cheaper|which)\b`), Ask: whichTwo},

	// Pages that are not asked for.
	{Looks: asksAny, Way: regexp.MustCompile(`\bspare (?:me|us) (?:the|all|your|that|those) (?:[a-z]+ )?(?:drawing|list|cuts|marks|layout|steps|cautions|shopping|price|cost)\b`), Ask: shallShow},
	{Looks: asksAny, Way: regexp.MustCompile(`^(?:but |and |so )?no (?:rails|boards|slats|planks|posts|stiffeners|brackets|screws) (?:on|in) (?:the|that|my|this)\b`), Ask: askback.WhatToKnow.Open("what do I need to buy")},
	{Looks: asksAny, Way: regexp.MustCompile(`\b(?:i|we) (?:will|can|could|shall|'ll) (?:just )?(?:read|tell|give|send|spell) (?:you|out|off)\b|\bshall (?:i|we) (?:just )?(?:read|tell|give) you\b|\blet (?:me|us) (?:just )?(?:read|tell|give|send|spell) (?:you|out|off)\b`), Not: regexp.MustCompile(`\b(?:what|how|which|where)\b`), Ask: hear.OpenQuestion("Shall I tell them, or will you?", "show me the cuts")},
	{Looks: tells(solver.Units), Way: regexp.MustCompile(`\b(?:drawing|sketch|plan|picture|sheet|list|print)(?: is| 's) in\b`), Not: regexp.MustCompile(`\b(?:so|then|work|use|switch|make)\b`), Ask: hear.OpenQuestion("Shall I work in it?", "work in millimeters")},
	{Looks: checksNone, Way: regexp.MustCompile(`^(?:but |and |so )?no (?:rails|boards|slats|planks|posts|stiffeners|brackets|screws) (?:on|in) (?:the|that|my|this) (?:drawing|list|sketch|plan)\b`), Ask: hear.OpenQuestion("Shall there be none, or did you miss them there?", "no stiffeners")},
	{Looks: hear.AsksTopic("drawing"), Way: regexp.MustCompile(`\b(?:drawing|sketch|plan|picture|sheet)(?: is| 's) (?:in|wrong|off|right|old|new|not|to)\b`), Ask: hear.OpenQuestion("Shall I draw it, or which figures does the drawing have?", "work in millimeters")},
	{Looks: hear.AsksTopic("steps"), Way: regexp.MustCompile(`\buse (?:up )?(?:what|the (?:boards|lumber|wood|stuff|ones)) (?:i|we)\b`), Ask: hear.OpenQuestion("What do you have? Please tell how many, of which size, how long.", "I have six 2x6s, 12 ft long")},
	{Looks: asksPage, Way: regexp.MustCompile(`\bhow many [a-z0-9 -]+ (?:have (?:i|we) (?:got)?|do (?:i|we) (?:already )?(?:have|own))(?: (?:left|got|already|on hand|at hand))?(?: \?)?$|\b(?:at|on) hand(?: \?)?$`), Ask: hear.OpenQuestion("Shall I say what to buy, or what you told me?", "what have I told you", "ask shopping", "recap")},
	{Looks: valued, Way: regexp.MustCompile(`\bwhat (?:do|did|does) (?:you|he|she|they) mean (?:,|by)`), Ask: hear.OpenQuestion("Is that wanted?", "six boards")},
	{Looks: checksBoards, Way: regexp.MustCompile(`\b(?:store|yard|shop|lumberyard|place|they|he|she|mill|guy|man)\b.*\b(?:in stock|on the (?:rack|racks|shelf|shelves)|left|on hand|out back)\b`), Ask: hear.OpenQuestion("Is that what they sell, or what is to be bought?", "they sell twelves")},
	{Looks: checksBoards, Way: regexp.MustCompile(`^(?:and |but |so )?(?:the|my|our) (?:store|yard|shop|lumberyard|mill)(?: has| have| 's got| got) `), Ask: hear.OpenQuestion("Is that what they sell, or what is to be bought?", "they sell twelves")},
	{Looks: asksPage, Way: regexp.MustCompile(`\b(?:do|have) (?:i|we) (?:have|got) left\b|\bsave (?:me|us) the\b`), Ask: shallShow},
	{Looks: hear.KindOf(act.TakeThat), Way: regexp.MustCompile(`\bkeep it (?:simple|short|down|up|real|cheap|small|light|low|plain|clean|tidy|neat|quick|brief)\b`), Ask: askback.Meant.Open("fewest rails")},
}

// unlessLike asks which wall it is to be like where that was not heard.
func unlessLike(a act.Act, all []act.Act) solver.Question {
	if slices.ContainsFunc(all, hear.KindOf(act.SameAs)) {
		return solver.Question{}
	}
	return likeWhich(a, all)
}

// opensSeveral reports whether what is opened, or what this wall is to be like, is more than one wall, or goes on behind its name.
func opensSeveral(a act.Act) bool {
	switch a.Kind {
	case act.Save, act.Open, act.SameAs:
		return slices.ContainsFunc(a.Words, func(w string) bool { return severalNames.MatchString(strings.ToLower(w)) })
	}
	return false
}

// severalNames are the names of several walls, and those that go on as something else.
var severalNames = regexp.MustCompile(`^both | (?:plan|one|wall|design|version) for | (?:four|five|six|seven|[0-9]+) (?:rails?|boards?|slats?|posts?|bays?|stiffeners?)$| (?:first|after that|- .*)$| (?:when|if|once|after|before|unless|until) |^one of |^(?:wider|cheap|cheaper|cheapest|bigger|smaller|taller|higher|lower|longer|shorter|newer|newest|latest|better|best|any|all|some)$`)

// checksNone reports whether it is claimed that there are none of a part.
func checksNone(a act.Act) bool {
	return a.Kind == act.Check && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool {
		return s.Op == solver.Eq && s.Value.Of == nil && s.Value.Num.Sign() == 0 && solver.KindOf(s.Name.Quantity) == solver.Count
	})
}

// namesKnown reports whether walls are named, and each of them is known or stands in quotation marks: those are names whatever they are.
func namesKnown(acts []act.Act, said string, c act.Context) bool {
	n := 0
	for _, a := range acts {
		for _, w := range a.Words {
			same := func(name string) bool { return strings.EqualFold(name, w) }
			if !slices.ContainsFunc(c.Saved, same) && !slices.ContainsFunc(c.Walls, same) && !strings.Contains(strings.ToLower(said), `"`+strings.ToLower(w)+`"`) && !strings.Contains(strings.ToLower(said), `" `+strings.ToLower(w)+` "`) {
				return false
			}
			n++
		}
	}
	return n > 0
}

// goesOnWord are words that go on behind a name, and say something else.
var goesOnWord = regexp.MustCompile(`\b(?:with|without|but|then|or|not|plus|less|minus|except|only|too|over|in|at|by|to)\b`)

// namesMore reports whether the name of a wall holds more than a name.
func namesMore(a act.Act) bool {
	switch a.Kind {
	case act.Save, act.Open, act.SameAs, act.Compare:
		return slices.ContainsFunc(a.Words, func(w string) bool { return goesOnWord.MatchString(w) })
	}
	return false
}

// nothingSaved are what is saved that is no name.
var nothingSaved = regexp.MustCompile(`^(?:price|gap|rails|somewhere|twice|again|everything|all|all of .*|both|changes|my place|place|old one|wall|rest|new|copy|text|.* (?:high|wide|tall)|(?:four|five|six|seven|[0-9]+) (?:boards|rails)|good|enough|quits|done|even|fair|square|a day|day|off|face|room|space|time|money|trouble|it|pdf|csv|png|jpg|svg|html|file|files|picture|image|boards?|rails?|posts?|wood|lumber|drawing|cuts?|marks?|list|layout|steps|[a-z]+ list|drawings?|plans?|sketch|four|five|six|seven|eight|nine|ten|after [a-z]+|room for .*|(?:the )?(?:list|drawing|cuts|layout|marks) .*)$`)

func savesThing(a act.Act) bool {
	return a.Kind == act.Save && slices.ContainsFunc(a.Words, func(w string) bool { return nothingSaved.MatchString(strings.ToLower(w)) })
}

// nothingCompared are what is compared that is no wall.
var nothingCompared = regexp.MustCompile(`^(?:left|right|top|bottom|bays? [a-z0-9]+|metric|inches|millimeters|units|.* as csv|(?:the )?(?:costs?|price|prices|cuts?|gap|gaps|opening|span|overall|centers|height|bay|bays|wall height|rails?|posts?|stiffeners?|bottom gap|kerf|fit|drop|tape|spare|trim|budget|before|after|cost of .*|price of .*|sixes|eights|tens|twelves|fourteens|sixteens|twenties)|.* (?:by|on|for) (?:the )?(?:cost|price|size|height|weight|looks)|.* (?:against|versus|vs) .*|prices? of .*|costs? of .*|an? (?:rail|board|slat|post|stiffener|gap|bay|bracket|opening|cap|anchor)|(?:one|two|three|four|five|six|seven|eight|nine|ten)(?: (?:rails?|boards?|slats?|posts?|bays?|stiffeners?))?|.* to .*|.* (?:high|wide|tall|long)|(?:with|without) .*|[0-9].*)$`)

func comparesOther(a act.Act) bool {
	return a.Kind == act.Compare && slices.ContainsFunc(a.Words, func(w string) bool { return nothingCompared.MatchString(strings.ToLower(w)) })
}

// checksBoards reports whether a number of boards is held against what is needed.
func checksBoards(a act.Act) bool {
	return a.Kind == act.Check && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool { return strings.HasPrefix(s.String(), "boards ") })
}
