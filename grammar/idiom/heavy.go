package idiom

import (
	"strings"

	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// heavyWords are English words by which somebody denies, doubts, claims, compares, counts, changes or takes back something, or tells of
// another thing or another time, whether or not a table knows them: they are never left out. Verbs stand without their endings.
var heavyWords = scan.WordSet(`
	axe ax ban bar omit skip shun spurn nix scrub ditch dump toss trash junk chuck bin void annul revoke rescind retract withdraw abort cease quit halt waive exempt erase delete wipe kill nuke
	eliminate remove strip yank rip lose lost discard reject decline deny denied refute dispute contest challenge contradict oppose forbid forbidden prohibit disallow disapprove preclude discourage dissuade
	deter rule resist protest veto boycott neglect overlook ignore evade dodge bypass sidestep escape avoid prevent exclude refuse lack miss fail abandon stop forget unsay unsaid
	not no never none nobody nothing nor neither without hardly cannot rather barely scarcely seldom rarely
	doubt dubious doubtful question suspect speculate hypothesize theorize fantasize imagine envision envisage picture pretend dream wonder ponder muse contemplate consider mull weigh toy flirt experiment
	test trial try simulate predict forecast hypothetical hypothetically theoretical theoretically ideal ideally potential potentially possible possibly conceivable conceivably tentative tentatively
	provisional provisionally temporary temporarily scenario option alternative alternatively proposal draft sample instance example theory theories rumor rumors gossip myth legend joke kid kidding lie liar fib
	fake false bogus phony untrue wrong mistake mistaken error erroneous typo confuse confused confusion misunderstand misunderstanding misread misheard nonsense rubbish baloney hogwash bunk
	maybe perhaps supposedly allegedly reportedly purportedly presumably apparently seemingly ostensibly evidently arguably unlikely unsure uncertain undecided hesitant reluctant reluctantly
	announce assert allege contend maintain declare state report mention remark comment note testify testified confirm certify certified promise swear swore vow bet wager gamble guess estimate assume presume
	expect anticipate hope wish want need desire crave propose pitch offer demand require stipulate specify specified prescribe mandate order request ask beg plead urge press push lobby lobbied prefer favor favour
	advocate vote object complain whine nag grumble gripe warn caution threaten say says said tell told think thought reckon suggest recommend insist advise draw drew drawn sketch plan design quote
	bid invoice according claim argue believe worry worried teach taught explain ruled
	change alter adjust modify modified tweak revise update amend edit correct fix swap switch replace substitute trade exchange reverse reversed flip invert mirror rotate shift move slide nudge bump tug stretch
	shrink shrunk expand contract grow grew enlarge reduce increase decrease raise lower lift drop hike boost cut trim slash shave chop halve double triple quadruple multiply multiplied divide split add
	subtract deduct minus plus exceed surpass outdo match equal mimic copy copied duplicate resemble differ different vary varied range compare contrast versus like unlike same tighten loosen widen narrow
	thicken thin deepen lengthen shorten straighten tilt lean slope redo undo restore return revert resume repeat reset restart renew recall replay
	couple dozen several few many much numerous multiple single sole both either each every all any entire whole half halves quarter third percent ratio fraction portion part majority minority most least more
	less fewer extra additional spare another other others else remain remaining rest remainder leftover only merely solely just nearly almost roughly about around enough plenty lots ton tons
	zero twice thrice one two inch inches foot feet yard yards mile miles pound pounds dollar dollars cent cents bucks degree degrees hour hours minute minutes
	if unless when whenever until till while once lest whether though although except besides instead otherwise despite per than as or but
	hate loathe detest despise abhor dread fear regret resent mourn dislike mind bother annoy scare upset disappoint ugly hideous awful terrible stupid silly dumb ridiculous absurd crazy insane nuts
	unacceptable intolerable unsafe dangerous illegal unlawful bad poor worse worst failure disaster mess sin shame pity overkill impossible unworkable hopeless useless
	former formerly previous previously prior past old older ancient original originally initial initially earlier ago later eventually someday future last first next
	neighbor neighbors neighbour neighbours fence fences stair stairs staircase ladder window windows roof garage handrail banister shed cabinet table chair bookshelf shelf shelves bench trellis arbor pergola stool
	kitchen bathroom bedroom closet basement attic ceiling
	napkin napkins page pages letter letters certificate certificates brochure brochures handout handouts leaflet sign label labels tag tags ticket tickets receipt receipts somewhere anywhere
	too very so such how what which who whom whose where why
	north south east west northern southern eastern western upstream downstream
	left right middle center centre top bottom upper lower front back side end ends high low wide tall deep long short thick thin big small large little tiny huge
	tight loose close far near apart away up down off out over under above below across between beneath beyond past through along inside outside
`)

// Weighs reports whether a word, or what it is without its ending, is one that is never left out.
func Weighs(w string) bool {
	if heavyWords[w] || phrase.Turning[w] || Withheld[w] || Viewed[w] || Bending[w] {
		return true
	}
	for _, end := range []string{"s", "es", "d", "ed", "ing", "r", "er", "est", "ly", "n", "en"} {
		if stem, ok := strings.CutSuffix(w, end); ok && len(stem) > 2 {
			if heavyWords[stem] || Bending[stem] || phrase.Turning[stem] || Withheld[stem] || Viewed[stem] || end == "ing" && heavyWords[stem+"e"] || (end == "ing" || end == "ed" || end == "er" || end == "est") && stem[len(stem)-1] == stem[len(stem)-2] && Weighs(stem[:len(stem)-1]) {
				return true
			}
		}
	}
	if stem, ok := strings.CutSuffix(w, "ied"); ok && heavyWords[stem+"y"] {
		return true
	}
	return strings.HasPrefix(w, "un") && len(w) > 5 || strings.HasPrefix(w, "mis") && len(w) > 5 || strings.HasPrefix(w, "non") && len(w) > 5 ||
		len(w) > 5 && (strings.HasSuffix(w, "est") || strings.HasSuffix(w, "less"))
}
