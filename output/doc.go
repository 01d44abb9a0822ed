// Package output says people and programs what a simulation found. Its rooms are named for what they make:
//
//	words     numbers, dates, chances and spreads as people read them: the base of all
//	text      the printed answers for a terminal, and the sentences that the page quotes
//	sheet     tables with the same rows everywhere: CSV, the workbook, behind each chart
//	chart     pictures of those tables, SVG and PNG
//	page      the report and the page of a comparison, HTML
//	json      what programs may rely on
//	progress  how far a run is, on a terminal
//
// Here is only what they share: what a report holds, and files written whole or not at all.
//
// They read finished values of package result and work nothing out beyond units, rounding and
// wording. What is printed is at most 100 columns wide, has one unit a column, two or three
// significant figures, words and shapes and no colour. A figure that does not exist is "–" in
// print and null in JSON; a spread that means nothing is printed as one number.
package output
