package grammar

// sawPhrasings are phrases about the saw cut, what is lost of a board, what is bought over, and the tape.
var sawPhrasings = []placedPhrase{
	{said: "for [(each|every|the|a)] (saw cut|saw cuts|saw blade|width of [the] (cut|saw|blade)|sawcut|sawcuts)", plain: "for the kerf", where: saidBeforeOf(wordSet("allow allowed allowing allows figure figured assume assumed assuming account accounted count counted reckon reckoned take taken took have using used"))},
	{said: "(every|each) time (i|we|you) (cut|saw|make a cut|run the saw) [a (board|piece)] [,] [(there is|i lose|we lose|you lose|it takes|i waste)]", plain: "kerf is"},
	{where: bothHold(saidBeforeOf(wordSet("suppose supposing if imagine say assume assuming")), phraseEndsLine), said: `
		[,] [(and|so)] how (bad|serious|terrible|awful|severe|harmful|grave) (is|would|will|does|might) (it|that|this) [(be|get|look)]
		[,] [(and|so)] how much (does|would|will|do) (it|that|this|they) (matter|hurt|harm|show|hurt me|hurt us|hurt anything|hurt things)
		[,] [(and|so)] (does|would|will|do|can|could) (it|that|this|they) [(really|even)] (matter|hurt|harm|hurt me|hurt us|hurt anything|hurt things|do any harm) [(much|at all|any)]
		[,] [(and|so)] (is|would|will) (it|that|this) [(be)] [(really|such|still)] (problem|disaster|issue|trouble|big problem|big deal|worry|big issue|real problem|serious problem|catastrophe|bother)`},
	{where: bothHold(saidBeforeOf(wordSet("compare cmp contrast hold put set lay stack against versus vs beside next")), phraseEndsLine), said: `
		[,] [(and|then)] (tell|show|give|let) (ME|me|us) [(know|see)] (what|where|how) [(they|it|the two|those two|both|these two)] (differ|differs|differ from each other|are different|is different|changes|changed|is not the same|are not the same)
		[,] [(and|then)] (tell|show|give|let) (ME|me|us) [(know|see|what)] [(is|are)] [the] (difference|differences) [between (them|the two)]`},
	{said: "(gone|goes|lost|turned|turns|going|turned in) (to|into|in|as) (sawdust|dust|chips|shavings)", where: saidBeforeOf(wordSet("kerf saw blade cut"))},
	{said: "do not (count|figure|allow|add|include|take|reckon|put|bother with) [(in|for|on)] [(any)] trim [(at all|in)]", plain: "no trim"},
	{said: ", (i|we) (use|take|leave) [the] (ends|boards|lumber|them) (as they come|the way they come|as is|as they are|untrimmed|as delivered)", where: phraseEndsLine},
	{said: "(tack|slap|throw|pile|toss|stick|tag|clap)", plain: "add", where: percentOnto},
	{said: "onto [the] (lumber|order|list|wood|total|material|boards|bill)", plain: "to the lumber", where: saidBeforeOf(wordSet("percent %"))},
	{said: "for (screwups|screw ups|miscuts|mistakes|goofs|goof ups|blunders|bad cuts|foul ups|mess ups|wrong cuts|oopses)", plain: "for mistakes"},
	{said: "order (should|must|shall|has to|ought to|needs to|is to) (include|have|hold|contain|carry)", plain: "buy", where: moreLumberNext},
	{said: "[(as)] (measured|taken|taped|figured|checked) (at|along|on|down at|right at|across) [the] (floor|slab|bottom|base|deck|ground)", where: spanMeasured},
	{said: "(a|one) tenth (more|extra) (lumber|wood|boards|material|stock|timber)", plain: "ten percent more lumber"},
	{said: "(a|one) twentieth (more|extra) (lumber|wood|boards|material|stock|timber)", plain: "five percent more lumber"},
	{said: "no (fractions|fraction|marks|divisions|numbers|figures) (finer|smaller|closer|tighter) than", plain: "tape", where: amountNext},
	{said: "on [the] marks", where: bothHold(saidBeforeOf(wordSet("tape")), amountBefore)},
	{said: "[(and|but)] nothing (finer|smaller|closer|less|tighter) [than that]", where: bothHold(phraseEndsClause, saidBeforeOf(wordSet("tape rule ruler marks")))},
	{said: "[a] full eighth", plain: "an eighth"},
	{said: "[a] full sixteenth", plain: "a sixteenth"},
	{said: "[a] full quarter", plain: "a quarter"},
	{said: "[a] full half [an] inch", plain: "a half inch"},
	{said: "more fit", plain: "more play", where: amountBefore},
	{said: "less fit", plain: "less play", where: amountBefore},
	{said: "what was it [that] (i|we) (told|gave|said to)", plain: "what have i told"},
	{said: "in (my|his|her|our|your) (hand|hands|pocket|folder)\nin front of (me|us)", where: paperBefore},
	{said: "out (at|of stock at) [the] (yard|store|shop|lumberyard)", plain: "sold out", where: saidBeforeOf(wordSet("eights tens twelves fourteens sixteens sixes eighteens"))},
	{said: "[,] [(so|and)] (take|cross|strike|drop|scratch|get|leave) (them|those|that|it) (off|out of|from) [the] (list|order|stock list|stock)", where: soldOutTold},
}

// percentOnto: "tack eight percent onto the lumber".
func percentOnto(_, after []atom) bool {
	for i, a := range after {
		if a.text == "onto" || a.text == "on" && standAt(after, i+1, "to") {
			return i > 1 && i < 6 && (after[i-1].text == "percent" || after[i-1].text == "%")
		}
	}
	return false
}

// moreLumberNext: "the order should include a tenth more lumber than needed".
func moreLumberNext(_, after []atom) bool {
	more := false
	for _, a := range after {
		more = more || a.text == "more" || a.text == "extra" || a.text == "over"
	}
	return more
}

// spanMeasured: "twelve foot four between the end posts, measured at the floor".
func spanMeasured(before, after []atom) bool {
	if !phraseEndsClause(before, after) {
		return false
	}
	for i := range before {
		if before[i].text == "between" || before[i].text == "span" || before[i].text == "apart" {
			return true
		}
	}
	return false
}

// paperBefore: "the quote in my hand".
func paperBefore(before, _ []atom) bool {
	return len(before) > 0 && partOf(reader{before}, len(before)-1, "PAPER")
}

// soldOutTold: "tens are sold out, take them off the list".
func soldOutTold(before, after []atom) bool {
	if !phraseEndsClause(before, after) {
		return false
	}
	for i := range before {
		if standAt(before, i, "sold", "out") || standAt(before, i, "out", "of") {
			return true
		}
	}
	return false
}
