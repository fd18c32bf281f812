package guard

import (
	"regexp"
	"slices"

	"saywright/grammar/act"
	"saywright/grammar/hear"
	"saywright/grammar/ways"
	"saywright/solver"
	"saywright/solver/exact"
)

// "Tens but no twelves": a length that is denied is not on sale, whatever was heard, and one that is told against it is. Plain English, no source.

const (
	ofFeet   = `(eight|ten|twelve|fourteen|sixteen|eighteen|twent(?:y|ie)|8|10|12|14|16|18|20)`
	feetLong = ofFeet + `(?:s| s|(?: -)? (?:foot|feet|ft|footers?))(?: |$)`
)

var (
	notSold  = regexp.MustCompile(`\b(?:no|not|without|except|except for|all but|lengths but|never|neither|nor) (?:the |more |any |a |single |[0-9] x [0-9]+ )*` + feetLong)
	soldThen = regexp.MustCompile(`\b(?:no|not) [^;.]*(?:,|but|instead)(?: they)?(?: have| sell| are)? (?:only |just |but )+(?:the )?` + feetLong)
	noOrYes  = regexp.MustCompile(`^(?:no|nope) , ` + feetLong + `$|\b` + feetLong + `(?:, |: |- )?(?:yes|yeah|yep)\b.*\b(?:no|nope)(?: [.!])*$`)
	openSold = regexp.MustCompile(`\b(?:swap|trade|exchange|switch|replace) (?:the |all |out )*` + feetLong + `|\bout of (?:all|everything|every|anything)\b|\bno (?:lengths?|boards?|sizes?|lumber|others?|stock|sticks?) (?:but|except|except for|other than|besides|save)\b|\b` + feetLong + `, no ` + feetLong + `, ` + feetLong + `$|\bno [0-9] x [0-9]+ ` + feetLong + `(?:, )?but |\b(?:[0-9]|two|three|four|five|six) (?:more|other|new|different|extra|further) (?:lengths|kinds|sizes)\b`)
	metricNo = regexp.MustCompile(`\b(?:no|not|without) (?:the |more |any )*[0-9.]+ ?(?:m|mm|cm|meters?|metres?)\b`)
	inFeet   = map[string]int{"eight": 8, "ten": 10, "twelve": 12, "fourteen": 14, "sixteen": 16, "eighteen": 18, "twenty": 20, "twentie": 20, "8": 8, "10": 10, "12": 12, "14": 14, "16": 16, "18": 18, "20": 20}
)

// notOnSale asks where a length that is denied was heard as one on sale or at hand, or one that is on sale as one that is not.
func notOnSale(acts []act.Act, said string) *solver.Question {
	if at := slices.IndexFunc(acts, hear.Stated(solver.Stock)); at >= 0 && (ways.MatchesWay(noOrYes, said) || ways.MatchesWay(openSold, said) || ways.MatchesWay(metricNo, said) && !slices.ContainsFunc(acts, dropsLength)) {
		return &solver.Question{At: &acts[at].At, Text: "Which lengths are on sale, and which are not?", Example: "they sell tens and twelves"}
	}
	if !slices.ContainsFunc(acts, ofLengthsOrBoards) {
		return struckOff(acts, said)
	}
	for _, way := range []*regexp.Regexp{notSold, soldThen} {
		for _, m := range way.FindAllStringSubmatch(said, -1) {
			long := exact.Int(12 * inFeet[m[1]])
			for _, a := range acts {
				for _, s := range a.Statements {
					if valued(a) && s.Name.Quantity == solver.Stock && (s.Op == solver.Minus) == (way == soldThen) && hasLength(s.Value, long) ||
						way == notSold && s.Name.Quantity == solver.Have && s.Name.Long != nil && s.Name.Long.Num.Eq(long) {
						at := a.At
						return &solver.Question{At: &at, Text: "Which lengths are on sale, and which are not?", Example: "they sell tens and twelves"}
					}
				}
			}
		}
	}
	return struckOff(acts, said)
}

// ofLengthsOrBoards reports whether an act tells of lengths on sale, or of boards at hand.
func ofLengthsOrBoards(a act.Act) bool {
	return slices.ContainsFunc(a.Statements, func(s solver.Statement) bool {
		return s.Name.Quantity == solver.Stock || s.Name.Quantity == solver.Have
	})
}

// dropsLength reports whether a length is told that is not on sale.
func dropsLength(a act.Act) bool {
	return valued(a) && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool { return s.Name.Quantity == solver.Stock && s.Op == solver.Minus })
}

// hasLength reports whether a value is a length, or a list that holds it.
func hasLength(v solver.Value, long exact.Rat) bool {
	return v.Of == nil && v.Word == "" && len(v.List) == 0 && v.Num.Eq(long) || slices.ContainsFunc(v.List, func(l solver.Value) bool { return l.Num.Eq(long) })
}
