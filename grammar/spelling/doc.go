// Package spelling finds the words that a misspelled one can be meant for, and knows the ordinary words of English, which are none.
//
// It does not know what any word means, nor which words a wall has: it is told those that can be meant.
package spelling
