// Package parts sails the share of one of several machines of a run, a comparison, a search, a hindcast or a study, and
// puts the shares together again: the answer is that of one machine, to the last bit. What is put together is held
// against the plan by sailing some of it again.
package parts
