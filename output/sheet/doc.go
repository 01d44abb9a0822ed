// Package sheet sets results in tables, once: the same rows stand in the CSV files, in the workbook, in the report and
// behind each chart.
package sheet
