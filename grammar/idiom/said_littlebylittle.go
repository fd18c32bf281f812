package idiom

import (
	"saywright/grammar/phrase"
)

// A lesson is asked for with how it is to be gone through: slowly, bit by bit, from the ground up. Whoever asks so wants it taught, and not
// told in one line. How to speak of a thing is asked for in as many ways. Everyday speech, no source.

var littleByLittle = []phrase.Placed{
	{Where: asksEnd, Plain: "teach me $1", Said: `
		^ LEDON [PLEAD] (teach|explain|show|tell) [to] [ME|THEPUPIL] [,] MANNER [,] (how|the way) [you|one|we|they] [(get|work out|figure|figure out|find|reckon|calculate|arrive at|come to)] [the|my|our|a] !(ASKED|((rail|board|post|stiffener|bay) count)|(number of (RAIL|posts|bays|STIFF))) [(is|are|gets|get|comes|come)] [(worked out|figured|figured out|reckoned|found|calculated|arrived at|got|computed|made|about|to be)]
		^ LEDON [PLEAD] (teach|explain|show|tell) [to] [ME|THEPUPIL] [,] (how|the way) [you|one|we|they] [(get|work out|figure|figure out|find|reckon|calculate|arrive at|come to)] [the|my|our|a] !(ASKED|((rail|board|post|stiffener|bay) count)|(number of (RAIL|posts|bays|STIFF))) [(is|are|gets|get|comes|come)] [(worked out|figured|figured out|reckoned|found|calculated|arrived at|got|computed|made|about|to be)] [,] MANNER
		^ LEDON how (does|do|would|can|could) (one|you|we|a person|anybody|i) [ever] (arrive at|get|get to|work out|figure|figure out|find|come to|reckon|reach|calculate) [the|my|our|a] !(ASKED|((rail|board|post|stiffener|bay) count)|(number of (RAIL|posts|bays|STIFF))) [out] [,] MANNER
		^ LEDON how (is|are|does|do) [the|my|our|a] !(ASKED|((rail|board|post|stiffener|bay) count)|(number of (RAIL|posts|bays|STIFF))) [get] (worked out|figured|figured out|reckoned|found|calculated|arrived at|computed|come about) [,] MANNER
		^ LEDON [PLEAD] (walk|take|talk|lead|guide|bring|step|run|go|(can|could|shall|may|might) (we|i|you) go|let us go) [ME|THEPUPIL] [by the hand] [with ME] (through|over) [how (to|you|we|one) (get|find|work out|figure|calculate)] [the|my|our|a] !(ASKED|((rail|board|post|stiffener|bay) count)|(number of (RAIL|posts|bays|STIFF))) [is|gets] [worked out|figured|figured out|found|calculated|reckoned] [together|with ME|again|once more] [,] MANNER [, (please|thanks)]
		^ LEDON [PLEAD] (walk|take|talk|lead|guide|bring|step|run|go) [ME|THEPUPIL] by the hand (through|over) [how (to|you|we|one) (get|find|work out|figure|calculate)] [the|my|our|a] !(ASKED|((rail|board|post|stiffener|bay) count)|(number of (RAIL|posts|bays|STIFF))) [is|gets] [worked out|figured|figured out|found|calculated|reckoned] [together|with ME|again|once more]
		^ LEDON [PLEAD] (walk|take|talk|lead|guide|bring|step) [ME|THEPUPIL] [,] MANNER [,] through [how (to|you|we|one) (get|find|work out|figure|calculate)] [the|my|our|a] !(ASKED|((rail|board|post|stiffener|bay) count)|(number of (RAIL|posts|bays|STIFF))) [is|gets] [worked out|figured|figured out|found|calculated|reckoned]
		^ LEDON [PLEAD] (teach|show|tell|explain to) (ME|THEPUPIL) how (you|one|we|they|to) (get|go|come|work|arrive|figure) [out] [at] from [the|my|our] * to [the|my|our|a] !(ASKED|((rail|board|post|stiffener|bay) count)|((number|count) of [the] (RAIL|posts|bays|STIFF)))
		^ LEDON (i|we) (want|need|would like|would love|mean|intend|am trying|are trying|hope) to (learn|be able|know how|figure out how|understand how|get the hang of how|see how) to (work|figure|find|reckon|calculate|compute|get|do) [the|a|my|our] !ASKED [out] [by (myself|ourselves)|(myself|ourselves)|on my own|on our own|without (help|you)|next time|the next time] [, MANNER]`},
	{Where: asksEnd, Plain: "what can i say about $1", Said: `
		^ LEDON how (do|can|could|would|should|might|must|shall) (i|we|one) [best] (go about|set about) (telling|saying|giving|entering|wording|phrasing|describing|mentioning|asking|speaking|talking|putting) [(to)] [you] [of|about|for|to you about|into words] [the|my|our|a] !(KEPTNAME|STIFF|BRACKET|POST|RAIL|bays) [to you]
		^ LEDON how (do|can|could|would|should|might|must|shall) (i|we|one) [best] (word|phrase|put into words|tell you (about|of)|let you know about|speak [to you] (about|of)|talk [to you] about|bring up|ask you about|mention) [the|my|our|a] !(KEPTNAME|STIFF|BRACKET|POST|RAIL|bays) [to you]
		^ LEDON what (do|can|could|would|should|might|may) (i|we|one) (say|tell you|ask|ask you|ask for|enter|type|let you know) (about|of|concerning|regarding|when it comes to|to do with|on) [the|my|our|a] !(KEPTNAME|STIFF|BRACKET|POST|RAIL|bays)
		^ LEDON (what|which) (words|ways|sort of words|kind of words) (do|can|could|should|are there) [you|i|we] [(understand|know|take|use|have)] (for|about|of) [the|my|our|a] !(KEPTNAME|STIFF|BRACKET|POST|RAIL|bays)`},
}
