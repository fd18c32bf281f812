package guard

import (
	"regexp"
	"slices"
	"strings"
	"sync"

	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/grammar/hear"
	"saywright/grammar/scan"
	"saywright/grammar/ways"
	"saywright/solver"
)

// A verb and a little word behind it mean something of their own: "settle down with six rails" takes none away, "toss around six rails"
// forgets none. A change is read from the little word only beside a verb that moves things that way; beside any other it is asked back.
// Common ways of speech, no source.

// movers are the verbs that change a length or a count together with a little word, by the word; for lengths only those behind "|".
var movers = sync.OnceValue(func() map[string][2]map[string]bool {
	out := map[string][2]map[string]bool{}
	for _, row := range []string{
		"up : kick hike turn work go come bring take move bump jack crank ease | lift cheat push pull nudge raise creep inch lift tick notch dial wind click slide shift open tighten snug close draw push scoot step stretch loosen let pinch suck knock build adjust",
		"down : work turn kick go come bring take drop knock cut scale bump crank ease pull step whittle pare move | push nudge inch dial tighten snug lower shift slide trim shave plane rip saw notch tick wind click scoot close draw pinch adjust back",
		"in : | bring take pull push close draw move suck pinch squeeze tighten snug nudge bump come shift slide scoot tuck drop cinch",
		"out : take pull knock cut leave drop throw toss kick rip tear lose yank strip chuck pitch strike scratch | open let push stretch spread move bump ease trim shave plane widen loosen slide shift",
		"off : cross slip take pull knock cut leave drop throw toss kick rip tear lose yank strip chuck lop slice chop strike scratch trim shave peel come | plane saw sand shear grind whittle pare nip",
		"away : take pull knock cut throw toss kick rip tear chuck lop chop strip | trim shave plane move push whittle pare",
		"on : | ",
		"back : take pull cut scale knock dial drop pare | trim shave ease bring nudge move push plane",
	} {
		word, verbs, _ := strings.Cut(row, " : ")
		both, lengths, _ := strings.Cut(verbs, "|")
		out[word] = [2]map[string]bool{inAllForms(both), inAllForms(both + " " + lengths)}
	}
	return out
})

// inAllForms are verbs in all their forms.
func inAllForms(verbs string) map[string]bool {
	out := map[string]bool{}
	for _, v := range strings.Fields(verbs) {
		for _, f := range ways.VerbForms(v) {
			out[f] = true
		}
		out[v] = true
	}
	return out
}

// changesPlainly are words that change a value by themselves, whatever little word stands beside them.
var changesPlainly = sync.OnceValue(func() map[string]bool {
	out := inAllForms("lower raise reduce increase decrease shrink grow add remove lose subtract deduct minus narrow widen shorten lengthen heighten tighten loosen trim shave lop pare enlarge expand boost skip scrap ditch axe nix eliminate double")
	for w := range scan.WordSet("more less fewer extra additional further another wider narrower taller shorter higher lower bigger smaller larger tighter looser thicker thinner longer closer greater farther plus broader skinnier roomier deeper + - += -= rid without least most") {
		out[w] = true
	}
	return out
})

var (
	// addsPlainly are no words of taking away: "bring in another rail".
	addsPlainly = scan.WordSet("another more extra additional further add adds adding added plus + +=")
	// noVerbs stand before a little word and are no verb of it: "the gap down a quarter", "one rail off", "is down".
	noVerbs = scan.WordSet(`is are was were be been being am 's 're 'm has have had having want wants wanted need needs needed like make makes made making keep keeps set put get gets got
		and or then but so if to of from by with for on at into than as just maybe perhaps about only even also still now too well right all straight
		more less up down back ' " , . ; : ! - -- ?`)
	// handling are verbs that stand beside any value ("make the gap down a quarter"), but right before a little word mean something else.
	handling = scan.WordSet("put set sets keep keeps make makes made get gets got")
	// passedBack stand between a verb and its little word.
	passedBack = scan.WordSet("the a an my our your his her their that this these those it them things everything each every both all right just back way whole bottom top top's between under below beneath distance run clear end overall length rail rails board boards slat slats plank planks gap gaps space spaces spacing post posts stiffener stiffeners bay bays opening doorway wall height span budget us me one two three four five six seven eight nine ten eleven twelve fifteen twenty thirty forty fifty sixty seventy eighty ninety hundred dozen couple dollars bucks quarter quarters half halves third thirds eighth eighths sixteenth sixteenths inch inches foot feet ft mm cm millimeters bit hair tad touch smidge smidgen whole other of few some wh bg oh every")
)

// changedTo is a little word with the figure that is aimed at: no change is "to" a figure.
var changedTo = regexp.MustCompile(`\b(?:up|down|in|out|off|away|back|over) to (?:about |around |an even )?` + anyFigure + `\b`)

// ledByParticle asks back where a change was read from a little word that belongs to another verb.
func ledByParticle(r act.Reading, text string) (solver.Question, bool) {
	if a := r.Acts[0]; len(r.Acts) == 1 && changesByItself(a) && len(a.Statements) == 1 && ways.MatchesWay(changedTo, text) && !strings.Contains(text, " by ") {
		return toOrBy(a, nil), true
	}
	for _, a := range r.Acts {
		if !changesByItself(a) && !(a.Kind == act.Forget && len(a.Statements) == 1 && (a.Statements[0].Op == solver.Plus || a.Statements[0].Op == solver.Minus)) {
			continue
		}
		if a.Statements[0].Name.Quantity == solver.Stock {
			continue // they run out of lengths, and get others in
		}
		words := strings.Fields(text)
		plainly := changesPlainly()
		of, lengths := movers(), 1
		if solver.KindOf(a.Statements[0].Name.Quantity) == solver.Count {
			lengths = 0
		}
		astray := false
		for i, w := range words {
			if plainly[w] && !(a.Statements[0].Op == solver.Minus && addsPlainly[w]) {
				astray = false
				break
			}
			if with, ok := of[w]; ok && i > 0 {
				if i+1 < len(words) && words[i+1] == "by" && (w == "up" || w == "down") && slices.ContainsFunc(words[:i], func(verb string) bool { return handling[verb] }) {
					astray = false // "put the number of rails up by one"
					break
				}
				// "on" is too often a word of place, but where a number stands behind it: "toss on one rail".
				if w == "on" && (a.Statements[0].Op != solver.Minus || i+1 >= len(words) || !passedBack[words[i+1]] || i > 1) {
					continue
				}
				if v := particleOf(words, i, lengths == 0 || w != "up" && w != "down"); slices.ContainsFunc(words[:i], func(verb string) bool { return with[lengths][verb] }) {
					astray = false // "bump the spare up five percent", "take another foot off"
					break
				} else if v != "" {
					astray = true
				}
			}
		}
		if astray {
			return toOrBy(a, nil), true
		}
	}
	return solver.Question{}, false
}

// particleOf returns the word that the little word i goes with, "" where it is no verb.
func particleOf(words []string, i int, handled bool) string {
	j := i - 1
	if handling[words[j]] {
		return words[j]
	}
	for j >= 0 && passedBack[words[j]] {
		j--
	}
	if handled && j >= 0 && (words[j] == "put" || words[j] == "set") {
		return words[j]
	}
	if j < 0 || noVerbs[words[j]] || words[j][0] >= '0' && words[j][0] <= '9' {
		return ""
	}
	return words[j]
}

// anyParts are the parts that are counted.
var anyParts = `(?:` + hear.BoardsOf + `|bays?)`

// particleWays are lines whose little word was read as what it is not, and others that only look like an order or a figure.
var particleWays = []hear.OpenWay{
	{Looks: changesByItself, Way: asWay(`\b{up|down|in|out|off|back|over|around} with {another|an extra|Number}\b`), Not: asWay(`^{up|down|out|off|over} |\b{more|less|add|extra|another}\b`), Ask: toOrBy},
	{Looks: changesByItself, Way: asWay(`\b[a-z]+ away with {Number}\b`), Not: asWay(`\b{do|does|did|done|doing} away\b`), Ask: toOrBy},
	{Looks: changesByItself, Way: asWay(`\bas [a-z]+ as {about }?{Number}\b`), Not: anyWordOf(`by|more|less`), Ask: toOrBy},
	{Looks: plusCount, Way: asWay(`\b[a-z]+ {off|away|out|back} {another|Number} `), Not: anyWordOf(`more|adds?|extra|put|set`), Ask: toOrBy},
	{Looks: changesCount, Way: asWay(`\bbring down {Many} {more }?{Part}\b|\b{bring|push|move|carry|haul|put|set|lay|throw|drag|shove|slide} {Many} {Part} {up|down|over|back|in}\b`), Not: anyWordOf(`another|more|extra|additional`), Ask: toOrBy},
	{Looks: changesCount, Way: asWay(`\b{kick|knock|pick|call|turn|look|ring|pass|talk|think|walk} {up|in|on|over|off|out|down|away} {Many} more\b`), Ask: toOrBy},
	{Looks: forgetsChange, Way: anyWordOf(`Little`), Ask: hear.OpenQuestion("Fewer of them, or none at all?", "remove one rail")},
	{Looks: func(a act.Act) bool { return setsAtMost(a) || valued(a) && a.Statements[0].Op == solver.GE }, Way: asWay(`\bneed not {[a-z]+ }?{Beyond}\b|\b{do|does} not {have|need} to [a-z]+ {Beyond}\b`), Ask: hear.OpenQuestion("Is that a limit, or only not needed?", "gap at most 3 inches")},
	// A little word before an amount tells by how much, not how much.
	{Looks: setsOneLength, Way: asWay(`^{Please }*[a-z]+ {Little the Length|the Length (up|down|in|out|off|over|away|back|on|through)} {By}`), Not: asWay(`\b{Noting} {the Length }?{up|down|in|out|on|off}\b|\bto\b|\bby [^,.;]*[,.;] [^,.;]*{[0-9]|Number}`), Ask: toOrBy},
	{Looks: ordersAny, Way: asWay(`\b{in|on|over|down|around|up|back|through} {another|one more|two more|an extra|one extra}\b|\b{another|one more|two more|an extra} {Board} {in|on|down|up}\b`), Ask: hear.OpenQuestion("Is one more wanted, or none at all?", "add one rail")},
	{Looks: ordersAny, Way: asWay(`\b{toss|throw|chuck|drop|kick|lift|lay|write|let|get|keep|turn|set|move}{s|es|ed|ing|ping|ped}? {the Length|Many Part }?{around|over|on|through|up|back|in|off another|away another}\b`), Not: asWay(`\b{throw|toss|set|let|move} {it|them|that }?{out|away}\b|\bset on\b`), Ask: wantedHere},
	// "over" and "around" behind a verb compare nothing.
	{Looks: comparesOver, Way: asWay(`\bover {to|with} {Number}\b|\b{Moving} over {Many|[0-9]+} `), Not: asWay(`\b{want|be|is|keep} over\b`), Ask: hear.OpenQuestion("More than that, or just that?", "gap 2-1/2")},
	{Looks: nearly, Way: asWay(`\baround {to|with} {Number}\b|\b{Moving} around {Many|[0-9]+} `), Not: asWay(`\b{come|comes|came} {out|in} around\b`), Ask: wantedHere},
	{Looks: comparesOver, Way: asWay(`^{Please }*[a-z]+ the {Length} over {By}`), Not: asWay(`\b{make|keep|set|want|need|get|hold|have|leave|put|run|space|build} the\b`), Ask: toOrBy},
	// What is looked up, turned in or kicked around is not there yet.
	{Looks: setsCount, Way: asWay(`\b{Handling} ({up|out|(in|on|off|away|over|through|back|along|down)( with)?} {Many} {Part}\b|{Many} {Part} {up|in|off|over|back|on|around|along}\b)`), Not: asWay(`\bhold on\b|\bcall{s|ed}? out\b|\bin {there|here|a bay|each|every}\b`), Ask: wantedHere},
	{Looks: setsCount, Way: asWay(`\b{ran|run|sets?|puts?|push|pushed|brush|brushed|falls?|fell|bump|bumped|walk|walked|bang|banged} {into|aside|for|across|after|apart} {Many} {Part}\b`), Ask: wantedHere},
	{Looks: setsAtMost, Way: asWay(`\b{i|we|Others} {am|are|is} {now|already|only }?up to {Many}\b`), Ask: hear.OpenQuestion("At most that many, or just that many?", "six rails")},
	{Looks: func(a act.Act) bool { return a.Kind == act.Forget && a.Name != nil && a.Name.Quantity == solver.Rails }, Way: anyWordOf(`another`), Ask: hear.OpenQuestion("One less, or none at all?", "remove one rail")},
	{Looks: hear.KindOf(act.Undo), Way: asWay(`^{Please|we|i }*[a-z]+ {back|up} {with }?{the|my|our }?{Many|[0-9]+ }?{Page}{ Stop}*$`), Ask: hear.OpenQuestion("Shall I take back the last change?", "undo")},
	{Looks: hear.Stated(solver.Stock), Way: asWay(`\b{come|comes|came|carry|carries|carried|bring|brings|brought} {up|down|out|off|over|back }?{in }?{Many} {Part}\b`), Not: anyWordOf(`foot|feet|footers?|long|ft|by|x`), Ask: wantedHere},
	{Looks: hear.Stated(solver.OpeningSide), Way: anyWordOf(`write`), Not: anyWordOf(`right|left|middle|center`), Ask: wantedHere},
	// What may be so is a limit, not the figure.
	{Looks: setsOneLength, Way: asWay(`\b{Length|it|they|that|budget} {can|may|could|might} {only|just|easily|even|still }?[a-z]+ {Little|right|all the way }?{to|as [a-z]+ as} `), Not: asWay(`\b{be|stay|remain} |[?]|\b{if|hoping|hope|wish|wished|want|wanted}\b`), Ask: hear.OpenQuestion("Is that a limit, or what it shall be?", "gap at most 3 inches")},
	{Looks: setsOneLength, Way: asWay(`\b{let|allow} {the|my|our }?{Length} {to }?[a-z]+ ({up|down|out }?as [a-z]+ as|{up|down|out|in} to) `), Ask: hear.OpenQuestion("Is that a limit, or what it shall be?", "wall at most 48 high")},
	// Who bars what is over a figure wants the rest.
	{Looks: func(a act.Act) bool { return limitsOrForgets(a) || setsCount(a) || setsOneLength(a) }, Way: anyWordOf(`no - no|nono|deal ?breaker|nonstarter|non - starter|off the table|out of the question|off limits|off - limits|taboo|verboten|forbidden|banned|barred|stay (well )?(away|clear)|steer (well )?(away|clear)|shy away|shun|avoid|frowned on|asking for trouble|bad news|bad idea|not on|not an option|not allowed`),
		Not: asWay(`\bwhy\b|[?]|^{so|and|but|well|ok }*{is|are|would|will|was|were}\b|\bno {more|less|fewer|wider|bigger|larger|smaller|narrower} than\b`), Ask: hear.OpenQuestion("Which side of that figure is wanted?", "gap no more than 3 inches")},
	{Looks: limitsOrForgets, Way: asWay(`\b{gaps|openings|bays|walls|heights|rails|boards|posts|spaces|anything|everything} {that are|which are }?{Beyond|(more|less|wider|bigger|larger|smaller|narrower|taller|higher) than} [^,.;]*\b{are|is|gets?|makes?|looks?|causes?|lets?|means?|worry|scares?|bothers?|gives?|seems?}\b`), Not: asWay(`\b{is|are|would be|will be} {just |perfectly |quite |absolutely }?{fine|ok|okay|good|great|alright|all right|acceptable}\b`), Ask: hear.OpenQuestion("Which side of that figure is wanted?", "gap no more than 3 inches")},
	{Looks: hear.KindOf(act.Compare), Way: asWay(`\bthe {gap|opening|span|rails|posts|stiffeners|bottom gap|bays|bay|cost|price} {Against|to}\b|\b{see|show|view|look at|get|have|like|want} {me|us }?the {wall|halfwall} {Against}\b`), Ask: hear.OpenQuestion("Which saved walls shall I compare?", "compare porch, shed")},
	// A name that is no plan's, and a plan that is called back.
	{Looks: hear.KindOf(act.Open), Way: asWay(`\b{open|pull|bring|call|get|hand|send|put|fetch|dig|take}{s|ed|ing}? {Little }+{the|my|our|with|another|a }*{Many|[0-9]+ }?{more }?{Page}{ Stop}*$`), Ask: hear.OpenQuestion("Is that a saved wall, or shall I show it?", "show me the cuts")},
	{Looks: hear.KindOf(act.DrawTo, act.PrintTo), Way: asWay(`\bin [a-z]+{ please|and [a-z]+}?{ Stop}*$`), Not: anyWordOf(`svg|html?|file|called|named`), Ask: askback.WhichFile.Open("print to porch.html")},
	{Looks: hear.KindOf(act.DrawTo, act.PrintTo), Way: asWay(`\bdraw {in|to|on} {the|another|with }*{Many|[0-9]+ }?{Page}\b`), Not: anyWordOf(`svg|html?`), Ask: wantedHere},
	{Looks: hear.KindOf(act.Undo), Way: asWay(`^{ok|so|now|please|,|can you|could you }*[a-z]+ {[a-z]+ }{1,2}back {up|in|out|on|around|over|back}{ [.!?]}*$`), Not: asWay(`\b{it|that|this|things|everything|all|us|me|one|step|change|last|what|please|just|go|i} {[a-z]+ }?back\b`), Ask: hear.OpenQuestion("Shall I open a saved wall, or take back the last change?", "open porch", "undo")},
	{Looks: hear.KindOf(act.SameAs), Way: asWay(`\blike {my|our|the|his|her|a|your} [a-z]+ {did|does|do|had|has|said|says|wants|wanted|would|used|always|likes|liked|built|made|taught|showed|told|is|was}\b`), Ask: wantedHere},
	// What is only put off, asked, told besides.
	{Looks: setsNone, Way: asWay(`\b{bother|bothering|fuss|fussing|worry|worrying|mess|messing|deal|dealing|start|fiddle|fool} {with|about|on|around with} [^,.;]*\b{yet|for now|just now|right now|today|at the moment|until|till|so soon}\b`), Ask: hear.OpenQuestion("None at all, or not settled yet?", "no stiffeners")},
	{Looks: hear.AsksQuantity, Way: asWay(`^{Please|and }*{make|set|put|keep|leave|get|have|give|bring|take|space|fix} {me }?{the|my|our }?{[a-z]+ }?[a-z]+ {to|at|at least }?what {it|they|that|the code|code} {should|ought|needs?|wants?|has|must|have|was|were|used}\b`), Ask: askback.HowMuchIs.Open("gap 2-1/2", "that")},
	{Looks: hear.Stated(solver.Rails, solver.AddedPosts, solver.Stiffeners, solver.Bays), Way: asWay(`^{Lead|, }*{do|does|did} {the|my|our }?{Many} {Part} [a-z]+{ out|up|in|down|off|over|away|back|on|around|through|together|apart}?{ [?]}*$`), Not: asWay(`\b{please|instead|then|now|today|high|tall|total|across|each|there|here|again|altogether|apiece|up|down|in}{ [?]}*$`), Ask: hear.OpenQuestion("Shall I try that?", "what if seven rails")},
	{Looks: hear.Stated(solver.Rails, solver.AddedPosts, solver.Stiffeners), Way: asWay(`^{Lead|, }*{could|can|might} {i|we|you|it|they} {still|maybe|possibly|just|ever|even }?[a-z]+ {in|on|up|out|down }?{a|an }?{second|third|fourth|fifth|sixth|seventh|eighth|ninth|tenth|extra} {Board}\b`), Ask: hear.OpenQuestion("Shall I try that?", "what if seven rails")},
	{Looks: hear.KindOf(act.State), Way: asWay(`\b{Units} or {in }?{Units}{ [?.!]}*$`), Not: asWay(`[0-9]|\b{two|three|four|five|six|seven|eight|nine|ten|half|quarter}\b`), Ask: hear.OpenQuestion("Which of them?", "use inches")},
	{Looks: hear.Stated(solver.Stock), Way: asWay(`\b{Others|somebody|someone|who|(my|the) [a-z]+} {have|has|had|just }*{brought|carried|hauled|lugged|dragged|moved|took|shoved|threw|tossed|put|laid|set|handed} {in|out|over|down|around|off|up} {some|a few|the }?{sixes|eights|tens|twelves|fourteens|sixteens}{ Stop}*$`), Ask: hear.OpenQuestion("Are those on sale, too?", "they sell tens", "stock += 120 in")},
}

// toOrBy asks whether a figure is what it shall be, or by how much it changes.
func toOrBy(a act.Act, _ []act.Act) solver.Question {
	q := solver.Question{Text: "Is that how much it shall be, or by how much it changes?", Example: "gap 2-1/2"}
	if len(a.Statements) == 1 && changesByItself(a) && a.Kind == act.State {
		st := a.Statements[0]
		st.Op = solver.Eq
		set := act.Act{Kind: act.State, Statements: []solver.Statement{st}}.String()
		q.Choices, q.Example = []string{set, a.String()}, set
	}
	return q
}

// setsOneLength are acts that set a length to one figure.
func setsOneLength(a act.Act) bool {
	return valued(a) && a.Statements[0].Op == solver.Eq && solver.KindOf(a.Statements[0].Name.Quantity) == solver.Length
}

// changesCount are acts that change a count.
func changesCount(a act.Act) bool {
	return changesByItself(a) && solver.KindOf(a.Statements[0].Name.Quantity) == solver.Count
}

// forgetsChange are acts that forget what nobody says: a change.
func forgetsChange(a act.Act) bool {
	return a.Kind == act.Forget && len(a.Statements) == 1 && (a.Statements[0].Op == solver.Plus || a.Statements[0].Op == solver.Minus)
}

// setsCount are acts that set a count to one figure.
func setsCount(a act.Act) bool {
	return valued(a) && a.Statements[0].Op == solver.Eq && solver.KindOf(a.Statements[0].Name.Quantity) == solver.Count
}

// setsAtMost are acts that set an upper limit.
func setsAtMost(a act.Act) bool { return valued(a) && a.Statements[0].Op == solver.LE }

// plusCount are acts that add to a count.
func plusCount(a act.Act) bool {
	return changesCount(a) && a.Statements[0].Op == solver.Plus
}

// setsNone are acts that set a count to nothing.
func setsNone(a act.Act) bool {
	return valued(a) && a.Statements[0].Op == solver.Eq && a.Statements[0].Value.Num.Sign() == 0 && a.Statements[0].Value.Of == nil
}

// ordersAny are acts that forget or take back.
func ordersAny(a act.Act) bool {
	return a.Kind == act.Forget || a.Kind == act.Undo || a.Kind == act.Next
}

// comparesOver are acts that set or forget a strict lower limit.
func comparesOver(a act.Act) bool {
	return (valued(a) || a.Kind == act.Forget) && len(a.Statements) > 0 && a.Statements[0].Op == solver.GT
}

// nearly are acts that set about a figure.
func nearly(a act.Act) bool { return valued(a) && a.Statements[0].Op == solver.Near }

// limitsOrForgets are acts that set or forget a strict limit.
func limitsOrForgets(a act.Act) bool {
	return (valued(a) || a.Kind == act.Forget) && len(a.Statements) > 0 && (a.Statements[0].Op == solver.GT || a.Statements[0].Op == solver.LT)
}
