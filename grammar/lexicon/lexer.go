package lexicon

import "sync"

// Vocab compiles the tables once, at the first line.
var Vocab = sync.OnceValue(func() *Vocabulary {
	return Compile(Classes,
		courtesies,
		safetyAsked,
		queries, soundings, heads, fills, amounts,
		questions, callings, commands, Parts, relations,
		trade, reasons, inquiries, lessons, asides,
		claims, orders, trials, biddings, wishes,
		turns, rethought, stuck, inhand, places, sells,
		wonders, whys, saids, idioms, tryouts,
		hearsay,
		supposed,
		tryingOut,
		attributed,
		counter, classroom,
		atEase,
		homely,
		bench,
		postsAndBays,
		rowsAndRacks,
		reports,
		fickle,
		uniform, onsite, atThePost,
		lookedOver,
		stacks,
		assortment, takenIn, spendings,
		ironwork, sawing, walkthroughs,
		tableTalk,
		reviewed,
		asksOfAll)
})
