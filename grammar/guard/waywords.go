package guard

import (
	"regexp"

	"saywright/grammar/hear"
)

// Ways of speaking that many guards know are written with classes of words. Braces hold words any of which may stand there, and a capital letter
// begins the name of a class; a blank at the one end of a brace belongs to each of its words, so that the brace may be left out or repeated:
//
//	{Opens}{Person} {would|could} {Ever }*have {built|made}{ Stop}*$
//
// Whatever else stands there is an expression as ever.

// wayClasses are the classes of words.
var wayClasses = map[string]string{
	"Opens":  opensClause,
	"Figure": aFigure, "Number": anyFigure, "Board": hear.BoardsOf, "Many": hear.HowMany, "Part": anyParts,
	"Whose": whoseEver, "Kin": kinToo, "Works": otherWorks, "Says": saysOf,
	"Stop": `[.!]`,

	// Who speaks, or is spoken of.
	"Person": `i|we|he|she|they|you`,
	"Others": `he|she|they`,
	"Asked":  `wife|husband|mother|mom|dad|father|kids|neighbors?|boss|friends|folks|customers?`,

	// Words that change nothing of a verb, or of a judgment.
	"Ever": `always|never|only|just|still|really|also|even|ever|probably|surely|first|all|not`,
	"Very": `a|a bit|a little|so|too|such|much|really|quite|very|more|far|even|just|rather|pretty|simply|kind of|awfully|badly|all|both|already`,
	"Lead": `so|and|but|well|now|ok|okay|honestly`,

	// What goes on to what holds now.
	"Turned": `but|now|make|instead`,

	// What a wall and those who built it do.
	"Has": `has|have|had|got|is|was|'s|uses?|used|goes|went|does|did|builds?|built|puts?|sets?|makes?|made|runs?|ran|chose|cut|spaced|hung|left|gave|kept|wanted|stands|stood`,
	"Are": `is|are|was|were|has|have|had|stands?|go|goes|needs?|run|take|measure|came|come`,

	// Where others live, and who was here before.
	"Nearby":  `next door|(?:down|across|up) the (?:street|road|block|lane|way)|(?:round|around|on) the corner|up north|down south`,
	"Yonder":  `over there|down there|up there|back there|over yonder|yonder`,
	"House":   `place|people|folks|guy|house|family|couple|fellow|wall|one|fence`,
	"Public":  `church|school|library|park|courthouse|post office|store|shop|bank|station|clubhouse|town hall|firehouse|cemetery|neighbors?|hotel|inn|cafe|diner|magazine|book|catalog|picture|photo|movie|video`,
	"Earlier": `previous|last|old|other|first|former|earlier`,
	"Crew":    `crew|carpenter|builder|guys?|owners?|fellow|contractor|people|folks|framer|outfit|tenants?|family`,

	// Who is paid to build.
	"Worker":  `pro|guy|man|crew|carpenter|contractor|builder|handyman|professional|neighbor|kid|joiner|tradesman|helper|fellow|framer`,
	"Workers": `pros|guy|crew|carpenter|contractor|builder|handyman|neighbor|kid|yard|store|shop`,

	// Somebody has yet to choose, or had something in mind.
	"Deciding": `decid(?:e|es|ing|ed)|choos(?:e|es|ing)|chose|chosen|pick(?:s|ing|ed)?|selects?|selecting|settles?|vot(?:e|es|ing|ed)|torn|waver(?:s|ing)?|dither(?:s|ing)?|debat(?:e|es|ing)|argu(?:e|es|ing|ed)|hesitat(?:e|es|ing)|undecided|vacillating|toss - up|toss up|tossup|dilemma|choice|decision|flip (?:a|the) coin|toss (?:a|the) coin|draw straws|deliberat(?:e|es|ing)|switching|flip - flopping|agonizing|wondering|fighting|back and forth|to and fro|in two minds|of two minds`,
	"Aim":      `aim|goal|idea|wish|hope|intention|target|objective|preference|dream|ambition`,

	// A little word behind a verb, the verbs that move things by it, and what is so moved. Not all forms of the verbs do: "my boss counted six rails off the drawing".
	"Little":   `up|down|in|out|off|over|away|back|around|on|through`,
	"Moving":   `get|gets|got|lay|lays|laid|take|takes|took|come|comes|came|give|gives|gave|let|turn|turns|turned|sit|sits|sat|throw|throws|threw|thrown|toss|tosses|tossed|kick|kicks|kicked|knock|knocks|knocked|drop|drops|dropped|leave|leaves|left|pick|picks|picked|call|calls|called|stretch|squeeze|bolt|hang|hangs|walk|walks|walked|work|works|worked|talk|talks|talked|look|looks|looked|think|bang|split|pass|passes|passed|haul|hauls|hauled|carry|carries|carried|hand|hands|handed|slide|slides|slid|shove|shoves|shoved|tuck|tear|rip|tie|lock|back|send|sends|sent|trip|step|climb|jump|fuss|fight|argue|push|pull|drag|drags|dragged|move|moves|moved|mess|play|shop|poke|drive|fool|kid|joke|wander`,
	"Handling": `look|think|talk|come|turn|sit|give|kick|knock|pass|call|pick|split|break|walk|go|let|throw|leave|hold|trip|wind|crank|wake|back|count|blow|burn|chew|scrape|sort|haul|carry|lug|drag|move|bring|shove|ring|tear|rip|slip|bang|looks|thinks|talks|comes|turns|sits|gives|calls|picks|passes|goes|came|turned|sat|gave|kicked|knocked|passed|called|picked|walked|went|threw|left|held|brought|moved|hauled|carried|dragged|tore|ripped|slipped|backed|looked|talked|thought`,
	"Noting":   `write|put|note|mark|jot|pencil|pen|record|enter|type|log|punch|key|set|fill|lock|nail|pin|pick|figure|ink|call|start|carry|work|keep|dial`,
	"Length":   `gaps?|spaces?|spacing|opening|doorway|walk - through|wall|bays?|height|span|bottom gap`,
	"By":       `(?:by )?(?:a |an |one |two |three |four |half |[0-9])`,
	"Beyond":   `over|above|past|beyond|under|below`,
	"Against":  `compared|beside|next|against|with`,
	"Page":     `cuts|marks|drawing|layout|steps|shopping list|cut list|shopping|cautions|options|rails?|boards?|gaps?|posts?|stiffeners?|bays?|opening|wall|list|sketch|plan|price|cost`,
	"Please":   `ok|so|now|please|just|let us|,`,
	"Units":    `centimeters|centimetres|millimeters|millimetres|metric|inches|feet|cm|mm|metres|meters|imperial`,

	// What boards come to that are none of the wall's, or no good.
	"OtherWork":  `bench|benches|table|sheds?|gates?|fences?|stairs?|steps?|stoop|ramp|planters?|trellis|arbor|pergola|coop|kennel|crib|beds?|bookcase|shelf|shelves|garage|barn|roof|swing|sandbox|mailbox|treehouse|tree house|workbench|sawhorses?|hutch|birdhouse|playhouse|porch swing|ladder|scaffold|scaffolding|forms?|bonfire|fire|firewood|kindling|campfire|neighbors?|next job|other job|other wall`,
	"PutBy":      `set aside|set (?:[a-z]+ )?[a-z]+ [a-z]+ aside|put aside|put by|lay aside|hold back|keep back|reserve|saved?|saving|stashed|borrow(?:ed)?|need|used?|using|took|take|left|leave|keep|keeping`,
	"Damaged":    `split|cracked|warped|twisted|cupped|bowed|crooked|rotten|rotted|bad|chewed|chewed up|checked|punky|soft|wet|dry|scratched|dented|gouged|stained|painted|primed|ruined|broken|broke|damaged|loose|missing|gone|knotty|green|dirty|muddy|straight|fine|beauties|stuck|in the truck|on the truck|in the way|still here|upside down|backwards|crowned|junk|useless|trash|no good|scrap|shot|garbage|worthless|bent|out of square|out of true`,
	"Scraps":     `wood|lumber|timber|pieces?|bits?|stuff|material|ends?`,
	"OtherPost":  `mailbox|clothesline|lamp|light|bird ?feeder|flag|fence|gate|basketball|tether|hitching|bed|porch swing|sign`,
	"OtherBoard": `deck|floor|porch|siding|ceiling|fence|roof|stair|dock|crib|bed|chair|bench|table|gate|swing|blind|trellis|pallet|ladder`,
}

var (
	wayBrace = regexp.MustCompile(`\{( ?)([^{}0-9][^{}]*?)( ?)\}`)
	wayClass = regexp.MustCompile(`\b[A-Z][A-Za-z]+\b`)
	wayGroup = regexp.MustCompile(`\(([^?])`)
)

// asWay makes the expression of a way that is written with classes. It panics where there is no such class, as it is part of the program.
func asWay(way string) *regexp.Regexp {
	way = wayGroup.ReplaceAllString(way, `(?:$1`)
	for wayBrace.MatchString(way) { // braces may stand in braces: those within are written out first
		way = wayBrace.ReplaceAllStringFunc(way, func(brace string) string {
			m := wayBrace.FindStringSubmatch(brace)
			words := wayClass.ReplaceAllStringFunc(m[2], func(name string) string {
				class, ok := wayClasses[name]
				if !ok {
					panic("no class of words: " + name)
				}
				return "(?:" + class + ")"
			})
			return "(?:" + m[1] + "(?:" + words + ")" + m[3] + ")"
		})
	}
	return regexp.MustCompile(way)
}

// anyWordOf finds any of some words or classes, with strokes between them.
func anyWordOf(words string) *regexp.Regexp { return asWay(`\b{` + words + `}\b`) }

// orWay finds what an expression finds, or another way.
func orWay(found *regexp.Regexp, way string) *regexp.Regexp {
	return regexp.MustCompile(found.String() + `|` + asWay(way).String())
}
