// Package page makes HTML pages that fetch nothing: the report of a simulation and the page of a comparison.
package page
