// Package words writes numbers, dates, chances and spreads as people read them. Every other room of the output
// uses it, so that the same figure has the same rounding wherever it stands.
package words
