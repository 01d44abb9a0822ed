// Package statistics keeps a row of numbers a replication and describes them: means, quantiles with their intervals,
// chances, shares of variance, and what was recovered by depth. It knows nothing of how a replication came about.
package statistics
