package grammar

// partSizedAfter reports whether, behind lengths on sale, a part is told to be of a size: "they sell eights and twelves, the rails are 2x6".
func (k *clause) partSizedAfter() bool {
	for i, it := range k.items {
		if !it.value() || it.lim.lo.size == "" || i == 0 || len(k.values) < 2 || k.values[0] >= i {
			continue
		}
		if w := lastWord(leadOf(it)); w != "is" && w != "are" && w != "be" {
			continue
		}
		if t := k.items[i-1]; !t.value() && t.kind == kPart && (t.key() == "rail" || t.key() == "post" || t.key() == "stiffener") {
			return true
		}
	}
	return false
}

// footersHigh takes "a four footer" for how high the wall is, where the wall is all that is spoken of.
func footersHigh(in []atom) []atom {
	wall := false
	for i := range in {
		switch w := in[i].text; {
		case isClass(w, "WALL"):
			wall = true
		case isClass(w, "RAIL") && w != "bar", isClass(w, "SELLS"), isClass(w, "LUMBER"), w == "buy", w == "bought", w == "lengths":
			return in
		}
	}
	if !wall {
		return in
	}
	for i := 2; i < len(in); i++ {
		if in[i].text != "footer" {
			continue
		}
		for j := max(0, i-6); j < i-1; j++ {
			if (in[j].text == "a" || in[j].text == "an") && startsLength(reader{in}, j+1) {
				out := append(append([]atom{}, in[:j]...), in[j+1:]...)
				out[i-1].text = "feet"
				return out
			}
		}
	}
	return in
}

// isClass reports whether a word is of a class of the tables.
func isClass(w, class string) bool {
	id := vocab().ids[class]
	for _, c := range vocab().classes[w] {
		if c == id {
			return true
		}
	}
	return false
}

// finallyIs reads "I bought brackets for eight boards per bay, so eight boards it is" as its end.
func finallyIs(in []atom) []atom {
	end := len(in)
	for end > 0 && in[end-1].kind == aSign {
		end--
	}
	if end < 6 || in[end-1].text != "is" || in[end-2].text != "it" {
		return in
	}
	so := -1
	for i := end - 3; i > 0; i-- {
		if in[i].text == "so" || in[i].text == "," {
			so = i
			break
		}
	}
	if so < 1 {
		return in
	}
	r := reader{in}
	_, after, ok := r.length(so + 1)
	if !ok || after >= end-2 {
		return in // a bare figure needs what is said before it
	}
	told, figures := false, 0
	for i := 0; i < so; i++ {
		if turning[in[i].text] || in[i].text == "?" || withheld[in[i].text] || viewed[in[i].text] {
			return in
		}
		if n, next, ok := r.length(i); ok && next > i {
			same, _, _ := r.length(so + 1)
			told = told || n.val.Sub(same.val).Sign() == 0
			figures++
			i = next - 1
		}
	}
	if !told && figures > 0 || figures > 1 {
		return in
	}
	return append([]atom{}, in[so+1:end-2]...)
}

// thatWide hands the figure of a thing on to "that wide": "my roller is 2 1/4 thick, so give me gaps at least that wide".
func thatWide(in []atom) []atom {
	for i := 3; i+1 < len(in); i++ {
		if in[i].text != "that" || !asBig[in[i+1].text] {
			continue
		}
		so := i
		for so > 0 && in[so].text != "so" {
			so--
		}
		if so < 3 || so == i-1 {
			return in
		}
		stop := so
		for stop > 0 && in[stop-1].kind == aSign {
			stop--
		}
		from, to := handedFigure(in[:stop])
		if from == to {
			return in
		}
		out := append([]atom{}, in[:sentenceStart(in, so)]...)
		out = append(append(out, in[so+1:i]...), in[from:to]...)
		return append(out, in[i+2:]...)
	}
	return in
}

var asBig = wordSet("wide big large thick high tall much long deep broad")

// shorterWall takes "shorter" for a change where it is told of the wall, of a post or of another thing that is no rail: "the wall four inches
// shorter" cuts no rail.
func (l *lexing) shorterWall() {
	for i := range l.tokens {
		t := &l.tokens[i]
		if t.kind != kPart || t.key() != "fit" || t.text != "shorter" || t.as(kMore) == nil {
			continue
		}
		for j := i - 1; j >= 0; j-- {
			p := &l.tokens[j]
			if p.kind == kStop || p.kind == kPart && p.key() == "rail" {
				break
			}
			if p.kind == kPart && (p.key() == "wall" || p.key() == "wall height" || p.key() == "post" || p.key() == "added post" || p.key() == "post height" || p.key() == "bay" || p.key() == "opening") || p.kind == kWall {
				t.kind = kMore
				break
			}
		}
	}
}
