package hear

import (
	"regexp"
	"strings"
	"sync"

	"saywright/grammar/act"
	"saywright/grammar/chunk"
	"saywright/grammar/lex"
	"saywright/grammar/measure"
	"saywright/grammar/parse"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
	"saywright/grammar/ways"
	"saywright/solver"
)

// Some clauses name a value without wanting it: what was wanted once, what others have, what nobody wants, what somebody worries about.
// A value is never set by them; whether it is wanted is asked back.

// airs are the clauses that only air a value: how they begin, and how they end.
var airs = sync.OnceValue(func() (a struct{ front, back, about, undone, might *regexp.Regexp }) {
	lead := `^(?:(?:and|but|so|well|because|though|although|while|honestly|actually|originally|ok|okay|now|see|look|um|uh|oh) )*`
	us := `(?:i|we|he|she|they|you|it|the [a-z]+|my [a-z]+|our [a-z]+)`
	having := `(?:have|has|had|use|used|like|liked|want|wanted|go with|went with|go for|put in|put up|put|run|ran|do|did|build|built|choose|chose|pick|picked|get by with|end up with|settle on|make do with|prefer|preferred)`
	often := `(?: (?:usually|often|mostly|generally|normally|always|sometimes|tend to|typically|just|only))?`
	a.front = regexp.MustCompile(lead + `(?:` + strings.Join([]string{
		us + `(?: had)? used to `,
		`not that (?:i|we|he|she|they|you|anybody|anyone|it|there) `,
		`(?:nobody|no one|noone|none of us|neither of us|not one of us) `,
		us + `(?: had| have)? (?:nearly|almost|very nearly|all but|just about|came close to|came near) (?:had|have|having|went|go|going|got|bought|buying|set|used|using|said|saying|chose|choosing|built|building|put|took|taken|made|settled|picked|ordered|ordering|did|cut|cutting)\b`,
		us + ` (?:was|were)(?: just| only)? (?:about|close|ready|near|set|supposed|meant|going|planning) (?:to )?(?:have|having|use|using|go|going|set|setting|build|building|put|putting|make|making|get|getting|buy|buying|order|ordering|cut|cutting|do|doing|run|running|ask|asking)\b`,
		us + ` (?:would|could|should|might) (?:not )?have (?:had|gone|liked|wanted|used|put|taken|chosen|picked|done|made|set|built|bought|preferred|been (?:happy|glad|better off|fine) with)\b`,
		us + `(?: have| has)? (?:had|been having|got|run into|ran into|met|seen)(?: some| a lot of| lots of| no end of| no| nothing but| bad| good| poor)? (?:trouble|problems?|a problem|bother|issues|luck|a time|a hard time|grief|complaints|a fight|an argument|words|fun) (?:with|about|over|on)\b`,
		us + ` (?:could|can|would|did|do|does|will|was|were|am|are|is)(?: just| simply| really)? ?(?:not|never)(?: able to| manage to| quite| even| possibly| really)* (?:fit|squeeze|get in|cram|wedge)\b`,
		us + ` (?:failed|struggled|fought|tried and failed|tried in vain|was unable|were unable|are unable|am unable) to\b`,
		us + ` (?:wish|wished)(?: that)? (?:i|we|it|there|they|he|she|you|the [a-z]+)(?: could| would)?(?: have)? (?:had|have|was|were|be|got|get|did|do|came|come|went|go|used|use|took|take)\b`,
		`(?:` + us + ` )?(?:am |is |are |was |were |have been |has been |keep |keeps )?(?:still |really |just |always |a bit |kind of )*(?:torn|wavering|undecided|hesitating|choosing|deciding|debating|dithering|wobbling|split|stuck|caught|going back and forth|flipping|fluctuating) between\b`,
		us + ` (?:still |really |just )*(?:can not|cannot|could not|have to|has to|need to|needs to|have yet to|do not know how to|am trying to|are trying to|must|should) (?:still |really |just )*(?:choose|decide|pick|settle|make up (?:my|our|his|her) mind) between\b`,
		us + ` had (?:only |just |first |once |always |really |originally )?(?:wanted|hoped|meant|intended|wished|asked for|thought of|in mind|gone with|gone for|picked|opted for|settled on|planned on|started with|started out with)\b`,
		`(?:if only|too bad|it is a (?:pity|shame)|what a (?:pity|shame)|pity|a pity|shame|a shame|no wonder|small wonder)\b`,
		`(?:most|some|a lot of|lots of|plenty of|other|certain|a few|many|the other|all the other|all) (?:people|folks|places|builders|guys|fellows|carpenters|crews|walls|houses|neighbors|neighbours|jobs|decks|porches|shops|yards|towns|others|of (?:them|the others|the neighbors))` + often + ` ` + having + `\b`,
		`(?:people|folks|others|everybody else|everyone else|everybody|everyone|somebody else|someone else|somebody|someone|one|the neighbors|the old timers|old timers|carpenters|builders)` + often + ` ` + having + `\b`,
		`(?:i am|we are|he is|she is|they are)(?: really| so| very| a bit| a little| just)* (?:afraid|scared|frightened|terrified|wary|tired|sick) of\b`,
		`(?:until|till|unless|lest|ever since)\b`,
		`(?:back then|in the old days|once upon a time|years ago|long ago|last (?:year|time|summer|spring|fall|winter|month|week) (?:i|we|he|she|they|you|it|there|the|my|our)|the last time|on the last (?:one|job|wall)|on my last (?:one|job|wall)|in my (?:day|time)|at my old (?:place|house)|where i (?:come from|grew up|trained|apprenticed)|when i was (?:a kid|young|an apprentice|starting out|your age))\b`,
		`(?:did|have|had|do|when did|where did|why did|have) (?:i|we|you|he|she|they)(?: not| ever| really| already| even| actually)* (?:say|said|ask for|asked for|tell you|told you|mention|mentioned|agree|agreed|want|wanted|order|ordered|give you|given you)\b`,
		`(?:you|do you|does he|does she|do they)(?: really| just| also| all)* (?:like|want|love|fancy|prefer)\b`,
		`(?:this|that|it) (?:is|was) (?:why|when|because of)\b`,
		us + `(?: have| had)?(?: only| just| also| once)? (?:talked|chatted|argued|joked|dreamed|dreamt|spoke|spoken|heard|read|wondered|asked) (?:about|of|over)\b`,
		us + ` (?:remember|recall|regret|resent|miss|dread|fear|hate|detest|loathe|despise|envy|doubt|mistrust|distrust|laughed at|joked about|gave up on|talked (?:me|us|him|her) out of|warned (?:me|us|him|her) (?:off|about|against)|advised (?:me|us|him|her)? ?against|argued (?:against|about|over)|complained about|swears by|swore by)\b`,
	}, `|`) + `)`)
	whose := `(?:the|my|our|his|her|their|your|an|a|one|some|only|just)`
	kind := `(?:old|first|original|early|earlier|initial|previous|former|last|other|bad|silly|crazy|dumb|good|best|one|rough|opening|second|wrong|stupid|foolish|big|main|real|whole|common|usual)`
	a.back = regexp.MustCompile(` (?:(?:was|were|had been|has been|used to be)(?: only| just| really| once| never| always)*(?: ` + whose + `)?(?: ` + kind + `)* (?:idea|ideas|thought|thoughts|plan|guess|mistake|choice|suggestion|proposal|notion|sketch|dream|favorite|favourite|offer|hope|worry|complaint|fear|problem|trouble|compromise|joke|error|slip|typo|accident|rule|custom|fashion|tradition|question|topic|issue|argument|advice)(?: (?:back then|before|once|at first|originally|here|there|of (?:mine|ours|his|hers|theirs|yours)))?` +
		`|(?:came up|come up|was discussed|were discussed|was mentioned|got mentioned|was floated|was talked about|was rejected|were rejected|fell through|got shot down|was shot down|was ruled out|were ruled out|was turned down|got turned down|was vetoed|went wrong|was on the table|was never on the table|was out|were out|got dropped|was dropped)(?: (?:once|before|at (?:first|the meeting|lunch|dinner)|yesterday|earlier|today|last (?:week|night|time)))?` +
		`|(?:bother|scare|worry|bug|puzzle|annoy|beat|surprise|confuse|spook|trouble|haunt|frighten|kill|upset|tempt|haunt)(?:s|es|ed|d|ies|ied)? (?:me|us|him|her|them|everybody|everyone))` +
		`(?: [,.;?!-].*)?$`)
	a.about = regexp.MustCompile(`\b(?:minds?|worried|concerned|anxious|nervous|curious|unsure|uncertain|uneasy|read|reading|hear|heard|talk|talks|talked|talking|speak|spoke|speaking|know|knew|knows|ask|asked|asks|asking|wonder|wondered|wondering|dreamt|dreamed|dreaming|argue|argued|arguing|learn|learned|learning|complain|complains|complained|complaining|mad|sorry|excited|happy|unhappy|worry|worrying|fret|fretting|joke|joked|joking|something|anything|nothing|lot|think|thought|sure|certain|serious|positive|picky|fussy|particular|crazy|wild|right|wrong|said|says|say|told|tells) about$`)
	a.undone = regexp.MustCompile(lead + `(?:` + strings.Join([]string{
		`(?:i am|we are|he is|she is|they are|am|are|was|were|feel)?(?: really| just| a bit| a little| too| so| not)* ?(?:afraid|scared|loath|loth|reluctant|hesitant|lazy|shy|tired|unable|unwilling|not ready|not able|not allowed) to (say )?\b`,
		`(?:i|we|he|she|they) (?:forgot|neglected|refuse|refused|declined|hesitate|hesitated|hate|omitted) to (?:[a-z]+)`,
		`(?:(?:there is|there was|i see|it is|that is|it was) )?(?:no need|no reason|no point|not necessary|unnecessary|not needed|pointless|useless|no use|too late|too early|too soon|hard|impossible|silly|foolish|dumb|wrong|a mistake|a shame|a pity|a bad idea|not a good idea|risky|dangerous|unwise)(?: for (?:you|me|us))? (?:to|in)\b`,
		`(?:nobody|no one|noone)(?: ever)? (?:told|asked|said|wanted|needs|wants|asks)\b`,
		`(?:did|does|do|have|has)(?: not)? (?:i|we|you|he|she|they) (?:just |already |really |ever )*(?:forget|forgot|forgotten|drop|dropped|save|saved|undo|undone|undid|clear|cleared|scrap|scrapped|erase|erased|delete|deleted|start|started|cancel|cancelled|remove|removed|lose|lost)\b`,
		`(?:should|shall|must|ought) (?:i|we) (?:just |now |maybe |perhaps |really )*(?:forget|drop|save|undo|redo|clear|scrap|erase|delete|start|cancel|remove|lose|wipe|reset|take back|set aside)\b`,
		`(?:who|why|when) (?:said|told|asked|says|would|should|did|do|does)\b`,
		`(?:i|we|you|they|he|she) (?:could|might|may)(?: also| always| just| still| maybe| perhaps| even| as well)* (?:forget|drop|save|undo|redo|clear|scrap|erase|delete|start over|cancel|remove|lose|wipe|reset|take back|set aside)\b`,
	}, `|`) + `)`)
	a.might = regexp.MustCompile(lead + `(?:i|we)(?: always| also| just| still)* (?:could|might|may)(?: also| always| just| still| maybe| perhaps| even| possibly| conceivably| as well| well)* [a-z]+(?: with)?`)
	return a
})

// barred is what may not be: "we may not exceed 30 inches".
var barred = regexp.MustCompile(`^(?:[a-z]+ )*(?:i|we) may not (?:ever |at any point |anywhere )?(?:exceed|go|space|place|fall|drop|come|get|run|set|be|leave|pass|cross|spend)\b`)

// wondersAbout are words by which somebody asks after a value: it is tried.
var wondersAbout = regexp.MustCompile(`\b(?:wondering|asking|curious|inquiring|wonders) (?:me |us )?about (?:a |an )?(?:[0-9]|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|half|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)`)

// Alters are the acts that change what stands or what is kept.
var Alters = map[act.Kind]bool{act.State: true, act.Forget: true, act.ForgetAllBut: true, act.Undo: true, act.Redo: true, act.StartOver: true, act.Save: true, act.Open: true, act.Take: true, act.SetAside: true}

// settled are verbs behind "could" and "might" that do not leave a value open, and verbs of telling what was forgotten.
var (
	settled = scan.WordSet("accept live stand tolerate handle manage need want say spare afford")
	tellsIt = scan.WordSet("mention say tell note add include give state specify put write enter type let")
)

// asksOfMoney begins a question whether something costs what it tells.
var asksOfMoney = regexp.MustCompile(`^(?:is|are) (?:the|a|an|my|our|brackets|anchors|screws|post|caps|bases) `)

// Airing asks back where a value would be set by a clause that only airs it.
func Airing(r act.Reading, atoms []scan.Atom) act.Reading {
	for i, a := range r.Acts {
		if a.Kind != act.Check && !Alters[a.Kind] {
			continue
		}
		at := AtomAt(atoms, a.At)
		if at < 0 {
			continue
		}
		from, to := clauseAround(atoms, at, a.End)
		said := scan.Text(atoms[from:to])
		about := NearBy(a.Statements) && spokenAbout(atoms[from:to])
		if a.Kind == act.Check {
			if about {
				r.Acts[i].Statements = madePlain(a.Statements)
			}
			continue
		}
		if m := ways.FindWay(airs().undone, said); m != "" && !tellsIt[lex.LastWord(m)] && !NeedsNoKeeping(said) {
			return wantedNow(a, atoms[from].At)
		}
		if a.Kind != act.State {
			continue
		}
		if lex.HatesWaste(a.Statements, said) {
			continue
		}
		if q := a.Statements[0].Name.Quantity; (q == solver.Price || q == solver.Budget) && ways.MatchesWay(asksOfMoney, said) {
			r.Acts[i].Kind = act.Check // "are brackets 3.15 each", "is the budget 400"
			continue
		}
		if !about && lex.BidDone(atoms[to:]) {
			continue // "I wish it were raised, please do that"
		}
		if m := ways.FindWay(airs().might, said); m != "" && !(strings.HasSuffix(m, " not") && barred.MatchString(said)) && !settled[lex.LastWord(m)] && !settled[lex.LastWord(strings.TrimSuffix(m, " with"))] && !strings.HasSuffix(m, " do with") && !strings.HasSuffix(m, " could use") {
			r.Acts[i].Kind = act.WhatIf // "I could add an eighth to the gap"
			continue
		}
		if ways.MatchesWay(parse.OthersDid, said) && !parse.ToldOfYard(a.Statements) {
			return wantedNow(a, atoms[from].At)
		}
		if (ways.MatchesWay(parse.OthersCould, said) || ways.MatchesWay(parse.CouldYou, said) && !parse.BegsPlease(atoms)) && !parse.ToldOfYard(a.Statements) {
			r.Acts[i].Kind = act.WhatIf // "he could do it in six rails"
			continue
		}
		if ways.MatchesWay(wondersAbout, said) {
			r.Acts[i].Kind = act.WhatIf // "somebody in back is asking about five rails"
			continue
		}
		if about || ways.MatchesWay(airs().front, said) || ways.MatchesWay(airs().back, said) {
			return wantedNow(a, atoms[from].At)
		}
	}
	return r
}

// wantedNow asks whether an act is wanted that a clause at a place only speaks of.
func wantedNow(a act.Act, at int) act.Reading {
	said := parse.Normal([]act.Act{a})
	return act.Reading{Ask: &solver.Question{At: &at, Text: "Is that wanted now?", Choices: []string{said}, Example: said}}
}

// clauseAround is the clause that an act ends in: from the last break before its last word to the next one behind it.
func clauseAround(atoms []scan.Atom, at, end int) (from, to int) {
	last := at
	for last+1 < len(atoms) && atoms[last+1].At < end {
		last++
	}
	for last > at && chunk.Breaks(atoms[last]) {
		last--
	}
	for from = last; from > 0 && !chunk.Breaks(atoms[from-1]); from-- {
	}
	for to = last; to < len(atoms) && !chunk.Breaks(atoms[to]); to++ {
	}
	return from, to
}

// NearBy reports whether a value is only about so much.
func NearBy(all []solver.Statement) bool {
	for _, st := range all {
		if st.Op == solver.Near {
			return true
		}
	}
	return false
}

// spokenAbout reports whether an "about" belongs to a verb of speaking or thinking, and says nothing of a value.
func spokenAbout(atoms []scan.Atom) bool {
	for i, a := range atoms {
		if a.Text == "about" && !(i > 0 && atoms[i-1].Text == "say" && phrase.StartsLength(measure.Reader{Atoms: atoms}, i+1) && (i < 2 || atoms[i-2].Text == "us" || atoms[i-2].Text == "me" || atoms[i-2].Kind == scan.Sign)) && airs().about.MatchString(scan.Text(atoms[:i+1])) {
			return true
		}
	}
	return false
}

// madePlain are statements without an "about" that was none.
func madePlain(all []solver.Statement) []solver.Statement {
	out := append([]solver.Statement(nil), all...)
	for i := range out {
		if out[i].Op == solver.Near {
			out[i].Op = solver.Eq
		}
	}
	return out
}

// NeedsNoKeeping reports whether a clause says that there is no need to keep something: it is wanted gone.
func NeedsNoKeeping(said string) bool {
	_, verb, ok := strings.Cut(said, "no need to ")
	w, _, _ := strings.Cut(verb, " ")
	return ok && (keptUp[w])
}

var keptUp = scan.WordSet("keep hold hang remember leave bother stick mind heed care")
