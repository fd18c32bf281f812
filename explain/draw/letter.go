package draw

import "strings"

// A conservative model of how wide text is, so that labels can be placed without a browser: widths in parts of the
// type size, at least those of DejaVu Sans and of Liberation Sans (which has the widths of the common Helvetica-like
// types). Bold is up to 13 % wider than the class of its letter. A test in Chromium measures every label against it.
func widthOf(s string, size float64, bold bool) float64 {
	total := 0.0
	for _, r := range s {
		total += letterWidth(r)
	}
	if bold {
		total *= 1.13
	}
	return total * size
}

func letterWidth(r rune) float64 {
	switch {
	case r >= '0' && r <= '9':
		return 0.64
	case strings.ContainsRune(" iIjl.,:;'|", r):
		return 0.36
	case strings.ContainsRune("-/()[]frt!\"", r):
		return 0.47
	case strings.ContainsRune("mMW@%", r):
		return 1.02
	case r >= 'a' && r <= 'v' || r == 'x' || r == 'y' || r == 'z' || r == 'J':
		return 0.64
	case r < 0x80 || r == '×' || r == '≈' || r == '÷' || r == '−':
		return 0.84
	case r < 0x2000:
		return 1.02
	}
	return 1.1 // ideographs and signs take a full square and a little
}

// Type stands this far above and below its base line, in parts of its size.
const ascent, descent = 0.78, 0.24

// text is a label on the paper. (x, y) is on its base line: at the left end, the middle or the right end.
type text struct {
	x, y   float64
	size   float64
	anchor string // "start" (also ""), "middle", "end"
	bold   bool
	turned bool // reads from below upward
	says   string
}

// box is where the label lies by the model.
func (t text) box() box {
	w := widthOf(t.says, t.size, t.bold)
	back := 0.0
	switch t.anchor {
	case "middle":
		back = w / 2
	case "end":
		back = w
	}
	if t.turned {
		return box{t.x - ascent*t.size, t.y + back - w, (ascent + descent) * t.size, w}
	}
	return box{t.x - back, t.y - ascent*t.size, w, (ascent + descent) * t.size}
}

func (p *paper) text(t text, tags ...attr) {
	if t.says == "" {
		return
	}
	p.lift()
	list := []attr{{"x", mm(t.x)}, {"y", mm(t.y)}, {"font-size", mm(t.size)}}
	if t.anchor != "" && t.anchor != "start" {
		list = append(list, attr{"text-anchor", t.anchor})
	}
	if t.bold {
		list = append(list, attr{"font-weight", "bold"})
	}
	if t.turned {
		list = append(list, attr{"transform", "rotate(-90 " + mm(t.x) + " " + mm(t.y) + ")"})
	}
	p.buf.WriteString("<text" + attrs(append(list, tags...)) + ">" + escape(t.says) + "</text>\n")
}

// fold breaks s into lines that are at most width millimeters long; a word too long for a line is broken.
func fold(s string, width, size float64, bold bool) []string {
	var out []string
	line := ""
	for _, word := range strings.Fields(printable(s)) {
		for widthOf(word, size, bold) > width {
			head := fitting(word, width, size, bold)
			if line != "" {
				out, line = append(out, line), ""
			}
			out, word = append(out, head), word[len(head):]
		}
		switch {
		case line == "":
			line = word
		case widthOf(line+" "+word, size, bold) <= width:
			line += " " + word
		default:
			out, line = append(out, line), word
		}
	}
	if line != "" {
		out = append(out, line)
	}
	return out
}

// fitting is the longest beginning of s that fits, one letter at the least.
func fitting(s string, width, size float64, bold bool) string {
	end := 0
	for i, r := range s {
		next := i + len(string(r))
		if i > 0 && widthOf(s[:next], size, bold) > width {
			break
		}
		end = next
	}
	return s[:end]
}

// short cuts s so that it fits, with … where something was left off.
func short(s string, width, size float64, bold bool) string {
	s = strings.TrimSpace(printable(s))
	if widthOf(s, size, bold) <= width {
		return s
	}
	return fitting(s, width-widthOf("…", size, bold), size, bold) + "…"
}
