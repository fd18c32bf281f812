// Package askback holds the questions that are asked back where something may answer them or leans on which was asked: each kind with its words, which
// stand here and nowhere else.
//
// It does not know the lines that they are asked about.
package askback
