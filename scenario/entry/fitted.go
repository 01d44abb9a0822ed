package entry

import (
	"fmt"
	"maps"
	"math"
	"strings"

	"coredays/model/spread"
	"coredays/model/unit"
	"coredays/scenario/document"
)

// fitted makes the shape, nil with a fault where the numbers allow none.
func (c *Reader) fitted(path string, f form, values map[string]float64, m Measure, words string) spread.Shape {
	shape, err := f.makeShape(values, m)
	if err != nil {
		c.Fault(path, words, inPeoplesUnit(f, values, m, err))
		return nil
	}
	return c.possible(path, shape, m, words)
}

// inPeoplesUnit says what is wrong with a fit. The values named are in SI when the fit was in SI,
// so it is tried once more in the unit that people use.
func inPeoplesUnit(f form, values map[string]float64, m Measure, err error) string {
	one, noUnit := m.parse("1 " + m.Symbol + m.per)
	if noUnit != nil || !strings.Contains(err.Error(), "between") {
		return err.Error()
	}
	values = maps.Clone(values)
	if _, given := values["highest"]; m.chance() && !given {
		values["highest"] = 1
	}
	for key := range values {
		values[key] /= one
	}
	m.Most = math.Inf(1) // the bound of a share is among the values now
	if _, again := f.makeShape(values, m); again != nil {
		err = again
	}
	return strings.TrimSpace(fmt.Sprintf("%v %s%s", err, m.Symbol, m.per))
}

const (
	rare   = 1e-10 // a probability beyond those that are ever drawn
	seldom = 0.01  // a probability of draws that most expeditions have
)

// possible refuses a shape that reaches values that the quantity can't have, or goes often beyond what
// it can mean.
func (c *Reader) possible(path string, shape spread.Shape, m Measure, words string) spread.Shape {
	low, high := shape.Quantile(rare), shape.Quantile(1-rare)
	switch {
	case !(low >= min(m.Least, 0)) || low == 0 && (m.Above || m.Least > 0):
		c.Fault(path, words, "a spread that stays "+m.refuses())
	case m.chance() && high > 1:
		c.Fault(path, words, "a spread that stays "+m.limits()+", which this one does not at its upper end")
	case !(shape.Quantile(seldom) >= m.Least):
		c.Fault(path, words, m.strays(shape.Quantile(seldom), m.Least, "lowest"))
	case !(shape.Quantile(1-seldom) <= m.Most):
		c.Fault(path, words, m.strays(shape.Quantile(1-seldom), m.Most, "highest"))
	default:
		return shape
	}
	return nil
}

// strays gives a spread that it goes too far to one side.
func (m Measure) strays(to, limit float64, bound string) string {
	if m.Of == unit.OfDuration && to > 0 {
		m.Symbol = HoursOrDays(to)
	}
	return fmt.Sprintf("a spread of which all but one in 100 lie %s; one in 100 of this lies beyond %s: a %s value or a narrower spread",
		m.limits(), m.Of.TellApart(to, limit, m.Symbol)+m.per, bound)
}

// table reads a spread given by its quantiles.
func (c *Reader) table(path string, rows []document.QuantileRow, m Measure) (spread.Shape, string) {
	before := len(c.Outline.Faults)
	var t spread.Table
	var words []string
	for i, row := range Few(c, path, rows, mostQuantiles) {
		t.P = append(t.P, c.Number(document.Join(document.At(path, i), "p"), row.P, quantileMeasure))
		t.Value = append(t.Value, c.Number(document.Join(document.At(path, i), "value"), row.Value, m))
		words = append(words, row.Value.Value+" at "+row.P.Value)
		if i > 0 && t.P[i] <= t.P[i-1] && len(c.Outline.Faults) == before {
			c.Fault(document.Join(document.At(path, i), "p"), row.P.Value, "probabilities that rise")
		}
		if i > 0 && t.Value[i] < t.Value[i-1] && len(c.Outline.Faults) == before {
			c.Fault(document.Join(document.At(path, i), "value"), row.Value.Value, "values that do not fall as p rises")
		}
	}
	if len(rows) < 2 {
		c.Fault(path, "", "at least two quantiles")
	}
	if len(c.Outline.Faults) > before || len(c.saidWithin(path)) > 0 {
		return nil, ""
	}
	return t, "quantiles " + strings.Join(words, ", ")
}

// HoursOrDays is the unit in which people tell a time.
func HoursOrDays(value float64) string {
	if value < 2*day {
		return "h"
	}
	return "d"
}
