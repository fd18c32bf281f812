package grammar

import (
	"regexp"
	"strings"

	"saywright/grammar/act"
	"saywright/solver"
)

// "Ok 7", right behind what was tried or asked of the rails, is seven rails; "why not 5" behind "why six rails" is five of them. Only counts are so short.

const fewSo = `([1-9]|1[0-6]|one|two|three|four|five|six|seven|eight|nine|ten)`

var (
	okThen  = regexp.MustCompile(`^(?:(?:ok|okay|alright|all right|right|fine|well|yes|yeah)[ ,]+(?:(?:make it|go with|do|let's do|let's go with|then) )?` + fewSo + `(?: then| please|, please)?|` + fewSo + ` then)[ .!]*$`)
	whyNotN = regexp.MustCompile(`^(?:(?:and|but|so|then) )?why not ` + fewSo + `(?: then| instead)?[ ?!.]*$`)
	// countedWords name a part that a line counts.
	countedWords = map[solver.Quantity][2]string{solver.Rails: {"rail", "rails"}, solver.Stiffeners: {"stiffener", "stiffeners"}, solver.AddedPosts: {"added post", "added posts"}}
)

// countAgain reads a count of what was just spoken of.
func countAgain(line string, c act.Context) (act.Reading, bool) {
	if c.Subject == nil || c.Deep || len(line) > 40 || len(c.Choices) > 0 || c.Pending != nil || c.Teaching || c.Subject.Wall != "" || c.Subject.Bay > 0 {
		return act.Reading{}, false
	}
	noun, ok := countedWords[c.Subject.Quantity]
	if !ok {
		return act.Reading{}, false
	}
	said, plain := strings.ToLower(strings.Join(strings.Fields(line), " ")), ""
	count := func(n string) string {
		if n == "1" || n == "one" {
			return n + " " + noun[0]
		}
		return n + " " + noun[1]
	}
	m := okThen.FindStringSubmatch(said)
	if m != nil {
		plain = count(m[1] + m[2])
	} else if m = whyNotN.FindStringSubmatch(said); m != nil {
		m, plain = append(m, ""), "why not "+count(m[1])
	} else {
		return act.Reading{}, false
	}
	if n, _ := placeDownOf(m[1] + m[2]); n <= c.Ways && !strings.HasPrefix(plain, "why") {
		return act.Reading{}, false // it may be the number of a way out
	}
	r := Read(plain, c)
	for i := range r.Acts {
		r.Acts[i].At, r.Acts[i].End = 0, len([]rune(line))
	}
	return r, r.Ask == nil && len(r.Acts) == 1
}
