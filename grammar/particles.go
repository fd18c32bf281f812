package grammar

import (
	"regexp"
	"slices"
	"strings"
	"sync"

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
		for _, f := range verbForms(v) {
			out[f] = true
		}
		out[v] = true
	}
	return out
}

// changesPlainly are words that change a value by themselves, whatever little word stands beside them.
var changesPlainly = sync.OnceValue(func() map[string]bool {
	out := inAllForms("lower raise reduce increase decrease shrink grow add remove lose subtract deduct minus narrow widen shorten lengthen heighten tighten loosen trim shave lop pare enlarge expand boost skip scrap ditch axe nix eliminate double")
	for w := range wordSet("more less fewer extra additional further another wider narrower taller shorter higher lower bigger smaller larger tighter looser thicker thinner longer closer greater farther plus broader skinnier roomier deeper + - += -= rid without least most") {
		out[w] = true
	}
	return out
})

var (
	// addsPlainly are no words of taking away: "bring in another rail".
	addsPlainly = wordSet("another more extra additional further add adds adding added plus + +=")
	// noVerbs stand before a little word and are no verb of it: "the gap down a quarter", "one rail off", "is down".
	noVerbs = wordSet(`is are was were be been being am 's 're 'm has have had having want wants wanted need needs needed like make makes made making keep keeps set put get gets got
		and or then but so if to of from by with for on at into than as just maybe perhaps about only even also still now too well right all straight
		more less up down back ' " , . ; : ! - -- ?`)
	// handling are verbs that stand beside any value ("make the gap down a quarter"), but right before a little word mean something else.
	handling = wordSet("put set sets keep keeps make makes made get gets got")
	// passedBack stand between a verb and its little word.
	passedBack = wordSet("the a an my our your his her their that this these those it them things everything each every both all right just back way whole bottom top top's rail rails board boards slat slats plank planks gap gaps space spaces spacing post posts stiffener stiffeners bay bays opening doorway wall height span budget us me one two three four five six seven eight nine ten eleven twelve fifteen twenty thirty forty fifty sixty seventy eighty ninety hundred dozen couple dollars bucks quarter quarters half halves third thirds eighth eighths sixteenth sixteenths inch inches foot feet ft mm cm millimeters bit hair tad touch smidge smidgen whole other of few some wh bg oh every")
)

// changedTo is a little word with the figure that is aimed at: no change is "to" a figure.
var changedTo = regexp.MustCompile(`\b(?:up|down|in|out|off|away|back|over) to (?:about |around |an even )?` + anyFigure + `\b`)

// ledByParticle asks back where a change was read from a little word that belongs to another verb.
func ledByParticle(r Reading, text string) (solver.Question, bool) {
	if a := r.Acts[0]; len(r.Acts) == 1 && changesByItself(a) && len(a.Statements) == 1 && matchesWay(changedTo, text) && !strings.Contains(text, " by ") {
		return toOrBy(a, nil), true
	}
	for _, a := range r.Acts {
		if !changesByItself(a) && !(a.Kind == Forget && len(a.Statements) == 1 && (a.Statements[0].Op == solver.Plus || a.Statements[0].Op == solver.Minus)) {
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
var anyParts = `(?:` + boardsOf + `|bays?)`

// particleWays are lines whose little word was read as what it is not, and others that only look like an order or a figure.
var particleWays = []openWay{
	{looks: changesByItself, way: asWay(`\b{up|down|in|out|off|back|over|around} with {another|an extra|Number}\b`), not: asWay(`^{up|down|out|off|over} |\b{more|less|add|extra|another}\b`), ask: toOrBy},
	{looks: changesByItself, way: asWay(`\b[a-z]+ away with {Number}\b`), not: asWay(`\b{do|does|did|done|doing} away\b`), ask: toOrBy},
	{looks: changesByItself, way: asWay(`\bas [a-z]+ as {about }?{Number}\b`), not: anyWordOf(`by|more|less`), ask: toOrBy},
	{looks: plusCount, way: asWay(`\b[a-z]+ {off|away|out|back} {another|Number} `), not: anyWordOf(`more|adds?|extra|put|set`), ask: toOrBy},
	{looks: changesCount, way: asWay(`\bbring down {Many} {more }?{Part}\b|\b{bring|push|move|carry|haul|put|set|lay|throw|drag|shove|slide} {Many} {Part} {up|down|over|back|in}\b`), not: anyWordOf(`another|more|extra|additional`), ask: toOrBy},
	{looks: changesCount, way: asWay(`\b{kick|knock|pick|call|turn|look|ring|pass|talk|think|walk} {up|in|on|over|off|out|down|away} {Many} more\b`), ask: toOrBy},
	{looks: forgetsChange, way: anyWordOf(`Little`), ask: openQuestion("Fewer of them, or none at all?", "remove one rail")},
	{looks: func(a Act) bool { return setsAtMost(a) || valued(a) && a.Statements[0].Op == solver.GE }, way: asWay(`\bneed not {[a-z]+ }?{Beyond}\b|\b{do|does} not {have|need} to [a-z]+ {Beyond}\b`), ask: openQuestion("Is that a limit, or only not needed?", "gap at most 3 inches")},
	// A little word before an amount tells by how much, not how much.
	{looks: setsOneLength, way: asWay(`^{Please }*[a-z]+ {Little the Length|the Length (up|down|in|out|off|over|away|back|on|through)} {By}`), not: asWay(`\b{Noting} {the Length }?{up|down|in|out|on|off}\b|\bto\b`), ask: toOrBy},
	{looks: ordersAny, way: asWay(`\b{in|on|over|down|around|up|back|through} {another|one more|two more|an extra|one extra}\b|\b{another|one more|two more|an extra} {Board} {in|on|down|up}\b`), ask: openQuestion("Is one more wanted, or none at all?", "add one rail")},
	{looks: ordersAny, way: asWay(`\b{toss|throw|chuck|drop|kick|lift|lay|write|let|get|keep|turn|set|move}{s|es|ed|ing|ping|ped}? {the Length|Many Part }?{around|over|on|through|up|back|in|off another|away another}\b`), not: asWay(`\b{throw|toss|set|let|move} {it|them|that }?{out|away}\b|\bset on\b`), ask: wantedHere},
	// "over" and "around" behind a verb compare nothing.
	{looks: comparesOver, way: asWay(`\bover {to|with} {Number}\b|\b{Moving} over {Many|[0-9]+} `), not: asWay(`\b{want|be|is|keep} over\b`), ask: openQuestion("More than that, or just that?", "gap 2-1/2")},
	{looks: nearly, way: asWay(`\baround {to|with} {Number}\b|\b{Moving} around {Many|[0-9]+} `), not: asWay(`\b{come|comes|came} {out|in} around\b`), ask: wantedHere},
	{looks: comparesOver, way: asWay(`^{Please }*[a-z]+ the {Length} over {By}`), not: asWay(`\b{make|keep|set|want|need|get|hold|have|leave|put|run|space|build} the\b`), ask: toOrBy},
	// What is looked up, turned in or kicked around is not there yet.
	{looks: setsCount, way: asWay(`\b{Handling} ({up|out|(in|on|off|away|over|through|back|along|down)( with)?} {Many} {Part}\b|{Many} {Part} {up|in|off|over|back|on|around|along}\b)`), not: asWay(`\bhold on\b|\bcall{s|ed}? out\b|\bin {there|here|a bay|each|every}\b`), ask: wantedHere},
	{looks: setsCount, way: asWay(`\b{ran|run|sets?|puts?|push|pushed|brush|brushed|falls?|fell|bump|bumped|walk|walked|bang|banged} {into|aside|for|across|after|apart} {Many} {Part}\b`), ask: wantedHere},
	{looks: setsAtMost, way: asWay(`\b{i|we|Others} {am|are|is} {now|already|only }?up to {Many}\b`), ask: openQuestion("At most that many, or just that many?", "six rails")},
	{looks: func(a Act) bool { return a.Kind == Forget && a.Name != nil && a.Name.Quantity == solver.Rails }, way: anyWordOf(`another`), ask: openQuestion("One less, or none at all?", "remove one rail")},
	{looks: kindOf(Undo), way: asWay(`^{Please|we|i }*[a-z]+ {back|up} {with }?{the|my|our }?{Many|[0-9]+ }?{Page}{ Stop}*$`), ask: openQuestion("Shall I take back the last change?", "undo")},
	{looks: stated(solver.Stock), way: asWay(`\b{come|comes|came|carry|carries|carried|bring|brings|brought} {up|down|out|off|over|back }?{in }?{Many} {Part}\b`), not: anyWordOf(`foot|feet|footers?|long|ft|by|x`), ask: wantedHere},
	{looks: stated(solver.OpeningSide), way: anyWordOf(`write`), not: anyWordOf(`right|left|middle|center`), ask: wantedHere},
	// What may be so is a limit, not the figure.
	{looks: setsOneLength, way: asWay(`\b{Length|it|they|that|budget} {can|may|could|might} {only|just|easily|even|still }?[a-z]+ {Little|right|all the way }?{to|as [a-z]+ as} `), not: asWay(`\b{be|stay|remain} |[?]|\b{if|hoping|hope|wish|wished|want|wanted}\b`), ask: openQuestion("Is that a limit, or what it shall be?", "gap at most 3 inches")},
	{looks: setsOneLength, way: asWay(`\b{let|allow} {the|my|our }?{Length} {to }?[a-z]+ ({up|down|out }?as [a-z]+ as|{up|down|out|in} to) `), ask: openQuestion("Is that a limit, or what it shall be?", "wall at most 48 high")},
	// Who bars what is over a figure wants the rest.
	{looks: func(a Act) bool { return limitsOrForgets(a) || setsCount(a) || setsOneLength(a) }, way: anyWordOf(`no - no|nono|deal ?breaker|nonstarter|non - starter|off the table|out of the question|off limits|off - limits|taboo|verboten|forbidden|banned|barred|stay (well )?(away|clear)|steer (well )?(away|clear)|shy away|shun|avoid|frowned on|asking for trouble|bad news|bad idea|not on|not an option|not allowed`),
		not: asWay(`\bwhy\b|[?]|^{so|and|but|well|ok }*{is|are|would|will|was|were}\b|\bno {more|less|fewer|wider|bigger|larger|smaller|narrower} than\b`), ask: openQuestion("Which side of that figure is wanted?", "gap no more than 3 inches")},
	{looks: limitsOrForgets, way: asWay(`\b{gaps|openings|bays|walls|heights|rails|boards|posts|spaces|anything|everything} {that are|which are }?{Beyond|(more|less|wider|bigger|larger|smaller|narrower|taller|higher) than} [^,.;]*\b{are|is|gets?|makes?|looks?|causes?|lets?|means?|worry|scares?|bothers?|gives?|seems?}\b`), ask: openQuestion("Which side of that figure is wanted?", "gap no more than 3 inches")},
	{looks: kindOf(Compare), way: asWay(`\bthe {gap|opening|span|rails|posts|stiffeners|bottom gap|bays|bay|cost|price} {Against|to}\b|\b{see|show|view|look at|get|have|like|want} {me|us }?the {wall|halfwall} {Against}\b`), ask: openQuestion("Which saved walls shall I compare?", "compare porch, shed")},
	// A name that is no plan's, and a plan that is called back.
	{looks: kindOf(Open), way: asWay(`\b{open|pull|bring|call|get|hand|send|put|fetch|dig|take}{s|ed|ing}? {Little }+{the|my|our|with|another|a }*{Many|[0-9]+ }?{more }?{Page}{ Stop}*$`), ask: openQuestion("Is that a saved wall, or shall I show it?", "show me the cuts")},
	{looks: kindOf(DrawTo, PrintTo), way: asWay(`\bin [a-z]+{ please|and [a-z]+}?{ Stop}*$`), not: anyWordOf(`svg|html?|file|called|named`), ask: qWhichFile.open("print to porch.html")},
	{looks: kindOf(DrawTo, PrintTo), way: asWay(`\bdraw {in|to|on} {the|another|with }*{Many|[0-9]+ }?{Page}\b`), not: anyWordOf(`svg|html?`), ask: wantedHere},
	{looks: kindOf(Undo), way: asWay(`^{ok|so|now|please|,|can you|could you }*[a-z]+ {[a-z]+ }{1,2}back {up|in|out|on|around|over|back}{ [.!?]}*$`), not: asWay(`\b{it|that|this|things|everything|all|us|me|one|step|change|last|what|please|just|go|i} {[a-z]+ }?back\b`), ask: openQuestion("Shall I open a saved wall, or take back the last change?", "open porch", "undo")},
	{looks: kindOf(SameAs), way: asWay(`\blike {my|our|the|his|her|a|your} [a-z]+ {did|does|do|had|has|said|says|wants|wanted|would|used|always|likes|liked|built|made|taught|showed|told|is|was}\b`), ask: wantedHere},
	// What is only put off, asked, told besides.
	{looks: setsNone, way: asWay(`\b{bother|bothering|fuss|fussing|worry|worrying|mess|messing|deal|dealing|start|fiddle|fool} {with|about|on|around with} [^,.;]*\b{yet|for now|just now|right now|today|at the moment|until|till|so soon}\b`), ask: openQuestion("None at all, or not settled yet?", "no stiffeners")},
	{looks: asksQuantity, way: asWay(`^{Please|and }*{make|set|put|keep|leave|get|have|give|bring|take|space|fix} {me }?{the|my|our }?{[a-z]+ }?[a-z]+ {to|at|at least }?what {it|they|that|the code|code} {should|ought|needs?|wants?|has|must|have|was|were|used}\b`), ask: qHowMuchIs.open("gap 2-1/2", "that")},
	{looks: stated(solver.Rails, solver.AddedPosts, solver.Stiffeners, solver.Bays), way: asWay(`^{Lead|, }*{do|does|did} {the|my|our }?{Many} {Part} [a-z]+{ out|up|in|down|off|over|away|back|on|around|through|together|apart}?{ [?]}*$`), not: asWay(`\b{please|instead|then|now|today|high|tall|total|across|each|there|here|again|altogether|apiece|up|down|in}{ [?]}*$`), ask: openQuestion("Shall I try that?", "what if seven rails")},
	{looks: stated(solver.Rails, solver.AddedPosts, solver.Stiffeners), way: asWay(`^{Lead|, }*{could|can|might} {i|we|you|it|they} {still|maybe|possibly|just|ever|even }?[a-z]+ {in|on|up|out|down }?{a|an }?{second|third|fourth|fifth|sixth|seventh|eighth|ninth|tenth|extra} {Board}\b`), ask: openQuestion("Shall I try that?", "what if seven rails")},
	{looks: kindOf(State), way: asWay(`\b{Units} or {in }?{Units}{ [?.!]}*$`), not: asWay(`[0-9]|\b{two|three|four|five|six|seven|eight|nine|ten|half|quarter}\b`), ask: openQuestion("Which of them?", "use inches")},
	{looks: stated(solver.Stock), way: asWay(`\b{Others|somebody|someone|who|(my|the) [a-z]+} {have|has|had|just }*{brought|carried|hauled|lugged|dragged|moved|took|shoved|threw|tossed|put|laid|set|handed} {in|out|over|down|around|off|up} {some|a few|the }?{sixes|eights|tens|twelves|fourteens|sixteens}{ Stop}*$`), ask: openQuestion("Are those on sale, too?", "they sell tens", "stock += 120 in")},
}

// toOrBy asks whether a figure is what it shall be, or by how much it changes.
func toOrBy(a Act, _ []Act) solver.Question {
	q := solver.Question{Text: "Is that how much it shall be, or by how much it changes?", Example: "gap 2-1/2"}
	if len(a.Statements) == 1 && changesByItself(a) && a.Kind == State {
		st := a.Statements[0]
		st.Op = solver.Eq
		set := Act{Kind: State, Statements: []solver.Statement{st}}.String()
		q.Choices, q.Example = []string{set, a.String()}, set
	}
	return q
}

// setsOneLength are acts that set a length to one figure.
func setsOneLength(a Act) bool {
	return valued(a) && a.Statements[0].Op == solver.Eq && solver.KindOf(a.Statements[0].Name.Quantity) == solver.Length
}

// changesCount are acts that change a count.
func changesCount(a Act) bool {
	return changesByItself(a) && solver.KindOf(a.Statements[0].Name.Quantity) == solver.Count
}

// forgetsChange are acts that forget what nobody says: a change.
func forgetsChange(a Act) bool {
	return a.Kind == Forget && len(a.Statements) == 1 && (a.Statements[0].Op == solver.Plus || a.Statements[0].Op == solver.Minus)
}

// setsCount are acts that set a count to one figure.
func setsCount(a Act) bool {
	return valued(a) && a.Statements[0].Op == solver.Eq && solver.KindOf(a.Statements[0].Name.Quantity) == solver.Count
}

// setsAtMost are acts that set an upper limit.
func setsAtMost(a Act) bool { return valued(a) && a.Statements[0].Op == solver.LE }

// plusCount are acts that add to a count.
func plusCount(a Act) bool {
	return changesCount(a) && a.Statements[0].Op == solver.Plus
}

// setsNone are acts that set a count to nothing.
func setsNone(a Act) bool {
	return valued(a) && a.Statements[0].Op == solver.Eq && a.Statements[0].Value.Num.Sign() == 0 && a.Statements[0].Value.Of == nil
}

// ordersAny are acts that forget or take back.
func ordersAny(a Act) bool { return a.Kind == Forget || a.Kind == Undo || a.Kind == Next }

// comparesOver are acts that set or forget a strict lower limit.
func comparesOver(a Act) bool {
	return (valued(a) || a.Kind == Forget) && len(a.Statements) > 0 && a.Statements[0].Op == solver.GT
}

// nearly are acts that set about a figure.
func nearly(a Act) bool { return valued(a) && a.Statements[0].Op == solver.Near }

// limitsOrForgets are acts that set or forget a strict limit.
func limitsOrForgets(a Act) bool {
	return (valued(a) || a.Kind == Forget) && len(a.Statements) > 0 && (a.Statements[0].Op == solver.GT || a.Statements[0].Op == solver.LT)
}
