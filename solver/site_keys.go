package solver

// The keys under which the findings of a Site carry what words need. Package explain puts them into words; nothing is
// computed from them. Lengths are inches, exact; a bay, rail or post is its number.
//
// Work.Note, by where it is made ("Of" is the normal form of what the line is about: "cut bay 1 rail 3", "bay 1", "2x6 192 in"):
//
//	along                        bays, openings and posts as measured, added up
//	closes, opens                a bay's width at two measured heights, the difference
//	rail to rail                 rail face and gap: how far each rail's top is above the last
//	closes each rail, opens …    by how much from one rail to the next
//	pair of brackets             2 × bracket thickness
//	width that counts            the width that counts for a square-ended rail, where it is not simply a measured one
//	rail to cut                  that width less the brackets, less the fit
//	play, play at each end       a rail's room less its length; half of it
//	no room for a rail           false: the bay less brackets and fit, against one mark of the tape
//	stiffener to cut, no stiffener left
//	                             top of the top rail less the bottom gap; the second is false: less than a mark of the tape
//	stiffener spacing            the bay shared out among its stiffeners
//	post to cut, no post left    height over its own floor less the base; the second is false: nothing is left
//	cap to cut                   the board on top, between the posts
//	bracket hole                 bottom gap + rails and gaps below + the rail + the bracket's reach
//	spacer errs                  gaps above the bottom rail × how far the block is off: where the top rail ends up
//	out of one board             pieces, the kerfs between them and the trim
//	fits the board               that sum against the board
//	two together                 true: the two shortest pieces and a kerf are over the longest board
//	boards to buy                pieces less the boards at hand, where each piece takes a board
//	pieces and kerfs             all pieces and a kerf for each
//	one board fewer holds        boards less one × (board + kerf − trim), and the same of all that is at hand
//	more than that               true: the former is over the latter
//	charged in all               what all pieces are charged in one case of the proof
//	less the fees                the same less what the case's limits cost, plus what they give
//	spare share                  the share of the boards bought, before rounding up
//	brackets, screws, bracket screws, stiffener screws, post bases, post caps, as told
//	                             the count of that hardware
//	less what is at hand         count still to buy
//	boxes hold enough            true: the boxes bought against the count
//	screw stays inside           screw < stiffener + rail; false in a conflict
//	screw has a length           false: the screw against 0
//	amount, total                count × price; the sum of the amounts
//	within budget                total ≤ budget; false in a conflict
//	left of the budget, over budget
//	longer than any board        false: piece (and trim) against the longest board
//	boards missing, boards at hand
//	                             false: boards that are missing; boards there are
//	faces and ends               area of pieces alike, square inches
//	all faces, square feet       the area of all; ÷ 144
//	smooth wood least/most, rough wood least/most, coverage told least
//	                             coats × area ÷ coverage, gallons; From is the source
//	base center                  an added post's near face + half its face
//	anchor reaches               anchor less thread
//	hole stays in the slab, hole comes out below
//	                             hole < slab, or hole ≥ slab
//	two thirds of the slab, slab less 4
//	                             the greater is the deepest an anchor may reach without product tests
//	deep enough a slab, slab too thin
//	                             hole ≤ the greater of the two, or hole > it: either is true as it stands
//	slab that would do           the hole × 3/2
//	least edge, least spacing    8 and 6 anchor diameters (from memory)
//	far enough from the edge, edge too near
//	                             edge ≥ least edge, or edge < it
//	edge for full hold           the hole × 3/2
//	hold near the edge           share of the full hold: 7/10 + 3/10 × edge ÷ edge for full hold
//	came out                     a piece's length less what it is short
//	play with all cut to this    the loosest rail's room less that length
//
// Fact.Key, with what stands in Names and Nums:
//
//	measured bay        [statement] [bay, planned, measured lowest]: what was measured outranks what was planned
//	measured opening    [statement] [opening, planned, measured]
//	span missed         [sum along the wall, span, difference]: within the inch that is not asked back
//	closes, opens       [bay, by, over this height]
//	tightest at         ["top" | "bottom" | "across" | "here and there"] [bay]: across is one end above and one below
//	ends square         [bay, most that an end is out over a face, tape]
//	bevel               ["left" | "right"] [bay, rail, over the face, tape marks, degrees to a tenth, 1 outward going up or −1]
//	taken as plumb      ["left" | "right"] [bay]: of this post nothing was told
//	width guessed       [bay, rail, rail, …]: beyond what was measured, on the same line
//	play                [bay, rail, play, play at each end]
//	rail is up          [rail]
//	not counted         ["fit" | "spare" | "trim"] [what is common: inches, for spare percent]
//	stiffener marks     [bay, center line, …] from the bay's left
//	level floor         nothing was said of the floor
//	floor falls         [how much lower the floor lies at the right end post, bottom gap at the left one, at the right one]
//	tape a board        [rail size] [face]: before marks are given, hold a tape to one board
//	worst mark          [how far the worst mark lies from the tape]
//	spacer under        [bottom gap, block, how much the block is too large]
//	spacer              [gap, block, how much the block is too large]
//	spacer of several   [gap, block, how much too large, how many gaps]
//	pole                [post, "underside" | "top" | "hole"] [rail, exact, to the tape]
//	plan                [size, "cost" | "length", "proven" | "not proven"] [boards bought, length bought, boards from those at hand,
//	                    boards at least, length at least, cost, cost at least]; the last two with prices only
//	one board at least  [size] [longest piece]: one board is bought, and none that holds the longest piece is cheaper
//	fault               [what, size]: a plan or a proof that does not check, to be reported
//	one piece a board   [size] [pieces, longest board]: with "two together" the whole proof
//	room for no fewer   [size] [boards, longest board]: with "more than that" the whole proof
//	proven at least     [size, "cost" | "length" | "boards"] [bound, cases]: Answer.Buying carries the whole proof
//	case                [size, "at most" | "at least"] [case, so many, n, n board lengths, then length and count of pieces a load holds]
//	charge              [size, goal] [case, length, count, charge of one]
//	case by sums        [size, goal] [case]: what the boards' prices or lengths can add up to closes it
//	told at hand        something was told to be there already, whether the list has it or not
//	too short at hand   [size] [boards, length, length needed]: boards at hand that hold none of the pieces, where others are bought
//	spare               [size] [boards, length]
//	no spare on sale    [size] [boards]
//	no price            [item, …]: not in the cost
//	within budget       [what changes, a normal form] [cost, left of the budget]: one of the ways
//	too long            [piece, size] [length, longest board, board needed, pieces of that bay and kind that are too long]
//	bay that would do   [bay, width]: the widest whose rails come out of the longest board
//	board that would do [size] [length]: the shortest common one
//	no common board     [size] [length needed]
//	price missing       [size] [length]: this board would do, and has no price where others have one
//	boards missing      [size] [boards, length]
//	screws              ["into the post" | "into the rail's end" | "through a stiffener"] [count, length]
//	thickness unknown   [stiffener size, rail size]: the screw could not be held against them
//	anchors as the base asks  [bases]: their count is the base's affair, and is not on the list
//	cap fasteners not counted [caps]
//	smooth wood, rough wood, coverage told
//	                    [source] [square feet, coats, coverage low, high, gallons least, most, liters least, most]
//	size not known      [size]: its area is not counted
//	no added post       anchors were asked for, and there is none to anchor
//	base center         [post, from the left end post, from the right one, half the post's face]; across: on the center line
//	hole                [anchor, its length, thread left, hole's depth from the top of the base]
//	anchor of another size    [anchor, the size whose depth is known]
//	hold near the edge  [source] [edge, edge for full hold, share]
//	short               [bay, rail, length now, play in its own place]
//	would serve         [piece] [its length, to cut off, how many such]
//	serves nothing      [bay, rail, length, play]: the loosest rail, were all cut to this
//	from a leftover     [length, board, left]
//	new board           [length]
//
// Caution.Key, beside those of warn.go:
//
//	posts leaning alike   widths alone do not show posts that lean the same way: hold a level to each
//	stiffeners apart      Facts: [bay, spacing as measured, limit]
//	anchor instructions   no product data: generic minimum; the anchor's own instructions decide
//	base plates           the base's side plates reach up where the lowest bracket sits: turn them away, or pre-drill
//	slab too thin         Facts: [slab, hole, deepest allowed, slab that would do]
//	edge too near         Facts: [edge, least]; from memory
//
// Question.Key, with its one Fact:
//
//	layout first        "missing" [quantity, …]
//	height first        "measured" [statement]: where it was measured is known once the wall's height is
//	no such bay, no such rail, no such opening   [asked for, there are]
//	width not positive  "measured" [statement] [width]
//	neighbors apart     "readings" [statement, statement] [width, width, difference]
//	leans and widths    "readings" [lowest, highest] [change by widths, change by leans, difference]
//	span missed         "readings" [statement, …] [sum, span, difference]; choices: take it into the plan, or forget it
//	slab first          "missing" [quantity, …]
//	prices first        "no price" [item, …]: a budget, and nothing has a price
//	no boards           [size] [longest piece]
//	bad figure          [size, what] [got]
//	no plan             [size, why]
//	short by how much   [statement] [what would be left]
//
// StepOf.Key, in order, with its Facts; Warn is the key of a caution:
//
//	site
//	center line     "span"; "base center" for each post
//	base            "hole start" [1/4]; "hole" and sums where the slab is known, else "slab not known" [quantity, …]
//	anchors         "turns past snug" [3, 5]; "thread left"
//	post up         "post height"; "base height"; "post piece" [post, 0 for all alike; length; count]
//	marks           "board face"; "holes" [post] [hole to the tape, …]
//	measure, measured   "rails": before, and after, measurements were said
//	first cut       "piece" [name, size, ends] [length, 1]: cut one, try it
//	cut             "piece" [name, size, ends] [length, count] for each line of the list
//	seal
//	brackets        "brackets" [count, screws into the end, into the post, their length]
//	bottom rail     "spacer" [bottom gap, to the tape]; "hole" [to the tape]
//	rail by rail    "spacer" [gap, to the tape]; "rails" [how many more]
//	stiffeners      "stiffeners" [count, screw, screws at each rail]; "stiffener marks"
//	cap board, post caps   "caps" [count]
//	touch up
//	clean up
//
// Claim.Slip of HoldQuote: brackets not deducted, one bracket deducted, fit forgotten, post face forgotten, bottom gap
// forgotten, base height forgotten, as high as the wall, hardware left out.
