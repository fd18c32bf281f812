package lex

import (
	"maps"
	"strings"

	"saywright/grammar/lexicon"
	"saywright/grammar/scan"
)

// WallSites are words that tell one wall from another, by its side, its order or the place where it stands: "the wall on the porch" is the porch wall.
var WallSites = scan.WordSet(`north south east west northern southern eastern western northeast northwest southeast southwest front back rear left right side
	upstream downstream street garden river lake water kitchen house porch deck patio bench driveway road field alley pool upper lower inner outer landing ferry shore garage shed barn cabin bunkhouse veranda sunroom uphill downhill shop school classroom church chapel office stable store cottage hallway corridor lobby courtyard playground other second first third`)

// WallNames are those and further places, which name a wall only right before the word: "dock wall"; "the wall by the dock" is whatever wall is spoken of.
var WallNames = func() map[string]bool {
	m := scan.WordSet(`dock pier wharf jetty boathouse harbor marina beach lakeside seaside riverside creek brook pond canal ocean island cove hillside valley meadow pasture orchard vineyard woods forest
	terrace balcony gallery mezzanine loft attic basement cellar roof rooftop stair stairs stairway staircase ramp entry entrance entryway vestibule foyer hall dining living bedroom bathroom bath laundry mudroom den nursery library study
	studio workshop gym cafeteria canteen stage bandstand dugout bleacher rink arena court bar cafe bakery market parking sidewalk path walkway boardwalk lane avenue highway railroad bridge tunnel backyard lawn hedge
	property boundary chicken coop goat pig sheep kennel dog horse paddock corral silo mill pump bike trash dumpster firepit fire grill sauna spa greenhouse lean-to annex wing camp mess tent trailer guest bunk`)
	maps.Copy(m, WallSites)
	return m
}()

// WallOrder are words that tell walls one from the other by their order only.
var WallOrder = scan.WordSet("other second first third far outer")

// wallSecond are words that end the name of a place of two words: "dining room wall".
var wallSecond = scan.WordSet("room house yard side end door gate shed bay area")

// WallLead are words that lead to the name of a wall: "on the creek wall".
var WallLead = map[string]bool{"on": true, "for": true, "at": true, "along": true}

// wall reads the name of a wall at atom i: "north wall", "the porch wall:".
func (l *lexing) wall(i int) int {
	if l.Kind(i) != scan.Word {
		return 0
	}
	for _, name := range l.c.Walls {
		if n := l.says(i, name); n > 0 {
			l.add(lexicon.Wall, i, n).Text = name
			return n
		}
	}
	w := l.Word(i)
	if WallNames[w] && !WallOrder[w] && (WallNames[l.Word(i+1)] || wallSecond[l.Word(i+1)]) && l.Word(i+2) == "wall" {
		l.add(lexicon.Wall, i, i+3).Text = w + " " + l.Word(i+1) + " wall" // "back porch wall"
		return i + 3
	}
	if l.Word(i+1) != "wall" || !WallNames[w] && !((l.Word(i+2) == ":" || l.Word(i-1) == "the" && WallLead[l.Word(i-2)]) && !lexicon.Vocab().Known[w]) {
		return 0
	}
	switch l.Word(i - 1) {
	case "far", "other", "outer":
		return 0
	}
	if n := len(l.tokens); n > 0 && l.tokens[n-1].Kind == lexicon.Unknown && WallLead[l.tokens[n-1].Text] {
		l.tokens = l.tokens[:n-1] // "along the north wall"
	}
	l.add(lexicon.Wall, i, i+2).Text = w + " wall"
	return i + 2
}

// says returns the atom after the words of name at i, 0 where they are not said.
func (l *lexing) says(i int, name string) int {
	words := strings.Fields(strings.ToLower(name))
	for k, w := range words {
		if l.Word(i+k) != w {
			return 0
		}
	}
	if len(words) == 1 && lexicon.Vocab().Known[words[0]] && l.Word(i+1) != ":" {
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
func (l *lexing) tail(t *Token, i int) int {
	switch t.Key() {
	case "save", "open", "compare", "same as", "draw to", "print to":
	default:
		return i
	}
	first := len(l.tokens) == 1 || l.breaks(l.tokens[len(l.tokens)-2])
	start := l.nameStart(i)
	if key := t.Key(); key == "open" || key == "compare" {
		start = l.calledLater(start)
	}
	end := l.nameEnd(t.Key(), start)
	past := end
	t.asFile(l.Text(start, end))
	if w := l.Word(i); t.Text == "copy" && (w == "called" || w == "named" || w == "as" || w == "under") {
		t.Found = []lexicon.Found{{Entry: savePlan}} // "keep a copy called option two"
	}
	if t.Key() == "open" && end > start+1 && l.Word(end-1) == "one" && ForeignOrWall(l.Word(end-2)) {
		end-- // "the patio one"
	}
	if k := t.Key(); k == "draw to" || k == "print to" {
		name := l.Text(start, end)
		if !strings.Contains(name, ".") && !strings.HasPrefix(t.Text, "draw ") && t.Text != "drawing to" && t.Text != "drawing as" && t.Text != "drawing into" && !strings.HasPrefix(t.Text, "print ") {
			first = false
		}
		want := ""
		switch {
		case strings.HasSuffix(name, ".svg"):
			want = "draw to"
		case strings.HasSuffix(name, ".html"), strings.HasSuffix(name, ".htm"):
			want = "print to"
		}
		for i, f := range t.Found {
			if f.Entry.Key == want {
				t.Found[0], t.Found[i] = t.Found[i], t.Found[0]
			}
		}
	}
	if t.Key() == "compare" && l.countsParts(start) {
		return end // "compare five rails with six": these are no plans
	}
	if t.Key() == "compare" && Nameless(l.Text(start, end)) && l.compares() {
		return end // "put this next to shed and compare them"
	}
	if t.Key() == "save" && end == start && (l.Word(start-1) == "it" || l.Word(start-1) == "this" || l.Word(start-1) == "that") && l.saves() {
		l.tokens = l.tokens[:len(l.tokens)-1]
		return end // "call this one shed and save it"
	}
	if t.Key() == "compare" && l.placedThere(t, start, end) {
		l.tokens = l.tokens[:len(l.tokens)-1]
		return l.lone(t.first) // "put it up against the right post"
	}
	if t.Key() == "save" {
		if again := l.savedAnew(i); again > i {
			l.tokens = l.tokens[:len(l.tokens)-1]
			return again // "call it, uh, save it as river deck"
		}
	}
	if t.Key() == "save" && asItIs[l.Word(start)] {
		first = false // "save the plan as it is"
	}
	if _, _, number := l.Length(start); number && t.Key() == "save" && (t.Text == "call it" || t.Text == "call that") {
		first = false // "well, call it 350"
	}
	if t.Text == "like" && l.Word(start+1) != "wall" || t.Key() == "same as" && l.onlyLikened(start, end) {
		first = false
	}
	if t.Key() == "save" && (t.Text == "save" && saved[l.Word(start)] || wished(t.Before)) {
		first = false // "I'd save on lumber with five rails"
	}
	if t.Key() == "save" && t.Text == "save" && (l.Word(start) == "me" || l.Word(start) == "us" || l.countsParts(start)) {
		first = false // "save me some money", "save two boards for spares"
	}
	if w := l.Word(end - 1); t.Key() == "save" && (w == "csv" || w == "spreadsheet" || w == "excel") {
		first = false // "save the cuts as csv"
	}
	if t.Key() == "save" && l.Word(start-1) == "the" && l.Word(start-2) == "under" && l.under(t, start) {
		first = false // "put it under the bottom rail"
	}
	if t.Key() == "save" && ClauseWord[l.Word(start)] && l.Word(start) != "my" && end > start+1 {
		first = false // "save what we have so far": under which name?
	}
	if t.Key() == "save" && l.measures(start, end) {
		first = false // "save 2 inches at the bottom"
	}
	if t.Key() == "open" && t.Text == "load" && aNoun(t.Before) {
		first = false // "a new load came in"
	}
	if t.Key() == "open" && (l.measures(start, end) || l.Word(start) == "to") {
		first = false
	}
	if name := l.Text(start, end); t.Key() == "same as" && (!l.namesWall(name) || Nameless(name)) || (t.Key() == "draw to" || t.Key() == "print to") && strings.Contains(name, " to ") {
		first = false
	}
	if rest, ok := strings.CutPrefix(t.Text, "how do"); ok && (rest == "" || rest == "es") && Comparands(l.Text(start, end), t.Text) == nil {
		l.tokens = l.tokens[:len(l.tokens)-1]
		if next := l.otherwise(t.first); next > t.first {
			return next
		}
		return l.lone(t.first)
	}
	if strings.ContainsAny(l.Text(start, end), ":;") || t.Key() == "open" && ClauseWord[l.Word(start)] {
		first = false
	}
	if !first || end == start || (t.Key() == "open" || t.Key() == "same as") && past == end && l.opensGap(start, end) {
		if t.Key() != "compare" {
			l.tokens = l.tokens[:len(l.tokens)-1]
			l.before = t.Before // "would my wife | like six rails"
			if next := l.otherwise(t.first); next > t.first {
				return next
			}
			if t.Text == "open" && l.opensGap(start, end) {
				l.add(lexicon.Change, t.first, t.first+1).Found = []lexicon.Found{{Entry: PlusSign}} // "open the gap to 3"
				return t.first + 1
			}
			return l.lone(t.first)
		}
		return i
	}
	for {
		again := l.nameAgain(t.Key(), end)
		if again == end {
			break
		}
		start = l.nameStart(again)
		end = l.nameEnd(t.Key(), start)
	}
	if t.Key() == "save" {
		for i := start; i+1 < end && i < start+3; i++ {
			if l.Word(i) == "as" {
				start = i + 1 // "save this plann as sandbox"
			}
		}
	}
	if start+1 < end && (t.Key() == "same as" && Owned[l.Word(start)]) {
		start++ // "same as our east wall"
	}
	for start+1 < end && (l.Word(start) == "'s" || l.Word(start) == "'" || l.Word(start) == "s" && l.Word(start-1) == "'") {
		start++ // "save it, the name's pool deck"
	}
	n := l.add(lexicon.Name, start, end)
	n.Text = l.Text(start, end)
	if t.Key() == "compare" && end == start+2 && l.Word(start-1) == "the" && l.Word(start+1) == "one" {
		n.Text = "the " + n.Text // "compare this with the shed one" names "shed"
	}
	return max(end, past)
}

// ClauseWord are words that begin a clause, and no name: "bring back what I undid".
var ClauseWord = map[string]bool{"what": true, "that": true, "whatever": true, "it": true, "everything": true, "last": true, "which": true, "those": true, "them": true, "my": true, "this": true}

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

func (l *lexing) breaks(t Token) bool {
	switch t.Kind {
	case lexicon.Comma, lexicon.Stop, lexicon.And, lexicon.But, lexicon.QMark, lexicon.Fill, lexicon.Fix, lexicon.Cmd, lexicon.No, lexicon.Name, lexicon.Head, lexicon.It, lexicon.To, lexicon.Csv, lexicon.Quest, lexicon.Wh:
		return true
	}
	return false
}

// nameStart steps over what may stand before a name.
func (l *lexing) nameStart(i int) int {
	for {
		if f := callVocab().Match(l.Reader.Atoms, i); len(f) > 0 {
			i = f[0].Next
			continue
		}
		switch l.Word(i) {
		case "the", ":", `"`, "'", "as", "called", "named":
			i++
		case "name":
			if l.Word(i-1) != "the" || i < 2 || l.Word(i-2) != "under" && l.Word(i-2) != "by" && l.Word(i-2) != "with" {
				return i
			}
			i++ // "under the name rose terrace"
			if l.Word(i) == "of" {
				i++
			}
		case "plan":
			if l.Word(i+1) != "called" && l.Word(i+1) != "named" {
				return i
			}
			i++
		case "one", "won":
			if l.Word(i+1) == "as" {
				i += 2
				continue
			}
			if l.Word(i+1) == "saved" && l.Word(i+2) == "as" {
				i += 3
				continue
			}
			if l.Word(i+1) == "i" && l.Word(i+2) == "saved" && l.Word(i+3) == "as" {
				i += 4
				continue
			}
			return i
		case "a", "in":
			if l.Word(i+1) == "file" || l.Word(i+1) == "a" {
				i++
				continue
			}
			return i
		case "file":
			if l.Word(i+1) == "called" || l.Word(i+1) == "named" {
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
		if file := l.Text(i, j); strings.HasSuffix(file, ".svg") || strings.HasSuffix(file, ".html") || strings.HasSuffix(file, ".htm") {
			return j // a file's name ends in its kind
		}
		switch w := l.Word(j); {
		case w == "":
			return j
		case w == "." && !(l.Glued(j) && l.Glued(j+1)), w == ";", w == "?", w == "!", w == `"`:
			return j
		case w == ",":
			if key == "compare" && !l.bothNamed(i, j) && !strings.Contains(l.Text(i, j), ",") && l.Word(j+1) != "cmp" && !l.commandAt(j+1) && l.nameAgain("save", j) == j {
				continue
			}
			return j
		case key == "compare" && j > i && (w == "plus" || w == "then" || w == "also" || w == "and" && (l.Word(j+1) == "then" || l.speaksOfLength(j))) && l.bothNamed(i, j):
			return j // "compare porch and shed, and then the wall 48"
		case w == "and" && (l.Word(j+1) == "then" || l.speaksOfLength(j)) && key != "compare" && j > i:
			return j
		case w == "for" && (l.Word(j+1) == "me" || l.Word(j+1) == "us" || l.Word(j+1) == "the" || l.Word(j+1) == "later" || l.Word(j+1) == "now"), w == "please", w == "so" && j > i, w == "now" && j > i && key != "compare", w == "instead", w == "again" && j > i:
			return j
		case key == "save" && w == "first" && j > i && l.Word(j+1) == "":
			return j // "save it as deck first"
		case key == "same as" && j > i && (w == "for" || w == "on" || w == "over" || w == "at") && (l.Word(j+1) == "this" || l.Word(j+1) == "here" || l.Word(j+1) == "ours"):
			return j // "copy the north wall for this one"
		case j > i && key != "compare" && (w == "before" || w == "because" || w == "while" || w == "until" || w == "when" || w == "since") && (Speakers[l.Word(j+1)] || OtherOnes[l.Word(j+1)] || Pointing[l.Word(j+1)] || Owned[l.Word(j+1)] || lexicon.Vocab().Articles[l.Word(j+1)]):
			return j // "save this as plan b before I change my mind"
		case key == "same as" && j > i && (w == "but" || w == "except" || w == "only" || w == "with"):
			return j
		case (w == "and" || w == "then" || w == "also" && j > i) && l.commandAt(j+1):
			return j
		}
	}
}

// bothNamed reports whether both of what is compared are named up to atom j, so that a comma there ends them: "compare porch and shed, gap 2".
func (l *lexing) bothNamed(i, j int) bool {
	for k := max(i-1, 0); k < j-1; k++ {
		switch l.Word(k) {
		case "and", "with", "to", "against", "vs", "versus", "from":
			return true
		}
	}
	return false
}

// commandAt reports whether a command, a question or a wish begins at atom i.
func (l *lexing) commandAt(i int) bool {
	for leads[l.Word(i)] {
		i++
	}
	f := lexicon.Vocab().Match(l.Reader.Atoms, i)
	if len(f) == 0 {
		return false
	}
	switch f[0].Entry.Kind {
	case lexicon.Cmd, lexicon.Quest, lexicon.Wh, lexicon.Head, lexicon.TeachHead, lexicon.PriceVerb:
		return true
	}
	return false
}

// leads are words that may stand between an "and" and the command after it.
var leads = map[string]bool{"then": true, "and": true, "also": true, "uh": true, "um": true, "please": true}
