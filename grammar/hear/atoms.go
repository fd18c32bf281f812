package hear

import (
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/grammar/idiom"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/paraphrase"
	"saywright/grammar/parse"
	"saywright/grammar/scan"
	"saywright/solver"
)

// LongestLine is the most runes that a line may have; nobody says more in one breath, and reading grows with the square of it.
const LongestLine = 1200

// danglers drops the "to" or "from" that a question may end in: "what do I cut the boards to?".
func danglers(in []lex.Token) []lex.Token {
	n := len(in)
	for n > 0 && (in[n-1].Kind == lexicon.Stop || in[n-1].Kind == lexicon.QMark) {
		n--
	}
	if n == 0 || in[n-1].Kind != lexicon.To && in[n-1].Kind != lexicon.From {
		return in
	}
	for i := range in[:n-1] {
		if k := in[i].Kind; k == lexicon.Wh || k == lexicon.Quest || k == lexicon.Where || k == lexicon.Head && in[i].Key() == string(act.Why) {
			return append(in[:n-1:n-1], in[n:]...)
		}
	}
	return in
}

// Atoms reads a line that has been cut into atoms.
func Atoms(atoms []scan.Atom, c act.Context) act.Reading {
	s := parse.Speech{C: c, Metric: c.Metric}
	tokens := carried(plusJoins(idiom.OncePart(paraphrase.Pleased(atoms, lex.Tokens(atoms, c)))))
	if c.Teaching {
		if a, ok := figures(tokens, s); ok {
			return act.Reading{Acts: []act.Act{a}}
		}
	}
	tokens = dropReasons(dropPrefaces(parse.WithoutRight(tokens, c)))
	for i := range tokens {
		t := &tokens[i]
		if (t.Kind == lexicon.Num || t.Kind == lexicon.Size) && t.Amt.Bad != "" {
			q := parse.BadNumber(t)
			q.At = &t.At
			return act.Reading{Ask: &q}
		}
	}
	for i := range tokens {
		if t := &tokens[i]; t.Kind == lexicon.Unknown {
			q := notKnown(t)
			return act.Reading{Ask: &q}
		}
	}
	if t := tellsOver(tokens); t != nil {
		return askback.Meant.AskAt(t.At)
	}
	s.Mixed, s.InCentimeters = c.Mixed || c.Metered && !parse.SaidInInches(tokens) || parse.SaidInMetric(tokens), parse.WorksInCentimeters(tokens)
	tokens = danglers(tokens)
	said := endOfTalk(atoms)
	for n := len(tokens); n > 1 && tokens[n-1].Kind == lexicon.Comma && tokens[n-1].At >= said; n-- {
		tokens = tokens[:n-1]
	}
	if n := len(tokens); n > 0 && tokens[n-1].End == said {
		switch t := &tokens[n-1]; t.Kind {
		case lexicon.Change, lexicon.And, lexicon.Or, lexicon.But, lexicon.To, lexicon.From:
			if t.Kind == lexicon.Change && t.Text != "+" {
				break
			}
			if t.Text == "yet" && n > 1 {
				tokens = tokens[:n-1] // "have you got the gap yet"
				break
			}
			return askback.WordWhat.AskAt(t.At, parse.Quoted(t.Text))
		}
	}
	list, err := parse.Items(tokens)
	if err != nil {
		return askback.Meant.AskAt(0)
	}
	if it := parse.SpokenOf(c, tokens); it != nil {
		s.Carry.Name = it
		s.Carry.Kind = solver.KindOf(it.Quantity)
		s.Carry.Wall = it.Wall
	}
	s.Sentences(list)
	s.Perform()
	if s.Ask != nil {
		return act.Reading{Ask: s.Ask}
	}
	s.EndPosts()
	s.PlacesStated()
	s.HelpOnce()
	if len(s.Acts) == 0 {
		return askback.WhatToKnow.AskAt(0)
	}
	return LeftOpenToGuess(FactsStated(Airing(Together(act.Reading{Acts: s.Acts}, atoms), atoms), atoms), atoms)
}

// figures reads bare numbers as the answer to a teacher.
func figures(tokens []lex.Token, s parse.Speech) (act.Act, bool) {
	a := act.Act{Kind: act.Figure}
	for i := range tokens {
		switch t := &tokens[i]; t.Kind {
		case lexicon.Num:
			if t.Amt.Bad != "" || t.Amt.Unit == measure.Percent || t.Amt.Unit == measure.Money {
				return a, false
			}
			v := solver.Value{Num: t.Amt.Val}
			switch t.Amt.Unit {
			case measure.Inches, measure.Feet:
				v.Unit = solver.Inch
			case measure.Metric:
				v.Unit = solver.Millimeter
			}
			a.Figures = append(a.Figures, v)
			a.End = t.End
		case lexicon.And, lexicon.Comma, lexicon.Stop, lexicon.QMark, lexicon.It, lexicon.Fill, lexicon.About:
		default:
			return a, false
		}
	}
	return a, len(a.Figures) > 0
}

// dropReasons leaves out why something is wanted ("so the stroller fits"), up to the next break, where it names no
// number and says something that is not known.
func dropReasons(in []lex.Token) []lex.Token {
	out := make([]lex.Token, 0, len(in))
	for i := 0; i < len(in); i++ {
		if in[i].Kind == lexicon.Reason || in[i].Kind == lexicon.Unknown && in[i].Text == "as" && i > 0 && in[i-1].Kind == lexicon.Comma && onlyUnknown(in[i+1:]) {
			if end := reasonEnd(in, i); end > i {
				i = end - 1
				continue
			}
			f := strings.Fields(in[i].Text)
			if in[i].Kind == lexicon.Reason && len(f) > 1 && denies(f) {
				in[i].Kind, in[i].Found = lexicon.Unknown, nil // "so nobody sees more than three inches": what it denies is not left out
				out = append(out, in[i])
				continue
			}
			if in[i].Kind == lexicon.Reason && len(f) > 1 && i+1 < len(in) {
				in[i+1].Before = strings.TrimSpace(f[len(f)-1] + " " + in[i+1].Before) // "so we are building it 40 high" asks nothing
			}
			continue
		}
		out = append(out, in[i])
	}
	return out
}

// denies reports whether a word of denial is among words.
func denies(words []string) bool {
	for _, w := range words {
		switch w {
		case "no", "not", "nobody", "nothing", "none", "never", "nor", "neither":
			return true
		}
	}
	return false
}

// onlyUnknown reports whether nothing but words that no table knows stands up to the next break.
func onlyUnknown(in []lex.Token) bool {
	for i := range in {
		switch in[i].Kind {
		case lexicon.Stop, lexicon.QMark, lexicon.Comma:
			return i > 0
		case lexicon.Unknown, lexicon.It:
		default:
			return false
		}
	}
	return len(in) > 0
}

func endsInPronoun(text string) bool {
	words := strings.Fields(text)
	switch words[len(words)-1] {
	case "they", "it", "we", "i", "you", "he", "she", "nobody", "everyone", "people":
		return true
	}
	return false
}

// reasonEnd finds where a reason ends; it returns i where it may hold something that counts.
func reasonEnd(in []lex.Token, i int) int {
	unknown, part := false, false
	for j := i + 1; j < len(in); j++ {
		if in[j].Kind == lexicon.Quest && j == i+1 && strings.HasSuffix(in[i].Text, " of") && (j+1 == len(in) || in[j+1].Kind == lexicon.Comma || in[j+1].Kind == lexicon.Stop || in[j+1].Kind == lexicon.QMark) {
			unknown = true // "on account of the view" shows nothing
			continue
		}
		if f := strings.Fields(in[j].Before); j == i+1 && len(f) > 0 && Wishing[f[0]] {
			unknown = true // "so I want sicks boards" wishes
		}
		switch in[j].Kind {
		case lexicon.Stop, lexicon.QMark, lexicon.Comma:
			if unknown && part {
				return i // a misspelled number may hide in it
			}
			return j
		case lexicon.Unknown:
			unknown = unknown || !Foreign(&in[j]) || lex.Words().Numberish(in[j].Text)
		case lexicon.Part, lexicon.Loc:
			part = true
		case lexicon.Cmd:
			if f := strings.Fields(in[j].Before); len(f) > 0 && (f[len(f)-1] == "will" || f[len(f)-1] == "can" || f[len(f)-1] == "would" || f[len(f)-1] == "to") {
				continue // a verb of the reason, no command
			}
			if j == i+1 && endsInPronoun(in[i].Text) {
				continue // "so they drop in"
			}
			if j > i+1 && in[j-1].Kind == lexicon.Unknown && in[j-1].Text != "please" {
				continue // "so the helpers quit early" tells of others
			}
			return i
		case lexicon.Quest, lexicon.Wh:
			if in[j].Kind == lexicon.Wh && in[j].Text == "count" && lex.Helping[lex.LastWord(in[j].Before)] != "" {
				continue // "so I can count my brackets"
			}
			if strings.HasPrefix(in[i].Text, "because") && strings.HasSuffix(in[j].Before, "that is") {
				continue // "because that's how many brackets came"
			}
			return i
		case lexicon.Num, lexicon.Size, lexicon.Head, lexicon.Rel, lexicon.Goal, lexicon.Best, lexicon.Units:
			return i
		}
	}
	if unknown && part {
		return i
	}
	return len(in)
}
