package solver

import "saywright/solver/exact"

func try(b Book, base *Answer, ss []Statement) (*Answer, Book)           { return base, b }
func whyNot(b Book, base *Answer, ss []Statement) *Answer                { return base }
func hold(b Book, base *Answer, claims []Statement) *Answer              { return base }
func why(b Book, base *Answer, n *Name, topic string, full bool) *Answer { return base }
func ask(b Book, base *Answer, topic string, n *Name) *Answer            { return base }
func drift(b Book, base *Answer, off exact.Rat) *Answer                  { return base }
