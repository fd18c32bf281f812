package paraphrase

import (
	"saywright/grammar/chunk"
	"saywright/grammar/scan"
)

// What there is no point in, no need of or no reason for is not to be done: "no sense having more than six rails" sets a limit.

// pointless are words that a "no" makes a limit of, where a bound stands behind them.
var pointless = scan.WordSet("point sense reason use call need good excuse cause")

// leadsToNo may lead up to the "no".
var leadsToNo = scan.WordSet("there is i we see can it makes make have got 's 've am are")

// bareOf are the plain forms of what is done in it.
var bareOf = map[string]string{"having": "have", "going": "go", "making": "make", "putting": "put", "using": "use", "spending": "spend", "building": "build", "raising": "raise", "getting": "get",
	"buying": "buy", "letting": "let", "running": "run", "taking": "take", "leaving": "leave", "setting": "set", "stretching": "stretch", "paying": "pay", "wanting": "want", "adding": "add", "hanging": "hang"}

// pointlessMore reads "no sense having more than six rails" as "do not have more than six rails".
func pointlessMore(in []scan.Atom) []scan.Atom {
	for i := 0; i+3 < len(in); i++ {
		if in[i].Text != "no" || !pointless[in[i+1].Text] {
			continue
		}
		from := i
		for from > 0 && leadsToNo[in[from-1].Text] {
			from--
		}
		if in[from].Text == "is" || in[from].Text == "can" || !chunk.ClauseBeginsAt(in, from) {
			return in
		}
		next := i + 2
		of := in[next].Text
		if of == "in" || of == "to" || of == "for" || of == "of" {
			next++
		}
		bound := -1
		for k := next; k < len(in) && k < next+7 && in[k].Text != ","; k++ {
			if _, _, _, ok := sideAt(in, k); ok {
				bound = k
				break
			}
		}
		if bound < 0 {
			return in
		}
		out := append([]scan.Atom{}, in[:from]...)
		for k := next; of == "for" && k+1 < bound; k++ {
			if in[k].Text == "to" && in[k+1].Text == "be" {
				out = append(append(out, in[next:k]...), chunk.Worded(in[i], "not")) // "no reason for the wall to be over 44"
				return append(out, in[k+2:]...)
			}
		}
		if bound > next {
			verb := in[next]
			if bare, ok := bareOf[verb.Text]; ok {
				verb.Text = bare
			} else if of == "to" && !doneBeyond[verb.Text] {
				return in // "no need to worry about a gap over 3"
			} else if of != "to" {
				if of != "for" && of != "of" {
					return in
				}
				return append(append(out, chunk.Worded(in[i], "no")), in[next:]...) // "no call for a gap over two"
			}
			out = append(out, chunk.Worded(in[i], "do"), chunk.Worded(in[i], "not"), verb)
			return append(out, in[next+1:]...)
		}
		return append(append(out, chunk.Worded(in[i], "no")), in[next:]...)
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
