package grammar

import (
	"slices"
	"strings"

	"saywright/solver"
)

// Who judges before wishing ("the wall's too low, go up three inches") tells of what the wish is; the judgment itself changes nothing.

// refuses are words by which what was answered is not wanted.
var refuses = wordSet("no nope nah")

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
	if !slices.ContainsFunc(atoms, func(a atom) bool { return a.text == "too" || a.text == "enough" }) {
		return 0, nil
	}
	led, _ := pastLead(atoms)
	from := len(atoms) - len(led)
	i := from
	for k := i; k+1 < len(atoms) && (refuses[atoms[k].text] || k > i && atoms[k].text == ","); k++ {
		if atoms[k+1].text == "too" {
			i = k + 1 // "nope, too low, forty four"
			break
		}
	}
	for i < len(atoms) && (vocab().articles[atoms[i].text] || owned[atoms[i].text]) && atoms[i].text != "'s" {
		i++
	}
	var of *solver.Name
	bare := false // "too wide, try six boards": of what was spoken of
	if of, next := tooMany(atoms, i); next > 0 {
		return next, of
	}
	switch {
	case i >= len(atoms):
		return 0, nil
	case namesPart(atoms, i):
		f := vocab().match(atoms, i)
		of, i = judgedOf(f[0].entry), f[0].next
	case pointing[atoms[i].text] || atoms[i].text == "they" || atoms[i].text == "she":
		of, i = c.Subject, i+1
	default:
		of, bare = c.Subject, true
	}
	switch {
	case i < len(atoms) && judges[atoms[i].text]:
		i++
	case !bare:
		return 0, nil
	}
	for i < len(atoms) && muchSo[atoms[i].text] {
		i++
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
	if i+1 < len(atoms) && (atoms[i-1].text == "together" || atoms[i-1].text == "apart") {
		of = &solver.Name{Quantity: solver.Gap}
	}
	i = pastForWhom(atoms, i)
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
	left := withNoun(atoms[at:], of)
	r, left := readLed(left, c)
	if r.Ask != nil && of != nil {
		var named []atom
		for _, w := range strings.Fields(string(of.Quantity)) {
			named = append(named, atom{kind: aWord, text: w, at: left[0].at, end: left[0].at})
		}
		for _, at := range []int{0, 1} { // "the gap's too big, so two inches", "too tall, try forty"
			if at > 0 && (len(left) < 2 || left[0].text != "try") {
				break
			}
			if r := readAtoms(slices.Concat(left[:at], named, left[at:]), c); r.Ask == nil {
				return r, true
			}
		}
	}
	if r.Ask != nil {
		r = reread(left, c, r)
	}
	return r, r.Ask == nil
}

// tooMany reads "we have a rail too many, …" and "one rail too many, …": it returns the atom after it, 0 where it is not said.
func tooMany(atoms []atom, i int) (*solver.Name, int) {
	if i+2 < len(atoms) && (speakers[atoms[i].text] || atoms[i].text == "there" || atoms[i].text == "that") && (atoms[i+1].text == "have" || atoms[i+1].text == "is" || atoms[i+1].text == "'s" || atoms[i+1].text == "got") {
		i += 2
	}
	if i+4 >= len(atoms) || atoms[i].text != "a" && atoms[i].text != "one" || !namesPart(atoms, i+1) || atoms[i+2].text != "too" || atoms[i+3].text != "many" && atoms[i+3].text != "few" || atoms[i+4].kind != aSign && atoms[i+4].text != "so" {
		return nil, 0
	}
	f := vocab().match(atoms, i+1)
	i += 4
	for i < len(atoms) && (atoms[i].kind == aSign || joints[atoms[i].text]) {
		i++
	}
	if i >= len(atoms) || f[0].entry.key != "rail" && f[0].entry.key != "stiffener" {
		return nil, 0
	}
	return &solver.Name{Quantity: map[string]solver.Quantity{"rail": solver.Rails, "stiffener": solver.Stiffeners}[f[0].entry.key]}, i
}

// withNoun puts the noun that "one" stands for behind it: "we have a rail too many, drop one".
func withNoun(in []atom, of *solver.Name) []atom {
	noun := ""
	if of != nil {
		noun = map[solver.Quantity]string{solver.Rails: "rail", solver.Stiffeners: "stiffener"}[of.Quantity]
	}
	for i := range in {
		if noun == "" || in[i].text != "one" || i+1 < len(in) && namesPart(in, i+1) {
			continue
		}
		one := in[i]
		one.text, one.at = noun, one.end
		out := append([]atom{}, in[:i+1]...)
		rest := in[i+1:]
		if len(rest) > 0 && rest[0].text == "out" {
			rest = rest[1:] // "take one out"
		}
		return append(append(out, one), rest...)
	}
	return in
}

// pastForWhom returns the atom after "for the brackets" or "to see over", where a sign ends it; else the one that it was given.
func pastForWhom(atoms []atom, i int) int {
	if i >= len(atoms) || atoms[i].text != "for" && atoms[i-1].text != "for" && atoms[i].text != "to" {
		return i
	}
	for j := i; j < len(atoms) && j < i+6; j++ {
		switch {
		case j > i && breaksClause(atoms, j) && atoms[j].text != "?":
			return j
		case atoms[j].kind != aWord, units[atoms[j].text] > 0, tens[atoms[j].text] > 0, j > i && joints[atoms[j].text]:
			return i
		}
	}
	return i
}
