package statistics

import (
	"coredays/model/activity"
	"coredays/model/coring"
	"coredays/model/result"
)

// Columns gives the result of each replication: "whole" is the whole programme without a deadline,
// "within" what got done within the days.
func (r *Results) Columns() *result.Replications {
	c := columnList{results: r}
	for n, done := range r.Done {
		if done {
			c.list.Numbers = append(c.list.Numbers, n)
		}
	}
	c.expedition()
	for i := range activity.Classes {
		c.add(r.Unconstrained, ColClass+int(i), "whole.class."+i.Key(), "time of the class "+i.String()+", whole programme", result.Seconds, true)
	}
	for _, n := range r.Layout.Voyage.Plan.Order {
		c.site(n)
	}
	c.more()
	return &c.list
}

type columnList struct {
	results *Results
	list    result.Replications
}

func (c *columnList) add(rows []float64, column int, key, meaning string, of result.Measure, main bool) {
	c.list.Columns = append(c.list.Columns, result.Column{Key: key, Meaning: meaning, Of: of, Main: main, Values: c.results.Column(rows, column)})
}

func (c *columnList) expedition() {
	r := c.results
	c.add(r.Unconstrained, ColDays, "whole.needed", "from leaving port to reaching port, whole programme, no deadline", result.Seconds, true)
	c.add(r.Constrained, ColDays, "within.taken", "from leaving port to reaching port under the rules of the expedition", result.Seconds, true)
	c.add(r.Constrained, ColInHand, "within.in_hand", "left of the sea days when port is reached; negative when late", result.Seconds, true)
	c.add(r.Constrained, ColAll, "within.all_done", "every hole and task of every primary site was completed or not called for", result.Truth, true)
	c.add(r.Constrained, ColFirst, "within.first_rank_done", "every hole and task of rank 1 at the primary sites was completed or not called for", result.Truth, true)
	c.add(r.Constrained, ColInPort, "in_port", "in port before sailing, in none of the other figures", result.Seconds, true)
	c.add(r.Unconstrained, ColMostCores, "whole.most_cores", "cores on deck on the busiest day", result.Count, true)
	c.add(r.Unconstrained, ColBehind, "whole.laboratory_behind", "that the laboratory was behind at most", result.Seconds, true)
}

// siteResults are the results of a site in the order of its columns.
var siteResults = [SiteColumns]struct {
	key, meaning string
	of           result.Measure
}{
	{"reached", "the site was reached", result.Truth},
	{"complete", "every hole and task of the site was completed or not called for", result.Truth},
	{"arrives", "after sailing, arriving", result.Seconds},
	{"leaves", "after sailing, leaving", result.Seconds},
	{"waiting", "on station, waiting on weather", result.Seconds},
	{"cored", "cored", result.Metres},
	{"recovered", "recovered", result.Metres},
	{"cores", "cores", result.Count},
	{"section", "section down to the target that is recovered in at least one hole", result.Share},
}

// itemResults are those of a hole or task.
var itemResults = [ItemColumns]struct {
	key, meaning string
	of           result.Measure
}{
	{"done", "completed", result.Truth},
	{"not_called_for", "wanted only as another hole turns out, which turned out otherwise", result.Truth},
	{"time", "time taken", result.Seconds},
	{"depth", "depth below the sea floor", result.Metres},
	{"refusal", "depth below the sea floor at which a piston corer was refused", result.Metres},
	{"section", "section of the site recovered in this hole or one before it", result.Share},
	{"cored", "cored", result.Metres},
	{"recovered", "recovered", result.Metres},
}

// site adds the results of a site and of its holes and tasks, of both expeditions.
func (c *columnList) site(n int) {
	r, site := c.results, &c.results.Layout.Voyage.Sites[n]
	for _, of := range []struct {
		rows      []float64
		key, text string
	}{{r.Unconstrained, "whole.", ", whole programme"}, {r.Constrained, "within.", ", within the days"}} {
		if site.Alternate && of.key == "whole." {
			continue // an alternate belongs to no whole programme
		}
		for i, s := range siteResults {
			c.add(of.rows, r.Layout.Site(n, i), of.key+site.Name+"."+s.key, "site "+site.Name+": "+s.meaning+of.text, s.of, true)
		}
		for _, item := range site.Items {
			for i, s := range itemResults {
				if item.Task != nil && i > ItemTook || item.When == nil && i == ItemNotCalled {
					continue
				}
				c.add(of.rows, r.Layout.Item(item.Number, i), of.key+site.Name+"."+item.Name+"."+s.key,
					"site "+site.Name+", "+item.Name+": "+s.meaning+of.text, s.of, false)
			}
		}
	}
}

// more adds what is behind the drivers, the tools and the consumables, of the whole programme.
func (c *columnList) more() {
	r := c.results
	for i := range activity.Causes {
		c.add(r.Unconstrained, ColCause+int(i), "whole.cause."+i.String(), "time of the cause "+i.String()+", whole programme", result.Seconds, false)
	}
	for t := range coring.Tools {
		for i, s := range []struct {
			key string
			of  result.Measure
		}{{"cores", result.Count}, {"cored", result.Metres}, {"recovered", result.Metres}} {
			c.add(r.Unconstrained, ColTool+3*int(t)+i, "whole.tool."+t.String()+"."+s.key, t.String()+", "+s.key+", whole programme", s.of, false)
		}
	}
	for t := range Consumables {
		c.add(r.Unconstrained, ColUsed+int(t), "whole.used."+t.String(), t.String()+", whole programme", result.Count, false)
	}
}
