// Package sensitivity splits the variance of days needed by the quantities of a plan.
package sensitivity
