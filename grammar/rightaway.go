package grammar

// plainlyMeant sets right the words of a line that are no English words and can only be the sound of one word: "inchs", "dolars".
// What else is misspelled in the line is mended after them.
func plainlyMeant(atoms []atom) (fixed []atom, taken []Taken) {
	fixed = append([]atom{}, atoms...)
	for i, a := range atoms {
		meant := alikes()[a.text]
		if a.kind != aWord || len(meant) != 1 || english()[a.text] || words().known[a.text] || vocab().known[a.text] || !mayMean(atoms, i) {
			continue
		}
		fixed[i].text = meant[0]
		taken = append(taken, Taken{Was: a.text, Now: meant[0], At: a.at})
	}
	return fixed, taken
}
