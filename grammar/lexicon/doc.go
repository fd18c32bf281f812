// Package lexicon holds the tables of the vocabulary: the names of parts, relations, questions, commands and all else that can be said, the classes of
// words that they are written with, what each may speak of, and the graph in which they are looked up.
//
// It does not know what stands beside a phrase in a line, nor what a line as a whole says.
package lexicon
