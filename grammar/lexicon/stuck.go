package lexicon

// stuck is what people say in front of an answer that tells what will not go: why not, and what would mend it.
var stuck = []Entry{
	{Kind: Cmd, Key: "why that", Loose: true, Ways: `
		(why|how come) [is it that] (it|this|that|mine) (will|does|would|can|could|did|is) not [(going to|even)] (fit|work|go|close|possible|working|fitting|add up|come out|pan out)
		(why|how come) (will|does|would|can|could|did|is) not (it|this|that|mine) [(going to|even)] (fit|work|go|close|possible|working|fitting|add up|come out|pan out)
		(why|how come) (will|does|would|can|could|did|is) (it|this|that|mine) not [(going to|even)] (fit|work|go|close|possible|working|fitting|add up|come out|pan out)
		(i|we) do not (get|see|understand|know) why (it|this|that) (will|does|would|can|could|is) not (fit|work|go|close|possible|add up|come out)
		why (not|no|the no)
		why is (it|this|that) (blocked|stuck|impossible|refused|a no|not possible|not allowed)
		what is (wrong|the (matter|trouble|problem|issue|hold up|holdup|catch|snag|hitch|conflict|clash|sticking point|reason)) [(with|about|for) (it|this|that|me)] [(then|here|now)]
		what (is|stands|gets) in the way [(of (it|that|this))] [(then|here|now)]
		what (is (stopping|blocking|preventing|hindering|holding up|in conflict with)|stops|blocks|prevents|hinders|breaks|spoils|kills) (it|this|that|me|us) [(then|here|now|from (fitting|working|going))]
		which (rule|limit|thing|part) (is it|is that|(stops|blocks|breaks|kills|spoils|is stopping|is blocking|prevents|is in the way of|says no to) [(it|this|that|me|us)]|is in the way|says (no|so)|does (it|that|this) break)
		what rule (is it|is that|(stops|blocks|is stopping|is blocking) [(it|this|that|me)]|is in the way|says (no|so)|does (it|that|this) break)
		where does (it|this|that) (fail|clash|go wrong|break|break down|get stuck|fall down|fall apart|pinch)`},
	{Kind: Quest, Key: "options", Loose: true, Ways: `
		how (can|do|could|would|might|should) (i|we|you|one) (make|get) (it|this|that|them|things|everything) [(all|to)] (fit|work|go|close|come out)
		how (can|do|could|would|might|should) (i|we|you|one) (mend|solve|get around|get round|get past|sort out|rescue|remedy|cure) (it|this|that) [then]
		how (can|do|could|would|might|should) (i|we|you|one) (fix (it|this|that)|put (it|this|that) right)
		how (can|do|could) (i|we) get out of (this|that|it)
		how (can|could|might) (it|this|that) be (fixed|mended|solved|made to (fit|work))
		what (would|will|can|could|might) (fix|mend|solve|cure|remedy|rescue|sort out|get around|get round) (it|this|that) [then]
		what (would|will|can|could|might) make (it|this|that|them) [to] (fit|work|go|possible|come out)
		what (can|could|should|must|do|would) (i|we) [(have to|need to)] change [(to|so) (make (it|this|that) (fit|work|go)|get (it|this|that) to (fit|work|go)|it (fits|works|goes|comes out))] [then]
		what (has|needs|would have|will have) to (give|change|go) [(to|so|for) (make (it|this|that) (fit|work|go)|it (fits|works|goes)|it to (fit|work))]
		what can (i|we) do about (it|this|that)
		(is there|are there) [(a|any|some|no)] (way|ways) (out|around|round|past) [(of)] [(it|this|that|here)]
		(is there|are there) [(a|any|some|no)] (way|ways) to (fix|mend|solve|cure|rescue) (it|this|that)
		[is there] any (way|ways) (out|around|round|past) [(of)] [(it|this|that|here)]
		what is the (least|smallest|minimum|cheapest|easiest|simplest) (change|fix|way out|mend|remedy|thing to change) [(here|then|that would (fix|mend) it|to make it (fit|work))]`},
}
