package phrase

import "slices"

// Op is what a step of a pattern looks for.
type Op uint8

// The kinds of step.
const (
	opDone Op = iota
	opWord
	opAny    // any one word
	OpFigure // a length, or a bare number
	opNumber // a number of one word
	OpSize   // a lumber size
	opPrice
	opSome  // a few words without a figure
	opRest  // anything up to the end of the sentence
	opBegin // of a clause
	opEnd
	opLineBegin
	opLineEnd
	opChoice // only while a pattern is taken apart
	opFork   // next, or else or
	opOpen   // a piece that is kept begins
	opClose
)

var opsWritten = map[string]Op{"#": OpFigure, "##": opNumber, "@": OpSize, "£": opPrice, "_": opAny, "*": opSome, "..": opRest, "^": opBegin, "$": opEnd, "^^": opLineBegin, "$$": opLineEnd}

// step is a state of a pattern.
type step struct {
	op       Op
	keep     uint8
	words    *WordList
	next, or *step
}

// starts gathers the words that a pattern may begin with, "#" for a figure and "_" for any word.
func (s *step) starts(all map[string]bool) {
	switch s.op {
	case opWord:
		for _, w := range s.words.words {
			all[w] = true
		}
	case OpFigure, opNumber, OpSize, opPrice:
		all["#"] = true
	case opFork:
		s.next.starts(all)
		s.or.starts(all)
	case opBegin, opLineBegin, opOpen:
		s.next.starts(all)
	default:
		all["_"] = true
	}
}

// first are the marks of the words with which a step may go on, second those of the words behind them.
func (s *step) first() marks {
	switch s.op {
	case opWord:
		return s.words.marks
	case opFork:
		return s.next.first().with(s.or.first())
	case opBegin, opLineBegin, opOpen, opClose:
		return s.next.first()
	}
	return anyMark
}

func (s *step) second() marks {
	switch s.op {
	case opWord:
		return s.next.first()
	case opFork:
		return s.next.second().with(s.or.second())
	case opBegin, opLineBegin, opOpen, opClose:
		return s.next.second()
	}
	return anyMark
}

// steps are those of a book, made many at a time: they lie side by side.
type steps []step

func (b *steps) of(s step) *step {
	if len(*b) == cap(*b) {
		*b = make([]step, 0, 512)
	}
	*b = append(*b, s)
	return &(*b)[len(*b)-1]
}

// link makes steps of parts, with what comes behind them.
func (b *steps) link(parts []phrasePart, then *step) *step {
	for _, p := range slices.Backward(parts) {
		then = b.linkPart(p, then)
	}
	return then
}

func (b *steps) linkPart(p phrasePart, then *step) (s *step) {
	switch {
	case p.op == opChoice:
		behind := then
		if p.keep > 0 {
			behind = b.of(step{op: opClose, keep: uint8(p.keep), next: then})
		}
		for _, c := range slices.Backward(p.choices) {
			if one := b.link(c, behind); s == nil {
				s = one
			} else {
				s = b.of(step{op: opFork, next: one, or: s})
			}
		}
		if p.keep > 0 {
			s = b.of(step{op: opOpen, keep: uint8(p.keep), next: s})
		}
	case p.keep > 0 && (p.op == opSome || p.op == opRest):
		s = b.of(step{op: opClose, keep: uint8(p.keep), next: then})
		s = b.of(step{op: p.op, next: s})
		s = b.of(step{op: opOpen, keep: uint8(p.keep), next: s})
	default:
		s = b.of(step{op: p.op, words: p.words, keep: uint8(p.keep), next: then})
	}
	if p.optional {
		s = b.of(step{op: opFork, next: s, or: then})
	}
	return s
}
