package output

import (
	"fmt"
	"io"

	"coredays/model/basis"
	"coredays/model/plan"
)

// Basis prints the numbers that a plan rests on, group by group; sorted by how much each matters where
// a simulation of so many replications tells.
func Basis(w io.Writer, p *plan.Plan, entries []basis.Entry, replications int) error {
	var pg page
	pg.paragraph("", indent, fmt.Sprintf("What %s rests on; %s", orElse(p.Title, "the unnamed scenario"), orElse(p.Ship.Name, "unnamed ship")))
	pg.basisCounts(entries)
	if replications > 0 {
		return pg.weighed(w, entries, replications)
	}
	for _, group := range groups(entries) {
		pg.heading("%s", group)
		if err := pg.table(basisColumns(false), basisRows(inGroup(entries, group), 0)); err != nil {
			return err
		}
	}
	return pg.to(w)
}

// weighed prints all entries in one table, what matters most first.
func (p *page) weighed(w io.Writer, entries []basis.Entry, replications int) error {
	p.paragraph("", indent, fmt.Sprintf("Sorted by how much each matters to the days needed: squared rank correlation with the spread above the run, %d replications. Shares do not add up to 100 %%: the sea and single runs have the rest. Below %.1g %% a share may be chance and is left out.",
		replications, 100*basis.Chance(replications)))
	p.WriteByte('\n')
	if err := p.table(basisColumns(true), basisRows(entries, replications)); err != nil {
		return err
	}
	return p.to(w)
}

func (p *page) basisCounts(entries []basis.Entry) {
	p.paragraph("", indent, basisCounted(entries))
	p.paragraph("", indent, "Values are the 1-in-10, the even and the 9-in-10 value where there is a spread.")
}

// basisCounted tells how much of a basis somebody stated, and how much is from memory.
func basisCounted(entries []basis.Entry) string {
	stated, memory := 0, 0
	for _, e := range entries {
		if e.From == basis.Stated {
			stated++
		}
		if e.Memory {
			memory++
		}
	}
	return fmt.Sprintf("%d numbers: %d stated by the scenario, %d wholly or in part from memory or judgement.", len(entries), stated, memory)
}

func basisColumns(weighed bool) []column {
	cols := []column{words("site", 7), words("number", 24), words("value", 20), words("varies by", 12), words("from, source", 35)}
	if weighed {
		cols = append([]column{numbers("matters\n(%)")}, cols...)
	}
	return cols
}

func basisRows(entries []basis.Entry, replications int) (rows [][]string) {
	for _, e := range entries {
		row := []string{e.Site, e.Name, valueOf(e), e.Varies, e.From.String() + ": " + e.Source}
		if replications > 0 {
			share := ""
			if defined(e.Share) && e.Share >= basis.Chance(replications) {
				share = fixed(100*e.Share, 1)
			}
			row = append([]string{share}, row...)
		}
		rows = append(rows, row)
	}
	return rows
}

// valueOf is the number with its spread and unit.
func valueOf(e basis.Entry) string {
	text := figures(e.Mid)
	if e.Spread() {
		text = figures(e.Low) + " / " + text + " / " + figures(e.High)
	}
	if e.Unit != "" {
		text += " " + e.Unit
	}
	return text
}

// groups are those of the entries, in their order.
func groups(entries []basis.Entry) (all []string) {
	seen := map[string]bool{}
	for _, e := range entries {
		if !seen[e.Group] {
			seen[e.Group] = true
			all = append(all, e.Group)
		}
	}
	return all
}

func inGroup(entries []basis.Entry, group string) (some []basis.Entry) {
	for _, e := range entries {
		if e.Group == group {
			some = append(some, e)
		}
	}
	return some
}
