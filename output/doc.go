// Package output tells people and programs what a simulation found: the printed answer, the
// promised JSON, the diary of one expedition, files written whole or not at all, and progress on
// a terminal.
//
// It reads finished values of package logbook and works nothing out beyond units, rounding and
// wording. What is printed is at most 100 columns wide, has one unit a column, two or three
// significant figures, words and shapes and no colour. A figure that does not exist is "–" in
// print and null in JSON; a spread that means nothing is printed as one number.
package output
