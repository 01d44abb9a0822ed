// Package desk serves a local page with a plan on one side and what it means on the other. The page
// holds the text of the plan; the server changes, reads, simulates and saves it, and keeps nothing
// but the scenario's own file. The engine, the words and the figures are those of the commands.
package desk
