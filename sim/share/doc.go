// Package share cuts work that is counted in equal pieces, such as replications, into shares for several machines,
// and holds the file in which a share travels to the machine that puts all together.
package share
