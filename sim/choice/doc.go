// Package choice compares alternatives that were simulated with common random numbers: plans, orders of the sites, dates
// of sailing, what to leave out. It ranks them, says which can't be given apart, and searches among orders.
package choice
