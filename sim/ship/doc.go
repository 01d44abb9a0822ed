// Package ship is the ship at sea: where she is and what she has in hand, and how time passes on an activity. An activity
// is done (work.go) as the sea allows (waiting.go, seastate.go, forecast.go), and what is due on the way happens
// (agenda.go): the sea changes, the rig breaks down (trouble.go), the site closes (calendar.go).
//
// What is done next is not decided here but by the expedition in package sim.
package ship
