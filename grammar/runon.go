package grammar

// Who dictates says several things without a stop between them: "make the doorway two inches wider drop the gap an eighth draw it". A line
// that cannot be read as a whole is read once more with a stop before each order and question that plainly begins in it. Nothing is left
// out and no word is taken for another; what turns, denies, claims or supposes may reach over such a place, so a line with such a word is
// left as it is.

// mostStops is how many stops are put into a line.
const mostStops = 4

// readRunOn reads a line with stops before the orders and questions in it.
func readRunOn(line string, atoms []atom, c Context) (Reading, bool) {
	if c.deep || len(atoms) < 6 {
		return Reading{}, false
	}
	for i, a := range atoms {
		if runOnTurns[a.text] && !(a.text == "if" && i > 1 && (atoms[i-1].text == "me" || atoms[i-1].text == "us")) {
			return Reading{}, false // but for "tell me if there is anything to watch out for"
		}
	}
	var out []atom
	stops := 0
	for i, a := range atoms {
		if i > 1 && i+1 < len(atoms) && beginsAnew(atoms, i) {
			stops++
			stop := a
			stop.kind, stop.text, stop.end, stop.glued = aSign, ".", a.at, false
			out = append(out, stop)
		}
		out = append(out, a)
	}
	if stops == 0 || stops > mostStops {
		return Reading{}, false
	}
	c.deep = true
	r := readPlainly(line, out, c)
	return r, r.Ask == nil && len(r.Acts) > stops
}

// beginsAnew reports whether an order or a question plainly begins at an atom, and what stands before it is over.
func beginsAnew(atoms []atom, i int) bool {
	was := atoms[i-1]
	if was.kind == aSign || runOnLeads[was.text] || joints[was.text] {
		return false
	}
	w := reader{atoms}
	next := w.word(i + 1)
	switch v := atoms[i].text; {
	case v == "what":
		return next == "is" || next == "'s" || next == "do" || next == "does" || next == "are" || next == "gap" || next == "should"
	case v == "how":
		return next == "many" || next == "wide" || next == "high" || next == "tall" || next == "long" || next == "much" || next == "big" || next == "do"
	case v == "where":
		return next == "do" || next == "does" || next == "is" || next == "are"
	case v == "is":
		return next == "there" && (w.word(i+2) == "anything" || w.word(i+2) == "something")
	case v == "draw" || v == "show" || v == "give" || v == "tell" || v == "read":
		return next == "it" || next == "me" || next == "us"
	case v == "add" || v == "lose":
		return next == "a" || next == "one" || next == "another" || next == "two"
	case runOnOrders[v]:
		return next == "the" || next == "my" || next == "it"
	}
	return false
}

var (
	// runOnOrders begin an order where what it is about stands behind them.
	runOnOrders = wordSet("make drop raise lower widen narrow forget scratch keep set save")
	// runOnLeads are words behind which no order or question begins anew.
	runOnLeads = wordSet("to you i we can could will would should must may might do does did please not just and or then so but that which let us about know see tell me ask of for with at on in by from is are the a an my our who it")
	// runOnTurns are words that may reach over the place where another sentence begins.
	runOnTurns = wordSet("not no never nor neither without if unless suppose supposing or than too but though although instead rather except maybe perhaps almost nearly he she they says said claims thinks reckons told cannot none nobody nothing until till because why whether while")
)
