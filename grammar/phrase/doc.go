// Package phrase is the engine of set phrases: how they are written, how they are found in a line, and how plain words are put in their place.
//
// It does not know any of the phrases.
package phrase
