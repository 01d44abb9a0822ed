// Package random gives the values of uncertain quantities in a replication. A value's normal score is the sum of the
// scores of its levels (expedition, site, hole, run), each from a random stream keyed by place and purpose, so that the
// same draw is the same number whatever came before it.
package random
