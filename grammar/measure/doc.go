// Package measure reads figures: numbers in digits and in words, fractions, lengths with their units, money, and the sizes of lumber.
//
// It does not know what is measured, nor whether a figure is likely.
package measure
