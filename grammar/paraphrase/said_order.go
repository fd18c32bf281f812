package paraphrase

import (
	"slices"

	"saywright/grammar/chunk"
	"saywright/grammar/idiom"
	"saywright/grammar/scan"
)

// inPlainOrder sets the order of the words of a line plain.
func inPlainOrder(atoms []scan.Atom) []scan.Atom {
	return idiom.OrderBook().SetIn(topicIntoPlace(placeFirst(claimsIntoPlace(nameIntoPlace(idiom.WithoutEcho(figuresIntoPlace(idiom.DashedLimits(atoms))))))))
}

// nameIntoPlace saves a plan under a name that is said first: "cottage is the name under which I'd like you to save this".
func nameIntoPlace(in []scan.Atom) []scan.Atom {
	if len(in) < 7 || in[0].Kind != scan.Word || orderSubjects[in[0].Text] || pointingBack[in[0].Text] || topicQuestions[in[0].Text] || orderArticles[in[0].Text] {
		return in
	}
	i := 1
	if in[i].Text == "," {
		i++
	}
	if pointingBack[in[i].Text] {
		i++
	}
	if in[i].Text != "is" || in[i+1].Text != "what" && (in[i+1].Text != "the" || in[i+2].Text != "name") || chunk.Figured(in) {
		return in
	}
	saves, under, to := false, in[i+1].Text == "the", i
	for to < len(in) && !chunk.EndsSentence(in, to) {
		switch in[to].Text {
		case "save", "saved", "store", "stored", "keep", "kept", "file", "filed", "call", "name":
			saves = saves || to > i+2
		case "under", "as", "by":
			under = true
		case "not", "open", "compare", "was", "or", "if":
			return in
		}
		to++
	}
	called := false // what is only called so must be saved behind it
	for k := i + 3; k < len(in); k++ {
		called = called || in[k].Text == "save" || in[k].Text == "saved" || in[k].Text == "store" || in[k].Text == "keep" || in[k].Text == "file"
	}
	if !saves || !called {
		return in
	}
	if !under {
		to = len(in)
	}
	return slices.Concat([]scan.Atom{chunk.Worded(in[0], "save"), chunk.Worded(in[0], "this"), chunk.Worded(in[0], "as"), in[0]}, in[to:])
}
