// Package sitetable makes a scenario from a table of sites as spreadsheets keep them: CSV or a workbook.
//
//	sites, err := sitetable.Read("sites.csv", data)
//	text := sitetable.Scenario("sites.csv", sites)
//
// Columns are known by their headings, in any order: name or site; latitude and longitude, or position, each in
// one cell ("48 37.2S", "-48.62") or a column a piece (degrees, minutes, hemisphere); water depth; target;
// priority. The heading may stand below other lines, and in two rows of which the upper spans several columns.
// A unit stands in the heading or in each cell. What the table leaves out and the place says is filled in, and
// said so.
package sitetable
