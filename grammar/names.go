package grammar

import "strings"

// wallNames are words that tell one wall from another.
var wallNames = func() map[string]bool {
	m := map[string]bool{}
	for _, w := range strings.Fields(`north south east west northern southern eastern western northeast northwest southeast southwest front back rear left right side
		upstream downstream street garden river lake water kitchen house porch deck patio bench driveway road field alley pool upper lower inner outer landing ferry shore garage shed barn cabin bunkhouse veranda sunroom uphill downhill shop school classroom church chapel office stable store cottage hallway corridor lobby courtyard playground other second first third`) {
		m[w] = true
	}
	return m
}()

// wallLead are words that lead to the name of a wall: "on the creek wall".
var wallLead = map[string]bool{"on": true, "for": true, "at": true, "along": true}

// wall reads the name of a wall at atom i: "north wall", "the porch wall:".
func (l *lexing) wall(i int) int {
	if l.kind(i) != aWord {
		return 0
	}
	for _, name := range l.c.Walls {
		if n := l.says(i, name); n > 0 {
			l.add(kWall, i, n).text = name
			return n
		}
	}
	w := l.word(i)
	if l.word(i+1) != "wall" || !wallNames[w] && !((l.word(i+2) == ":" || l.word(i-1) == "the" && wallLead[l.word(i-2)]) && !vocab().known[w]) {
		return 0
	}
	switch l.word(i - 1) {
	case "far", "other", "outer":
		return 0
	}
	if n := len(l.tokens); n > 0 && l.tokens[n-1].kind == kUnknown && wallLead[l.tokens[n-1].text] {
		l.tokens = l.tokens[:n-1] // "along the north wall"
	}
	l.add(kWall, i, i+2).text = w + " wall"
	return i + 2
}

// says returns the atom after the words of name at i, 0 where they are not said.
func (l *lexing) says(i int, name string) int {
	words := strings.Fields(strings.ToLower(name))
	for k, w := range words {
		if l.word(i+k) != w {
			return 0
		}
	}
	if len(words) == 1 && vocab().known[words[0]] && l.word(i+1) != ":" {
		return 0
	}
	return i + len(words)
}

// saved is what is saved that is no wall.
var saved = map[string]bool{"on": true, "money": true, "time": true, "lumber": true, "wood": true, "some": true, "any": true, "anything": true, "more": true, "much": true, "cost": true, "costs": true}

// wished reports whether what stands before a verb only tells what somebody would or could do.
func wished(before string) bool {
	words := strings.Fields(before)
	if len(words) == 0 {
		return false
	}
	switch words[len(words)-1] {
	case "would", "could", "might", "will":
		return true
	}
	return false
}

// tail reads the name that a command ends in: "save this as back porch". It returns the atom after it.
func (l *lexing) tail(t *token, i int) int {
	switch t.key() {
	case "save", "open", "compare", "same as", "draw to", "print to":
	default:
		return i
	}
	first := len(l.tokens) == 1 || l.breaks(l.tokens[len(l.tokens)-2])
	start := l.nameStart(i)
	if key := t.key(); key == "open" || key == "compare" {
		start = l.calledLater(start)
	}
	end := l.nameEnd(t.key(), start)
	past := end
	t.asFile(l.text(start, end))
	if w := l.word(i); t.text == "copy" && (w == "called" || w == "named" || w == "as" || w == "under") {
		t.found = []found{{entry: savePlan}} // "keep a copy called option two"
	}
	if t.key() == "open" && end > start+1 && l.word(end-1) == "one" && foreignOrWall(l.word(end-2)) {
		end-- // "the patio one"
	}
	if k := t.key(); k == "draw to" || k == "print to" {
		name := l.text(start, end)
		if !strings.Contains(name, ".") && !strings.HasPrefix(t.text, "draw ") && t.text != "drawing to" && t.text != "drawing as" && t.text != "drawing into" && !strings.HasPrefix(t.text, "print ") {
			first = false
		}
		want := ""
		switch {
		case strings.HasSuffix(name, ".svg"):
			want = "draw to"
		case strings.HasSuffix(name, ".html"), strings.HasSuffix(name, ".htm"):
			want = "print to"
		}
		for i, f := range t.found {
			if f.entry.key == want {
				t.found[0], t.found[i] = t.found[i], t.found[0]
			}
		}
	}
	if t.key() == "compare" && l.countsParts(start) {
		return end // "compare five rails with six": these are no plans
	}
	if t.key() == "compare" && nameless(l.text(start, end)) && l.compares() {
		return end // "put this next to shed and compare them"
	}
	if t.key() == "save" && end == start && (l.word(start-1) == "it" || l.word(start-1) == "this" || l.word(start-1) == "that") && l.saves() {
		l.tokens = l.tokens[:len(l.tokens)-1]
		return end // "call this one shed and save it"
	}
	if t.key() == "compare" && l.placedThere(t, start, end) {
		l.tokens = l.tokens[:len(l.tokens)-1]
		return l.lone(t.first) // "put it up against the right post"
	}
	if t.key() == "save" {
		if again := l.savedAnew(i); again > i {
			l.tokens = l.tokens[:len(l.tokens)-1]
			return again // "call it, uh, save it as river deck"
		}
	}
	if t.key() == "save" && asItIs[l.word(start)] {
		first = false // "save the plan as it is"
	}
	if _, _, number := l.length(start); number && t.key() == "save" && (t.text == "call it" || t.text == "call that") {
		first = false // "well, call it 350"
	}
	if t.text == "like" && l.word(start+1) != "wall" || t.key() == "same as" && l.onlyLikened(start, end) {
		first = false
	}
	if t.key() == "save" && (t.text == "save" && saved[l.word(start)] || wished(t.before)) {
		first = false // "I'd save on lumber with five rails"
	}
	if t.key() == "save" && t.text == "save" && (l.word(start) == "me" || l.word(start) == "us" || l.countsParts(start)) {
		first = false // "save me some money", "save two boards for spares"
	}
	if w := l.word(end - 1); t.key() == "save" && (w == "csv" || w == "spreadsheet" || w == "excel") {
		first = false // "save the cuts as csv"
	}
	if t.key() == "save" && l.word(start-1) == "the" && l.word(start-2) == "under" && l.under(t, start) {
		first = false // "put it under the bottom rail"
	}
	if t.key() == "save" && clauseWord[l.word(start)] && l.word(start) != "my" && end > start+1 {
		first = false // "save what we have so far": under which name?
	}
	if t.key() == "save" && l.measures(start, end) {
		first = false // "save 2 inches at the bottom"
	}
	if t.key() == "open" && t.text == "load" && aNoun(t.before) {
		first = false // "a new load came in"
	}
	if t.key() == "open" && (l.measures(start, end) || l.word(start) == "to") {
		first = false
	}
	if name := l.text(start, end); t.key() == "same as" && (!l.namesWall(name) || nameless(name)) || (t.key() == "draw to" || t.key() == "print to") && strings.Contains(name, " to ") {
		first = false
	}
	if rest, ok := strings.CutPrefix(t.text, "how do"); ok && (rest == "" || rest == "es") && comparands(l.text(start, end), t.text) == nil {
		l.tokens = l.tokens[:len(l.tokens)-1]
		if next := l.otherwise(t.first); next > t.first {
			return next
		}
		return l.lone(t.first)
	}
	if strings.ContainsAny(l.text(start, end), ":;") || t.key() == "open" && clauseWord[l.word(start)] {
		first = false
	}
	if !first || end == start || (t.key() == "open" || t.key() == "same as") && past == end && l.opensGap(start, end) {
		if t.key() != "compare" {
			l.tokens = l.tokens[:len(l.tokens)-1]
			l.before = t.before // "would my wife | like six rails"
			if next := l.otherwise(t.first); next > t.first {
				return next
			}
			if t.text == "open" && l.opensGap(start, end) {
				l.add(kChange, t.first, t.first+1).found = []found{{entry: plusSign}} // "open the gap to 3"
				return t.first + 1
			}
			return l.lone(t.first)
		}
		return i
	}
	for {
		again := l.nameAgain(t.key(), end)
		if again == end {
			break
		}
		start = l.nameStart(again)
		end = l.nameEnd(t.key(), start)
	}
	if t.key() == "save" {
		for i := start; i+1 < end && i < start+3; i++ {
			if l.word(i) == "as" {
				start = i + 1 // "save this plann as sandbox"
			}
		}
	}
	if start+1 < end && (t.key() == "same as" && owned[l.word(start)]) {
		start++ // "same as our east wall"
	}
	for start+1 < end && (l.word(start) == "'s" || l.word(start) == "'" || l.word(start) == "s" && l.word(start-1) == "'") {
		start++ // "save it, the name's pool deck"
	}
	n := l.add(kName, start, end)
	n.text = l.text(start, end)
	if t.key() == "compare" && end == start+2 && l.word(start-1) == "the" && l.word(start+1) == "one" {
		n.text = "the " + n.text // "compare this with the shed one" names "shed"
	}
	return max(end, past)
}

// clauseWord are words that begin a clause, and no name: "bring back what I undid".
var clauseWord = map[string]bool{"what": true, "that": true, "whatever": true, "it": true, "everything": true, "last": true, "which": true, "those": true, "them": true, "my": true, "this": true}

// namesWall reports whether a name can be that of a wall or of a plan, and is no misspelled word of something else: it
// is known, or says what it is.
func (l *lexing) namesWall(name string) bool {
	for _, known := range append(append([]string{}, l.c.Walls...), l.c.Saved...) {
		if strings.EqualFold(name, known) {
			return true
		}
	}
	f := strings.Fields(name)
	if len(f) == 0 {
		return false
	}
	switch f[len(f)-1] {
	case "wall", "plan", "one", "side", "fence", "screen", "job", "version", "design":
		return true
	}
	return len(l.tokens) < 3
}

func (l *lexing) breaks(t token) bool {
	switch t.kind {
	case kComma, kStop, kAnd, kBut, kQMark, kFill, kFix, kCmd, kNo, kName, kHead, kIt, kTo, kCsv, kQuest, kWh:
		return true
	}
	return false
}

// nameStart steps over what may stand before a name.
func (l *lexing) nameStart(i int) int {
	for {
		if f := callVocab().match(l.reader.atoms, i); len(f) > 0 {
			i = f[0].next
			continue
		}
		switch l.word(i) {
		case "the", ":", `"`, "'", "as", "called", "named":
			i++
		case "name":
			if l.word(i-1) != "the" || i < 2 || l.word(i-2) != "under" && l.word(i-2) != "by" && l.word(i-2) != "with" {
				return i
			}
			i++ // "under the name rose terrace"
			if l.word(i) == "of" {
				i++
			}
		case "plan":
			if l.word(i+1) != "called" && l.word(i+1) != "named" {
				return i
			}
			i++
		case "one", "won":
			if l.word(i+1) == "as" {
				i += 2
				continue
			}
			if l.word(i+1) == "saved" && l.word(i+2) == "as" {
				i += 3
				continue
			}
			if l.word(i+1) == "i" && l.word(i+2) == "saved" && l.word(i+3) == "as" {
				i += 4
				continue
			}
			return i
		case "a", "in":
			if l.word(i+1) == "file" || l.word(i+1) == "a" {
				i++
				continue
			}
			return i
		case "file":
			if l.word(i+1) == "called" || l.word(i+1) == "named" {
				i += 2
				continue
			}
			return i
		default:
			return i
		}
	}
}

// nameEnd finds where a name ends: at a break, or where the next command begins.
func (l *lexing) nameEnd(key string, i int) int {
	for j := i; ; j++ {
		if file := l.text(i, j); strings.HasSuffix(file, ".svg") || strings.HasSuffix(file, ".html") || strings.HasSuffix(file, ".htm") {
			return j // a file's name ends in its kind
		}
		switch w := l.word(j); {
		case w == "":
			return j
		case w == "." && !(l.glued(j) && l.glued(j+1)), w == ";", w == "?", w == "!", w == `"`:
			return j
		case w == ",":
			if key == "compare" && !l.bothNamed(i, j) && !strings.Contains(l.text(i, j), ",") && l.word(j+1) != "cmp" && !l.commandAt(j+1) && l.nameAgain("save", j) == j {
				continue
			}
			return j
		case key == "compare" && j > i && (w == "and" || w == "plus" || w == "then") && l.bothNamed(i, j):
			return j // "compare porch and shed, and then the wall 48"
		case w == "and" && (l.word(j+1) == "then" || l.speaksOfLength(j)) && key != "compare" && j > i:
			return j
		case w == "for" && (l.word(j+1) == "me" || l.word(j+1) == "us" || l.word(j+1) == "the" || l.word(j+1) == "later" || l.word(j+1) == "now"), w == "please", w == "so" && j > i, w == "now" && j > i && key != "compare", w == "instead", w == "again" && j > i:
			return j
		case key == "save" && w == "first" && j > i && l.word(j+1) == "":
			return j // "save it as deck first"
		case key == "same as" && j > i && (w == "for" || w == "on" || w == "over" || w == "at") && (l.word(j+1) == "this" || l.word(j+1) == "here" || l.word(j+1) == "ours"):
			return j // "copy the north wall for this one"
		case j > i && key != "compare" && (w == "before" || w == "because" || w == "while" || w == "until" || w == "when" || w == "since") && (speakers[l.word(j+1)] || otherOnes[l.word(j+1)] || pointing[l.word(j+1)] || owned[l.word(j+1)] || vocab().articles[l.word(j+1)]):
			return j // "save this as plan b before I change my mind"
		case key == "same as" && j > i && (w == "but" || w == "except" || w == "only" || w == "with"):
			return j
		case (w == "and" || w == "then") && l.commandAt(j+1):
			return j
		}
	}
}

// bothNamed reports whether both of what is compared are named up to atom j, so that a comma there ends them: "compare porch and shed, gap 2".
func (l *lexing) bothNamed(i, j int) bool {
	for k := max(i-1, 0); k < j-1; k++ {
		switch l.word(k) {
		case "and", "with", "to", "against", "vs", "versus", "from":
			return true
		}
	}
	return false
}

// commandAt reports whether a command, a question or a wish begins at atom i.
func (l *lexing) commandAt(i int) bool {
	for leads[l.word(i)] {
		i++
	}
	f := vocab().match(l.reader.atoms, i)
	if len(f) == 0 {
		return false
	}
	switch f[0].entry.kind {
	case kCmd, kQuest, kWh, kHead, kTeachHead, kPriceVerb:
		return true
	}
	return false
}

// leads are words that may stand between an "and" and the command after it.
var leads = map[string]bool{"then": true, "and": true, "also": true, "uh": true, "um": true, "please": true}
