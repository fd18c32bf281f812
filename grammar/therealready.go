package grammar

import (
	"regexp"
	"strconv"
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/grammar/lex"
	"saywright/grammar/parse"
	"saywright/grammar/scan"
	"saywright/grammar/ways"
	"saywright/solver"
)

// What is there already need not be bought: "the posts are up already", "I have the brackets". Nobody said how many there are or how long,
// so it is asked back; what the list has of them, the conversation knows, and offers (Own: each choice is a line of its own).
// Common ways of speech, no source.

const (
	atHandParts = `((?:(?:rail|board|post|bracket|stiffener|the) )*(?:posts?|brackets?|hangers|screws|bases?|caps?|anchors?|bolts|stiffeners?|uprights|rails|boards|slats|planks|lumber|wood|timber|hardware)(?: and (?:all )?(?:the |my |our )*(?:post )?(?:posts?|brackets?|screws|bases?|caps?|anchors?|bolts|stiffeners?|rails|boards|lumber|hardware))*)`
	whoseParts  = `(?:(?:all|both|of|the|my|our|those|these|two|end|added|new|extra) )*`
	byNow       = `(?:(?:all|already|now|there|here|both|up|just) )*`
	haveThem    = `(?:there|here|up|in|in place|in the ground|standing|set|on site|at hand|on hand|in hand|bought|paid for|ordered|delivered|taken care of|bolted down|anchored|on the truck|in the (?:garage|shed|barn|shop|truck))`
)

var (
	areThere    = regexp.MustCompile(`^(?:(?:but|and|so|well|oh|no|hey|look|fyi) ,? ?)*` + whoseParts + atHandParts + ` (?:(?:is|are|'s|have been|has been|were) ` + byNow + `|already ` + byNow + `)` + haveThem + `(?: (?:already|now|by now|today|for good|here|there|too|anyway|and plumb|and fixed|and anchored|up))*(?: [.!])*$`)
	putThemUp   = regexp.MustCompile(`^(?:(?:but|and|so|well|oh|no|hey|look|fyi) ,? ?)*(?:i|we|he|she|they|my [a-z]+) (?:(?:have|has|had|'ve|already|just) )*(?:put|set|stood|plumbed|anchored|bolted|installed|erected|got) ` + whoseParts + `((?:posts?|bases?|anchors?)(?: and (?:the )?(?:bases?|anchors?))?)(?: (?:up|in|down|in place|in the ground|standing))?(?: (?:already|yesterday|last (?:week|month|night|summer|fall|spring|year|weekend|saturday|sunday)|this (?:morning|week)|today|earlier|before|on (?:saturday|sunday|monday|tuesday|wednesday|thursday|friday)))+(?: [.!])*$`)
	someoneHas  = regexp.MustCompile(`^(?:(?:but|and|so|well|oh|no|hey|look|fyi) ,? ?)*(?:i|we) (?:have |has |'ve |already |got |do |all |now |bought |own |still )+(?:enough )?` + whoseParts + atHandParts + `(?: (?:already|now|here|there|too|at home|at hand|on hand|on site|up|in the (?:garage|shed|barn|shop|truck)|on the truck|left over|lying around))*(?: [.!])*$`)
	nottoBuy    = regexp.MustCompile(`^(?:(?:but|and|so|well|oh|please) ,? ?)*(?:(?:do not|no need to|i do not (?:need|have) to|we do not (?:need|have) to|i need not|never mind) (?:buy|buying|order|get|shop for|list) (?:any |more )*` + whoseParts + atHandParts + `|(?:leave|take|strike|cross|keep) ` + whoseParts + atHandParts + ` (?:off|out of) (?:the |my |our )?(?:shopping |buying )?list)(?: (?:already|now|please|then|again))*(?: [.!])*$`)
	soMany      = regexp.MustCompile(`^(?:(?:but|and|so|well|oh|no|hey|fyi) ,? ?)*(?:i|we) (?:(?:have|'ve|already|got|bought|own|still) )+([0-9]{1,4}|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|a|an) (?:of the |of those )?((?:rail )?brackets?|screws|(?:post )?bases?|(?:post )?caps?|anchors?)(?: (?:already|now|here|there|too|at home|at hand|on hand|on site|in the (?:garage|shed|barn|shop|truck)|on the truck|left over|lying around))*(?: [.!])*$`)
	asksToBuy   = regexp.MustCompile(`\b(?:buy|buying|need|order|get|shopping|cost|costs|purchase|price)\b`)
	besideParts = regexp.MustCompile(`\b(?:besides|beside|apart from|aside from|without|except|except for|excluding|not counting|other than|leaving out|minus) ` + whoseParts + atHandParts + `\b(?: [.?!])*$`)
	partsClause = scan.WordSet(", . ; ? ! so then if since because as now but")
	ofTheParts  = regexp.MustCompile(`(?:post )?[a-z]+`)
	partsOnList = map[string]string{"post": "post", "posts": "post", "bracket": "bracket", "brackets": "bracket", "hangers": "bracket", "screws": "screws",
		"base": "post base", "bases": "post base", "cap": "post cap", "caps": "post cap", "anchor": "anchor", "anchors": "anchor", "bolts": "anchor",
		"stiffener": "stiffener", "stiffeners": "stiffener", "uprights": "stiffener", "rails": "rail", "boards": "rail", "slats": "rail", "planks": "rail",
		"lumber": "lumber", "wood": "lumber", "timber": "lumber", "hardware": "hardware"}
)

// thereAlready asks back about parts that are there already; hardware that is counted is heard as it is. Where the line asks what to buy, too, that is
// asked for with each choice.
func thereAlready(line, said string, atoms []scan.Atom, c act.Context) (act.Reading, bool) {
	if ways.MayMatch(soMany, said) {
		if m := soMany.FindStringSubmatch(said); m != nil {
			form := "have " + partsOnList[strings.TrimPrefix(strings.TrimPrefix(m[2], "rail "), "post ")] + " x " + digitsOf(m[1])
			if acts, ok := parsed(form, line); ok {
				return act.Reading{Acts: acts}, true
			}
		}
	}
	if items := toldThere(said); len(items) > 0 {
		return askThere(items, 0, ""), true
	}
	if m := lex.MatchOf(areThere, said); m != nil && standingBoards.MatchString(said) {
		return askback.AskedBack(0, "Which rails are up, and how high are their top edges?", "fixed rail 1 top = 8 in"), true
	}
	if !ways.MatchesWay(asksToBuy, said) {
		return act.Reading{}, false
	}
	for from, i := 0, 0; i <= len(atoms); i++ {
		if i < len(atoms) && !partsClause[atoms[i].Text] {
			continue
		}
		if items := toldThere(scan.Text(atoms[from:i])); len(items) > 0 {
			if buys := readHeld(line, scan.CutOut(atoms, from, min(i+1, len(atoms))), c); onlyBuying(buys) {
				return askThere(items, atoms[from].At, parse.Normal(buys.Acts)), true
			}
		}
		from = i + 1
	}
	if m := lex.MatchOf(besideParts, said); m != nil {
		at := strings.Count(said[:strings.Index(said, m[0])], " ")
		end := at + strings.Count(m[0], " ") + 1
		if buys := readHeld(line, scan.CutOut(atoms, at, end), c); onlyBuying(buys) {
			return askThere(itemsOf(m[1]), atoms[at].At, parse.Normal(buys.Acts)), true
		}
	}
	return act.Reading{}, false
}

// askThere asks how much of the items is there; then is what the line asks for besides.
func askThere(items []string, at int, then string) act.Reading {
	example := "have 4x4 42 in x 1"
	if short := items[0]; short != "post" && short != "stiffener" && short != "rail" && short != "lumber" {
		example = strings.Replace("have "+short+" x 4", "hardware", "bracket", 1)
	}
	q := &solver.Question{At: &at, Key: "at hand", Example: example, Facts: []solver.Fact{{Key: "at hand", Names: items}}}
	if then != "" {
		q.Facts = append(q.Facts, solver.Fact{Key: "then", Names: []string{then}})
	}
	return act.Reading{Own: true, Ask: q}
}

// onlyBuying reports whether a reading only asks what to buy or what it costs.
func onlyBuying(r act.Reading) bool {
	if r.Ask != nil || len(r.Acts) == 0 {
		return false
	}
	for _, a := range r.Acts {
		if a.Kind != act.Ask || a.Name != nil || a.Topic != "shopping" && a.Topic != "cost" && a.Topic != "hardware" {
			return false
		}
	}
	return true
}

// toldThere lists what a clause tells is there already, nil where it tells nothing of that.
func toldThere(said string) []string {
	for _, way := range []*regexp.Regexp{areThere, someoneHas, putThemUp, nottoBuy} {
		m := lex.MatchOf(way, said)
		if m == nil {
			continue
		}
		items := itemsOf(strings.Join(m[1:], " "))
		if len(items) > 0 && way == areThere && items[0] == "rail" && standingBoards.MatchString(said) {
			return nil
		}
		return items
	}
	return nil
}

func itemsOf(parts string) (items []string) {
	for _, w := range ofTheParts.FindAllString(strings.NewReplacer("rail bracket", "bracket", "post base", "base", "post cap", "cap").Replace(parts), -1) {
		if item := partsOnList[strings.TrimPrefix(w, "post ")]; item != "" {
			items = append(items, item)
		}
	}
	return items
}

// digitsOf writes a count as digits.
func digitsOf(word string) string {
	for i, w := range []string{"", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"} {
		if w == word {
			return strconv.Itoa(i)
		}
	}
	if word == "a" || word == "an" {
		return "1"
	}
	return word
}

// standingBoards: boards that are up are told by where they are, not by what need not be bought.
var standingBoards = regexp.MustCompile(`\b(?:up|in|standing|set|in place)(?: [a-z]+)*(?: [.!])*$`)
