// Package scan folds a line to plain signs and cuts it into atoms: words, digits, fractions and signs, each with its place. Contractions and words run
// together are taken apart.
//
// It does not know what a word means, or what a figure measures.
package scan
