// Package act tells what a line says: the acts that a person does with it, the reading that holds them or the question that is
// asked back, and the context that a line leans on.
//
// It knows the normal form of each act. It does not know how a line is read.
package act
