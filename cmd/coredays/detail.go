package main

import (
	"github.com/spf13/cobra"

	"coredays/output/text"
)

// detail is how much of an answer is printed.
type detail struct{ text.Detail }

func (d *detail) addFlags(cmd *cobra.Command) {
	cmd.Flags().BoolVar(&d.All, "all", false, "print every table, not only what fits two screens")
	cmd.Flags().BoolVar(&d.Cautions, "cautions", false, "print in full what no plan decides")
}
