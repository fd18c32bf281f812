// Package chunk tells what stands at a place in a line: the name of a part, a person, a figure, the end of a clause.
//
// It does not know what is said of it.
package chunk
