package grammar

import (
	"regexp"
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/guard"
	"saywright/grammar/lex"
	"saywright/grammar/parse"
	"saywright/solver"
)

// A post that leans "into the opening" leans to the side at which the opening stands, and "the added post" is the one that there is. Where it leans
// only "in", or no opening tells the side, the side is asked.

var (
	leansSaid   = regexp.MustCompile(`\b(?:lean(?:s|ing)?|tilt(?:s|ed|ing)?|tip(?:s|ped|ping)?)\b`)
	loneAdded   = regexp.MustCompile(`\b(?:the|my|our|that|this) (?:new|added|extra|inner|middle) post\b`)
	intoOpening = regexp.MustCompile(`\b(?:into|toward|towards|in toward|in towards|in to) (?:the |my |our )?(?:opening|walk[- ]?through|doorway|gateway|way through)\b`)
	offOpening  = regexp.MustCompile(`\b(?:(?:away|off) from (?:the |my |our )?(?:opening|walk[- ]?through|doorway|gateway|way through)|(?:into|toward|towards) (?:the |my |our )?bay)\b`)
	postThere   = regexp.MustCompile(`\b(?:post 1|post one|(left|right)(?:[- ]hand)?(?: end)? post)\b`)
	leansBy     = regexp.MustCompile(`\b(?:half|quarter|eighths?|sixteenths?|inch|inches)\b`)
	leansIn     = regexp.MustCompile(`\b(leans|leaning|leaned|tilts|tips) (?:in|inward|inwards)\b( by)?`)
)

// leanToward reads a lean that is told by what stands beside the post.
func leanToward(line string, c act.Context) (act.Reading, bool) {
	if c.Deep || !strings.Contains(line, "ost") {
		return act.Reading{}, false
	}
	said := strings.ToLower(strings.Join(strings.Fields(line), " "))
	if !strings.Contains(said, "post") || !leansSaid.MatchString(said) || !strings.ContainsAny(said, "0123456789") && !leansBy.MatchString(said) {
		return act.Reading{}, false
	}
	beside := intoOpening.MatchString(said) || offOpening.MatchString(said)
	if !oneAdded(c) {
		return whichLeans(), beside || loneAdded.MatchString(said)
	}
	plain := loneAdded.ReplaceAllString(said, "post 1")
	at, far := postThere.FindStringSubmatch(plain), guard.FarSide(c)
	if at == nil || strings.Contains(said, " posts") || strings.Count(said, "post") > 1 {
		return whichLeans(), beside
	}
	toward := map[string]string{"left": "right", "right": "left"}[far] // the side of the opening, seen from post 1
	if at[1] != "" && toward != "" && at[1] != toward {
		toward = "" // that end post stands at no opening
	} else if at[1] != "" {
		toward = far
	}
	c.Deep = true
	switch {
	case intoOpening.MatchString(plain) && toward != "":
		return readsLean(intoOpening.ReplaceAllString(plain, "to the "+toward), line, c)
	case offOpening.MatchString(plain) && toward != "":
		return readsLean(offOpening.ReplaceAllString(plain, "to the "+parse.Across(toward)), line, c)
	case at[1] == "" && leansIn.MatchString(plain):
		var forms []string
		for _, side := range []string{"left", "right"} {
			if r, ok := readsLean(leansIn.ReplaceAllString(plain, "$1 "+side), line, c); ok {
				forms = append(forms, r.Acts[0].String())
			}
		}
		if len(forms) == 2 {
			at := 0
			return act.Reading{Ask: &solver.Question{At: &at, Text: "To the left or to the right?", Choices: forms, Example: forms[0]}, Own: true}, true
		}
	case plain != said && !beside:
		return readsLean(plain, line, c)
	}
	return whichLeans(), beside
}

// whichLeans asks which post leans, and to which side.
func whichLeans() act.Reading {
	at := 0
	return act.Reading{Ask: &solver.Question{At: &at, Text: "Which post is it, and does it lean left or right?", Example: "post 1 leans 3/8 right in 48"}, Own: true}
}

// oneAdded reports whether the layout that stands has exactly one added post.
func oneAdded(c act.Context) bool {
	if c.Now == nil {
		return false
	}
	n, ok := c.Now(solver.Name{Quantity: solver.AddedPosts})
	return ok && n.Eq(lex.OneRat)
}

// readsLean reads a line in plain words, if it tells how one post leans and nothing else.
func readsLean(plain, line string, c act.Context) (act.Reading, bool) {
	r := Read(plain, c)
	if r.Ask != nil || len(r.Acts) != 1 || len(r.Acts[0].Statements) != 1 || r.Acts[0].Statements[0].Name.Quantity != solver.PostLeans {
		return act.Reading{}, false
	}
	r.Acts[0].End = len([]rune(line))
	return r, true
}
