package parse

import (
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
)

// partSizedAfter reports whether, behind lengths on sale, a part is told to be of a size: "they sell eights and twelves, the rails are 2x6".
func (k *clause) partSizedAfter() bool {
	for i, it := range k.items {
		if !it.value() || it.lim.lo.Size == "" || i == 0 || len(k.values) < 2 || k.values[0] >= i {
			continue
		}
		if w := lex.LastWord(leadOf(it)); w != "is" && w != "are" && w != "be" {
			continue
		}
		if t := k.items[i-1]; !t.value() && t.Kind == lexicon.Part && (t.Key() == "rail" || t.Key() == "post" || t.Key() == "stiffener") {
			return true
		}
	}
	return false
}
