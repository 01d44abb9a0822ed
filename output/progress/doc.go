// Package progress shows on a terminal how far a run is.
package progress
