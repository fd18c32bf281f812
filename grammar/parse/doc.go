// Package parse understands tokens: the syntax of values with what limits them, clauses and the force with which they are said, and the acts that come of
// them. It also reads normal forms back.
//
// It knows plain words only: turns of phrase are set plain before. It does not know whether what was understood should be believed.
package parse
