// Package text prints answers for a terminal. The sentences that it is made of serve the report, its charts and its
// tables too, so that all say the same.
package text
