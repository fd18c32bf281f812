package lexicon

// assortment are words of what can be bought where somebody lives: who sells it, in which lengths, what it costs now.
var assortment = []Entry{
	{Kind: Sell, Key: "sell", Ways: `
		SELLER [(down|up|over|out|around|right)] [(here|there|locally|in town|in my town|in our town|near (me|us|here)|down the (road|street)|up the (road|street)|across town|next door|(on|at) the corner|by the highway|on the (highway|corner|road|street|main road)|in the (next town|village|city|valley))] [ONLYWORD] SELLS [ONLYWORD] [(it|them|(their|his|her|its) LUMBER|LUMBER)] [(in|as)] [either]
		SELLER [(down|up|over|out|around|right)] [(here|there|in town|near (me|us|here)|down the (road|street)|up the (road|street)|across town|next door|(on|at) the corner)] [ONLYWORD] (has|keeps) [ONLYWORD]
		(SELLER|he|she|they|we|you) [ONLYWORD] SELLS (it|them|(their|his|her|its|our|your) LUMBER|LUMBER) [ONLYWORD] (in|as) [either]
		SELLER [ONLYWORD] (keeps|keep|has) (it|them|(their|his|her|its|our|your) LUMBER|LUMBER) [ONLYWORD] in [either]
		(their|his|her) LUMBER [ONLYWORD] (run|runs|go|goes|come|comes) [in] [either]
		(comes|come|SUPPLIED|available) [ONLYWORD] (in|as|at) either
		SUPPLIED [ONLYWORD] (in|as|at)
		(can|could) [ONLYWORD] be (had|got|gotten|found|obtained|BOUGHT) [ONLYWORD] [(in|as|at)] [either]
		(i|we|you|they) [ONLYWORD] (can|could) [ONLYWORD] (get|buy|find|order|have) (LUMBER|it|them) [ONLYWORD] (in|as) [either]
		(any|every|each) (RAIL|stick) [that] (i|we|you|they) [(can|could)] (get|buy|find|sell|carry|have) [(here|around here|locally)] (is|comes|come|are) [(in|as)] [either]
		(all|everything) [that] (i|we|you) [(can|could)] (get|buy|find|lay hands on|lay my hands on|lay our hands on) [hold of] [(here|around here|locally)] (is|are|comes in)
		(there is|there are) (nothing but|only|just) (at|in|on) [the] (SELLER|shelf|rack)`},
	{Kind: Sell, Key: "sell", Ways: `
		PERSON [(at|behind|in) [the] (counter|register|till|desk|yard|store|shop|lumberyard)] [(already|just)] (sold|sells) (me|us)`},
	{Kind: Head, Key: "check", Loose: true, Ways: "PERSON (wants|tried|is trying|are trying|offered|offers|was trying|keeps trying|intends|means) to sell (me|us)\n(i|we) (got|was|were|have been|am|are|am being|are being|been) (quoted|offered) [(at|for)]"},
	{Kind: SellMore, Key: "+=", Ways: `
		another (length|size) [that] [(they|we|you|i|SELLER|he)] [(can|could)] [ONLYWORD] (SELLS|have|has|get|got|buy|keep|keeps) (is|are|:)
		(besides|beyond|apart from|aside from|in addition to|on top of|as well as) (those|these|that|them) [,] (they|we|you|i|SELLER|he) [(can|could)] [ONLYWORD] (SELLS|have|has|get|got|buy|keep|keeps)
		[(LUMBER|ones)] (on|to|onto|in|into) [the] list of (lengths|stock|stock lengths|lumber lengths|what|boards|sizes) [that] [(they|we|you|i|SELLER|he)] [(can|could)] (SELLS|have|has|get|got|buy|keep|keeps)
		[(LUMBER|ones)] (on|to|onto|in|into) [the] (list of (lengths|stock lengths|lumber lengths|available lengths)|stock list)
		(can|could) [now] be (had|got|bought) as well`},
	{Kind: TailFill, Key: "so", Ways: `
		[so] [(please|now)] (count|include|add|put|list|reckon|treat) (those|them|these) [(as|in|with|among)] [(available|stock|on sale|in stock|lengths|stock lengths)] [(too|as well|also)]`},
	{Kind: SellLess, Key: "-=", Ways: `
		(is|are|was|were|got|get|has been|have been|have all been|has all been|all got) [(all|just|already)] (sold|snapped up|snatched up|grabbed|scooped up|cleared out|bought up|taken) [(out|already|this morning|today|yesterday|this week|last week|before i got there|before we got there|to somebody else|to someone else)]
		(are|is) not (sold|stocked|carried|available|made|offered|to be had|on sale|in stock) [(here|anywhere|anymore|any more|any longer|now|at the moment|this week|right now|around here|at present)]
		(can|could) not be (had|got|gotten|found|bought|obtained|ordered) [(here|anywhere|anymore|any more|any longer|now|at the moment|this week|right now|around here|at present)]
		SELLER (has|have) no [more] [(left)]
		(they|we|you|he) (has|have) no more`},
	{Kind: PriceVerb, Key: "price", Ways: `
		(SELLER|he|she|they|clerk|salesman) (asks|ask|is asking|are asking|wants|takes|gets|charges|quotes) [(me|us)] [for]
		(has|have) (gone|come|crept|climbed|jumped|dropped) (up|down) to
		[(that|which)] (set|sets) (me|us|you) back
		to be had (for|at)
		(can|could) be (had|got|gotten|bought) for
		(knocked|marked) down to`},
	{Kind: Item, Key: "post cap", Ways: "(cap|caps) for [the] POST"},
	{Kind: BoxOf, Key: "box", Ways: "for (a|every|each) (box|pack|package|carton) of\n(in|by) (packs|boxes|packages|cartons|tubs|bags) of\n(box|pack|package|carton|bag|tub) containing"},
	{Kind: Fill, Key: "fill", Ways: `
		where (i|we) (live|am|are|work|come from)
		[(in|round|around)] (these parts|our area|this area|our town|my town|my area|our region|this region|our neck of the woods|my neck of the woods|this neck of the woods)
		at (place|store|shop|yard|outlet|lumberyard|depot|mill) [(down|up|over|out|around|right)] (on|at|by|near|around|down|across|in|up|next to) [the] (corner|road|street|town|highway|village|block|hill|station|harbor|river|here|us|me)
		(i|we|PERSON) (phoned|called|rang|asked|visited|tried|went to|drove to|stopped at|stopped by|checked with) [(the|our|my)] SELLER
		(do|does) not make (me|us) buy (everything|it all|all of it|all that|the lot|all of that|all new)
		(found|got|saw|bought) (them|it|those) (at|in) [the] (SELLER|shop in town)`},
}
