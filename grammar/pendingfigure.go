package grammar

import (
	"regexp"
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/parse"
	"saywright/solver"
	"saywright/solver/exact"
)

// "Tighter gaps": how much? "2 inches" is what the gap shall be, "a quarter less" by how much it changes. Which of the two a bare figure is shows by what the
// gap measures now: a wider gap can't be 1/2 where it is 2 already.

var (
	triedLead = regexp.MustCompile(`(?i)^(?:(?:so|ok|okay|well|and|now|then|hm|hmm|um|uh),? )*(?:what if|what about|how about|suppose|what would|could|can|would|let's try|try)\b`)
	growsIt   = regexp.MustCompile(`(?i)\b(?:wider|bigger|taller|higher|larger|longer|more|looser|raise|increase|widen|loosen|up|grow)\b`)
	shrinksIt = regexp.MustCompile(`(?i)\b(?:tighter|narrower|smaller|shorter|lower|less|fewer|closer|reduce|decrease|tighten|shrink|narrow|shorten|down)\b`)
	plainOf   = regexp.MustCompile(`(?i)^(?:(?:um|uh|so|ok|okay|well|and|now|then|please|the|my|our|some|a|an|make|let's|get|set|want|i|we|need|change|have|like|would|go|with|for|them|all|of|what|if|about|how|suppose|were|could|can|try|gaps?|spac(?:e|es|ing)|openings?|doorway|rails?|boards?|slats?|stiffeners?|wall|span|between|wider|bigger|taller|higher|larger|longer|more|looser|raise|increase|widen|loosen|tighter|narrower|smaller|shorter|lower|less|fewer|closer|reduce|decrease|tighten|shrink|narrow|shorten|together|please)[ ,.!?]*)+$`)
)

// figureFrame is how a part is given its figure, and how it is changed by one; a count is told without a unit.
type figureFrame struct{ set, more, less string }

var figureFrames = map[string]figureFrame{
	"gap":        {"gap %", "make the gap % wider", "make the gap % narrower"},
	"bottom gap": {"bottom gap %", "make the bottom gap % bigger", "make the bottom gap % smaller"},
	"opening":    {"opening %", "make the opening % wider", "make the opening % narrower"},
	"wall":       {"wall % high", "make the wall % higher", "make the wall % lower"},
	"rail":       {"% rails", "% more rails", "% fewer rails"},
	"stiffener":  {"% stiffeners", "% more stiffeners", "% fewer stiffeners"},
}

// figureLines are the lines that a figure makes of one that named a part and told no figure.
func figureLines(p *act.Pending, said string, c act.Context) []string {
	if !growsIt.MatchString(p.Line) && !shrinksIt.MatchString(p.Line) {
		thing := partAsked(p)
		lines := []string{bareEnd(p.Line) + " " + said}
		if f, known := figureFrames[thing]; known && plainOf.MatchString(p.Line) {
			lines = append(lines, triesIt(p)+strings.Replace(f.set, "%", said, 1))
		}
		return lines
	}
	set, change, ok := changedBy(p, said, c)
	if !ok {
		return nil
	}
	if strings.HasPrefix(said, "by ") {
		return []string{change}
	}
	_, unit := onlyValue(said, c)
	switch now, v, known := setAgainst(set, c); {
	case unit && known && v.Less(now) && Read(set, c).Ask != nil:
		return []string{change} // no opening is 2 inches wide
	case known && growsIt.MatchString(p.Line) && now.Less(v), known && shrinksIt.MatchString(p.Line) && v.Less(now) && !v.Add(v).Less(now):
		return []string{set}
	case known && growsIt.MatchString(p.Line) && v.Less(now):
		return []string{change}
	}
	return nil
}

// toOrByPending asks whether a figure is what a part shall be or by how much it changes, where it may be both.
func toOrByPending(p *act.Pending, said string, c act.Context) *solver.Question {
	set, change, ok := changedBy(p, said, c)
	if !ok || strings.HasPrefix(said, "by ") || !growsIt.MatchString(p.Line) && !shrinksIt.MatchString(p.Line) {
		return nil
	}
	if now, v, known := setAgainst(set, c); known && shrinksIt.MatchString(p.Line) && now.Less(v) {
		return nil
	}
	a, b := Read(set, c), Read(change, c)
	if a.Ask != nil || b.Ask != nil {
		return nil
	}
	return &solver.Question{Text: "Is that how much it shall be, or by how much it changes?", Choices: []string{parse.Normal(a.Acts), parse.Normal(b.Acts)}, Example: parse.Normal(a.Acts)}
}

func partAsked(p *act.Pending) string {
	return p.Question.Facts[0].Names[0]
}

func triesIt(p *act.Pending) string {
	if triedLead.MatchString(p.Line) {
		return "what if "
	}
	return ""
}

// changedBy returns the lines that set a part to a figure, and that change it by it, where the line that was asked about says no more than that it be changed.
func changedBy(p *act.Pending, said string, c act.Context) (set, change string, ok bool) {
	said = withoutFirst(said, "by", "to", "at")
	frame, known := figureFrames[partAsked(p)]
	more, less := growsIt.MatchString(p.Line), shrinksIt.MatchString(p.Line)
	if !known || more == less || !plainOf.MatchString(p.Line) {
		return "", "", false
	}
	if _, unit := onlyValue(said, c); unit && partAsked(p) == "stiffener" {
		return "", "", false // so far apart: closer ones are more
	}
	change = frame.less
	if more {
		change = frame.more
	}
	return triesIt(p) + strings.Replace(frame.set, "%", said, 1), triesIt(p) + strings.Replace(change, "%", said, 1), true
}

// setAgainst returns what the quantity that a line sets measures now, and what it would then.
func setAgainst(set string, c act.Context) (now, then exact.Rat, known bool) {
	got := Read(set, c)
	var acts []act.Act
	if acts = got.Acts; got.Ask != nil && len(got.Ask.Choices) > 0 { // no height for a wall: still a figure
		acts, _ = parse.Parse(got.Ask.Choices[0])
	}
	if len(acts) != 1 || len(acts[0].Statements) != 1 || c.Now == nil {
		return now, then, false
	}
	st := acts[0].Statements[0]
	now, known = c.Now(st.Name)
	return now, st.Value.Num, known
}
