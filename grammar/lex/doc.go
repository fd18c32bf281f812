// Package lex cuts the atoms of a line into tokens, which already carry exact values and the entries of the tables: what a word means by what stands
// beside it is settled here.
//
// It does not know which quantity a value is for, nor what is done with it.
package lex
