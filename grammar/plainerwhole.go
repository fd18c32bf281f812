package grammar

import (
	"regexp"
	"strconv"
	"strings"
	"sync"

	"saywright/grammar/act"
	"saywright/grammar/ways"
)

// Some lines mean something else as a whole than their clauses do one by one: "tens but no twelves" sells tens, and "undo both" undoes twice. Such a line
// is read in plainer words. Everyday speech, no source.

// plainerWays are those lines, each with the plainer words.
var plainerWays = func() (out []plainerWay) {
	const (
		feet   = `(?:eight|ten|twelve|fourteen|sixteen|eighteen|twenty|8|10|12|14|16|18|20)`
		boards = `(?:(?:eights|tens|twelves|fourteens|sixteens|eighteens|twenties|(?:8|10|12|14|16|18|20)'?s)(?: (?:lengths|boards))?|` + feet + `[ -]?(?:footers|ft(?: (?:lengths|boards|ones))?|foot(?: (?:lengths|boards|ones))?))`
		list   = `((?:the )?` + boards + `(?:(?:,| and|, and) (?:the )?` + boards + `)*)`
		yard   = `(?:(?:well|so|ok|and|but|oh)[, ]+)*(?:they|the yard|the store|the shop|the lumberyard|the place|our yard|yard|store)`
		sells  = `(?:has|have|'ve|got|have got|'ve got|sells?|stocks?|carry|carries|keeps?|still have|still sell)`
		size   = `[0-9]+x[0-9]+`
		piece  = `(rail|board|slat|stiffener|post)s?`
		iron   = `((?:rail |post |concrete |metal )?(?:brackets|bases|caps|anchors))`
		price  = `(\$?[0-9]+\.[0-9]{2})`
		too    = `(?:too|as well|also|likewise)`
		end    = `(?: (?:though|now|please|thanks|anymore|any more|left|there|at all|today))?[ .!]*$`
		butNo  = `,? (?:but |and |yet )?(?:(?:they |there )?(?:have |are |'ve |'re |has |got |carry |sell |with )?(?:no|not any|never any|zero))(?: more)? `
	)
	for _, w := range append(yardWays(), [][2]string{
		// What is sold, and what is not.
		{`^(?:(?:` + yard + ` )?(?:only |just )?(?:` + sells + ` )?(?:only|just)|(?:` + yard + ` )(?:only|just) ` + sells + `) ` + list + `,? (?:but |and )?no ` + list + end, `they only sell $1`},
		{`^(?:` + yard + ` )?(?:` + sells + ` )?(?:also )?` + list + ` (?:` + too + `|again)` + butNo + list + end, `they also sell $1 . they are out of $2`},
		{`^` + yard + ` also ` + sells + ` ` + list + butNo + list + end, `they also sell $1 . they are out of $2`},
		{`^(?:` + yard + ` )?(?:` + sells + ` )?` + list + butNo + list + end, `they sell $1 . they are out of $2`},
		{`^(?:` + yard + ` )?(?:` + sells + ` )?(?:no|no more|not any) ` + list + `,? but (?:they (?:` + sells + ` )?)?` + list + `(?: ` + too + `| again| instead)?` + end, `they are out of $1 . they also sell $2`},
		{`^(?:` + yard + ` ` + sells + ` )?(?:all|everything|every|any)(?: (?:the |of the )?(?:lengths?|sizes?|boards?|lumber))?,? (?:but|except|except for|save|save for|bar|barring|other than|apart from|minus|excluding|besides) ` + list + end, `they are out of $1`},
		{`^((?:i|we)(?: have|'ve|'ve got| have got| got| own) .*` + size + ` (?:` + boards + `|` + feet + `[ -](?:footers|feet|ft|foot)))` + butNo + list + end, `$1`},
		{`^(` + size + ` )?` + list + ` (?:are |cost |run |go for |at |is |sell for )?` + price + `(?: each| apiece)?` + butNo + list + end, `${1}$2 are $3 . they are out of $4`},
		{`^(` + size + ` )?` + list + ` (?:are|cost|run|go for|at|is|sell for) (\$?[0-9.]+|[a-z]+)(?: each| apiece)?(?:,? and|,) so (?:are|do) ` + list + end, `${1}$2 are $3 . ${1}$4 are $3`},
		{`^(` + size + ` )?` + list + ` (?:are |cost |run |go for |at |is |sell for )?` + price + `(?: each| apiece)?,? (?:and )?` + list + ` ` + too + end, `${1}$2 are $3 . ${1}$4 are $3`},
		{`^(` + size + ` )?` + list + ` (?:are |cost |run |go for |at |is |sell for )?` + price + `(?: each| apiece)?[, -]+(?:no|wait|no wait|sorry|i mean|i meant|make that|rather)[, ]+(?:that's |that is |i mean )?` + list + end, `${1}$4 are $3`},
		// One size, one price for two things.
		{`^(` + size + `)(?: for| on)?(?: the)? ` + piece + `(?:,| and|, and)(?: for| on)?(?: the)? ` + piece + `,? ` + too + end, `$2 size $1 . $3 size $1`},
		{`^(?:the )?` + piece + ` (?:are |is |at )?(` + size + `)(?:,| and|, and)(?: so are)?(?: the)? ` + piece + `(?:,? ` + too + `)?` + end, `$1 size $2 . $3 size $2`},
		{`^` + iron + ` (?:are |at |cost |run )?` + price + `(?: each| apiece)?(?:,| and|, and)(?: so (?:are|do))?(?: the)? ` + iron + `(?:,? ` + too + `)?` + end, `$1 $2 . $3 $2`},
		// One thing after another.
		{`^first,? (.*(?:more|fewer|less|another|extra) .*[^,]),? (?:and )?then (.*)$`, `$1 . $2`},
		{`^((?:.* )?)undo (?:both|the both|both (?:of )?(?:(?:them|those|these|my|the|last)(?: last)?(?: changes| ones)?|changes))((?:,| and| then) .*)?` + end, `${1}undo the last two$2`},
		{`^((?:.* )?)(?:take both(?: of (?:them|those))? back|take back both(?: of (?:them|those))?)` + end, `${1}undo the last two`},
		{`^((?:.* )?)(?:undo|take back) (?:that|this|it|the last(?: one| change)?),? and the (?:one|change|last one) before(?: (?:that|it))?` + end, `${1}undo the last two`},
		{`^((?:.* )?)take (?:that|this|it|the last one|the last change) back,? and (?:also )?the (?:one|change) before(?: (?:that|it))?` + end, `${1}undo the last two`},
		{`^((?:.* )?)undo,? (?:and |then |and then )?undo` + end, `${1}undo the last two`},
		{`^((?:ok|okay|right|fine|yes|well|so)[, ]+)?(?:(?:i|we)(?: will|'ll) )?(?:go with|do|take|keep|use|let's go with|let's do|let's take) (?:that|it|this|that one),? (?:but|only) (?:with |make |at |have |make it )?(.*)$`, `take that . $2`},
		{`^((?:ok|okay|right|fine|yes|well|so)[, ]+)?(?:take|go with|let's go with|let's take) (?:that|that one), (?:with |and )?((?:(?:the |a |an )?(?:gap|wall|opening|span|bottom gap|rails|stiffeners|spare|kerf) |[0-9]|one|two|three|four|five|six|seven|eight).*)$`, `take that . $2`},
		{`^(.*[0-9a-z]), (rails|boards|slats|bays|stiffeners)(?: then)? ?\?$`, `$1, how many $2?`},
		{`^(.*[0-9a-z]), (?:the )?(?:wall|wall height|height)(?: then)? ?\?$`, `$1, what is the wall height?`},
		// One figure for two spaces.
		{`^(.*[0-9a-z]) (?:space |room |clear )?(?:under|below|beneath) the (?:bottom|lowest|first) (?:one|rail|board|slat)(?: ,|,)? and (?:in )?between (?:(?:the |all the )?(?:rails|others|boards|slats|rest|other ones)|them|each|every one|all)` + end, `bottom gap $1 . gap $1`},
		{`^(.*[0-9a-z]) (?:space |room |clear )?between (?:(?:the |all the )?(?:rails|others|boards|slats)|them|each|all)(?: ,|,)? and (?:under|below|beneath) (?:the (?:bottom|lowest|first)(?: (?:one|rail|board|slat))?|them)` + end, `gap $1 . bottom gap $1`},
	}...) {
		out = append(out, plainerWay{regexp.MustCompile(w[0]), w[1]})
	}
	return out
}()

type plainerWay struct {
	way   *regexp.Regexp
	plain string
}

// nextRail tells of one rail and of the next: "rail 1 top at 8, the next at 16".
var nextRail = regexp.MustCompile(`^(?:the )?(?:(?:rail|board|slat) ([1-9])(?:'s)? top|(first|second|third|fourth|fifth|bottom|lowest) (?:rail|board|slat|one)(?:'s)? top)((?: is| at| sits at| is at)* [^,;]*),? (?:and )?(?:the )?(?:next|following)(?: (?:one|rail|board|slat))?(?: up)?(?:'s top|'s)?((?: is| at| sits at| is at)* [0-9][^,;]*)$`)

// railOf are the rails by their places.
var railOf = map[string]int{"1": 1, "2": 2, "3": 3, "4": 4, "5": 5, "6": 6, "7": 7, "8": 8, "9": 9, "first": 1, "bottom": 1, "lowest": 1, "second": 2, "third": 3, "fourth": 4, "fifth": 5}

// plainerIndex finds the ways that a line may be said in.
var plainerIndex = sync.OnceValue(func() *ways.WayIndex {
	var said []*regexp.Regexp
	for _, w := range plainerWays {
		said = append(said, w.way)
	}
	return ways.IndexWays(said)
})

// plainerSaid says a line in plainer words; it is empty where there are none.
func plainerSaid(said string) string {
	low := strings.ToLower(said)
	if len(low) == len(said) && ways.MatchesWay(nextRail, low) {
		if m := nextRail.FindStringSubmatch(low); m != nil {
			n := railOf[m[1]+m[2]]
			return "rail " + strconv.Itoa(n) + " top" + m[3] + " . rail " + strconv.Itoa(n+1) + " top" + m[4]
		}
	}
	index := plainerIndex()
	may := index.In(low)
	for i, w := range plainerWays {
		if !may.Has(int32(i)) || !index.Matches(i, low) {
			continue
		}
		if at := w.way.FindStringSubmatchIndex(low); at != nil && len(low) == len(said) && !saysAgain(low, at) {
			return string(w.way.ExpandString(nil, w.plain, said, at)) // names keep their capitals
		}
	}
	return ""
}

// saysAgain reports whether what is told of a list stands in the list: "tens and twelves, no twelves" takes the twelves back.
func saysAgain(said string, at []int) bool {
	for i := 2; i+3 < len(at); i += 2 {
		if at[i] >= 0 && at[i+2] >= 0 && strings.Contains(said[at[i]:at[i+1]], strings.TrimPrefix(said[at[i+2]:at[i+3]], "the ")) {
			return true
		}
	}
	return false
}

// plainerWhole reads a line that says as a whole what its clauses do not.
func plainerWhole(line string, c act.Context) (act.Reading, bool) {
	if c.Deep || len(line) > 200 {
		return act.Reading{}, false
	}
	said := strings.Join(strings.Fields(line), " ")
	plain := plainerSaid(said)
	if plain == "" {
		return act.Reading{}, false
	}
	c.Deep = plainerSaid(plain) != "" // once is enough
	r := Read(plain, c)
	for i := range r.Acts {
		r.Acts[i].At, r.Acts[i].End = 0, len([]rune(line))
	}
	if r.Ask != nil {
		at := 0
		r.Ask.At = &at
	}
	r.Taken = nil
	return r, true
}
