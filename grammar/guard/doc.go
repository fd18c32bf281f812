// Package guard holds what was read against the line as it was said, and asks back what was read and should not be: what is of another time, another work,
// another person, or a judgment.
//
// It does not read anything by itself.
package guard
