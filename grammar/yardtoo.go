package grammar

import "slices"

// addedThose sets "the place has twenties, so add those" to "the place has twenties too".
func addedThose(atoms []atom) []atom {
	n := len(atoms)
	for n > 0 && (atoms[n-1].text == "." || atoms[n-1].text == "!") {
		n--
	}
	end := n
	for n > 0 && (atoms[n-1].text == "in" || atoms[n-1].text == "too" || atoms[n-1].text == "please" || atoms[n-1].text == "also") {
		n--
	}
	if n < 5 || atoms[n-1].text != "those" && atoms[n-1].text != "them" || atoms[n-2].text != "add" && atoms[n-2].text != "include" && atoms[n-2].text != "count" {
		return atoms
	}
	n -= 2
	for n > 0 && (asideJoints[atoms[n-1].text] || atoms[n-1].text == "," || atoms[n-1].text == "." || atoms[n-1].text == "please") {
		n--
	}
	if told := atoms[:n]; !footersBehind(told, nil) || yardSizeIn(told) && !lengthsIn(told) || slices.ContainsFunc(told, func(a atom) bool {
		return notMore[a.text]
	}) {
		return atoms
	}
	return reworded(atoms, n, end, "too")
}

// notMore are words by which lengths are told as added already, or as gone, or as something else.
var notMore = wordSet("too also well no not out gone if why how what longer out of extra spare another")

// alsoConsidered sets "could you also consider eighteen footers?" to "they also have eighteen footers".
func alsoConsidered(atoms []atom) []atom {
	rest, _ := pastLead(atoms)
	i := len(atoms) - len(rest)
	if i+4 >= len(atoms) || !beggars[atoms[i].text] || atoms[i+1].text != "you" {
		return atoms
	}
	j, also := i+2, false
	for j < len(atoms) && (atoms[j].text == "please" || atoms[j].text == "also" || atoms[j].text == "maybe") {
		also = also || atoms[j].text == "also"
		j++
	}
	if !also || j+1 >= len(atoms) || !considers[atoms[j].text] || !footersBehind(atoms[j:], nil) || yardItemPriced(atoms[j:]) {
		return atoms
	}
	return unasked(reworded(atoms, i, j+1, "they", "also", "have"))
}

var considers = wordSet("consider allow include count use add take")

// yardItemPriced reports whether money is said.
func yardItemPriced(atoms []atom) bool { return figureIsMoney(atoms) }
