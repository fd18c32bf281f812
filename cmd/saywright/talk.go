package main

import (
	"context"
	"slices"
	"strings"

	"saywright/explain"
	"saywright/grammar"
	"saywright/solver"
	"saywright/solver/exact"
)

// Talk is one conversation: what stands, what was tried and asked, and the way back. The zero value is a new one
// that keeps no files; newTalk gives it a folder.
//
// A line is carried out on a copy, which takes the place of the conversation once the line is answered. So a line
// that is unclear in one part, or is dropped half way, has changed nothing.
type Talk struct {
	now    standing
	past   []step // the lines that changed something, oldest first
	future []step // the lines undone, next to redo last

	solved  map[string]*solver.Answer // by wall, of now; filled when first needed
	tried   *trial                    // the last what-if
	trying  bool                      // something was tried, and nothing has changed since
	upon    *trial                    // what was tried, where the last line tried it, asked why it is so, for all of it, or for help
	stuck   *trial                    // the last blocked answer and its ways out
	back    *grammar.Act              // what puts back what the last undo took; nil since something else changed
	asked   *asked                    // what the last answer asked back
	open    *grammar.Pending          // the question that waits for an answer in a word
	unheard string                    // the line before, where it was asked back
	last    *remark                   // the last answer that can be asked "why that"
	lesson  *solver.Lesson            // in progress
	lately  []solver.Name             // what the last line spoke of
	held    []solver.Statement        // what was claimed
	wanted  []solver.Name             // what the last answer that was understood asked for
	before  map[string]bool           // defaults and cautions told already
	claims  string                    // claims that the next line may go on from
	stepAt  int                       // steps told by "next" so far

	shelf shelf
	show  func() explain.Options // how texts are laid out now
	today func() string          // the date on a drawing
	write func([]file) error     // puts drawings on the disk
}

// step is one line of the way back.
type step struct {
	said []string // its normal forms
	from standing // what stood before it
	to   standing // and after
}

// trial is what a what-if, a why-not or a check laid over what stands.
type trial struct {
	wall string
	from solver.Book // what it was laid over
	said []solver.Statement
	book solver.Book // from with said
	to   *solver.Answer
}

// asked is a question with its choices, open until the next line.
type asked struct {
	choices []string
	line    string   // what it was asked about, "" where it was asked about what stands
	settled []string // what was chosen already when that line was asked back about
}

// remark is an answer together with what it spoke of.
type remark struct {
	book   solver.Book
	base   *solver.Answer
	answer *solver.Answer
}

// turn is a line carried out: the answer, and the conversation after it.
type turn struct {
	answer *solver.Answer
	next   Talk
}

func newTalk(folder string, show func() explain.Options) *Talk {
	return &Talk{shelf: shelf{folder: folder}, show: show, today: today, write: writeFiles}
}

// Reply answers one line and keeps what it changed.
func (t *Talk) Reply(line string) *solver.Answer {
	return t.keep(t.consider(context.Background(), line))
}

func (t *Talk) keep(done turn) *solver.Answer {
	*t = done.next
	return done.answer
}

// consider works out the answer to a line, and changes nothing of t. A canceled ctx writes no files.
func (t *Talk) consider(ctx context.Context, line string) turn {
	if a := unreadable(line); a != nil {
		t.words(a)
		return turn{a, *t}
	}
	if t.asked != nil && grammar.Declines(line) || t.open != nil && t.open.Question.Key != "dropped" && grammar.Drops(line) {
		return t.askBack(line, "", grammar.Reading{Ask: &solver.Question{Key: "dropped"}}, &asked{})
	}
	if t.asked != nil && len(t.asked.choices) > 1 && grammar.Agrees(line) {
		return t.askWhich(line)
	}
	read, list, joined := t.goesOn(line)
	if !joined {
		read, list = grammar.Read(line, t.context()), line
	}
	open := &asked{line: list}
	if whole := t.chosen(read); whole != nil {
		open = whole
		read = grammar.Read(open.line, t.settling(open.settled))
	}
	read, none := t.withoutAny(line, read)
	if read.Ask != nil || len(read.Acts) == 0 {
		return t.askBack(line, list, read, open)
	}
	read.Acts = t.putsBack(line, read.Acts)
	if none == nil && len(open.settled) == 0 {
		none = t.notTaken(line, read)
	}
	r := &round{talk: *t, ctx: ctx, line: line, spoken: theOne(t.lately), lead: none}
	r.talk.asked, r.talk.unheard = nil, ""
	r.carryOut(read.Acts)
	if r.nothing == nil {
		r.finish(read.Acts)
	}
	if r.nothing != nil {
		return t.nothingDone(line, read, r.nothing)
	}
	a := r.answer(read)
	r.talk.remember(a, &asked{})
	r.talk.keepClaims(list, read)
	return turn{a, r.talk}
}

func (t *Talk) context() grammar.Context {
	c := grammar.Context{
		Metric: t.now.metric(), Metered: t.now.metered(), Subject: theOne(t.lately), Lately: t.lately, Answered: t.last != nil, Tried: t.tried != nil,
		Asked: t.wanted, Claims: t.held, Teaching: t.lesson != nil, Walls: t.now.walls(), Saved: t.shelf.names(),
	}
	if t.asked != nil {
		c.Choices = t.asked.choices
	}
	if t.upon != nil {
		c.TriedStock = slices.ContainsFunc(t.upon.said, func(s solver.Statement) bool { return s.Name.Quantity == solver.Stock })
	}
	if t.stuck != nil {
		c.Ways = len(t.stuck.to.Ways)
	}
	c.Pending, c.Now, c.ManyBays = t.open, t.measures, t.manyBays()
	return c
}

// manyBays reports whether more than one bay was told of the wall at hand, or a post between the end posts that parts it.
func (t *Talk) manyBays() bool {
	return slices.ContainsFunc(t.now.book(t.now.hand).Standing(), func(s solver.Statement) bool {
		return s.Name.Quantity == solver.Bays && s.Op == solver.Eq && exact.Int(1).Less(s.Value.Num) || s.Name.Bay > 1
	})
}

// measures returns what a quantity comes to in the layout that stands.
func (t *Talk) measures(n solver.Name) (exact.Rat, bool) {
	wall := n.Wall
	if wall == "" {
		wall = t.now.hand
	}
	n.Wall = ""
	b := t.now.book(wall)
	if b.Empty() {
		return exact.Rat{}, false
	}
	v, ok := t.base(b).Layout.Value(n)
	return v.Num, ok && v.Word == ""
}

// chosen returns the line that waits for a choice, where this one makes it; nil otherwise. The waiting line is then read
// again as a whole: only one part of it was in doubt.
func (t *Talk) chosen(read grammar.Reading) *asked {
	if t.asked == nil || t.asked.line == "" || read.Ask != nil {
		return nil
	}
	choice := strings.Join(heard(read.Acts), "; ")
	if !slices.Contains(t.asked.choices, choice) {
		return nil
	}
	return &asked{line: t.asked.line, settled: append(slices.Clip(t.asked.settled), choice)}
}

func (t *Talk) settling(settled []string) grammar.Context {
	c := t.context()
	c.Choices, c.Settled, c.Pending = nil, settled, nil
	return c
}

// askBack answers a line that was not understood. The conversation stays, and the line waits for an answer.
func (t *Talk) askBack(line, list string, read grammar.Reading, open *asked) turn {
	next := *t
	q := read.Ask
	if q == nil {
		q = &solver.Question{Key: "nothing said", Example: "wall 48 high, gap 2-1/2"}
	}
	if q.Key == "at hand" {
		q = t.offerAtHand(*q, line)
	} else if forms := grammar.Offer(line, t.context(), q); len(forms) > 0 {
		q = &solver.Question{At: q.At, Key: "offered", Choices: forms, Example: map[bool]string{true: "yes", false: "the first"}[len(forms) == 1]}
		open = &asked{} // a choice is a line of its own: the one that was said cannot be read as a whole
	}
	switch {
	case read.Own:
		open = &asked{}
	case read.Whole != "" && open.line != "":
		open = &asked{line: read.Whole}
	}
	a := &solver.Answer{Said: line, Heard: []string{}, Verdict: solver.Unclear, Ask: q, Facts: taken(read)}
	next.remember(a, open)
	if open.line != "" {
		next.open = &grammar.Pending{Line: open.line, Question: *q}
	}
	if next.unheard = line; saidNothing[q.Key] {
		next.unheard = ""
	}
	next.keepClaims(list, read)
	next.words(a)
	return turn{a, next}
}

// askWhich answers a bare yes to several choices: it takes none, and they stay open.
func (t *Talk) askWhich(line string) turn {
	next := *t
	a := &solver.Answer{Said: line, Heard: []string{}, Verdict: solver.Unclear, Ask: &solver.Question{Key: "which one", Choices: t.asked.choices, Example: "1"}}
	next.remember(a, t.asked)
	next.open = t.open
	next.words(a)
	return turn{a, next}
}

// nothingDone answers a line that was understood and has nothing to act on.
func (t *Talk) nothingDone(line string, read grammar.Reading, q *solver.Question) turn {
	next := *t
	next.claims, next.unheard = "", ""
	a := &solver.Answer{Said: line, Heard: heard(read.Acts), Verdict: solver.Open, Ask: q, Facts: taken(read),
		To: solver.Reply{Kind: "command", Topic: string(read.Acts[0].Kind)}}
	next.remember(a, &asked{})
	next.words(a)
	if len(a.Heard) == 1 {
		next.open = &grammar.Pending{Line: a.Heard[0], Question: *a.Ask}
	}
	return turn{a, next}
}

// remember keeps a question with choices open.
func (t *Talk) remember(a *solver.Answer, about *asked) {
	if a.Verdict != solver.Unclear {
		t.wanted = explain.Wanted(a)
	}
	t.asked, t.open = nil, nil
	if a.Ask != nil && len(a.Ask.Choices) > 0 {
		t.asked = &asked{a.Ask.Choices, about.line, about.settled}
	}
}

// words fills in the texts of an answer.
func (t *Talk) words(a *solver.Answer) {
	a.Metric = a.Metric || t.now.inMillimeters()
	explain.Say(a, t.show())
}

func heard(acts []grammar.Act) []string {
	list := make([]string, len(acts))
	for i, a := range acts {
		list[i] = a.String()
	}
	return list
}

func taken(read grammar.Reading) []solver.Fact {
	var facts []solver.Fact
	for _, w := range read.Taken {
		facts = append(facts, solver.Fact{Key: "taken", Names: []string{w.Was, w.Now}})
	}
	return facts
}

// base returns the answer to what stands for a wall, worked out once.
func (t *Talk) base(b solver.Book) *solver.Answer {
	if a, ok := t.solved[b.Wall]; ok {
		return a
	}
	a := solver.Solve(b)
	next := map[string]*solver.Answer{b.Wall: a}
	for wall, old := range t.solved {
		next[wall] = old
	}
	t.solved = next
	return a
}

// change lets another standing stand; what was solved of a book that stays is kept.
func (t *Talk) change(to standing) {
	kept := map[string]*solver.Answer{}
	for _, b := range to.books {
		if a, ok := t.solved[b.Wall]; ok && slices.Equal(forms(b), forms(t.now.book(b.Wall))) {
			kept[b.Wall] = a
		}
	}
	t.now, t.solved = to, kept
}

// ofStanding is what stands at hand as an answer that can be asked "why that"; nil where nothing stands.
func (t *Talk) ofStanding() *remark {
	b := t.now.book(t.now.hand)
	if b.Empty() {
		return nil
	}
	a := t.base(b)
	return &remark{book: b, base: a, answer: a}
}
