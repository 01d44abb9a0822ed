// Package json writes what other programs may rely on. Days are days, lengths metres, shares 0 to 1; what is no
// number is null. Keys are a promise: more may be added, none taken away.
package json
