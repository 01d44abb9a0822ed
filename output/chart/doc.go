// Package chart draws results. Each chart has the table behind it, and words for those who can't see it.
package chart
