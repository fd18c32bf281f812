package paraphrase

import (
	"regexp"
	"strings"
	"sync"

	"saywright/grammar/scan"
)

// finest are ways to tell the smallest mark by the name of a fraction: "work everything to eighths".
var finest = sync.OnceValue(func() []*regexp.Regexp {
	frac := `(halves|half inches|quarters|fourths|eighths|sixteenths|thirty seconds|thirtyseconds|sixty fourths|sixtyfourths|(?:2|4|8|16|32|64) ?(?:ths|nds|s|th))( of an inch)?`
	tape := `(?:(?:my|the|our|a|this|his|her) )?(?:old |steel |folding |wooden |best )?(?:tape|tape measure|rule|ruler|measuring tape|yardstick|stick|square)`
	var out []*regexp.Regexp
	for _, way := range []string{
		`\b(?:please )?(?:work|do|cut|round|measure|mark|keep|hold|give me|show|figure|read|put|write)(?: me)? (?:everything|it all|all of it|all of them|things|the marks|every mark|all the marks|the cuts|all the cuts|all|the lengths|every length|the numbers|all the numbers|every number)(?: off| out| down)? (?:to|in|as) (?:the )?(?:nearest )?` + frac,
		frac + ` (?:is|are) (?:about |just )?(?:as (?:small|fine|tight|close|low) as ` + tape + ` (?:gets|goes|reads|shows|has|will go|can show|measures|is marked)|as (?:small|fine|close) as (?:i|we) can (?:read|see|mark|cut|work|measure)|the (?:smallest|finest|closest|tiniest) (?:marks|thing|division|divisions|lines|graduations)?(?: on| ` + tape + ` has| ` + tape + ` shows)?(?: ` + tape + `)?|(?:the )?best (?:i|we) can (?:do|read|see|mark|measure)|all (?:i|we) can (?:read|see|mark|measure)|all ` + tape + ` (?:shows|has|reads|gives))`,
		`\b(?:(?:i am|we are|i have been) (?:using|working with|measuring with|reading) |(?:i|we) (?:use|have|have got|got|own|work with|measure with) )?` + tape + ` (?:that |which )?(?:only |just )?(?:is |has been )?(?:goes|went|reads|gets|measures|measured|marked|runs|works|shows|ruled|divided|graduated|has marks|has lines|has)(?: only| just| down| off)* (?:to|in|every|into|down to|by|for) (?:the )?(?:nearest )?` + frac,
		tape + ` (?:only |just )?(?:does|did|do|had|has|showed) (?:only )?` + frac,
		`\bno (?:fractions?|marks?|numbers?|figures?) (?:finer|smaller|closer|tighter) than ` + frac + `(?: on the marks)?`,
		`\b(?:nothing|none) (?:finer|smaller|closer|tighter) than ` + frac + `(?: on the marks)?`,
	} {
		out = append(out, regexp.MustCompile(way))
	}
	return out
})

var fractionNames = map[string]string{"halves": "1/2", "half inches": "1/2", "quarters": "1/4", "fourths": "1/4", "eighths": "1/8", "sixteenths": "1/16",
	"thirty seconds": "1/32", "thirtyseconds": "1/32", "sixty fourths": "1/64", "sixtyfourths": "1/64"}

// finestMark sets a smallest mark told by the name of a fraction to the plain one: "tape 1/8".
func finestMark(atoms []scan.Atom) []scan.Atom {
	if !speaksOfFractions(atoms) {
		return atoms
	}
	for _, way := range finest() {
		said := scan.Text(atoms)
		m := way.FindStringSubmatchIndex(said)
		if m == nil {
			continue
		}
		name := said[m[2]:m[3]]
		frac, ok := fractionNames[name]
		if !ok {
			frac = "1/" + strings.TrimRight(name, " thnds")
		}
		from := strings.Count(said[:m[0]], " ")
		to := from + strings.Count(strings.TrimSpace(said[m[0]:m[1]]), " ") + 1
		out := append([]scan.Atom{}, atoms[:from]...)
		out = append(out, scan.Atom{Text: "tape", Kind: scan.Word, At: atoms[from].At, End: atoms[from].End},
			scan.Atom{Text: frac, Kind: scan.Vulgar, At: atoms[from+1].At, End: atoms[to-1].End})
		return append(out, atoms[to:]...)
	}
	return atoms
}

// speaksOfFractions reports whether a fraction is named without a count.
func speaksOfFractions(atoms []scan.Atom) bool {
	for _, a := range atoms {
		switch a.Text {
		case "halves", "quarters", "fourths", "eighths", "sixteenths", "seconds", "ths", "nds":
			return true
		}
	}
	return false
}
