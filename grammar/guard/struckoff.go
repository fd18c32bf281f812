package guard

import (
	"regexp"

	"saywright/grammar/act"
	"saywright/solver"
)

// What is sold out is told of the lengths beside it: "no twelves, sixteens okay" does not strike off the sixteens. Where two lengths were struck off, each
// clause that names one has to say that it is gone, or to be of a list with one that does; else it is asked which are on sale. Plain English, no source.

var (
	clauseCuts  = regexp.MustCompile(` [,;.:] | - | -- | (?:but|so|since|because|while|yet|then) `)
	lengthNamed = asWay(`\b` + soldBy + `( |$)|\b[0-9.,]+ {m|mm|cm|meters?|metres?|foot|feet|ft|footers?}\b|[0-9] '`)
	lengthsOnly = asWay(`^ ?{the|all|any|also|their|these|those }*{` + soldBy + `|[0-9.,]+( {m|mm|foot|ft|feet|footers?|'})?}{ and|or|nor|the|` + soldBy + `}* ?$`)
	ofMore      = regexp.MustCompile(`\b(?:and|or|nor|&) `)
	goneWord    = anyWordOf(`no|not|none|never|neither|nor|without|out|gone|sold|drop|dropped|drops|lose|loses|lost|strike|struck|scratch|scrap|skip|ditch|cut|cross|crossed|remove|removed|delete|forget|minus|less|quit|stopped|stop|discontinued|longer|away|off|empty|ran|run|last|can not|missing|finished|bought|except|neither|nix|cancel|kill|lack|lacks|short|pull|pulled|leave out|stk|stock|snapped|too|as well|also|likewise|both`)
	keptWord    = anyWordOf(`keep|keeps|leave|use|get|buy|only|just|instead`)
	soToo       = asWay(`\b{so|and so} {did|are|have|were|is|do} {the }?` + soldBy + `( |$)|\b{gone|out|sold out|finished} , {and }?{the }?` + soldBy + ` {too|as well|also|likewise}\b`)
)

// struckOff asks where a length was struck off of which nothing says that it is gone.
func struckOff(acts []act.Act, said string) *solver.Question {
	struck, told := 0, 0
	for _, a := range acts {
		if !valued(a) {
			continue
		}
		for _, s := range a.Statements {
			switch {
			case s.Name.Quantity != solver.Stock:
			case s.Op == solver.Minus:
				struck += len(lengthsIn(s.Value))
			default:
				told++
			}
		}
	}
	if struck == 0 || struck < 2 && told == 0 {
		return nil
	}
	ask := &solver.Question{Text: "Which lengths are on sale, and which are not?", Example: "they sell tens and twelves"}
	if told > 0 && soToo.MatchString(said) {
		return ask
	}
	if struck < 2 {
		return nil
	}
	clauses := clauseCuts.Split(" "+said+" ", -1)
	for i, clause := range clauses {
		switch {
		case !lengthNamed.MatchString(clause):
		case goneWord.MatchString(clause) && !keptWord.MatchString(clause):
		case told > 0 && !lengthsOnly.MatchString(clause): // that one may be what is sold
		case lengthsOnly.MatchString(clause) && (i > 0 && i+1 == len(clauses) && ofMore.MatchString(clause) || i+1 < len(clauses) && lengthNamed.MatchString(clauses[i+1]) && ofMore.MatchString(clauses[i+1])):
		default:
			return ask
		}
	}
	return nil
}
