package idiom

import (
	"regexp"
	"strings"

	"saywright/grammar/phrase"
)

// boardsSold is boards named by how long they are sold: "eights", "8s", "ten-footers", "12 foot boards".
const boardsSold = `!(eights|tens|twelves|fourteens|sixteens|eighteens|twenties|(## s)|(## ' s)|(## [-] footers|footer|ft|foot [boards|board|lumber|lengths|stuff|sticks|ones])|(# boards|lengths|sticks|ones|pieces|lumber)) ?boards|ones|lengths|sticks`

// otherStock are questions how many boards of another length it would take: the other length is tried, and what is to be bought then is asked.
// "How many tens do I need" asks of what stands. Common ways of speech, no source.
var otherStock = func() (list []phrase.Placed) {
	for _, s := range []string{
		"^^ ?and|so|ok|but|then ?, how many BOARDS ?@ would|could|might|should i|we|it|that|this|you|they|one|(the (job|wall|rails)) ?then|instead|(have to)|(need to) need|take|want|use|buy|get|require|(come to)|be ?(for (it|this|that|me|us|all of it)) ?to ?buy|get ?instead|then|though \\? $$",
		"^^ ?and|so|ok|but|then ?, how many BOARDS ?@ would|could|might|should i|we|it|that|this|you|they|one|(the (job|wall|rails)) ?then|instead|(have to)|(need to) need|take|want|use|buy|get|require|(come to)|be ?(for (it|this|that|me|us|all of it)) ?to ?buy|get ?instead|then|though $$",
		"^^ ?and|so|ok|but|then ?, how many BOARDS ?@ do|does|will i|we|it|that|this|you|they|one ?(have to)|(need to) need|take|want|use|buy|get|require ?to ?buy|get instead ?\\? $$",
		"^^ ?and|so|ok|but|then|or ?, how many BOARDS ?@ instead ?\\? $$",
		"^^ and|or|but ?what|how ?about ?if with|in|using BOARDS instead ?\\? $$",
		"^^ ?and|so|ok|but|then ?, how many boards|sticks|pieces ?would|do|will|does ?i|we|it|that|this|you ?need|take|want|use|buy if i|we|you ?(were to) ?just|only|all buy|bought|use|used|get|got|take|took|(go with)|(went with) BOARDS ?instead|then ?\\? $$",
		"^^ ?and|so|ok|but|then ?, how many boards|sticks|pieces ?would|do|will|does ?i|we|it|that|this|you ?need|take|want|use|buy with|using ?all|only BOARDS ?instead|then ?\\? $$",
	} {
		list = append(list, phrase.Placed{strings.Replace(s, "BOARDS", boardsSold, 1), "what if i buy only $1 , what do i have to buy", nil})
	}
	return list
}()

// StockOn is a line that goes on about other boards that were just tried: "and tens", "with twelves?", "or 3 m boards".
var StockOn = regexp.MustCompile(`^(?:(?:and|or|ok|so|but|what about|how about)[, ]+)+(?:(?:if )?(?:with|in|using) )?(?:only )?([a-z0-9.' -]{2,24}?)(?: (?:then|instead))?[ ?.!]*$`)
