// Package grammar reads what a person says into statements, questions and commands, and writes each in its
// one normal form. What cannot be read without a guess comes back as one short question.
//
// It knows the order in which a line is read, and what leans on the line before: answers to an open question, offers, help. How a line
// is set plain, cut, understood and held against itself is the business of the packages below it. It knows no arithmetic of walls: whether
// six rails fit is not its business, only whether six rails were said.
package grammar

import (
	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// What a line says, and what it leans on, as package act tells it.
type (
	Act     = act.Act
	ActKind = act.Kind
	Context = act.Context
	Pending = act.Pending
	Reading = act.Reading
	Taken   = act.Taken
)

// The kinds of act.
const (
	State        = act.State
	Ask          = act.Ask
	WhatIf       = act.WhatIf
	Why          = act.Why
	WhyNot       = act.WhyNot
	Check        = act.Check
	Teach        = act.Teach
	Take         = act.Take
	TakeThat     = act.TakeThat
	Forget       = act.Forget
	ForgetAllBut = act.ForgetAllBut
	Undo         = act.Undo
	Redo         = act.Redo
	StartOver    = act.StartOver
	SetAside     = act.SetAside
	Recap        = act.Recap
	Save         = act.Save
	Open         = act.Open
	Compare      = act.Compare
	SameAs       = act.SameAs
	DrawTo       = act.DrawTo
	PrintTo      = act.PrintTo
	HelpMe       = act.HelpMe
	Quit         = act.Quit
	Next         = act.Next
	ShowAll      = act.ShowAll
	Tolerance    = act.Tolerance
	Figure       = act.Figure
)

// Parse reads normal forms, put apart by semicolons; the error has the place of what is none.
func Parse(normal string) ([]Act, error) { return parse.Parse(normal) }

// Normal writes acts in their normal forms, put apart by semicolons.
func Normal(acts []Act) string { return parse.Normal(acts) }
