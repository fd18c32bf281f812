// Package contrast tells what is wanted from what was so, what others have and what was nearly done, where both are told in one line.
//
// It does not know the figures of either: what is wanted takes from what is told no more than its part, unit or figure.
package contrast
