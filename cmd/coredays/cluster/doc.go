// Package cluster holds the tests of the examples for clusters, which stand in testdata/examples: an array job on a real
// controller and node of Slurm, and the indexed job of Kubernetes against the types of its interface.
package cluster
