package guard

import (
	"regexp"

	"saywright/grammar/act"
	"saywright/grammar/hear"
	"saywright/grammar/parse"
	"saywright/solver"
)

// Boards that somebody else has, that are kept for something else, or are no good, are not at hand for this wall: "I have six 2x6 tens, but they're rotten". It is
// asked back, with the boards as the choice. Common ways of speech, no source.

var forThisWall = func(_ act.Act, all []act.Act) solver.Question {
	return solver.Question{Text: "Are those at hand for this wall?", Choices: []string{parse.Normal(all)}, Example: "I have six 2x6s, 12 ft long"}
}

// spokenFor are the lines in which boards are told of that are not at hand.
var spokenFor = []hear.OpenWay{
	{Looks: hear.Stated(solver.Have), Way: regexp.MustCompile(`\b(?:i|we|he|she|they|you|somebody|someone) (?:still |really |kind of |also |already |do |have |has |am |are )*(?:needs?|wants?|promised|sold|saving|keeping|use|uses) (?:them|those|these|all of them|it|that lot)\b`),
		Not: regexp.MustCompile(`\b(?:need|want|use) (?:them|those|these|it|all of them) (?:for|in|on|to build|to make) (?:this|the|my|our) (?:wall|halfwall|half wall|rails?|bays?)\b|\bto use\b`), Ask: forThisWall},
	{Looks: hear.Stated(solver.Have), Way: regexp.MustCompile(`\b(?:they|those|these|most|all|some|half|both|a few|several|it)(?: of (?:them|those|these|it))? (?:are|is|look|looks|have|has|got|went)(?: [a-z]+){0,2} (?:rotten|rotted|rotting|split|splitting|cracked|warped|twisted|bowed|cupped|crooked|bent|junk|garbage|trash|scrap|no good|not good|useless|worthless|bad|ruined|gone|spoken for|promised|sold|taken|reserved|earmarked|soaked|punky|wormy)\b`), Ask: forThisWall},
	{Looks: hear.Stated(solver.Have), Way: regexp.MustCompile(`\b(?:on hold|on order|on backorder|on layaway|in mind|set aside for|earmarked|spoken for|promised to)\b`), Not: regexp.MustCompile(`\b(?:set aside|earmarked) for (?:this|the|my|our) (?:wall|halfwall|half wall)\b`), Ask: forThisWall},
	{Looks: hear.Stated(solver.Have), Way: regexp.MustCompile(opensClause + `(?:he|she|` + whoseEver + ` ` + kinToo + `) (?:still |also |already |only )?(?:has|'s got|owns|keeps)\b`), Not: regexp.MustCompile(`\b(?:for me|for us|i can|we can|gave|give|gives|mine|ours)\b`), Ask: forThisWall},
	{Looks: hear.Stated(solver.Drop), Way: regexp.MustCompile(`\bdrop (?:the |those |these |both |all |my |our )[^,.;]*\bbays?\b`), Ask: hear.OpenQuestion("Which of them shall go, or does the floor fall by that?", "the floor falls 2 inches to the right")},
}
