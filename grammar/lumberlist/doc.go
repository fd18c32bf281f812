// Package lumberlist writes out lists of lumber entry by entry: prices length by length, counted boards, a unit told with the last length only. It leaves
// alone what could be two things.
//
// It does not know what the lumber is for.
package lumberlist
