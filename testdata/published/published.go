// Package published holds the extract of holes on record that the program has built in.
package published

import _ "embed"

// SiteDays is the table of holes: every 8th site on record; its first lines say of which sources and by which rule.
//
//go:embed site_days.csv
var SiteDays []byte
