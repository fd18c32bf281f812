package guard

import (
	"regexp"
	"slices"
	"strings"
	"sync"

	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/grammar/chunk"
	"saywright/grammar/hear"
	"saywright/grammar/paraphrase"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
	"saywright/grammar/ways"
	"saywright/solver"
)

// A clause of its own beside a wish may turn it: it was said to somebody else, is of another thing, was so once, is not settled, is held
// to be a folly or was meant in jest. Such a clause has no figure of its own. Where it stands beside what would be set, it is asked back.

// turnPlace is where a clause may stand to turn what stands beside it.
type turnPlace uint8

const (
	turnsBefore turnPlace = 1 << iota // it stands before what it turns
	turnsBehind                       // it stands behind it
	turnsLead                         // it is the beginning of a sentence that goes on with what it turns
	turnsAlone                        // it is a whole sentence, with nothing better behind it
	turnsExcuse                       // it stands behind a figure that was measured or said wrongly, and no better one was said
)

// beside is either side.
const turnsBeside = turnsBefore | turnsBehind

// turnWay is a way in which a clause turns what stands beside it; one of the words of its keys is in each such clause.
type turnWay struct {
	keys string
	at   turnPlace
	way  string
	ask  func(act.Act, []act.Act) solver.Question
}

const (
	turnKin   = `(?:wife|husband|missus|mother|mum|mom|mama|ma|dad|father|pa|son|daughter|boy|girl|lad|kid|kids|brother|sister|uncle|aunt|auntie|cousin|nephew|niece|grandma|grandpa|granny|gran|nan|boss|foreman|helper|apprentice|mate|buddy|friend|neighbor|neighbors|neighbour|neighbours|builder|contractor|carpenter|customer|client|landlord|tenant|partner|in - laws?|(?:brother|sister|mother|father|son|daughter) - in - law)`
	turnOwner = `(?:my |our |his |her |their |the |a |that |some |mine own )`
	turnThing = `(?:(?:dog|rabbit|chicken|hen|pig|goat|bird|tree|play|guinea pig|duck|cat|horse|cow|tool|garden|wood|potting|pump|boat|sheep|bike|green|bee|pigeon|hot) ?(?:house|hutch|hutches|coop|pen|run|shed|box|cage|loft|barn|hive|frame)|doghouse|treehouse|playhouse|greenhouse|birdhouse|hutch|coop|pigpen|pen|kennel|crib|cot|cradle|shed|garage|barn|stable|stairs|staircase|ramp|bookshelf|bookcase|shelf|shelves|table|bench|bed|planter|trellis|pergola|arbor|carport|chapel|church|school|church hall|town hall|village hall|hall|cabin|boathouse|sandbox|(?:last|previous|next|other) (?:house|place|job|customer|client|wall|site|project))`
	turnTheir = `(?:` + turnOwner + `?` + turnKin + ` ?(?:'s|s') (?:back |front |side |old |new |summer )?(?:place|house|home|wall|fence|side fence|porch|deck|yard|garden|job|cabin|cottage|farm|shop|office|flat|patio|terrace|balcony|shed|garage|treehouse|railing)|(?:grandma|grandpa|granny|gran|nan|mother|mom|mum|dad|father) 's)`
	turnElse  = `(?:` + turnOwner + `?` + turnThing + `|` + turnTheir + `)`
	turnTail  = `(?: out back| across the (?:road|street|way)| down the (?:road|street)| i mean| that is| that was| it was| i am (?:building|making|on about|doing)| i was building)*`
	turnVeryX = `(?:a |an |just |plain |plum |downright |really |very |a bit |a little |a tad |pretty |so |too |quite |rather |awfully |right |sheer |pure |utter |utterly |totally |kind of )*`
	turnFolly = `(?:daft|silly|foolish|stupid|mad|madness|crazy|insane|nuts|bonkers|barmy|ridiculous|absurd|ugly|hideous|awful|horrible|terrible|dreadful|ghastly|odd|wrong|folly|lunacy|insanity|a mistake|overkill|reckless|unwise|a sin|a crime|idiotic|dumb|pointless)`
	turnStand = `(?:i|we|he|she|they|you|it|that|this)`
)

// meantOtherwise are whole lines that set or ask something only in their words.
var meantOtherwise = []hear.OpenWay{
	// What somebody has lying about sets nothing.
	{Looks: hear.Stated(solver.Rails), Way: regexp.MustCompile(`^(?:well |so |ok |now )*(?:i|we) (?:have|got|own|have got) (?:only |just |about )*` + aFigure + ` (?:good |old |spare |long |more )*(?:boards|planks|sticks|pieces)(?: [.!])*$`), Ask: hear.OpenQuestion("Are they for this wall, all of them?", "six rails")},
	// A wish without a measure asks nothing, and sets nothing.
	{Looks: hear.AsksQuantity, Way: regexp.MustCompile(`^(?:well |so |ok |now |please )*(?:the|my|our|that|this) [a-z -]+ (?:should|must|ought to|has to|have to|needs to|need to) (?:be|feel|look) (?:[a-z]+ )?(?:comfortable|pleasant|nice|generous|easy|roomy|handy|decent|sensible|reasonable|cozy|friendly|welcoming|practical|convenient|ample|right)\b[^?]*$`), Ask: askback.HowMuchIs.Open("opening at least 36", "that")},
	// A plan has a name, and "that" is none.
	{Looks: hear.KindOf(act.Save), Way: regexp.MustCompile(`\bsave (?:it|this|that|everything) (?:as|under|to) (?:it|this|that|the same|same)(?: [.!])*$`), Ask: hear.OpenQuestion("What is the plan to be called?", "save as porch")},
}

var (
	turnsOther  = thisWallToo
	turnsSettle = hear.OpenQuestion("Is that settled, or shall it wait?", "gap 2-1/2")
	turnsNow    = wantedHere
)

// turnWays are the ways in which a clause turns what stands beside it.
var turnWays = []turnWay{
	// Said to others, by others, or for something else than to be heard.
	{"talking speaking", turnsBehind, `(?:i|we) (?:was|were) (?:just |only )?(?:talking|speaking) to (?:my|the|our) [a-z]+(?: there| here)?`, turnsNow},
	{"talking speaking shouting", turnsBehind, `that (?:was|is) (?:just |only )?(?:my|the|our) [a-z]+ (?:talking|speaking|shouting)`, turnsNow},
	{"meant", turnsBehind, `that (?:was|is) (?:just |only )?meant for ` + turnOwner + `[a-z]+`, turnsNow},
	{"for", turnsBehind, `that was (?:just |only )?for (?:my|the|our) ` + turnKin, turnsNow},
	{"reading quoting repeating thinking rehearsing", turnsBeside, `(?:i|we) (?:am|was|were|are) (?:just |only |merely )*(?:quoting|repeating|reading (?:aloud|out loud|it out|off the wrong|from the wrong|what)|thinking (?:aloud|out loud)|rehearsing)(?: [a-z]+)*`, turnsNow},
	{"son honey boys lads kids dad mom mum girls guys darling fellas", turnsBefore, `(?:hey |hi |oi )(?:son|honey|boys|lads|kids|girls|guys|darling|dad|mom|mum|fellas)(?: (?:listen|listen up|listen here|come here|come over here))?|(?:son|honey|boys|lads|kids|girls|guys|darling|dad|mom|mum|fellas) (?:listen|listen up|listen here|come here|come over here|write this down|write that down|take this down|take that down|hear this)`, turnsNow},
	{"boys kids lads guys dad son girls", turnsBehind, `(?:(?:do |did )?you (?:hear|hear me|get that|got that|hear that)|are you listening)`, turnsNow},
	{"shouted hollered yelled called screamed whispered bellowed", turnsBehind, `(?:she|he|they|(?:my|the|our) [a-z]+) (?:just |then )?(?:shouted|hollered|yelled|called|screamed|whispered|bellowed)(?: (?:from|over|out|down|up|across|through|that|it|in)(?: [a-z]+){0,3})?`, turnsNow},
	{"shouted hollered yelled called screamed whispered bellowed", turnsBefore, `(?:she|he|they|(?:my|the|our) [a-z]+) (?:just |then )?(?:shouted|hollered|yelled|called|screamed|whispered|bellowed)(?: (?:from|over|out|down|up|across|through|in)(?: [a-z]+){0,3})?`, turnsNow},
	{"goes", turnsBefore, `(?:then )?(?:he|she) goes`, turnsNow},
	{"always keeps", turnsBefore, `(?:my|the|our) [a-z]+ (?:is |'s )?(?:always|keeps|keeps on) (?:shouting|yelling|hollering|screaming|moaning|on about|going on|muttering|telling everybody)`, turnsNow},
	{"idea notion brainwave scheme fancy", turnsBefore, `(?:my|the|our|his|her) (?:[a-z]+ )?[a-z]+ 's (?:first |old |big |great |bright )*(?:idea|notion|brainwave|scheme|fancy) (?:was|had been)`, turnsNow},
	{"neighbor neighbors neighbour neighbours", turnsLead, `(?:my|the|our) neighbou?rs? (?:next door |there )?(?:wants?|would like|asked|told|asks|begs|keeps asking|would love|expects?) (?:us|me) to\b.*`, turnsNow},

	// Of another thing.
	{"for on at about to over", turnsBeside, `(?:(?:that|this) is |that was |i am talking |i was talking )?(?:over |back |out )?(?:for|on|at|in|about|over at|as for) ` + turnElse + turnTail, turnsOther},
	{"comes", turnsBefore, `when it comes to ` + turnElse + turnTail, turnsOther},
	{"wrong", turnsBehind, `(?:(?:that|this) (?:is|was) |that is for )?(?:the )?wrong (?:wall|job|house|customer|client|site|project|side of the house|address|fence)`, turnsOther},
	{"neighbor neighbors neighbour brother sister mother father uncle aunt cousin friend son daughter grandma grandpa mom dad old last", turnsBehind, `(?:that|this|which|it) (?:is|was) (?:only |just )?(?:the|what|how many|how (?:high|wide|tall)) ?(?:gap|height|width|wall|opening|rails|boards|bay|bays|drop|span|post|posts|bottom gap|number of rails|size|figure|is)? ?(?:on|of|in|at|for|by|over at) (?:` + turnTheir + `|the (?:old|last|previous|other) (?:wall|one|fence|house|job))`, turnsOther},

	// Of another time.
	{"when", turnsBehind, `(?:that was )?back (?:when|before) (?:i|we|they|the|my|our|he|she)(?: [a-z]+){1,6}`, turnsNow},
	{"before", turnsBehind, `(?:that was |it was )?before (?:i|we|they|the|my|our|he|she|that)(?: [a-z]+)?(?: 'd| had)? (?:[a-z]+ )?(?:took|blew|saw|came|had|changed|knew|learned|heard|went|broke|found|got|fell|washed|said|met|thought)(?: [a-z]+){0,4}`, turnsNow},
	{"before", turnsBehind, `that was before(?: [a-z]+){1,5}`, turnsNow},
	{"old first original plan idea wanted way", turnsBehind, `(?:that|which|it) (?:was|is) (?:only |just )?(?:the (?:old|first|original|earlier) (?:way|plan|idea|thought|design|one)|(?:the (?:plan|idea|way)|what i wanted|what we wanted|how we did it|how it was)(?: (?:last|back|in|my|we|i|they|yesterday|then)(?: [a-z]+){0,5}))`, turnsNow},
	{"was were", turnsBehind, `(?:it|which|that) was (?:lovely|nice|grand|good|great|fun|fine)(?: while it lasted| once| then| in its day)?`, turnsNow},
	{"yesterday", turnsLead, `(?:yesterday|last (?:night|week|month|year)|this morning|earlier) (?:i|we) (?:was|were) (?:all for|all set|dead set|set on|keen|going to|about to|thinking|sure|for)\b.*`, turnsNow},
	{"ship", turnsBehind, `that ship (?:has |'s |is )?sailed(?: [a-z]+)*`, turnsNow},
	{"going about meaning planning", turnsLead, `(?:i|we) (?:'d|had|would) been (?:going|about|meaning|planning) to (?:say|ask|tell|write|put)\b.*`, turnsNow},

	{"was were been", turnsAlone, `(?:i|we|they|he|she|it|there) (?:(?:was|were)(?: originally| first| once| all| just| only)? (?:going|about|meaning|planning|intending) to|(?:'d|had|would|have) been (?:planning|thinking|going)(?: on| to| of| for)?)\b.*`, turnsNow},
	{"night yesterday week month year", turnsAlone, `(?:yesterday|last (?:night|week|month|year)) (?:i|we|he|she|they) (?:wanted|liked|said|thought|asked for|fancied|had)\b.*`, turnsNow},
	{"gate garage shed barn closet window shower stable", turnsAlone, `(?:the|my|our|his|her|that) (?:garden |garage |shed |barn |yard )?(?:gate|garage|garage door|shed|shed door|barn|barn door|closet|shower|window|stable) (?:needs|wants|takes|requires|calls for|will need|has) (?:a|an)\b.* (?:opening|doorway)`, turnsOther},

	// Not settled, not sure.
	{"decide mind minds forth decided settled agree arguing made", turnsBeside, `(?:i|we) (?:(?:just |really |still |simply )*(?:can not|could not|can 't) (?:yet |quite )?(?:decide|make up (?:my|our) minds?|agree)|(?:still )?have not (?:really |quite )?(?:yet )?(?:decided|made up (?:my|our) minds?|settled|agreed)|(?:am|are) (?:still )?(?:going|swinging|arguing|debating)(?: back and forth| to and fro)?|keep going (?:back and forth|to and fro)|(?:am|are) (?:still )?(?:in|of) two minds)(?: (?:yet|about it|about that|on it|on that|over it|over that|whether to))*`, turnsSettle},
	{"sure certain measured checked", turnsBeside, `not that i (?:am|have|'d|would) (?:really |all that |too |so |actually |ever )*(?:sure|certain|measured|measured it|checked|checked it|swear to it|know)(?: of it| about it)?`, turnsSettle},
	{"might may", turnsBeside, `i (?:might|may|could) (?:well )?(?:have|be) (?:(?:got |had )?(?:this|that|it|them)(?: all)? (?:backwards|wrong|the wrong way (?:round|around|up)|upside down|muddled|mixed up|back to front)|mistaken|wrong|mixing (?:this|that|it) up|(?:got )?(?:this|that|it) muddled)(?: though)?`, turnsSettle},
	{"ask check run talk speak", turnsBehind, `(?:but )?(?:(?:just |only )?let me (?:first )?|i (?:will|'ll|had better|have to|will have to|need to|must|should|want to|got to) (?:first )?(?:have to )?|we (?:will|have to|will have to|need to|must|should) )(?:ask|check with|run (?:it|that|this) (?:by|past)|talk to|speak to|speak with|talk with|consult) (?:my|the|our) [a-z]+(?: first| before you do| before that| before)?`, turnsSettle},
	{"after once until", turnsBehind, `(?:after|once|when) (?:i|we|(?:the|my|our) [a-z]+) ?(?:have|has|'s|'ve|is|had) (?:been|talked|spoken|asked|checked|agreed|approved|okayed|signed)(?: [a-z]+){0,4}`, turnsSettle},
	{"wait", turnsBefore, `(?:just |better )?wait for (?:my|the|our) [a-z]+(?: then| first)?`, turnsSettle},
	{"only long provided", turnsBehind, `(?:but )?(?:only if|as long as|so long as|provided|provided that) (?:it|that|they|my [a-z]+|the [a-z]+) (?:fits|holds|works|stays|keeps|remains|agrees|agree|is|does not)(?: [a-z]+){0,3}`, turnsSettle},
	{"leave let", turnsBehind, `(?:just |better )?(?:leave|let) (?:it|that|them) be`, turnsSettle},
	{"leave", turnsBehind, `(?:come to think of it|no|no wait|actually|on second thoughts?) leave (?:it|that|them)(?: alone| as (?:it|they) (?:is|was|are|were))?`, turnsSettle},

	// A folly, a wish that cannot be, a jest.
	{"looks look is seems sounds would", turnsBehind, `(?:that|which|it) (?:(?:would|'d) (?:just )?(?:be|look|seem)|is|looks|seems|sounds|'s) ` + turnVeryX + turnFolly, turnsNow},
	{"would 'd", turnsLead, `(?:(?:it|that) (?:would|'d) be ` + turnVeryX + turnFolly + ` to|(?:i|we|you|he|she|they) (?:would|'d) (?:have to )?be ` + turnVeryX + `(?:mad|crazy|daft|nuts|insane|foolish|stupid|silly|fools?|an idiot|a fool|out of your mind) to)\b.*`, turnsNow},
	{"always just simply", turnsLead, `(?:i|we) could (?:always|just|simply) (?:say|ask for|claim|tell you|pretend)\b.*`, turnsNow},
	{"were had", turnsBefore, `(?:were|had) (?:i|we|it) (?:a |an |the |but |only )?[a-z]+(?: [a-z]+){0,3}`, turnsNow},
	{"dog cat baby kid kids toddler puppy child boy girl grandson granddaughter", turnsBehind, `(?:the|my|our|a|any) [a-z]+ (?:could|would|might) (?:just |easily |still |well )?(?:get|fall|slip|climb|crawl|squeeze|wriggle|walk|jump|go|roll|escape|stick)\b.*`, turnsNow},
	{"moon", turnsBehind, `(?:oh |aye |sure )*(?:and )?the moon on a stick`, turnsNow},
	{"money well", turnsBehind, `(?:because (?:money grows on trees|(?:that|it) (?:went|worked|turned out) so well(?: before| last time)?)|(?:as though|as if) (?:i|we) (?:had|'d|would|have)(?: the| all the| any)? money(?: to burn)?)`, turnsNow},
	{"having teasing joking kidding pulling going had got", turnsBehind, `(?:(?:i|we) (?:am|was|are|were) (?:just |only )?(?:having (?:you|us) on|teasing|joking|kidding|fooling|messing|pulling your leg|winding you up)(?: you| about| around)?|(?:had|got) you (?:going )?there)`, turnsNow},
	{"should", turnsBehind, `(?:i|we) should have`, turnsNow},
	{"thought", turnsBehind, `(?:i|we) have thought better of (?:it|that)`, turnsNow},
	{"mind minds", turnsBehind, `(?:i|we) have changed (?:my|our) minds?`, turnsNow},
	{"history", turnsBehind, `that is (?:all )?(?:ancient )?history(?: now)?`, turnsNow},
	{"wish", turnsBehind, `(?:how |but )?(?:i|we) (?:only )?wish (?:i|we|it|that|they) (?:could|would|did|had|were)(?: [a-z]+){0,2}`, turnsNow},
	{"would", turnsBehind, `(?:(?:that|it|which) )?would have been (?:nice|lovely|great|grand|good|better|something)`, turnsNow},
	{"thought", turnsBehind, `(?:(?:that|it) (?:is|was) )?(?:only|just) a (?:thought|daydream|dream|fancy|notion|joke|test)`, turnsNow},

	// Others want it, and do not get it; whether it is to be done is asked.
	{"getting having get have", turnsBehind, `(?:but )?(?:she|he|they|it) (?:(?:is|are|'s|will|was) (?:not|never) (?:be )?(?:getting|having|going to (?:get|have)|get|have)|(?:can|may) (?:not|never) have)(?: it| them| that| one| those| any)?(?: from me| here)?`, turnsNow},
	{"put enter write note jot wrote entered noted", turnsBehind, `(?:(?:why |when |where )?(?:did|does|has|have|had|who) ?(?:you |he |she |they |i |we )?|(?:he|she|they) (?:has |have |had )?|(?:i|we) (?:have |had |did )*(?:already |just |never )(?:have |had )*)(?:already |just |then |all )*(?:put|enter|write|note|jot|wrote|written|entered|noted|jotted) (?:it|that|this|them)(?: in| down| there)?`, turnsNow},
	{"ask", turnsLead, `(?:she|he|they|(?:my|the|our) [a-z]+|boss|[a-z]+) (?:told|asked|wants|wanted|sent|said for) (?:me|us) to (?:just |please )?ask (?:you )?(?:about|whether|if|what|how)\b.*`, turnsNow},
	{"should shall must do", turnsBehind, `(?:so |and |but )?(?:should|shall|must|do) (?:i|we) (?:really |just )?(?:go ahead and )?(?:put|enter|use|take|do|go with|write|note|follow|believe|trust|accept)(?: with)?(?: it| that| this| them| those)(?: in| down)?`, hear.AskedWhether("Shall I set that?", "gap 2-1/2")},
	{"up down", turnsBeside, `if it (?:was|were) (?:all |only |just )?(?:left )?(?:up|down) to (?:me|us|him|her|them)(?: alone)?`, turnsNow},

	// Measured or read wrongly, and nothing better said.
	{"tape ruler rule pencil misread misheard mismeasured", turnsExcuse, `(?:(?:the|my) (?:tape|ruler|rule) (?:was|is|had) (?:[a-z]+ )?(?:bent|twisted|slipping|slipped|sagging|upside down|crooked|caught|stuck|wrong|broken|kinked)|i (?:was holding|had|was reading|held) (?:the|my) (?:tape|ruler|rule) (?:upside down|backwards|wrong|crooked|the wrong way(?: up| round| around)?|at the wrong end|from the wrong end)|i (?:have )?(?:misread|misheard|mismeasured)(?: (?:the|my) [a-z]+| it| that)?)(?: (?:mind you|though|i think))?`, turnsSettle},
	{"lie", turnsExcuse, `(?:no )?i tell a lie`, turnsSettle},
}

// knownTurning is such a way made ready.
type knownTurning struct {
	at  turnPlace
	way *regexp.Regexp
	ask func(act.Act, []act.Act) solver.Question
}

// turningsAt are those ways by their key words.
var turningsAt = sync.OnceValue(func() map[string][]*knownTurning {
	m := map[string][]*knownTurning{}
	for _, t := range turnWays {
		k := &knownTurning{t.at, regexp.MustCompile(`^(?:` + t.way + `)$`), t.ask}
		for _, w := range strings.Fields(t.keys) {
			m[w] = append(m[w], k)
		}
	}
	return m
})

// turnLeads may stand before a clause that turns.
var turnLeads = scan.WordSet("and but or so oh well ah no sorry oops now honestly though then um uh er yes")

var otherwiseIndex = sync.OnceValue(func() *ways.WayIndex { return ways.IndexWays(hear.WaysOf(meantOtherwise)) })

// TurnedBeside asks back where a clause beside what is set turns it.
func TurnedBeside(r act.Reading, atoms []scan.Atom) act.Reading {
	if r.Ask != nil || len(r.Acts) == 0 {
		return r
	}
	if len(r.Acts) == 1 {
		said := scan.Text(atoms)
		index := otherwiseIndex()
		may := index.In(said)
		for i := range meantOtherwise {
			if w := &meantOtherwise[i]; may.Has(int32(i)) && w.Looks(r.Acts[0]) && index.Matches(i, said) {
				q, at := w.Ask(r.Acts[0], r.Acts), r.Acts[0].At
				q.At = &at
				return act.Reading{Ask: &q}
			}
		}
	}
	if !slices.ContainsFunc(r.Acts, setsOrTries) {
		return r
	}
	var known []*knownTurning
	for i := range atoms {
		if atoms[i].Kind == scan.Word || atoms[i].Text == "'d" {
			for _, k := range turningsAt()[atoms[i].Text] {
				if !slices.Contains(known, k) {
					known = append(known, k)
				}
			}
		}
	}
	if len(known) == 0 {
		return r
	}
	sets := slices.IndexFunc(r.Acts, func(a act.Act) bool { return a.Kind == act.State && !takesOff(a) })
	var parts [][]scan.Atom
	from := 0
	for i := range atoms {
		if chunk.BreaksClause(atoms, i) || i+1 == len(atoms) {
			parts = append(parts, atoms[from:i+1])
			from = i + 1
		}
	}
	for _, placed := range inOneBreath(parts) {
		k, part := placed.place, placed.atoms
		if last := part[len(part)-1].Text; last == "?" {
			continue
		}
		for len(part) > 1 && (turnLeads[part[0].Text] && !(part[0].Text == "so" && part[1].Text == "that") || part[len(part)-1].Kind == scan.Sign) {
			if part[len(part)-1].Kind == scan.Sign {
				part = part[:len(part)-1]
				continue
			}
			part = part[1:]
		}
		said, fig := scan.Text(part), paraphrase.FiguredAny(parts[k:k+1])
		for _, t := range known {
			switch {
			case strings.HasPrefix(said, "for ") && !slices.ContainsFunc(r.Acts, notPiecesBeside):
				continue // "three more 2x6s at 60 inches, for a bench"
			case t.at == turnsAlone:
				if paraphrase.FiguredAny(parts[:k]) || paraphrase.FiguredAny(parts[k+1:]) || phrase.SaidBeforeOf(setsAgain)(atoms, nil) {
					continue
				}
			case t.at == turnsLead:
				if paraphrase.FiguredAny(parts[:k]) {
					continue
				}
			case sets < 0 || fig || len(parts) < 2:
				continue
			case t.at == turnsExcuse:
				if k == 0 || paraphrase.FiguredAny(parts[k+1:]) || phrase.SaidBeforeOf(setsRight)(atoms, nil) || rightedAlready(parts[:k]) {
					continue
				}
			case !(t.at&turnsBefore != 0 && k+1 < len(parts) && paraphrase.FiguredAny(parts[k+1:]) && !paraphrase.FiguredAny(parts[:k]) || t.at&turnsBehind != 0 && k > 0 && !paraphrase.FiguredAny(parts[k+1:]) && !saysOfWhat(parts[k-1])):
				continue
			}
			if t.way.MatchString(said) {
				a := r.Acts[max(sets, 0)]
				q := t.ask(a, r.Acts)
				at := a.At
				q.At = &at
				return act.Reading{Ask: &q}
			}
		}
	}
	return r
}

// rightedAlready reports whether a figure stands behind a "no": "40 high, no, 42, I misread the tape".
func rightedAlready(parts [][]scan.Atom) bool {
	for k, p := range parts {
		if k > 0 && p[0].Text == "no" && paraphrase.FiguredAny(parts[k:]) {
			return true
		}
	}
	return false
}

// inOneBreath adds to the clauses of a line all that stands before its first figure, and behind its last one, as one clause each: "hey, son,
// listen, six rails".
func inOneBreath(parts [][]scan.Atom) (out []placedPart) {
	if len(parts) < 2 {
		return append(out, placedPart{parts[0], 0})
	}
	first, last := slices.IndexFunc(parts, figuredPart), len(parts)-1
	for last > 0 && !figuredPart(parts[last]) {
		last--
	}
	for k := range parts {
		out = append(out, placedPart{parts[k], k})
	}
	if first > 1 {
		out = append(out, placedPart{unsigned(parts[:first]), first - 1})
	}
	if last >= 0 && last+2 < len(parts) {
		out = append(out, placedPart{unsigned(parts[last+1:]), last + 1})
	}
	return slices.DeleteFunc(out, func(p placedPart) bool { return len(p.atoms) == 0 }) // nothing but signs
}

// placedPart is a clause and its place in the line.
type placedPart struct {
	atoms []scan.Atom
	place int
}

func figuredPart(p []scan.Atom) bool { return paraphrase.FiguredAny([][]scan.Atom{p}) }

// unsigned are clauses without the signs between them.
func unsigned(parts [][]scan.Atom) (out []scan.Atom) {
	for _, p := range parts {
		for _, a := range p {
			if a.Kind != scan.Sign {
				out = append(out, a)
			}
		}
	}
	return out
}

// setsRight are words by which somebody sets right what was said.
var setsRight = scan.WordSet("mean meant scratch instead should actually rather nope correction")

// setsAgain are words behind which comes what is wanted now.
var setsAgain = scan.WordSet("but now instead so until till if what suppose wait how why which where when")

// saysOfWhat reports whether a clause only names what the next one is of: "and for the opening, I'll have to ask my wife".
func saysOfWhat(part []scan.Atom) bool {
	for len(part) > 1 && turnLeads[part[0].Text] {
		part = part[1:]
	}
	return !chunk.Figured(part) && (part[0].Text == "for" || part[0].Text == "about" || part[0].Text == "as" || part[0].Text == "regarding")
}

// takesOff reports whether something is taken off: that it is too much, or overkill, is why.
func takesOff(a act.Act) bool {
	return len(a.Statements) == 1 && a.Statements[0].Op == solver.Minus
}

// notPiecesBeside reports whether an act is of the wall, and not of pieces that are bought besides, which are always for something else.
func notPiecesBeside(a act.Act) bool {
	return a.Kind != act.State || slices.ContainsFunc(a.Statements, func(s solver.Statement) bool { return s.Name.Quantity != solver.Extra })
}

func setsOrTries(a act.Act) bool { return a.Kind == act.State || a.Kind == act.WhatIf }
