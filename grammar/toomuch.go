package grammar

import "saywright/solver"

// Who judges before wishing ("the wall's too low, go up three inches") tells of what the wish is; the judgment itself changes nothing.

// degrees are what something can be too much of.
var degrees = wordSet("much many few little low high tall short big small large wide narrow tight snug loose close far long deep thick thin skinny fat steep open closed crowded cramped roomy stingy generous skimpy near heavy")

// muchSo are words that stand before "too".
var muchSo = wordSet("way far a bit little touch tad still just really kind of kinda sort much somewhat rather lot right now all")

// judges are the verbs of a judgment, and besideJudged what may end it.
var (
	judges       = wordSet("is are 's 're was were looks look seems seem feels feel")
	besideJudged = wordSet("for me us my our taste her him them liking this now still really here there yet already together apart up in out")
)

// judgedFirst returns the atom after a judgment that begins a line, and what it judges: "the gap's too big" and the gap. It returns 0
// where none does, or where nothing follows.
func judgedFirst(atoms []atom, c Context) (int, *solver.Name) {
	led, _ := pastLead(atoms)
	from := len(atoms) - len(led)
	i := from
	for i < len(atoms) && (vocab().articles[atoms[i].text] || owned[atoms[i].text]) && atoms[i].text != "'s" {
		i++
	}
	var of *solver.Name
	switch {
	case i >= len(atoms):
		return 0, nil
	case namesPart(atoms, i):
		f := vocab().match(reader{atoms}, i)
		of, i = judgedOf(f[0].entry), f[0].next
	case pointing[atoms[i].text] || atoms[i].text == "they" || atoms[i].text == "she":
		of, i = c.Subject, i+1
	default:
		return 0, nil
	}
	if i >= len(atoms) || !judges[atoms[i].text] {
		return 0, nil
	}
	for i++; i < len(atoms) && muchSo[atoms[i].text]; i++ {
	}
	enough := i+2 < len(atoms) && atoms[i].text == "not" && degrees[atoms[i+1].text] && atoms[i+2].text == "enough"
	switch {
	case enough:
		i += 3
	case i+1 < len(atoms) && atoms[i].text == "too" && degrees[atoms[i+1].text]:
		i += 2
	default:
		return 0, nil
	}
	for i < len(atoms) && besideJudged[atoms[i].text] {
		i++
	}
	signs := 0
	for i < len(atoms) && (atoms[i].kind == aSign && atoms[i].text != "?" || signs > 0 && joints[atoms[i].text] || atoms[i].text == "so" || atoms[i].text == "then") {
		signs++
		i++
	}
	if signs == 0 || i >= len(atoms) {
		return 0, nil
	}
	return i, of
}

// judgedOf is the quantity that a part can be too much of.
func judgedOf(e *entry) *solver.Name {
	switch e.key {
	case "wall", "wall height":
		return &solver.Name{Quantity: solver.WallHeight}
	case "gap", "between rails":
		return &solver.Name{Quantity: solver.Gap}
	case "bottom gap":
		return &solver.Name{Quantity: solver.BottomGap}
	case "opening":
		return &solver.Name{Quantity: solver.Opening}
	case "span":
		return &solver.Name{Quantity: solver.Span}
	case "post height":
		return &solver.Name{Quantity: solver.PostHeight}
	}
	return nil
}

// readJudged reads a line without the judgment that begins it. What is left must change or ask something.
func readJudged(atoms []atom, c Context) (Reading, bool) {
	if c.deep {
		return Reading{}, false
	}
	at, of := judgedFirst(atoms, c)
	if at == 0 {
		return Reading{}, false
	}
	if of != nil {
		c.Subject = of
	}
	left := atoms[at:]
	r, left := readLed(left, c)
	if r.Ask != nil {
		r = reread(left, c, r)
	}
	return r, r.Ask == nil
}
