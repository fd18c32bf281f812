package guard

import (
	"regexp"
	"saywright/grammar/act"
	"saywright/grammar/hear"
	"saywright/solver"
)

// At a sawhorse people talk to each other, too: who is to keep off the rail, pass a 2x6 or quit that, what was and what is usual, what somebody saved,
// forgets or is done with. None of it is said to this program, though its words are. Common ways of speech, no source.

var (
	saidToHelper = hear.OpenQuestion("Is that said to me? What of the wall?", "gap 2-1/2")
	wasOrShall   = hear.OpenQuestion("Was it so, or shall it be?", "make the gap 2-1/2")
	railsOrWay   = hear.OpenQuestion("Is that how many rails, or which way out?", "six rails")
	usualOrYours = hear.OpenQuestion("Is that usual, or shall it be so here?", "gap 2-1/2")
)

// bystanders are such lines, each with what is heard of it.
var bystanders = []hear.OpenWay{
	// Keep off, hand over.
	{Looks: forgetsOrNone, Way: regexp.MustCompile(`^(?:(?:please|kindly|just|hey|guys|kids|now|just|and|so|you|everybody) )*(?:keep|stay|get|stand|move|step|hold) (?:(?:the|that|this|your|them|it) )?(?:(?:[a-z]+) )?(?:clear|off|away|back|out)\b`), Not: regexp.MustCompile(`\b(?:rails|boards|stiffeners|posts|list|caps) off\b|\bleave\b`), Ask: saidToHelper},
	{Looks: hear.KindOf(act.Forget), Way: regexp.MustCompile(`^(?:(?:please|kindly|just|hey|just|and|now|so) )*(?:drop|toss|throw|chuck|put down|set down|hand|pass|give) (?:(?:me|him|her|us) )?(?:the|that|a|this) (?:board|post|saw|plank|rail|slat|bracket|hammer|drill|pencil|tape|[0-9] x [0-9]+|(?:two|one|four|six) (?:by|x) (?:two|four|six|eight|ten))(?: (?:[.!]))*$`), Not: regexp.MustCompile(`\bdrop the tape\b`), Ask: saidToHelper},
	{Looks: hear.Stated(solver.RailSize, solver.PostSize, solver.StiffenerSize, solver.EndPostSize, solver.AddedPostSize), Way: regexp.MustCompile(`^(?:(?:please|kindly|just|hey|can you|could you|just|now|and|so) )*(?:pass|hold|put|take|get|give|hand|grab|fetch|bring|toss|throw|lift|carry|move|slide|lay|lean) (?:(?:me|him|her|us|them) )?(?:the|a|that|this|another) (?:[0-9] x [0-9]+|(?:two|one|four|six) (?:by|x) (?:two|four|six|eight|ten))(?: (?:post|board|rail|there|here|over|down|up|please)\b|(?: [.!])*$)`), Not: regexp.MustCompile(`\bfor (?:the|my|our) |\binstead\b`), Ask: saidToHelper},
	{Looks: hear.Stated(solver.RailSize, solver.PostSize, solver.StiffenerSize), Way: regexp.MustCompile(`^(?:(?:and|so|hey|look|but) )*(?:(?:this|that)(?: (?:one|board|piece|stick))? is|(?:he|she) needs|i have(?: got)?|there is) a (?:[0-9] x [0-9]+|(?:two|one|four|six) (?:by|x) (?:two|four|six|eight|ten))(?: (?:here|there))?(?: (?:[.!]))*$`), Ask: saidToHelper},
	{Looks: hear.KindOf(act.Undo, act.Forget, act.TakeThat, act.HelpMe, act.SameAs), Way: regexp.MustCompile(`^(?:(?:please|kindly|just|hey) )*(?:undo the (?:bottom|top|screws|brackets|nails|clamps)|skip the|keep it up|help yourself|help (?:him|her|them)|copy the (?:left|right|other))\b`), Ask: saidToHelper},
	{Looks: hear.AsksTopic("shopping"), Way: regexp.MustCompile(`^(?:(?:please|kindly|just|hey|guys|and|now) )*(?:put|load|pack|throw|stick|set|carry|lug) (?:(?:it|them|that|those|the lumber|everything) )?(?:(?:(?:in|into|on|onto)) )?(?:the|my|his) (?:truck|car|van|trailer|pickup)\b`), Ask: saidToHelper},
	{Looks: hear.Stated(solver.Goal), Way: regexp.MustCompile(`^scrap (?:wood|lumber|pieces|pile)\b`), Ask: saidToHelper},
	{Looks: func(a act.Act) bool { return changesCount(a) || hear.KindOf(act.Forget)(a) }, Way: regexp.MustCompile(`^(?:(?:hey|and|so|but|well|oops) )*(?:you|he|she|they) (?:(?:just) )?(?:dropped|lost|broke|missed|split|ruined|cracked) `), Ask: saidToHelper},
	// Saved, opened, quit.
	{Looks: hear.KindOf(act.Open), Way: regexp.MustCompile(`^(?:(?:please|kindly|just|just) )*open (?:(?:on|at|it|up) ){0,2}(?:(?:the) )?(?:left|right|middle|center|wide|[0-9]+)\b`), Ask: hear.OpenQuestion("Is that the opening, or a saved wall?", "opening on the left")},
	{Looks: hear.KindOf(act.Open), Way: regexp.MustCompile(`^(?:(?:please|kindly|just|hey|just|and) )*(?:load|fetch|get|bring|pull|grab) (?:(?:the|me|up|in) )*(?:[0-9]+|two|three|four|five|six|seven|eight|nine|ten|boards|rails|posts|lumber|truck|trailer|saw)\b`), Ask: saidToHelper},
	{Looks: hear.KindOf(act.Save), Way: regexp.MustCompile(`^(?:(?:please|kindly|just|just|let us|we can|i can|you) )*save (?:(?:me|us) )?(?:[0-9$]+|ten|twenty|thirty|forty|fifty|sixty|a hundred|some|money|time|on|lumber|wood|(?:the|my|our) (?:gaps?|opening|height|rails|posts|bays|boards|lumber|span))\b`), Not: regexp.MustCompile(`\bas\b`), Ask: hear.OpenQuestion("Shall I keep the wall, and by which name?", "save porch")},
	{Looks: hear.KindOf(act.Quit), Way: regexp.MustCompile(`\b(?:(?:quit|stop) (?:that|it|talking|my|your|fooling|whining|messing|complaining|worrying|doing|being)|done talking(?: [.!])*$|enough talk|that is all (?:i know|there is|he|she|they))\b`), Ask: saidToHelper},
	{Looks: takesFar, Way: regexp.MustCompile(`\b(?:go (?:with|for)|take|do|try|use)(?: the)? (?:five|six|seven|eight|nine|ten|[5-9]|1[0-9])(?: if (?:it|they|that) [a-z ]+)?(?: (?:[.!]))*$`), Ask: railsOrWay},
	// Who uses a figure may mean a count or a size, and what stands instead of another was no way out.
	{Looks: hear.KindOf(act.Take), Way: asWay(`\b{we|i} ?{'ll|'d|would|will|could|can|might|should|shall} {just|rather|probably }*use {Number}\b|\buse {three|four|[34]}{ Stop}*$|\b{use|take|go with|have|do} {the }?{Number} {instead|rather than}\b|\b{instead of|rather than} {[0-9]+|Number}\b`), Not: asWay(`\buse {one of|one you|the one}\b|\bway\b|\boption\b`), Ask: railsOrWay},
	// What was, what is usual, what somebody is done with.
	{Looks: valuedButSite, Way: regexp.MustCompile(`^(?:(?:so|and|but|well|oh|yeah|look) )*(?:(?:(?:the|our|my) )?(?:wall|gaps?|spacing|opening|doorway|walk - through|rails|boards|slats|posts|stiffeners|bays) (?:was|were|had been) (?:(?:about|only|just|all|over|under) )*(?:` + aFigure + `|[0-9]|(?:two|one|four|six) by)|(?:it|there|i|we) (?:was|were|had|had been|built it|used|went with|made it) (?:(?:about|only|just|all|the) )*(?:` + aFigure + `|[0-9]|two by|one by|four by))[^,;?]*$`), Not: regexp.MustCompile(`\b(?:but|now|make|instead|today|want|wanted|supposed|meant|should|says|said|if|what|measured|tape|(?:to|center) center|face|outside|overall|between|apart|clear|long|already|still|in mind|thinking|hoping|aiming|shooting|every|all|each)\b`), Ask: wasOrShall},
	{Looks: hear.Stated(solver.Stock, solver.Price), Way: regexp.MustCompile(`\b(?:were|was|had) [^,;?]*\b(?:yesterday|last (?:week|month|year|time|summer|spring|fall|winter)|before|back then|once)\b`), Not: regexp.MustCompile(`\b(?:but|now|today)\b`), Ask: wasOrShall},
	{Looks: valued, Way: regexp.MustCompile(`^(?:(?:so|and|but|well) )*(?:most (?:walls|fences|gaps|openings|doorways|people|folks|builders|carpenters)|(?:normally|usually|generally|typically|commonly|ordinarily|as a rule)(?: (?:,))? (?:it|the|a|gaps?|walls?|rails|openings?|posts?|boards|six|five|four|seven|[0-9])|the (?:usual|normal|typical|common) (?:gap|wall|opening|spacing|height) is)\b`), Not: regexp.MustCompile(`\b(?:but|so|make|want|here|mine|ours|this|i|we|my|our|let)\b`), Ask: usualOrYours},
	{Looks: func(a act.Act) bool { return valued(a) || a.Kind == act.Check }, Way: regexp.MustCompile(`\b(?:changed (?:my|our) minds?|had a change of heart|change of mind) (?:about|on|over) (?:(?:the|those|that) )?(?:` + hear.HowMany + `|[0-9]+|` + aFigure + `)|\b(?:(?:had it with|done with|finished with|so much for|heard enough (?:about|of)|sick of|tired of|fed up with|through with|had enough of) (?:(?:the|those|that) )?(?:` + hear.HowMany + `|[0-9]+|` + aFigure + `))|^no more (?:two|three|four|five|six|seven|eight|nine|ten|[2-9]) (?:rails|boards|slats|planks|stiffeners|posts)(?: (?:[.!]))*$`), Not: regexp.MustCompile(`\b(?:make|now|instead|use|go|let us|want)\b|\bbe done with\b`), Ask: whatThen},
	{Looks: hear.KindOf(act.Forget), Way: regexp.MustCompile(`^(?:(?:so|and|but|well|oh|sorry|shoot|damn|,) )*(?:i|we|he|she) (?:(?:always|sometimes|just|completely|totally|keep|often) )*(?:forget|forgot|forgets|forgetting) (?:(?:the|my|our|about the) )?[a-z]+`), Not: regexp.MustCompile(`\bso\b|\bwant\b`), Ask: hear.OpenQuestion("Shall I tell it, or drop it?", "what is the gap")},
	{Looks: hear.Stated(solver.Budget), Way: regexp.MustCompile(`\b(?:saved|lost|won|owe|owes|owed|earned|found) (?:(?:me|him|us|them|her) )?(?:(?:about|only|over) )?(?:[0-9$]|ten|twenty|thirty|forty|fifty|sixty|a hundred)|\b(?:do not|would not|hate to|rather not) (?:(?:really) )?(?:(?:want to|like to) )?spend (?:[0-9$]|ten|twenty|thirty|forty|fifty|a hundred|two hundred|three hundred)`), Not: regexp.MustCompile(`\bfor (?:the |this |it|my |our )|\bbudget\b`), Ask: hear.OpenQuestion("Is that the most it may cost?", "budget 300 dollars")},
}

// forgetsOrNone are acts that forget something, or set none of it.
func forgetsOrNone(a act.Act) bool { return a.Kind == act.Forget || setsNone(a) }

// takesFar reports whether a way out is taken that hardly any answer has.
func takesFar(a act.Act) bool { return a.Kind == act.Take && a.N > 4 }

// valuedButSite are acts that set a value that is none of the site: what was measured is told in the past.
func valuedButSite(a act.Act) bool {
	if !valued(a) {
		return false
	}
	switch a.Statements[0].Name.Quantity {
	case solver.Span, solver.Overall, solver.Centers, solver.Measured, solver.FloorAtRight, solver.FloorFalls, solver.PostLeans, solver.Drop, solver.RailFace, solver.Have, solver.Bay:
		return false
	}
	return true
}
