// Package sim sails a voyage thousands of times and says when everything happens. Here is the ship: her state, what is
// done next and why, the operations (op_), waiting and trouble. Beside it:
//
//	random       values of uncertain quantities in a replication
//	statistics   rows of numbers and what they say
//	parts        a run shared out among machines
//	sensitivity  which quantities matter
//	choice       alternatives compared: plans, orders, dates, cuts
//	hindcast     single visits to sites that were really drilled
package sim
