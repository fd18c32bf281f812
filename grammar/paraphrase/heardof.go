package paraphrase

import (
	"saywright/grammar/act"
	"saywright/grammar/chunk"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// hearsayVerbs are what comes to somebody's ears or eyes.
var hearsayVerbs = scan.WordSet("heard read learned learnt seen noticed understand understood")

// withoutHearsay leaves out a reason that somebody has heard or read, where it names no figure: "no bay over six feet, because I've
// heard that long boards sag". It reports nothing of the wall that could be held against the rest.
func withoutHearsay(in []scan.Atom) []scan.Atom {
	for i := 0; i+3 < len(in); i++ {
		if !lex.Speakers[in[i].Text] || i > 0 && !Causes[in[i-1].Text] && !phrase.StartsClause(in[:i], nil) {
			continue
		}
		verb := i + 1
		for verb < len(in) && (in[verb].Text == "have" || in[verb].Text == "just" || in[verb].Text == "also" || in[verb].Text == "once" || in[verb].Text == "always") {
			verb++
		}
		if verb+2 >= len(in) || !hearsayVerbs[in[verb].Text] {
			continue
		}
		end := verb + 1
		for end < len(in) && !chunk.Breaks(in[end]) && in[end].Text != "so" {
			end++
		}
		caused := i > 0 && Causes[in[i-1].Text] && in[i-1].Text != "or"
		if !onlyHearsay(in[verb+1:end], caused) {
			continue
		}
		if caused && i > 2 {
			from := i - 1
			if chunk.Breaks(in[from-1]) && in[from-1].Text == "," {
				from--
			}
			return scan.CutOut(in, from, end)
		}
		rest := end
		for rest < len(in) && (chunk.Breaks(in[rest]) || in[rest].Text == "so" || in[rest].Text == "and") {
			rest++
		}
		if so := rest - 1; rest+1 < len(in) && so > end && in[so].Text == "so" || rest+1 < len(in) && rest > end && in[end].Text == "so" {
			return scan.CutOut(in, i, rest)
		}
	}
	return in
}

// onlyHearsay reports whether what was heard holds nothing that could be set, asked or ordered; a reason may compare.
func onlyHearsay(part []scan.Atom, caused bool) bool {
	if len(part) < 2 {
		return false
	}
	unknown := false
	list := lex.Tokens(part, act.Context{})
	for i := range list {
		switch t := &list[i]; t.Kind {
		case lexicon.Num, lexicon.Size, lexicon.Wh, lexicon.Where, lexicon.Units, lexicon.Cmd, lexicon.Name, lexicon.Side, lexicon.Not, lexicon.No, lexicon.Fix:
			return false
		case lexicon.Unknown:
			if lex.Words().Numberish(t.Text) {
				return false
			}
			unknown = true
		case lexicon.Part, lexicon.It, lexicon.Fill, lexicon.StockWord, lexicon.CutWord, lexicon.Theirs, lexicon.More:
		default:
			if !caused {
				return false
			}
		}
	}
	return unknown
}

// tooMuchOf and tooLittleOf are what something is too much of where it is made less, and where it is made more.
var (
	tooMuchOf   = scan.WordSet("tall high big wide long large loose deep far")
	tooLittleOf = scan.WordSet("low small short narrow tight close little")
	madeLess    = scan.WordSet("lower narrow tighten reduce shrink trim shorten decrease drop halve")
	madeMore    = scan.WordSet("raise widen increase lengthen stretch double loosen enlarge add")
	madeOther   = scan.WordSet("make set put change bring")
)

// judgedLast leaves out a judgment that ends a line and tells why something is changed: "lower the wall two inches, it's too tall".
func judgedLast(in []scan.Atom) []scan.Atom {
	end := len(in)
	for end > 0 && in[end-1].Kind == scan.Sign {
		end--
	}
	last := end
	for last > 0 && BesideJudged[in[last-1].Text] {
		last--
	}
	if last < 6 || !tooMuchOf[in[last-1].Text] && !tooLittleOf[in[last-1].Text] || in[last-2].Text != "too" {
		return in
	}
	verb := last - 3
	for verb > 1 && MuchSo[in[verb].Text] {
		verb--
	}
	if verb < 3 || !Judges[in[verb].Text] || !lex.Pointing[in[verb-1].Text] {
		return in
	}
	from := verb - 1
	if Causes[in[from-1].Text] && in[from-1].Text != "so" {
		from--
	}
	if !chunk.Breaks(in[from-1]) && from == verb-1 {
		return in
	}
	much := tooMuchOf[in[last-1].Text]
	for _, a := range in[:from] {
		if madeOther[a.Text] || madeLess[a.Text] && much || madeMore[a.Text] && !much {
			return scan.CutOut(in, from, end)
		}
	}
	return in
}
