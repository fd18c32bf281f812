// Package gist takes a sentence by what its words are about, wherever they stand: words have senses, and frames tell which of them a quantity, a question or
// an order needs and which may stand beside them.
//
// It does not know the order of words, beyond that a figure stands beside what it is of.
package gist
