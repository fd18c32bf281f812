package guard

import (
	"regexp"

	"saywright/grammar/act"
	"saywright/grammar/hear"
	"saywright/solver"
)

// phrasalOpen are such verbs where they leave open what is meant.
var phrasalOpen = []hear.OpenWay{
	{Looks: changesByItself, Way: regexp.MustCompile(`\b(?:can|could|will|would) you (?:[a-z]+ )?pull off\b`), Ask: hear.OpenQuestion("Shall I take them away, or try as many?", "what if five rails")},
	{Looks: hear.KindOf(act.WhatIf), Way: regexp.MustCompile(`\b(?:done|finished|through|tired of|sick of|bored with|past|over|stopped|quit|finished with|done with|through with|no longer|gave up|given up)(?: [a-z]+ly)? (?:kicking|toying|mulling|weighing|entertaining|debating|flirting|playing|tossing|dreaming|eyeing|thinking|considering|pondering|contemplating|fooling|messing)\b`), Ask: wantedHere},
	{Looks: hear.StockTold, Way: regexp.MustCompile(`\b(?:they|he|she|(?:the|our|my) (?:yard|store|lumberyard|guy|clerk)) (?:have |has |had |just |already |all )*(?:moved|split|swapped in|stack|stacked|pulled|pulled out|put out|like|likes|prefer|prefers|hide|hid|need|needs|used|use|are low on|is low on|raised|lifted|rolled out|threw out|are into|charge for|charges for) `), Not: regexp.MustCompile(`\bfor sale\b`), Ask: hear.OpenQuestion("Is that what they sell?", "they sell 8s, 12s and 16s")},
	{Looks: hear.StockTold, Way: regexp.MustCompile(`\b(?:i|we) (?:am|are|was|were) (?:just |only |still )*(?:[a-z]+ing|stuck|left) (?:[a-z]+ )?(?:a|an|one|this|that|some|two|three|[0-9]+) `), Not: regexp.MustCompile(`\b(?:buying|getting|selling|going|they|yard|store)\b`), Ask: hear.OpenQuestion("Do they sell it, or have you got it?", "they sell 8s, 12s and 16s")},
	{Looks: hear.StockTold, Way: regexp.MustCompile(`\b(?:i|we) (?:[a-z]+ ){1,4}(?:a|an|one) [a-z0-9]+ ?-? ?foot(?:er)?\b`), Not: regexp.MustCompile(`\b(?:buying|buy|get|getting|sells?|they|yard|store|shop|can)\b`), Ask: hear.OpenQuestion("Do they sell it, or have you got it?", "they sell 8s, 12s and 16s")},
	{Looks: hear.StockTold, Way: regexp.MustCompile(`\b(?:is|are|was|were) (?:in|on|under|behind|at|for) (?:the |my |our |his |her )?(?:truck|garage|shed|van|trailer|way|house|barn|driveway|car|porch|basement|pile|home|saw|sawhorses|ground|floor|neighbors?|deck)\b`), Ask: hear.OpenQuestion("Do they sell it, or have you got it?", "they sell 8s, 12s and 16s")},
	{Looks: hear.KindOf(act.State), Way: regexp.MustCompile(`\b(?:i|we|he|she|they) (?:have |had |just |already |once )*(?:made|got) [^,.;?]* (?:to )?work(?: once| before| already| then| fine)?(?: [.!])*$`), Ask: wantedHere},
	{Looks: hear.StockTold, Way: regexp.MustCompile(`^(?:(?:well|so|and|but|oh) )*(?:i|we) (?:have |just |already |once )*(?:used|took|found|split|bought|brought|threw out|sold|measured|went with|am using|like|am after|prefer|settled on) `), Not: regexp.MustCompile(`\b(?:they|yard|store|shop|sell|sells|at the)\b`), Ask: hear.OpenQuestion("Do they sell it, or have you got it?", "they sell 8s, 12s and 16s")},
	{Looks: hear.StockTold, Way: regexp.MustCompile(`\b(?:footers?|eights|tens|twelves|fourteens|sixteens|eighteens) (?:are|is) (?:dear|long|low|running low|fine|good|great|better|all right|all right|ok|okay)(?: [.!])*$`), Ask: hear.OpenQuestion("Is that what they sell?", "they sell 8s, 12s and 16s")},
	{Looks: valued, Way: regexp.MustCompile(`\bneeds? not (?:be|stay|get|go|come|measure)\b.*\b(?:under|over|below|above|less|more|least|most)\b`), Ask: wantedHere},
	{Looks: hear.KindOf(act.Ask), Way: regexp.MustCompile(`\bhow deep (?:in )?(?:am|are|was|were) (?:i|we)\b`), Ask: hear.OpenQuestion("Is that what it will cost?", "what will it cost", "ask cost")},
	{Looks: hear.KindOf(act.Compare), Way: regexp.MustCompile(`\bhow (?:does|do|will|would) (?:it|this|that|the wall|everything|things) (?:look|appear|seem) (?:from|in|to|at|on)\b`), Ask: hear.OpenQuestion("Shall I draw it?", "show me the drawing", "ask drawing")},
	{Looks: hear.Stated(solver.ScrewLength), Way: regexp.MustCompile(`\b(?:[0-9]+|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|twenty|thirty|forty|fifty|sixty|dozen) (?:more |good |new |of the |of those |wood |deck |coated |extra )*screws\b`), Not: regexp.MustCompile(`/ [0-9]+ screws\b|\b(?:half|quarter|quarters|eighth|eighths|long|length|inch|inches)\b`), Ask: hear.OpenQuestion("How long are the screws?", "3 inch screws")},
	{Looks: hear.Stated(solver.SlabThickness), Way: regexp.MustCompile(`\b(?:flagstones?|pavers?|flags|flagging|tiles?|tiling|setts?|cobbles?|cobblestones?|decking|bricks?|boards?)\b`), Not: regexp.MustCompile(`\b(?:slab|concrete|pad)\b`), Ask: hear.OpenQuestion("Is that how thick the slab is?", "slab 4 thick")},
	{Looks: func(a act.Act) bool { return a.Kind == act.State || a.Kind == act.Check }, Way: regexp.MustCompile(`\b(?:he|she|they) (?:is|are|was|were) (?:[a-z]+ly )?(?:sticking|staying|living|working|holding|running|building|making do|putting up|struggling|wrestling|stuck|fiddling|toying) (?:with|to|by|at|from|for|on) (?:a|an|his|her|their) `), Ask: wantedHere},
	{Looks: hear.StockTold, Way: regexp.MustCompile(`\bfind (?:two|three|four|five|six|seven|eight|nine|ten|[0-9]+) ` + hear.BoardsOf + `(?: [.?!])*$`), Ask: hear.OpenQuestion("How many rails is the wall to have?", "six rails")},
	{Looks: hear.Stated(solver.RailSize), Way: regexp.MustCompile(`\b(?:want|wants|need|needs|like|going|have|had|got|able|ready|plan|planning|hope|hoping|trying|try) to buy `), Not: regexp.MustCompile(`\b[1-8] ?(?:x|by) ?[1-9]\b|\b(?:one|two|four) by `), Ask: hear.OpenQuestion("How many rails is the wall to have?", "six rails")},
	{Looks: hear.KindOf(act.Open), Way: regexp.MustCompile(`\b(?:bring|brings|brought|bringing) up (?:two|three|four|five|six|seven|eight|nine|ten|[0-9]+) ` + hear.BoardsOf + `\b`), Ask: hear.OpenQuestion("What shall I do with them?", "six rails")},
}
