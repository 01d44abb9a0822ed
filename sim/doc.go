// Package sim sails a voyage thousands of times and says when everything happens. Here is the expedition: what is
// done next and why (nextstep, programme, limits), the operations (op_), and the drivers that sail it again and again.
//
// A replication is a state, that of the ship, and a table of steps. The steps, in the order of an operations plan,
// pick the next operation from the state; the operation is a short script of activities; doing an
// activity moves the clock, and what is due on the way happens. Nothing but the state says what
// comes next, so a replication can begin anywhere.
//
// Beside it:
//
//	ship         the ship: her state, and how time passes on an activity: sea, waiting, trouble
//	random       values of uncertain quantities in a replication
//	statistics   rows of numbers and what they say
//	parts        a run shared out among machines
//	sensitivity  which quantities matter
//	choice       alternatives compared: plans, orders, dates, cuts
//	hindcast     single visits to sites that were really drilled
package sim
