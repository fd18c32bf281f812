// Package ways looks for ways of speaking that are told by expressions, and looks only where a line holds what an expression cannot do without. It also
// tells what verbs can do in a sentence, and their forms.
//
// It does not know what follows from a way of speaking.
package ways
