// Package reread reads a line once more that was not understood: without what changes nothing, by its sound, with its misspelled words set right, with plainer
// words in the place of some.
//
// It does not know which of these comes first, nor the lines before.
package reread
