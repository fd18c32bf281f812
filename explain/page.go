package explain

import (
	"regexp"
	"strings"

	"saywright/explain/figure"
)

// page is an answer taken apart into blocks, before anything is known of the width it will be read at.
type page struct {
	style  figure.Style
	blocks []block
	aloud  []string // sentences for the ear alone, behind those of the lead
}

// block is one piece of a page: it is laid out by itself, and looks at no other.
type block interface {
	lines(o Options) []string
}

// ink says what a line is, so that a terminal may color it. Without color nothing is lost.
type ink string

const (
	noInk   ink = ""
	bold    ink = "1"
	good    ink = "32"
	bad     ink = "31"
	warning ink = "33"
	faint   ink = "2"
)

// para is words that wrap. Lines after the first are indented by hang.
type para struct {
	text string
	lead string // stands before the first line: "1. ", "Caution: "
	ink  ink    // of the lead; of all of it where there is none
	own  bool   // the first sentences of an answer: they are said aloud
	raw  bool   // laid out as it is: lines of a table for another program, a picture
}

// blank is an empty line.
type blank struct{}

func (blank) lines(Options) []string { return []string{""} }

func (p *page) add(b ...block) { p.blocks = append(p.blocks, b...) }

// say adds a lead sentence, which is also said aloud.
func (p *page) say(s string, i ink) {
	if s = sentence(s); s != "" {
		p.add(para{text: s, ink: i, own: true})
	}
}

// run makes one paragraph of all sentences so far.
func (p *page) run() {
	var all []string
	for _, b := range p.blocks {
		q, ok := b.(para)
		if !ok || !q.own {
			return
		}
		all = append(all, q.text)
	}
	if len(all) > 1 {
		p.blocks = []block{para{text: strings.Join(all, " "), own: true}}
	}
}

// note adds a sentence for the eye.
func (p *page) note(s string) {
	if s = sentence(s); s != "" {
		p.add(para{text: s})
	}
}

func (p para) lines(o Options) []string {
	if p.raw {
		return strings.Split(strings.TrimRight(p.text, "\n"), "\n")
	}
	hang := strings.Repeat(" ", cells(p.lead))
	if len(hang) > widestHang {
		hang = "  "
		return p.flowing(hang, o)
	}
	lines := wrap(p.text, o.width()-len(hang))
	for i := range lines {
		switch {
		case i > 0:
			lines[i] = inked(hang+lines[i], p.inkOf(false), o)
		case p.lead != "":
			lines[i] = inked(p.lead, p.ink, o) + lines[i]
		default:
			lines[i] = inked(lines[i], p.ink, o)
		}
	}
	return lines
}

// widestHang is how far lines are indented under a lead; under a longer one they begin near the edge.
const widestHang = 13

// flowing lays a text behind a long lead, the lines after the first near the edge.
func (p para) flowing(hang string, o Options) []string {
	lines := wrap(p.lead+p.text, o.width()-len(hang))
	for i := range lines {
		if i == 0 {
			lead := strings.TrimRight(p.lead, " ")
			if rest, ok := strings.CutPrefix(lines[0], lead); ok {
				lines[0] = inked(lead, p.ink, o) + rest
			}
			continue
		}
		lines[i] = hang + lines[i]
	}
	return lines
}

func (p para) inkOf(lead bool) ink {
	if p.lead != "" && !lead {
		return noInk
	}
	return p.ink
}

func inked(s string, i ink, o Options) string {
	if !o.Color || i == noInk || strings.TrimSpace(s) == "" {
		return s
	}
	trimmed := strings.TrimLeft(s, " ")
	return s[:len(s)-len(trimmed)] + "\x1b[" + string(i) + "m" + trimmed + "\x1b[0m"
}

// text lays the page out.
func (p *page) text(o Options) string {
	var out []string
	for _, b := range p.blocks {
		out = append(out, settled(b, p.forEye(o)).lines(o)...)
	}
	for i := range out {
		out[i] = strings.TrimRight(out[i], " ")
	}
	return strings.Trim(strings.Join(out, "\n"), "\n")
}

// ascii writes the signs of arithmetic, and whatever else a plain terminal lacks, in ASCII. Beside a number × is x.
func ascii(s string) string {
	s = signsInASCII.Replace(s)
	return strings.Map(func(r rune) rune {
		if r > 0x7e {
			return '?'
		}
		return r
	}, s)
}

var signsInASCII = strings.NewReplacer("×", "x", "−", "-", "÷", "/", "≤", "<=", "≥", ">=", "°", " degrees",
	"“", `"`, "”", `"`, "‘", "'", "’", "'", "…", "...", "–", "-", "—", "-", "½", "1/2", "→", "->", "≈", "about ", "′", "'", "″", `"`)

// forEye turns figures and signs into what the eye reads.
func (p *page) forEye(o Options) func(string) string {
	return func(s string) string {
		s = written(s, p.style)
		if o.ASCII {
			s = ascii(s)
		}
		return s
	}
}

func settled(b block, fix func(string) string) block {
	switch b := b.(type) {
	case para:
		b.text, b.lead = fix(b.text), fix(b.lead)
		return b
	case sums:
		return b.settled(fix)
	case table:
		return b.settled(fix)
	}
	return b
}

// spoken is what is said aloud: the first three sentences of the lead.
func (p *page) spoken() string {
	var lead []string
	for _, b := range p.blocks {
		if q, ok := b.(para); ok && q.own {
			lead = append(lead, q.text)
		}
	}
	extra := p.aloud
	said := func(list []string, most int) string { return aloud(heard(strings.Join(list, " "), p.style), most) }
	more := said(extra, mostSentences)
	for len(extra) > 1 && len(strings.Fields(said(lead, 1)))+len(strings.Fields(more)) > mostWords {
		extra = extra[:len(extra)-1]
		more = said(extra, mostSentences)
	}
	room := max(1, mostSentences-len(extra))
	first := said(lead, room)
	for room > 1 && len(strings.Fields(first))+len(strings.Fields(more)) > mostWords {
		room--
		first = said(lead, room)
	}
	return strings.TrimSpace(first + " " + more)
}

// hear adds a sentence for the ear alone.
func (p *page) hear(s string) {
	if len(p.aloud) < mostSentences-1 {
		p.aloud = append(p.aloud, s)
	}
}

// As much as anyone listens to: three sentences that take six to seven seconds. Figures in words are long, so the words
// are counted too; the first sentence, which is the answer, is always said.
const (
	mostSentences = 3
	mostWords     = 36
)

var (
	aside   = regexp.MustCompile(`\s*\([^()]*\)`)
	endings = regexp.MustCompile(`[.?]\s+`)
)

// aloud leaves out what stands in parentheses, and keeps the first sentences, without a sign or a digit in them.
func aloud(text string, most int) string {
	text = aside.ReplaceAllString(text, "")
	var out []string
	for len(text) > 0 && len(out) < most {
		s := text
		if at := endings.FindStringIndex(text); at != nil {
			s, text = text[:at[0]+1], text[at[1]:]
		} else {
			text = ""
		}
		if s = spokenSentence(s); s != "" {
			out = append(out, s)
		}
	}
	return strings.Join(out, " ")
}

// spokenSentence keeps the words of a sentence, its commas and its ending.
func spokenSentence(s string) string {
	end := "."
	if strings.HasSuffix(strings.TrimSpace(s), "?") {
		end = "?"
	}
	var parts []string
	for _, part := range strings.FieldsFunc(s, func(r rune) bool { return strings.ContainsRune(",;:.?", r) }) {
		if w := wordsOnly(part); w != "" {
			parts = append(parts, w)
		}
	}
	if len(parts) == 0 {
		return ""
	}
	return upper(strings.Join(parts, ", ") + end)
}
