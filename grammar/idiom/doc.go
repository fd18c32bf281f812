// Package idiom holds the tables of set phrases, by what they speak of and by who speaks, with the places where each means so.
//
// It does not know in which order a line is set plain, nor how the plain words are understood.
package idiom
