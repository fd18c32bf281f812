package act

import (
	"slices"
	"strconv"
	"strings"

	"saywright/solver"
	"saywright/solver/exact"
)

// Kind says what a person does with a line: states, asks, tries, claims, commands.
type Kind string

// The kinds of act. Each is the word that its normal form begins with, State and Figure excepted.
const (
	State        Kind = "state"
	Ask          Kind = "ask"
	WhatIf       Kind = "what if"
	Why          Kind = "why"
	WhyNot       Kind = "why not"
	Check        Kind = "check"
	Teach        Kind = "teach"
	Take         Kind = "take"
	TakeThat     Kind = "take that"
	Forget       Kind = "forget"
	ForgetAllBut Kind = "forget all but"
	Undo         Kind = "undo"
	Redo         Kind = "redo"
	StartOver    Kind = "start over"
	SetAside     Kind = "set aside"
	Recap        Kind = "recap"
	Save         Kind = "save"
	Open         Kind = "open"
	Compare      Kind = "compare"
	SameAs       Kind = "same as"
	DrawTo       Kind = "draw to"
	PrintTo      Kind = "print to"
	HelpMe       Kind = "help"
	Quit         Kind = "quit"
	Next         Kind = "next"
	ShowAll      Kind = "show it all"
	Tolerance    Kind = "tolerance"
	Figure       Kind = "figure"
)

// Act is one thing that a person does with a line.
type Act struct {
	Kind       Kind
	Statements []solver.Statement // state, tolerance: one; what if, why not, check: all together; forget a limit: that limit
	Name       *solver.Name       // the quantity asked, explained, taught or forgotten
	Names      []solver.Name      // what "forget all but" keeps
	Topic      string             // a table or page that is asked after: "cuts", "layout", …; "that"; "guard"; what of the cautions is asked
	Wall       string             // the wall whose table is asked after; "" is the wall at hand
	As         string             // "csv"
	Units      string             // in which its answer alone is asked for: "metric", "customary"
	Words      []string           // names of saved walls; a file's name
	N          int                // which way out
	Figures    []solver.Value     // bare numbers that answer a teacher
	At, End    int                // place in the line, in runes
}

// Context is what a line leans on: what was said and asked before it.
type Context struct {
	Metric   bool               // bare lengths are millimeters
	Metered  bool               // every length that stands was said in a metric unit, though nobody said to work in metric: a bare length is asked back
	Ear      bool               // the line came by ear: what sounds alike is asked back
	Subject  *solver.Name       // what was spoken of last, where that is certain
	Lately   []solver.Name      // all that the last line spoke of, in order
	Asked    []solver.Name      // what the last answer asked for: one of them
	Claims   []solver.Statement // what was claimed before
	Choices  []string           // normal forms that an open question offers
	Settled  []string           // normal forms that were chosen when this very line was asked back about
	Answered bool               // there is an answer to ask "why that" of
	Tried    bool               // there is a what-if to take
	Teaching bool               // a lesson waits for figures
	Ways     int                // how many ways out were offered
	Walls    []string           // names of walls
	Pending  *Pending           // a question that waits for its answer
	Deep     bool               // a line that is read again
	Part     bool               // a clause of a line that is read clause by clause
	Mixed    bool               // another clause of the line has a metric unit
	Saved    []string           // names of saved walls

	ManyBays   bool                                // it was told that there is more than one bay
	TriedStock bool                                // the last line tried boards of another length
	Now        func(solver.Name) (exact.Rat, bool) // what a quantity comes to in the layout that stands; nil where there is none
}

// Taken is a spelling that was mended: the word as said, the word it was taken for, and its place in runes.
type Taken struct {
	Was, Now string
	At       int
}

// Reading is what a line says. With Ask it is unclear, and Acts is empty.
type Reading struct {
	Acts  []Act
	Taken []Taken
	Ask   *solver.Question
	Whole string // the line that Ask is about, where it is more than the one that was said
	Own   bool   // each choice of Ask is a line of its own
}

// String returns the normal form of an act.
func (a Act) String() string {
	k := string(a.Kind)
	switch a.Kind {
	case State, Tolerance:
		return statements(a.Statements)
	case WhatIf, WhyNot, Check:
		return k + " " + statements(a.Statements)
	case Ask:
		if a.As != "" {
			return k + " " + a.of() + " as " + a.As
		}
		return k + " " + a.of()
	case Why, Teach, SetAside:
		return k + " " + a.of()
	case Forget:
		if len(a.Statements) > 0 {
			return k + " " + statements(a.Statements)
		}
		return k + " " + a.of()
	case ForgetAllBut:
		names := make([]string, len(a.Names))
		for i, n := range a.Names {
			names[i] = n.String()
		}
		return k + " " + strings.Join(names, ", ")
	case Take:
		return k + " " + strconv.Itoa(a.N)
	case Save, Open, SameAs, DrawTo, PrintTo, Compare:
		return k + " " + strings.Join(a.Words, ", ")
	case HelpMe:
		return strings.TrimSpace(k + " " + a.of())
	case Figure:
		parts := make([]string, len(a.Figures))
		for i, v := range a.Figures {
			parts[i] = figure(v)
		}
		return k + " " + strings.Join(parts, ", ")
	}
	return k
}

func (a Act) of() string {
	switch {
	case a.Name != nil:
		return a.Name.String()
	case a.Wall != "":
		return a.Wall + ": " + a.table()
	}
	return a.table()
}

// table is the topic as a normal form has it.
func (a Act) table() string {
	if (a.Kind == Ask || a.Kind == Why) && slices.Contains(Cares, a.Topic) {
		return "cautions"
	}
	return a.Topic
}

func statements(list []solver.Statement) string {
	parts := make([]string, len(list))
	for i, s := range list {
		parts[i] = s.String()
	}
	return strings.Join(parts, ", ")
}

// figure writes a bare number as a person writes it: 2-5/6.
func figure(v solver.Value) string {
	if v.Unit == solver.None {
		return solver.Fraction(v.Num)
	}
	return v.String()
}

// Cares are what a question for cautions may be about. Its normal form is that of the cautions; the act knows which of them is answered.
var Cares = []string{"strength", "passage", "guard", "permit"}
