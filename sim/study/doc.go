// Package study simulates many plans one after the other, or a share of them, and keeps of each replication the few
// figures that a row of the answer is made of.
package study
