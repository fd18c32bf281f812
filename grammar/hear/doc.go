// Package hear reads a line that has been set plain, as a whole, and weighs what was understood: the acts of a line must go together, what is there is a
// fact whoever tells it, what is only aired sets nothing, and what is truly open is asked back.
//
// It does not know how to read a line again, or a part of one.
package hear
