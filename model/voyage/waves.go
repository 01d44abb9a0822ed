package voyage

import (
	"coredays/model/plan"
	"coredays/model/sea"
)

// waves compiles the sea at a site: the heights by day of the year and how they go on in time.
// Sites with the same record share its course, as sites with a climate share theirs.
func (c *compiler) waves(s *plan.Site) (*sea.Table, int, error) {
	if s.Likeness == nil {
		table, err := sea.NewTable(s.Climate)
		return table, 0, err
	}
	course, found := c.courses[s.Likeness]
	if !found {
		course = len(c.v.Courses)
		c.v.Courses = append(c.v.Courses, s.Likeness.Course)
		if c.courses == nil {
			c.courses = map[*sea.Likeness]int{}
		}
		c.courses[s.Likeness] = course
	}
	return s.Likeness.Table, course, nil
}
