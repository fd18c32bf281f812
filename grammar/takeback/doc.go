// Package takeback reads orders to take back, to keep, to save and to open, clause by clause, with all the words by which people say why.
//
// It does not know what stands: whether there is anything to take back is for the conversation.
package takeback
