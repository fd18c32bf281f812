// Package aside tells which clauses of a line only talk: of people, weather, tools and other things.
//
// It does not know what is wanted: only that a clause tells nothing of it.
package aside
