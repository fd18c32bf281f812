package main

import (
	"context"
	"fmt"
	"strings"
	"unicode/utf8"

	"saywright/grammar"
	"saywright/solver"
)

// readLimit is the longest line that is read, in characters: a page of claims pasted as one line is shorter.
const readLimit = 10_000

// unreadable answers a line that cannot be words, nil where it can.
func unreadable(line string) *solver.Answer {
	a := &solver.Answer{Said: line, Heard: []string{}, Verdict: solver.Unclear}
	switch {
	case !utf8.ValidString(line):
		at := utf8.RuneCountInString(line[:firstBad(line)])
		a.Ask = &solver.Question{Key: "not UTF-8", At: &at}
	case utf8.RuneCountInString(line) > readLimit:
		a.Ask = tooMuch(readLimit)
	case strings.TrimSpace(line) == "":
		a.Ask = &solver.Question{Key: "nothing said"}
	default:
		return nil
	}
	return a
}

func firstBad(s string) int {
	for i, r := range s {
		if r == utf8.RuneError {
			if _, size := utf8.DecodeRuneInString(s[i:]); size == 1 {
				return i
			}
		}
	}
	return len(s)
}

func tooMuch(most int) *solver.Question {
	return &solver.Question{Key: "too long", Facts: []solver.Fact{{Key: "most", Nums: counts(most)}}}
}

// tooLong answers a line that was too long for the terminal.
func (t *Talk) tooLong() *solver.Answer {
	a := &solver.Answer{Heard: []string{}, Verdict: solver.Unclear, Ask: tooMuch(lineLimit)}
	t.words(a)
	return a
}

// dropped answers a line that the person dropped while it was worked out.
func (t *Talk) dropped(line string) *solver.Answer {
	a := &solver.Answer{Said: line, Heard: []string{}, Verdict: solver.Unclear, Ask: &solver.Question{Key: "dropped"}}
	t.words(a)
	return a
}

// ponder is consider, and a mistake of ours in it costs one answer and nothing that stands.
func (t *Talk) ponder(ctx context.Context, line string) (done turn) {
	defer func() {
		if wrong := recover(); wrong != nil {
			done = turn{t.ourMistake(line, fmt.Sprint(wrong)), *t}
		}
	}()
	return t.consider(ctx, line)
}

// reply is Reply by way of ponder.
func reply(t *Talk, line string) *solver.Answer { return t.keep(t.ponder(context.Background(), line)) }

// ourMistake says so, with the line to report. It needs no other package: one of them has just failed.
func (t *Talk) ourMistake(line, what string) *solver.Answer {
	text := "That stopped inside the program: a mistake of ours, not yours. Nothing was changed, and all you said stands. " +
		"Please report this line: " + clip(line, 200) + " (" + clip(what, 200) + ")"
	return &solver.Answer{Said: line, Heard: []string{}, Verdict: solver.Unclear, Text: text,
		Ask: &solver.Question{Key: "our mistake", Text: "Say it another way?", Example: string(grammar.Recap)}}
}
