// Package paraphrase sets a line plain before any of it is understood: its steps each know some turns of phrase and put plain words in their place.
//
// It does not know how the plain words are understood, and it asks nothing back.
package paraphrase
