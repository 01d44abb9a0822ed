// Package progress tells on a terminal how far a run is.
package progress
