package call

import (
	"github.com/spf13/cobra"

	"coredays/output/text"
)

// Detail is how much of an answer is printed.
type Detail struct{ text.Detail }

// AddFlags adds --all and --cautions.
func (d *Detail) AddFlags(cmd *cobra.Command) {
	cmd.Flags().BoolVar(&d.All, "all", false, "print every table, not only what fits two screens")
	cmd.Flags().BoolVar(&d.Cautions, "cautions", false, "print in full what no plan decides")
}
