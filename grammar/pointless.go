package grammar

// What there is no point in, no need of or no reason for is not to be done: "no sense having more than six rails" sets a limit.

// pointless are words that a "no" makes a limit of, where a bound stands behind them.
var pointless = wordSet("point sense reason use call need good excuse cause")

// leadsToNo may lead up to the "no".
var leadsToNo = wordSet("there is i we see can it makes make have got 's 've am are")

// bareOf are the plain forms of what is done in it.
var bareOf = map[string]string{"having": "have", "going": "go", "making": "make", "putting": "put", "using": "use", "spending": "spend", "building": "build", "raising": "raise", "getting": "get",
	"buying": "buy", "letting": "let", "running": "run", "taking": "take", "leaving": "leave", "setting": "set", "stretching": "stretch", "paying": "pay", "wanting": "want", "adding": "add", "hanging": "hang"}

// pointlessMore reads "no sense having more than six rails" as "do not have more than six rails".
func pointlessMore(in []atom) []atom {
	for i := 0; i+3 < len(in); i++ {
		if in[i].text != "no" || !pointless[in[i+1].text] {
			continue
		}
		from := i
		for from > 0 && leadsToNo[in[from-1].text] {
			from--
		}
		if in[from].text == "is" || in[from].text == "can" || !clauseBeginsAt(in, from) {
			return in
		}
		next := i + 2
		of := in[next].text
		if of == "in" || of == "to" || of == "for" || of == "of" {
			next++
		}
		bound := -1
		for k := next; k < len(in) && k < next+7 && in[k].text != ","; k++ {
			if _, _, _, ok := sideAt(in, k); ok {
				bound = k
				break
			}
		}
		if bound < 0 {
			return in
		}
		out := append([]atom{}, in[:from]...)
		for k := next; of == "for" && k+1 < bound; k++ {
			if in[k].text == "to" && in[k+1].text == "be" {
				out = append(append(out, in[next:k]...), worded(in[i], "not")) // "no reason for the wall to be over 44"
				return append(out, in[k+2:]...)
			}
		}
		if bound > next {
			verb := in[next]
			if bare, ok := bareOf[verb.text]; ok {
				verb.text = bare
			} else if of == "to" && !doneBeyond[verb.text] {
				return in // "no need to worry about a gap over 3"
			} else if of != "to" {
				if of != "for" && of != "of" {
					return in
				}
				return append(append(out, worded(in[i], "no")), in[next:]...) // "no call for a gap over two"
			}
			out = append(out, worded(in[i], "do"), worded(in[i], "not"), verb)
			return append(out, in[next+1:]...)
		}
		return append(append(out, worded(in[i], "no")), in[next:]...)
	}
	return in
}

// doneBeyond are those plain forms: what one does that goes beyond a limit.
var doneBeyond = func() map[string]bool {
	out := map[string]bool{}
	for _, bare := range bareOf {
		out[bare] = true
	}
	return out
}()
