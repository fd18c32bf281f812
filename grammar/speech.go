package grammar

import (
	"strings"

	"saywright/solver"
)

// speech is a line on its way from items to acts: what has been understood so far, and what is still open.
type speech struct {
	c          Context
	metric     bool
	boards     bool // spare is counted in boards
	correcting bool // after a word of correction
	stating    bool // after "I want", where a value may lean on what was spoken of
	acts       []Act
	ask        *solver.Question
	carry      carry
	groups     []group
	head       *token // what gave the group at hand its force
}

// carry is what was spoken of last, for a part of the line that leaves it out: "gap two, but no more than three".
type carry struct {
	name   *solver.Name
	senses []sense
	kind   solver.Kind
	bay    int // of a measurement
	op     solver.Op
	item   *solver.Name // what was priced
	wall   string
}

// group is a stretch of the line with one force.
type group struct {
	force   ActKind
	head    *token
	items   []item
	sense   []sense // of a question: what its words ask for
	topic   string
	cmd     string
	name    string
	csv     bool
	dropped bool // taken back; only what it spoke of stays in mind
	sealed  bool // nothing after it changes its force
}

// fail keeps the first thing that is not clear.
func (s *speech) fail(at int, q solver.Question) {
	if s.ask == nil {
		q.At = &at
		s.ask = &q
	}
}

// endPosts takes "end posts" for all posts where the word only tells what a distance is measured between: "end posts are
// 4x4, 12 ft on center", and nothing is said of added ones.
func (s *speech) endPosts() {
	sized, apart, added := -1, false, false
	for i, a := range s.acts {
		for _, st := range a.Statements {
			switch st.Name.Quantity {
			case solver.EndPostSize:
				sized = i
			case solver.AddedPostSize:
				added = true
			case solver.Centers, solver.Span, solver.Overall:
				apart = true
			}
		}
	}
	if sized < 0 || !apart || added {
		return
	}
	for j := range s.acts[sized].Statements {
		if n := &s.acts[sized].Statements[j].Name; n.Quantity == solver.EndPostSize {
			n.Quantity = solver.PostSize
		}
	}
}

// sentences cuts a line at its full stops and question marks.
func (s *speech) sentences(list []item) {
	start := 0
	for i, it := range list {
		if it.value() || it.kind != kStop && it.kind != kQMark {
			continue
		}
		s.sentence(list[start:i], it.kind == kQMark)
		start = i + 1
	}
	s.sentence(list[start:], false)
}

func (s *speech) sentence(list []item, asked bool) {
	if len(list) == 0 {
		return
	}
	g := grouping{s: s, list: list, first: len(s.groups), asked: asked, g: group{force: State}}
	for i := range list {
		g.step(i)
	}
	g.flush(group{})
	g.whyNotAlone()
	if asked {
		g.question()
	}
}

// grouping cuts one sentence where the force of what is said changes.
type grouping struct {
	s     *speech
	list  []item
	g     group
	first int // the sentence's first group
	asked bool
}

// whyNotAlone gives a "why not" at the end what stands before it: "he says seven won't go in, why not".
func (g *grouping) whyNotAlone() {
	n := len(g.s.groups)
	if n-g.first < 2 || g.s.groups[n-1].force != WhyNot || len(strip(g.s.groups[n-1].items)) > 0 {
		return
	}
	p := &g.s.groups[n-2]
	var kept []item
	denied := false
	for _, it := range p.items {
		if !it.value() && it.kind == kNot {
			denied = true
			continue
		}
		kept = append(kept, it)
	}
	if denied && (p.force == Check || p.force == State) {
		p.force, p.items = WhyNot, kept
		g.s.groups = g.s.groups[:n-1]
	}
}

// openers begin a group, or change the force of the one that stands. Each reports whether it took the word.
var openers map[tokenKind]func(*grouping, int) bool

func init() {
	openers = map[tokenKind]func(*grouping, int) bool{
		kHead: (*grouping).headWord, kWh: (*grouping).wh, kWhere: (*grouping).wh, kQuest: (*grouping).quest, kTeachHead: (*grouping).teach,
		kCmd: (*grouping).command, kName: (*grouping).nameWord, kCsv: (*grouping).csv, kTail: (*grouping).tail, kForgetTail: (*grouping).dropTail,
		kEnter: (*grouping).enter, kTheirs: (*grouping).theirs, kTailFill: (*grouping).skip, kFill: (*grouping).skip,
	}
}

func (g *grouping) step(i int) {
	it := g.list[i]
	if !it.value() {
		if open := openers[it.kind]; open != nil && open(g, i) {
			return
		} else if open != nil && it.kind != kFix {
			if !it.demote(i+1 < len(g.list) && g.list[i+1].value()) && vocab().neutral[it.text] {
				return
			}
		}
	}
	if g.g.cmd != "" && whole[g.g.cmd] && !it.breaks() && (it.value() || it.kind != kFix && it.kind != kNo) {
		g.flush(group{force: State})
	}
	if g.g.force == Check && g.atBreak(i) && !g.empty() && !it.value() && it.kind == kFix && strings.HasPrefix(it.text, "make") || g.g.force == Check && g.atBreak(i) && !g.empty() && imperative(it.before) {
		g.flush(group{force: State, sealed: true, head: it.token}) // "he says six, make it seven"
		if !it.value() && it.kind == kFix {
			return
		}
	}
	if g.g.force == Check && (strings.HasPrefix(it.before, "my") || strings.HasPrefix(it.before, "our")) && g.atBreak(i) && !g.empty() {
		g.flush(group{force: State, sealed: true})
	}
	if i == 0 {
		g.mood(it)
	}
	g.g.items = append(g.g.items, it)
}

// demote takes the next way to read a word that does not change the force here: "fit" the quantity, not "would it fit".
func (t *token) demote(beforeValue bool) bool {
	if beforeValue && t.as(kPart) != nil {
		t.kind = kPart
		return true
	}
	for _, f := range t.found {
		if k := f.entry.kind; openers[k] == nil {
			t.kind = k
			return true
		}
	}
	return false
}

// imperative reports whether the empty words before an item begin with a verb of wishing.
func imperative(before string) bool {
	switch word, _, _ := strings.Cut(before, " "); word {
	case "make", "set", "use", "put", "keep", "leave", "please", "give", "go":
		return true
	}
	return false
}

// whole are commands that take nothing more.
var whole = map[string]bool{"take that": true, "undo": true, "redo": true, "start over": true, "recap": true, "help": true, "quit": true, "show it all": true,
	"next": true, "why that": true, "set aside guard": true, "save": true, "open": true, "compare": true, "same as": true, "draw to": true, "print to": true}

// breaks reports whether the item only puts parts of a line apart.
func (it item) breaks() bool {
	return !it.value() && (it.kind == kComma || it.kind == kAnd || it.kind == kBut)
}

func (g *grouping) flush(next group) {
	g.g.dropped = g.takenBack(next)
	if n := len(g.g.items); g.g.force == Check && g.g.head == nil && n > 1 && !g.g.items[n-1].value() && (g.g.items[n-1].kind == kGoesIn || g.g.items[n-1].kind == kBestTail) {
		g.g.force = WhatIf // "does a 3 inch gap work"
	}
	if len(strip(g.g.items)) > 0 || g.g.force != State && g.g.force != "" || g.g.cmd != "" || g.g.topic != "" {
		g.s.groups = append(g.s.groups, g.g)
	}
	g.g = next
}

// takenBack reports whether what stands is taken back before the next begins: "how many boards, no, I meant how long".
func (g *grouping) takenBack(next group) bool {
	list := strip(g.g.items)
	fixed := false
	for len(list) > 0 {
		it := list[len(list)-1]
		if it.value() || it.kind != kFix && it.kind != kNo && it.kind != kIt && it.kind != kTo && !it.breaks() {
			break
		}
		fixed = fixed || it.kind == kFix || it.kind == kNo
		list = list[:len(list)-1]
	}
	if !fixed {
		return false
	}
	if g.g.force == next.force && g.g.cmd == next.cmd && (g.g.force != State || g.g.cmd != "") && next.force != "" {
		return true
	}
	return g.g.force != State && g.g.force != Check && next.force == g.g.force
}

// strip drops breaks at both ends.
func strip(list []item) []item {
	for len(list) > 0 && list[0].breaks() {
		list = list[1:]
	}
	for len(list) > 0 && list[len(list)-1].breaks() {
		list = list[:len(list)-1]
	}
	return list
}

// empty reports whether nothing but a head stands in the group so far.
func (g *grouping) empty() bool {
	return len(strip(g.g.items)) == 0 && g.g.topic == "" && g.g.cmd == ""
}

// atBreak reports whether item i begins a part of the sentence.
func (g *grouping) atBreak(i int) bool {
	for i--; i >= 0; i-- {
		it := g.list[i]
		if it.value() {
			return false
		}
		switch it.kind {
		case kComma, kAnd, kBut, kFix, kNo:
			return true
		case kTailFill, kFill, kIt:
			continue
		}
		return false
	}
	return true
}

func (g *grouping) skip(int) bool { return true }

// mood takes the force of a sentence from the word it opens with: "would six boards …", "does a gap of 2 …".
func (g *grouping) mood(it item) {
	if g.g.force != State || it.value() && it.lim.loTok == nil || !it.value() && it.kind != kPart && it.kind != kIt && it.kind != kTheirs && it.kind != kLoc && it.kind != kGoal {
		return
	}
	word, rest, _ := strings.Cut(it.before, " ")
	next, _, _ := strings.Cut(rest, " ")
	switch word {
	case "would", "will", "could", "can", "might", "may":
		if (it.value() || it.kind != kGoal) && next != "like" && next != "prefer" && next != "love" && next != "you" && next != "be" {
			g.g.force = WhatIf
		}
	case "should", "shall", "must":
		if next != "be" {
			g.g.force = WhatIf // "should the gap be 3" is tried, never set
		}
	case "does", "did", "is", "are":
		g.g.force = Check
	case "do":
		if g.asked {
			g.g.force = Check
		}
	}
}

func (g *grouping) headWord(i int) bool {
	t := g.list[i]
	force := ActKind(t.key())
	if t.as(kSell) != nil && g.sells(i) || t.as(kHave) != nil && force == Check {
		return false
	}
	switch force {
	case "say":
		if !g.atBreak(i) || g.g.force != State {
			return true
		}
		force = WhatIf
	case State:
		if g.g.force == Check || g.g.force != State && g.atBreak(i) && !g.empty() && g.g.force != WhatIf {
			g.flush(group{force: State, head: t.token, sealed: true})
		} else if g.g.force == State {
			g.g.sealed = true
		}
		return true
	case WhatIf:
		if g.g.force == Ask && !g.atBreak(i) && i+1 == len(g.list) {
			return true // "how many rails can I fit"
		}
		if g.empty() && (g.g.force == WhatIf || g.g.force == WhyNot || g.g.force == Ask) && !strong(t.token) {
			return true
		}
	case Check:
		if g.g.force != State && g.g.force != Check && (g.empty() || !g.atBreak(i)) {
			return true
		}
		if g.empty() && g.g.force == Check {
			return true
		}
	case Why, WhyNot:
		if g.empty() && (g.g.force == Ask || g.g.force == Why) {
			g.g.force, g.g.head = force, t.token
			return true
		}
	}
	g.flush(group{force: force, head: t.token})
	return true
}

// strong reports whether a head says by itself that something is tried.
func strong(t *token) bool {
	for _, w := range []string{"what if", "happen", "suppose", "imagine", "pretend"} {
		if strings.Contains(t.text, w) {
			return true
		}
	}
	return false
}

// sells reports whether "they have …" is said of lengths on sale.
func (g *grouping) sells(i int) bool {
	long, bares := 0, 0
	for _, it := range g.list[i+1:] {
		switch {
		case it.value() && it.lim.lo.footer, !it.value() && (it.is(kStockWord) || it.is(kSellMore)):
			return true
		case it.value() && it.lim.lo.unit != bare && it.lim.lo.size == "":
			long++
		case it.value() && it.lim.lo.size == "":
			bares++
		case !it.value() && it.kind == kPart && it.key() != "rail" && it.key() != "size":
			return false
		}
	}
	return long > 1 || long == 1 && bares > 0
}

func (g *grouping) wh(i int) bool {
	t := g.list[i]
	if t.as(kKnowing) != nil && t.text != "how many" && g.claims(i) {
		return false
	}
	if gives(t.token) && g.wishes(i) || i+1 < len(g.list) && !g.list[i+1].value() && g.list[i+1].kind == kGoal {
		return true
	}
	if i > 0 && (g.list[i-1].value() && g.list[i-1].lim.lo.times || !g.list[i-1].value() && (g.list[i-1].kind == kFactor || g.list[i-1].kind == kTimes)) && t.as(kSame) != nil {
		t.kind = kSame // "twice what is between the others"
		return false
	}
	if (g.g.force == Why || g.g.force == "help with" || g.g.force == Forget) && !g.atBreak(i) {
		g.g.sense = append(g.g.sense, senseOf(t.token))
		return true
	}
	if g.g.force == Ask && g.empty() || g.g.force == Teach && g.empty() {
		g.g.sense = append(g.g.sense, senseOf(t.token))
		return true
	}
	if t.kind == kWhere && g.g.force != State && g.g.force != Ask && !g.atBreak(i) {
		return true
	}
	g.flush(group{force: Ask, head: t.token, sense: []sense{senseOf(t.token)}})
	return true
}

// gives reports whether a word that asks may also wish: "give me another inch".
func gives(t *token) bool {
	for _, w := range strings.Fields(t.text) {
		switch w {
		case "give", "get", "have", "let", "want", "like", "make":
			return true
		}
	}
	return false
}

// wishes reports whether a value or a superlative follows before the next break.
func (g *grouping) wishes(i int) bool {
	for k := i + 1; k < len(g.list) && !g.list[k].breaks(); k++ {
		if it := g.list[k]; it.value() || it.kind == kBest || it.kind == kAnother || it.kind == kGoal || it.kind == kFactor {
			return true
		}
	}
	return false
}

func senseOf(t *token) sense {
	if t.kind == kPart || t.kind == kLoc {
		var s sense
		for _, f := range t.found { // a word that stands in several rows speaks of what any of them does
			if k := f.entry.kind; k == kPart || k == kLoc || k == kDim {
				s.sure, s.may = s.sure.or(f.entry.sense.sure), s.may.or(f.entry.sense.may)
			}
		}
		if !s.all().empty() {
			return s
		}
	}
	for _, f := range t.found {
		if !f.entry.sense.all().empty() {
			return f.entry.sense
		}
	}
	return sense{}
}

func (g *grouping) quest(i int) bool {
	t := g.list[i]
	if bareNoun(t.token) && (!g.alone(i) || !g.asksFor(t.key())) {
		return false
	}
	if g.g.force == Ask && g.g.topic == "" && !g.empty() && !g.atBreak(i) && !hasValue(g.g.items) && g.asksFor(t.key()) {
		g.g.topic = t.key() // "what will the lumber cost"
		return true
	}
	if g.empty() && (g.g.force == Ask || g.g.force == Why || g.g.force == Teach || g.g.force == "help with") {
		g.g.topic = t.key()
		if g.g.force == Ask {
			g.g.head = t.token
		}
		return true
	}
	if g.g.force == Why && g.g.topic == "" && !hasValue(g.g.items) && !g.atBreak(i) {
		g.g.topic = t.key()
		return true
	}
	g.stray(i)
	g.flush(group{force: Ask, head: t.token, topic: t.key()})
	return true
}

// asksFor reports whether the words of the question so far can be after a table: "how tall" is after no list of posts.
func (g *grouping) asksFor(table string) bool {
	if g.g.force != Ask || len(g.g.sense) == 0 || g.g.sense[0].all().empty() {
		return true
	}
	return g.g.sense[0].all().hasName("?" + table)
}

// asking are words that begin a question or a wish to be told, wherever they stand.
var asking = []string{"what", "how", "where", "which", "tell", "show", "give", "read", "let", "see", "any", "list", "draw", "have", "want", "sketch", "work", "figure", "get"}

// stray asks back where a question without a word of asking, or a command, stands in the middle of something else.
func (g *grouping) stray(i int) {
	if g.empty() || g.atBreak(i) || !hasValue(g.g.items) {
		return
	}
	t := g.list[i]
	for _, w := range asking {
		if strings.Contains(t.text, w) {
			return
		}
	}
	g.s.fail(t.at, solver.Question{Text: "Is " + quoted(short(t.text)) + " a wish of its own?", Example: "gap 2-1/2, show me"})
}

// bareNoun reports whether a question is no more than a noun: "cuts", "marks", "drop".
func bareNoun(t *token) bool {
	words := strings.Fields(t.text)
	if len(words) > 2 || strings.Contains(t.text, "what") || strings.Contains(t.text, "how") {
		return false
	}
	switch words[0] {
	case "what", "how", "where", "which", "show", "tell", "give", "draw", "sketch", "list", "anything":
		return false
	}
	return true
}

// alone reports whether item i has no value and no part beside it, up to the next break on either side.
func (g *grouping) alone(i int) bool {
	other := func(it item) bool {
		return it.value() || it.kind == kPart || it.kind == kSize || it.kind == kNot || it.kind == kChange || it.kind == kMore || it.kind == kLoc || it.kind == kRel || it.kind == kSide || it.kind == kBest || it.kind == kBestTail || it.kind == kAnother || it.kind == kFactor
	}
	for k := i + 1; k < len(g.list) && !g.list[k].breaks(); k++ {
		if other(g.list[k]) {
			return false
		}
	}
	if g.g.force == Ask || g.g.force == Why || g.g.force == Teach || g.g.force == "help with" {
		return true
	}
	for k := i - 1; k >= 0 && !g.list[k].breaks(); k-- {
		if other(g.list[k]) {
			return false
		}
	}
	return true
}

func (g *grouping) teach(i int) bool {
	g.flush(group{force: Teach, head: g.list[i].token})
	return true
}

func (g *grouping) command(i int) bool {
	t := g.list[i]
	switch key := t.key(); key {
	case "forget", "forget all but", "help with", "take":
		if key == "take" && !g.takes(i) {
			return true
		}
		if t.as(kForgetTail) != nil && g.dropTail(i) {
			return true
		}
		if key == "forget" && g.changes(i) {
			return false
		}
		g.flush(group{force: ActKind(key), head: t.token})
	case "recap":
		if i+1 < len(g.list) && !g.list[i+1].value() && g.list[i+1].kind == kPart {
			return true // "what I gave you for the opening, …"
		}
		g.flush(group{force: State, cmd: key, head: t.token})
	case "why that":
		if !g.alone(i) || i+1 < len(g.list) && !g.list[i+1].breaks() {
			if i+1 < len(g.list) && !g.list[i+1].value() && g.list[i+1].key() == "rail" && (strings.Contains(t.text, "need") || strings.Contains(t.text, "buy")) {
				g.flush(group{force: Why, head: t.token, topic: "shopping"})
				return true
			}
			g.flush(group{force: Why, head: t.token})
			return true
		}
		g.flush(group{force: State, cmd: key, head: t.token})
	case "take that":
		if i+1 < len(g.list) && (g.list[i+1].value() || g.list[i+1].kind == kPart || g.list[i+1].kind == kLoc) {
			return true // "keep that doorway …"
		}
		g.flush(group{force: State, cmd: key, head: t.token})
	case "quit":
		if i > 0 && !g.list[i-1].value() && g.list[i-1].kind == kAnd && !g.empty() {
			return true // "… and that's it"
		}
		g.flush(group{force: State, cmd: key, head: t.token})
	case "compare":
		if n := len(g.s.groups); i+1 == len(g.list) && (g.g.cmd == key || n > 0 && g.s.groups[n-1].cmd == key) {
			return true // "…, cmp"
		}
		g.flush(group{force: State, cmd: key, head: t.token})
	default:
		if t.as(kFix) != nil && i > 0 && i+1 < len(g.list) && g.g.cmd == "" && !g.empty() {
			t.kind = kFix
			return false
		}
		g.stray(i)
		g.flush(group{force: State, cmd: key, head: t.token})
	}
	return true
}

// takes reports whether nothing but the number of a way out follows: "take 2", and not "take 2 cm off".
func (g *grouping) takes(i int) bool {
	n := 0
	for k := i + 1; k < len(g.list) && !g.list[k].breaks(); k++ {
		switch it := g.list[k]; {
		case it.value() && it.lim.lo.unit == bare && it.lim.lo.size == "" && it.lim.lo.val.IsInt(), !it.value() && it.kind == kOrdinal:
			n++
		case !it.value() && (it.kind == kWayOut || it.kind == kKnowing || it.kind == kTailFill || it.kind == kIt):
		default:
			return false
		}
	}
	return n == 1
}

// changes reports whether a word of forgetting is said of a value: "remove one of the slats", "drop the gap an eighth",
// "drop 36". The word then changes, or is a noun.
func (g *grouping) changes(i int) bool {
	t := g.list[i].token
	words := strings.Fields(t.text)
	if strings.Contains(t.text, "price") {
		return false
	}
	if t.as(kPart) != nil && i > 0 && g.list[i-1].value() {
		return true // "a 30 inch drop"
	}
	if t.as(kPart) != nil && i+1 < len(g.list) && (g.list[i+1].value() || g.list[i+1].kind == kRel || g.list[i+1].kind == kUnder || g.list[i+1].kind == kOver) {
		return true
	}
	switch words[0] {
	case "remove", "drop", "lose", "take", "cut", "leave", "pull", "get":
	default:
		return false
	}
	if t.as(kPart) == nil && t.as(kChange) == nil {
		t.found = append(t.found, found{entry: minusSign})
	}
	parts := 0
	for k := i + 1; k < len(g.list) && !g.list[k].breaks(); k++ {
		it := g.list[k]
		switch {
		case it.value() && parts == 0:
			op, ok := it.lim.relation()
			return ok && op == solver.Eq && (it.lim.lo.unit == bare && it.lim.lo.size == "" || t.as(kPart) != nil || words[0] == "lose" || words[0] == "cut" || words[0] == "take")
		case it.value():
			op, ok := it.lim.relation()
			if ok && op == solver.Eq {
				t.found = append([]found{{entry: minusSign}}, t.found...)
				t.kind = kChange
			}
			return t.kind == kChange
		case it.kind == kPart:
			parts++
		}
	}
	return false
}

func (g *grouping) nameWord(i int) bool {
	g.g.name = g.list[i].text
	return true
}

func (g *grouping) csv(int) bool {
	switch n := len(g.s.groups); {
	case g.g.topic != "" || g.g.force == Ask:
		g.g.csv = true
	case n > g.first:
		g.s.groups[n-1].csv = true
	default:
		return false
	}
	return true
}

// tail changes the force of what stands before it: "…, is that right", "… come from", "would … fit".
func (g *grouping) tail(i int) bool {
	t := g.list[i]
	if t.as(kPart) != nil && i+1 < len(g.list) && (g.list[i+1].value() && g.list[i+1].before == "" || !g.list[i+1].value() && g.list[i+1].kind == kRel) {
		return false // "fit" the quantity
	}
	switch t.key() {
	case "why":
		if g.g.force == Ask {
			g.g.force = Why
			return true
		}
		return false
	case "verify":
		if g.g.force == Ask && g.empty() {
			g.g = group{force: State} // "I would like to know whether that is right"
		}
		return g.turn(Check, State)
	case "fit":
		if g.g.force == Check && g.g.head == nil {
			g.g.force = WhatIf
			return true
		}
		return g.turn(WhatIf, State)
	}
	return false
}

// turn gives force to the groups of the sentence before here that have another. With nothing there it takes the
// sentence before.
func (g *grouping) turn(to, from ActKind) bool {
	took := false
	if !g.empty() {
		took = true
		if g.g.force == from && g.g.cmd == "" {
			g.g.force = to
		}
	}
	for k := len(g.s.groups) - 1; k >= 0 && (k >= g.first || !took); k-- {
		p := &g.s.groups[k]
		if p.force == from && p.cmd == "" {
			p.force = to
		}
		took = true
	}
	return took
}

func (g *grouping) dropTail(i int) bool {
	if i+1 < len(g.list) && !g.list[i+1].breaks() {
		return strings.HasSuffix(g.list[i].text, " go") // "I can go 50 more"
	}
	switch n := len(g.s.groups); {
	case g.g.force == Forget:
		return true
	case !g.empty() && g.g.force == State:
		g.g.force = Forget
		return true
	case n > g.first && g.s.groups[n-1].force == Forget:
		return true
	}
	return false
}

// claimed reports whether anything was claimed in the sentence, or right before it.
func (g *grouping) claimed() bool {
	if g.g.force == Check {
		return true
	}
	for k := max(0, g.first-1); k < len(g.s.groups); k++ {
		if g.s.groups[k].force == Check {
			return true
		}
	}
	return false
}

// enter takes claims as said: "…, go ahead and enter those".
func (g *grouping) enter(i int) bool {
	if t := g.list[i]; t.as(kCmd) != nil && t.as(kCmd).key == "take that" && !g.claimed() {
		g.flush(group{force: State, cmd: "take that", head: t.token})
		return true
	}
	if i == len(g.list)-1 && g.empty() && len(g.s.groups) == g.first {
		for k := range g.s.groups {
			if g.s.groups[k].force == Check {
				g.s.groups[k].force = State
			}
		}
		return true
	}
	if g.empty() && len(g.s.groups) == g.first {
		g.flush(group{force: State, head: g.list[i].token, sealed: true})
		return true
	}
	if g.g.force == Check {
		g.g.force = State
	}
	for k := g.first; k < len(g.s.groups); k++ {
		if g.s.groups[k].force == Check {
			g.s.groups[k].force = State
		}
	}
	return true
}

func (g *grouping) theirs(i int) bool {
	if g.list[i].text == "her" && verbBefore(g.list[i].before) {
		return true // "make her forty"
	}
	if i == 0 {
		g.mood(g.list[0])
	}
	if g.g.force == State && !g.g.sealed && g.atBreak(i) && g.claims(i) && !(g.list[i].text == "their" && i > 0 && g.list[i-1].kind == kComma) {
		g.flush(group{force: Check, head: g.list[i].token})
	}
	return true
}

// verbBefore reports whether the empty words before a pronoun end in a verb that takes it.
func verbBefore(before string) bool {
	f := strings.Fields(before)
	if len(f) == 0 {
		return false
	}
	switch f[len(f)-1] {
	case "make", "leave", "keep", "set", "put", "give", "want", "call", "hold", "take", "like", "let", "build":
		return true
	}
	return false
}

// claims reports whether a value follows before the next break.
func (g *grouping) claims(i int) bool {
	for k := i + 1; k < len(g.list) && !g.list[k].breaks(); k++ {
		if g.list[k].value() {
			return true
		}
	}
	return false
}

// question takes a sentence with a question mark and no other sign of its force: "6 rails?" tries, "gap?" asks.
func (g *grouping) question() {
	for _, p := range g.s.groups[g.first:] {
		if p.force != State {
			return
		}
	}
	for k := g.first; k < len(g.s.groups); k++ {
		p := &g.s.groups[k]
		if p.force != State || p.cmd != "" || p.sealed {
			continue
		}
		p.force = WhatIf
		if !hasValue(p.items) {
			p.force = Ask
		}
	}
}

func hasValue(list []item) bool {
	for _, it := range list {
		if it.value() {
			return true
		}
		switch it.kind {
		case kSide, kGoal, kUnits, kChange, kFactor, kNo, kBest, kMore:
			return true
		}
	}
	return false
}
