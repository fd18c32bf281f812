package idiom

import (
	"saywright/grammar/measure"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// sawPhrasings are phrases about the saw cut, what is lost of a board, what is bought over, and the tape.
var sawPhrasings = []phrase.Placed{
	{Said: "for [(each|every|the|a)] (saw cut|saw cuts|saw blade|width of [the] (cut|saw|blade)|sawcut|sawcuts)", Plain: "for the kerf", Where: phrase.SaidBeforeOf(scan.WordSet("allow allowed allowing allows figure figured assume assumed assuming account accounted count counted reckon reckoned take taken took have using used"))},
	{Said: "(every|each) time (i|we|you) (cut|saw|make a cut|run the saw) [a (board|piece)] [,] [(there is|i lose|we lose|you lose|it takes|i waste)]", Plain: "kerf is"},
	{Where: phrase.BothHold(phrase.SaidBeforeOf(scan.WordSet("suppose supposing if imagine say assume assuming")), phrase.EndsLine), Said: `
		[,] [(and|so)] how (bad|serious|terrible|awful|severe|harmful|grave) (is|would|will|does|might) (it|that|this) [(be|get|look)]
		[,] [(and|so)] how much (does|would|will|do) (it|that|this|they) (matter|hurt|harm|show|hurt me|hurt us|hurt anything|hurt things)
		[,] [(and|so)] (does|would|will|do|can|could) (it|that|this|they) [(really|even)] (matter|hurt|harm|hurt me|hurt us|hurt anything|hurt things|do any harm) [(much|at all|any)]
		[,] [(and|so)] (is|would|will) (it|that|this) [(be)] [(really|such|still)] (problem|disaster|issue|trouble|big problem|big deal|worry|big issue|real problem|serious problem|catastrophe|bother)`},
	{Where: phrase.BothHold(phrase.SaidBeforeOf(scan.WordSet("compare cmp contrast hold put set lay stack against versus vs beside next")), phrase.EndsLine), Said: `
		[,] [(and|then)] (tell|show|give|let) (ME|me|us) [(know|see)] (what|where|how) [(they|it|the two|those two|both|these two)] (differ|differs|differ from each other|are different|is different|changes|changed|is not the same|are not the same)
		[,] [(and|then)] (tell|show|give|let) (ME|me|us) [(know|see|what)] [(is|are)] [the] (difference|differences) [between (them|the two)]`},
	{Said: "(gone|goes|lost|turned|turns|going|turned in) (to|into|in|as) (sawdust|dust|chips|shavings)", Where: phrase.SaidBeforeOf(scan.WordSet("kerf saw blade cut"))},
	{Said: "do not (count|figure|allow|add|include|take|reckon|put|bother with) [(in|for|on)] [(any)] trim [(at all|in)]", Plain: "no trim"},
	{Said: ", (i|we) (use|take|leave) [the] (ends|boards|lumber|them) (as they come|the way they come|as is|as they are|untrimmed|as delivered)", Where: phrase.EndsLine},
	{Said: "(tack|slap|throw|pile|toss|stick|tag|clap)", Plain: "add", Where: percentOnto},
	{Said: "onto [the] (lumber|order|list|wood|total|material|boards|bill)", Plain: "to the lumber", Where: phrase.SaidBeforeOf(scan.WordSet("percent %"))},
	{Said: "for (screwups|screw ups|miscuts|mistakes|goofs|goof ups|blunders|bad cuts|foul ups|mess ups|wrong cuts|oopses)", Plain: "for mistakes"},
	{Said: "order (should|must|shall|has to|ought to|needs to|is to) (include|have|hold|contain|carry)", Plain: "buy", Where: moreLumberNext},
	{Said: "[(as)] (measured|taken|taped|figured|checked) (at|along|on|down at|right at|across) [the] (floor|slab|bottom|base|deck|ground)", Where: spanMeasured},
	{Said: "(a|one) tenth (more|extra) (lumber|wood|boards|material|stock|timber)", Plain: "ten percent more lumber"},
	{Said: "(a|one) twentieth (more|extra) (lumber|wood|boards|material|stock|timber)", Plain: "five percent more lumber"},
	{Said: "no (fractions|fraction|marks|divisions|numbers|figures) (finer|smaller|closer|tighter) than", Plain: "tape", Where: phrase.AmountNext},
	{Said: "on [the] marks", Where: phrase.BothHold(phrase.SaidBeforeOf(scan.WordSet("tape")), phrase.AmountBefore)},
	{Said: "[(and|but)] nothing (finer|smaller|closer|less|tighter) [than that]", Where: phrase.BothHold(phrase.EndsClause, phrase.SaidBeforeOf(scan.WordSet("tape rule ruler marks")))},
	{Said: "[a] full eighth", Plain: "an eighth"},
	{Said: "[a] full sixteenth", Plain: "a sixteenth"},
	{Said: "[a] full quarter", Plain: "a quarter"},
	{Said: "[a] full half [an] inch", Plain: "a half inch"},
	{Said: "more fit", Plain: "more play", Where: phrase.AmountBefore},
	{Said: "less fit", Plain: "less play", Where: phrase.AmountBefore},
	{Said: "what was it [that] (i|we) (told|gave|said to)", Plain: "what have i told"},
	{Said: "in (my|his|her|our|your) (hand|hands|pocket|folder)\nin front of (me|us)", Where: paperBefore},
	{Said: "out (at|of stock at) [the] (yard|store|shop|lumberyard)", Plain: "sold out", Where: phrase.SaidBeforeOf(scan.WordSet("eights tens twelves fourteens sixteens sixes eighteens"))},
	{Said: "[,] [(so|and)] (take|cross|strike|drop|scratch|get|leave) (them|those|that|it) (off|out of|from) [the] (list|order|stock list|stock)", Where: soldOutTold},
}

// percentOnto: "tack eight percent onto the lumber".
func percentOnto(_, after []scan.Atom) bool {
	for i, a := range after {
		if a.Text == "onto" || a.Text == "on" && scan.StandAt(after, i+1, "to") {
			return i > 1 && i < 6 && (after[i-1].Text == "percent" || after[i-1].Text == "%")
		}
	}
	return false
}

// moreLumberNext: "the order should include a tenth more lumber than needed".
func moreLumberNext(_, after []scan.Atom) bool {
	more := false
	for _, a := range after {
		more = more || a.Text == "more" || a.Text == "extra" || a.Text == "over"
	}
	return more
}

// spanMeasured: "twelve foot four between the end posts, measured at the floor".
func spanMeasured(before, after []scan.Atom) bool {
	if !phrase.EndsClause(before, after) {
		return false
	}
	for i := range before {
		if before[i].Text == "between" || before[i].Text == "span" || before[i].Text == "apart" {
			return true
		}
	}
	return false
}

// paperBefore: "the quote in my hand".
func paperBefore(before, _ []scan.Atom) bool {
	return len(before) > 0 && measure.PartOf(measure.Reader{Atoms: before}, len(before)-1, "PAPER")
}

// soldOutTold: "tens are sold out, take them off the list".
func soldOutTold(before, after []scan.Atom) bool {
	if !phrase.EndsClause(before, after) {
		return false
	}
	for i := range before {
		if scan.StandAt(before, i, "sold", "out") || scan.StandAt(before, i, "out", "of") {
			return true
		}
	}
	return false
}
