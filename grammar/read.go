package grammar

import (
	"slices"
	"strings"
	"unicode/utf8"

	"saywright/solver"
)

// longestLine is the most runes that a line may have; nobody says more in one breath, and reading grows with the square of it.
const longestLine = 1200

// setPlain are the steps that set a line plain before any of it is read, in their order: each knows one turn of phrase.
var setPlain = []func([]atom) []atom{
	plusParts,
	introduced,
	postsApart,
	shortAtEnds,
	whoCannot,
	withoutDeniedReason,
	staysWithin,
	clientele,
	wallMust,
	plainly,
	unforgotten,
	pointlessMore,
	neitherOf,
	neitherSide,
	questionsParted,
	dictated,
	shortNotes,
	unitForAll,
	piecesTogether,
	lyingAbout,
	spokenTotals,
	spokenPrices,
	sharedPrice,
	withoutBadOnes,
	railsInTurn,
	pricedTogether,
	inPlainOrder,
	swapped,
	learnedAndChecked,
	furtherPieces,
	figuresByEar,
	feetDashed,
	lookedAgain,
	fixBehind,
	intoSheet,
	plainOnes,
	ofPosts,
	nowInstead,
	sumSaid,
	admits,
	notedPlainly,
	askedMeanwhile,
	asksAndShows,
	phrasedPlain,
	toBuy,
	rowsMeant,
	asPeoplePutIt,
	endsBehind,
	exceptFirst,
	yardPlain,
	roundabout,
	begged,
	asManyAs,
	weHave,
	closeDenials,
	noTwo,
	onTheFloor,
	whateverItIs,
	beforeTheyDo,
	askedPlainly,
	soDoI,
	soThatIs,
	onBlocks,
	inTheRange,
	mustClear,
	joinedNumbers,
	likeTheBoards,
	nearFloor,
	wantsForAll,
	wouldChange,
	wereTo,
	takeFrom,
	passedOn,
	siteWords,
	siteTold,
}

// Read reads a line as a person says it.
func Read(line string, c Context) Reading {
	if utf8.RuneCountInString(line[:min(len(line), 4*longestLine+4)]) > longestLine {
		return askedBack(longestLine, "Please say it in shorter pieces.", "gap 2-1/2")
	}
	letters, bad := foldLine(line)
	if bad >= 0 {
		return askedBack(bad, "Some of that is not text. Can you type it again?", "gap 2-1/2")
	}
	if told, ok := answersPending(line, c); ok {
		return told
	}
	if acts, ok := answer(line, c); ok {
		return Reading{Acts: acts}
	}
	if q := whichNumber(line, c); q != nil {
		return Reading{Ask: q, Own: true}
	}
	if acts, ok := readNormal(line, c); ok {
		return Reading{Acts: acts}
	}
	if told, ok := otherSide(line, c); ok {
		return told
	}
	if told, ok := leanToward(line, c); ok {
		return told
	}
	if told, ok := triesStockOn(line, c); ok {
		return told
	}
	if q := answersNothing(line, c); q != nil {
		return unlessSettled(Reading{Ask: q}, line, c)
	}
	atoms := split(letters)
	said := textOf(atoms)
	if r, ok := thereAlready(line, said, atoms, c); ok {
		return r
	}
	if r, ok := openingInBay(line, said, atoms, c); ok {
		return r
	}
	return withLostQuestions(line, atoms, c, reckonedFromThing(readSpoken(line, atoms, c), atoms))
}

// readSpoken reads a line that is no normal form and answers no question.
func readSpoken(line string, atoms []atom, c Context) Reading {
	if r, ok := readOnward(line, atoms, c); ok {
		return r
	}
	if r, ok := readContrasted(line, atoms, c); ok {
		return r
	}
	if r, ok := readNotAsked(line, atoms, c); ok {
		return r
	}
	if r, ok := readSeveralUndone(line, atoms, c); ok {
		return r
	}
	if r, ok := readShownIn(line, atoms, c); ok {
		return r
	}
	return readTwice(line, atoms, c, readInParts(line, atoms, c, readKindred(line, atoms, c, readHeld(line, atoms, c))))
}

// readHeld reads a line, or what is left of it, and asks back where the rest of what it says turns what was read.
func readHeld(line string, atoms []atom, c Context) Reading {
	atoms = deviates(atoms)
	said, as := textOf(atoms), slices.Clone(atoms)
	r := readPlainly(line, atoms, c)
	r.Acts = wallBehind(onlyTopic(r.Acts, as), as)
	r = ofElsewhere(r, said)
	for _, guard := range []func(Reading, []atom) Reading{adoptsClaims, turnedBeside, ofOtherTrade, otherThingAdded, heDoes, toldWhatIsKnown, offWanted, triesOneOfSeveral} {
		r = guard(r, as)
	}
	return unlessSettled(asWellOrTwo(newSize(shownIn(r, as), said, c), said), line, c)
}

// unlessSettled takes the choice of a question that was answered when this very line was asked back about.
func unlessSettled(r Reading, line string, c Context) Reading {
	if r.Ask == nil {
		return r
	}
	for _, form := range r.Ask.Choices {
		if acts, ok := parsed(form, line); ok && slices.Contains(c.Settled, form) {
			return Reading{Acts: acts}
		}
	}
	return r
}

// readPlainly reads a line that has been cut into atoms, and is no normal form.
func readPlainly(line string, atoms []atom, c Context) Reading {
	atoms = ownWall(atoms, c)
	for _, set := range setPlain {
		atoms = set(atoms)
	}
	if len(atoms) == 0 {
		return askedBack(0, "What would you like to build?", "wall 48 high, gap 2-1/2")
	}
	if told, ok := readWithoutAsides(atoms, c); ok && !c.deep {
		return told
	}
	if told, ok := readJudged(atoms, c); ok {
		return told
	}
	if short, ok := shortly(atoms, c, true); ok && !c.deep {
		return short
	}
	whole := atoms
	led, _ := pastLead(atoms)
	left, ok := withoutSizes(led)
	if ok && len(left) == len(led) {
		left = atoms
	}
	if !ok {
		return qComesTo.askAt(0)
	}
	atoms = left
	plain, _ := pastLead(atoms)
	if back, ok := readTakenBack(pastTail(plain), c, true); ok {
		return back
	}
	r, atoms := readLed(atoms, c)
	if r.Ask == nil || c.deep {
		return r
	}
	if back, ok := readTakenBack(atoms, c, false); ok {
		return back
	}
	asked := r
	if r = reread(atoms, c, r); r.Ask == nil && !losesClause(atoms, c, r) {
		return asIfTyped(whole, c, r)
	} else if r.Ask == nil {
		return asked
	}
	if told, ok := readRunOn(line, whole, c); ok {
		return told
	}
	if short, ok := shortly(atoms, c, false); ok {
		return short
	}
	if onward, ok := wentOn(line, c, r); ok {
		return onward
	}
	r, _ = replied(line, c, r)
	return r
}

// danglers drops the "to" or "from" that a question may end in: "what do I cut the boards to?".
func danglers(in []token) []token {
	n := len(in)
	for n > 0 && (in[n-1].kind == kStop || in[n-1].kind == kQMark) {
		n--
	}
	if n == 0 || in[n-1].kind != kTo && in[n-1].kind != kFrom {
		return in
	}
	for i := range in[:n-1] {
		if k := in[i].kind; k == kWh || k == kQuest || k == kWhere || k == kHead && in[i].key() == string(Why) {
			return append(in[:n-1:n-1], in[n:]...)
		}
	}
	return in
}

// readAtoms reads a line that has been cut into atoms.
func readAtoms(atoms []atom, c Context) Reading {
	s := speech{c: c, metric: c.Metric}
	tokens := plusJoins(oncePart(pleased(atoms, lex(atoms, c))))
	if c.Teaching {
		if a, ok := figures(tokens, s); ok {
			return Reading{Acts: []Act{a}}
		}
	}
	tokens = dropReasons(dropPrefaces(withoutRight(tokens, c)))
	for i := range tokens {
		t := &tokens[i]
		if (t.kind == kNum || t.kind == kSize) && t.amt.bad != "" {
			q := badNumber(t)
			q.At = &t.at
			return Reading{Ask: &q}
		}
	}
	for i := range tokens {
		if t := &tokens[i]; t.kind == kUnknown {
			q := notKnown(t)
			return Reading{Ask: &q}
		}
	}
	if t := tellsOver(tokens); t != nil {
		return qMeant.askAt(t.at)
	}
	s.mixed, s.inCentimeters = c.mixed || c.Metered && !saidInInches(tokens) || saidInMetric(tokens), worksInCentimeters(tokens)
	tokens = danglers(tokens)
	said := endOfTalk(atoms)
	for n := len(tokens); n > 1 && tokens[n-1].kind == kComma && tokens[n-1].at >= said; n-- {
		tokens = tokens[:n-1]
	}
	if n := len(tokens); n > 0 && tokens[n-1].end == said {
		switch t := &tokens[n-1]; t.kind {
		case kChange, kAnd, kOr, kBut, kTo, kFrom:
			if t.kind == kChange && t.text != "+" {
				break
			}
			if t.text == "yet" && n > 1 {
				tokens = tokens[:n-1] // "have you got the gap yet"
				break
			}
			return qWordWhat.askAt(t.at, quoted(t.text))
		}
	}
	list, err := items(tokens)
	if err != nil {
		return qMeant.askAt(0)
	}
	if it := spokenOf(c, tokens); it != nil {
		s.carry.name = it
		s.carry.kind = solver.KindOf(it.Quantity)
		s.carry.wall = it.Wall
	}
	s.sentences(list)
	s.perform()
	if s.ask != nil {
		return Reading{Ask: s.ask}
	}
	s.endPosts()
	s.placesStated()
	s.helpOnce()
	if len(s.acts) == 0 {
		return qWhatToKnow.askAt(0)
	}
	return leftOpenToGuess(factsStated(airing(together(Reading{Acts: s.acts}, atoms), atoms), atoms), atoms)
}

// figures reads bare numbers as the answer to a teacher.
func figures(tokens []token, s speech) (Act, bool) {
	a := Act{Kind: Figure}
	for i := range tokens {
		switch t := &tokens[i]; t.kind {
		case kNum:
			if t.amt.bad != "" || t.amt.unit == percent || t.amt.unit == money {
				return a, false
			}
			v := solver.Value{Num: t.amt.val}
			switch t.amt.unit {
			case inches, feet:
				v.Unit = solver.Inch
			case metric:
				v.Unit = solver.Millimeter
			}
			a.Figures = append(a.Figures, v)
			a.End = t.end
		case kAnd, kComma, kStop, kQMark, kIt, kFill, kAbout:
		default:
			return a, false
		}
	}
	return a, len(a.Figures) > 0
}

// dropReasons leaves out why something is wanted ("so the stroller fits"), up to the next break, where it names no
// number and says something that is not known.
func dropReasons(in []token) []token {
	out := make([]token, 0, len(in))
	for i := 0; i < len(in); i++ {
		if in[i].kind == kReason || in[i].kind == kUnknown && in[i].text == "as" && i > 0 && in[i-1].kind == kComma && onlyUnknown(in[i+1:]) {
			if end := reasonEnd(in, i); end > i {
				i = end - 1
				continue
			}
			f := strings.Fields(in[i].text)
			if in[i].kind == kReason && len(f) > 1 && denies(f) {
				in[i].kind, in[i].found = kUnknown, nil // "so nobody sees more than three inches": what it denies is not left out
				out = append(out, in[i])
				continue
			}
			if in[i].kind == kReason && len(f) > 1 && i+1 < len(in) {
				in[i+1].before = strings.TrimSpace(f[len(f)-1] + " " + in[i+1].before) // "so we are building it 40 high" asks nothing
			}
			continue
		}
		out = append(out, in[i])
	}
	return out
}

// denies reports whether a word of denial is among words.
func denies(words []string) bool {
	for _, w := range words {
		switch w {
		case "no", "not", "nobody", "nothing", "none", "never", "nor", "neither":
			return true
		}
	}
	return false
}

// onlyUnknown reports whether nothing but words that no table knows stands up to the next break.
func onlyUnknown(in []token) bool {
	for i := range in {
		switch in[i].kind {
		case kStop, kQMark, kComma:
			return i > 0
		case kUnknown, kIt:
		default:
			return false
		}
	}
	return len(in) > 0
}

func endsInPronoun(text string) bool {
	words := strings.Fields(text)
	switch words[len(words)-1] {
	case "they", "it", "we", "i", "you", "he", "she", "nobody", "everyone", "people":
		return true
	}
	return false
}

// reasonEnd finds where a reason ends; it returns i where it may hold something that counts.
func reasonEnd(in []token, i int) int {
	unknown, part := false, false
	for j := i + 1; j < len(in); j++ {
		if in[j].kind == kQuest && j == i+1 && strings.HasSuffix(in[i].text, " of") && (j+1 == len(in) || in[j+1].kind == kComma || in[j+1].kind == kStop || in[j+1].kind == kQMark) {
			unknown = true // "on account of the view" shows nothing
			continue
		}
		if f := strings.Fields(in[j].before); j == i+1 && len(f) > 0 && wishing[f[0]] {
			unknown = true // "so I want sicks boards" wishes
		}
		switch in[j].kind {
		case kStop, kQMark, kComma:
			if unknown && part {
				return i // a misspelled number may hide in it
			}
			return j
		case kUnknown:
			unknown = unknown || !foreign(&in[j]) || words().numberish(in[j].text)
		case kPart, kLoc:
			part = true
		case kCmd:
			if f := strings.Fields(in[j].before); len(f) > 0 && (f[len(f)-1] == "will" || f[len(f)-1] == "can" || f[len(f)-1] == "would" || f[len(f)-1] == "to") {
				continue // a verb of the reason, no command
			}
			if j == i+1 && endsInPronoun(in[i].text) {
				continue // "so they drop in"
			}
			if j > i+1 && in[j-1].kind == kUnknown && in[j-1].text != "please" {
				continue // "so the helpers quit early" tells of others
			}
			return i
		case kQuest, kWh:
			if in[j].kind == kWh && in[j].text == "count" && helping[lastWord(in[j].before)] != "" {
				continue // "so I can count my brackets"
			}
			if strings.HasPrefix(in[i].text, "because") && strings.HasSuffix(in[j].before, "that is") {
				continue // "because that's how many brackets came"
			}
			return i
		case kNum, kSize, kHead, kRel, kGoal, kBest, kUnits:
			return i
		}
	}
	if unknown && part {
		return i
	}
	return len(in)
}

// goodsNamed reports whether words are the name of what is bought, as a normal form writes it.
func goodsNamed(item string) bool {
	switch item {
	case "rails", "bracket", "post base", "post cap", "anchor", "screws":
		return true
	}
	return isSize(item)
}
