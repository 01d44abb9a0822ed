package entry

import (
	"slices"
	"strings"

	"coredays/model/spread"
	"coredays/scenario/document"
	"coredays/scenario/fault"
)

// numberKeys are the keys of a spread that hold its numbers.
var numberKeys = []string{"value", "low", "mid", "high", "median", "factor", "lowest", "mode", "highest", "scale", "shape_parameter", "mean"}

// shape reads the shape of a quantity and its text, nil where it has a fault.
func (c *Reader) shape(path string, s *document.Spread, m Measure) (spread.Shape, string) {
	if s.Short {
		return c.single(path, s.Value, m)
	}
	if s.Quantiles != nil {
		c.only(path, s, form{name: "quantiles"})
		return c.table(document.Join(path, "quantiles"), s.Quantiles, m)
	}
	f, found := c.form(path, s)
	if !found {
		return nil, ""
	}
	before := len(c.Outline.Faults)
	values, words := c.values(path, s, f, m)
	if len(c.Outline.Faults) > before || len(c.saidWithin(path)) > 0 {
		return nil, words
	}
	return c.fitted(path, f, values, m, words), words
}

// single is a quantity written as one value without keys.
func (c *Reader) single(path string, t document.Text, m Measure) (spread.Shape, string) {
	before := len(c.Outline.Faults)
	value := c.Number(path, t, m)
	if len(c.Outline.Faults) > before {
		return nil, t.Value
	}
	return spread.Fixed(value), t.Value
}

// saidWithin lists what the decoder has said of a path and what is inside.
func (c *Reader) saidWithin(path string) (said []string) {
	for _, s := range c.Said {
		if document.Within(s, path) {
			said = append(said, s)
		}
	}
	return said
}

const wantedForm = "one value, or low, mid and high, or a shape, or quantiles"

// form finds out in which form the quantity is written.
func (c *Reader) form(path string, s *document.Spread) (form, bool) {
	switch {
	case s.Shape.Given:
		for _, f := range shapeForms {
			if f.name == s.Shape.Value {
				return f, true
			}
		}
		var names []string
		for _, f := range shapeForms {
			names = append(names, f.name)
		}
		c.Fault(document.Join(path, "shape"), s.Shape.Value, fault.Listed(names))
		return form{}, false
	case s.Value.Given:
		return valueForm, true
	case s.Low.Given || s.Mid.Given || s.High.Given:
		return tripleForm, true
	}
	c.Fault(path, "", wantedForm)
	return form{}, false
}

// values reads the numbers of a form.
func (c *Reader) values(path string, s *document.Spread, f form, m Measure) (map[string]float64, string) {
	values := map[string]float64{}
	var words []string
	for _, key := range append(slices.Clone(f.needs), f.may...) {
		t := s.Number(key)
		if t.Given || slices.Contains(f.needs, key) {
			values[key] = c.Number(document.Join(path, key), t, f.takes(m, key))
			words = append(words, strings.ReplaceAll(key, "_", " ")+" "+t.Value)
		}
	}
	c.only(path, s, f)
	switch f.name {
	case valueForm.name:
		return values, s.Value.Value
	case tripleForm.name:
		return values, strings.Join(words, ", ")
	}
	return values, f.name + ", " + strings.Join(words, ", ")
}

// only notes keys that do not go with the form.
func (c *Reader) only(path string, s *document.Spread, f form) {
	for _, key := range numberKeys {
		if t := s.Number(key); t.Given && !slices.Contains(f.needs, key) && !slices.Contains(f.may, key) {
			c.Fault(document.Join(path, key), t.Value, "nothing here: this does not go with "+f.name)
		}
	}
	if s.Shape.Given && f.name == "quantiles" {
		c.Fault(document.Join(path, "shape"), s.Shape.Value, "nothing here: this does not go with "+f.name)
	}
	if s.Quantiles != nil && f.name != "quantiles" {
		c.Fault(document.Join(path, "quantiles"), "", "nothing here: this does not go with "+f.name)
	}
}
