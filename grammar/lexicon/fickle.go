package lexicon

// fickle are words of those who change their minds: what they stay with after all, and what they leave out of account.
var fickle = []Entry{
	{Kind: Units, Key: "customary", Loose: true, Ways: `
		[(let us|i will|we will|i would rather|we would rather|better|rather|just)] (stay|stick|remain|go on|carry on|continue|keep on|keep it|leave it|keep everything|keep things|keep going|hold) [(with|in|to|on|working in|using)] [(good|plain|old|regular|the)] [old] (inches|feet and inches|imperial|feet) [after all]
		(inches|feet and inches|imperial) after all`},
	{Kind: Units, Key: "metric", Loose: true, Ways: `
		[(let us|i will|we will|i would rather|we would rather|better|rather|just)] (stay|stick|remain|go on|carry on|continue|keep on|keep it|leave it|keep everything|keep things|keep going|hold) [(with|in|to|on|working in|using)] [(good|plain|old|regular|the)] [old] (millimeters|millimetres|metric|mm|centimeters|centimetres) [after all]
		(millimeters|millimetres|metric|mm) after all`},
	{Kind: Cmd, Key: "forget all but", Loose: true, Ways: `
		(never mind|nevermind|disregard|ignore|discard|scratch|strike|cancel|drop|forget|dismiss|scrap|toss|throw out|never you mind) (all|everything|anything|all of that|all that|all of it|the lot|the whole lot|it all|the rest|every bit of it) [(i|we)] [(have|had|ever)] [(just|said|told you|gave you|entered|mentioned|set)] [(so far|before|up to now|until now)] (but|except|except for|save|save for|besides|apart from|other than|aside from|excepting|bar|barring)`},
	{Kind: SellMore, Key: "+=", Ways: "[(so|and|please)] (put|add|bring|throw|drop|stick) (those|them|these) back [(in|on|into it)] [(with|among|to|on) [the] (others|other ones|other lengths|rest|list|stock list)]"},
	{Kind: SellMore, Key: "+=", Ways: "[(so|and|please)] (put|add|throw|count|include) (those|them|these) (in with|to|along with) [the] (others|other ones|other lengths|rest|list|stock list)"},
	{Kind: Fill, Key: "fill", Ways: `
		(i|we) (would|should) be (ever so|ever|really|awfully|terribly|truly|just so|much|more than|extremely|deeply|eternally) (obliged|grateful|glad|happy|thankful|pleased|delighted) (if|to have|to see) [(you|we|i|it|there)] [(could|would|can|used|use|made|make|put|kept|keep|gave|set|did|had|have|were|was|is)]
		(do|please) (forgive|pardon|excuse) (me|us|my asking)
		(i|we) [(do|really)] hope (it|this|that) is not [(too much of)] (a|any|too much) (bother|trouble|nuisance|imposition)`},
	{Kind: Rel, Key: "=", Ways: "(has to|have to|has got to|must|needs to|need to|should|ought to|got to|wants to|want to) (hit|land on|land at|land right at|end up right at|come in at|sit right at|be right at)"},
}
