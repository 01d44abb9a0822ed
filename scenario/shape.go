package scenario

import (
	"slices"
	"strings"

	"coredays/model/spread"
)

// numberKeys are the keys of a spread that hold its numbers.
var numberKeys = []string{"value", "low", "mid", "high", "median", "factor", "lowest", "mode", "highest", "scale", "shape_parameter", "mean"}

// shape reads the shape of a quantity and its text, nil where it has a fault.
func (c *reader) shape(path string, s *spreadFile, m measure) (spread.Shape, string) {
	if s.short {
		return c.single(path, s.Value, m)
	}
	if s.Quantiles != nil {
		c.only(path, s, form{name: "quantiles"})
		return c.table(join(path, "quantiles"), s.Quantiles, m)
	}
	f, found := c.form(path, s)
	if !found {
		return nil, ""
	}
	before := len(c.outline.faults)
	values, words := c.values(path, s, f, m)
	if len(c.outline.faults) > before || len(c.saidWithin(path)) > 0 {
		return nil, words
	}
	return c.fitted(path, f, values, m, words), words
}

// single is a quantity written as one value without keys.
func (c *reader) single(path string, t text, m measure) (spread.Shape, string) {
	before := len(c.outline.faults)
	value := c.number(path, t, m)
	if len(c.outline.faults) > before {
		return nil, t.value
	}
	return spread.Fixed(value), t.value
}

// saidWithin lists what the decoder has said of a path and what is inside.
func (c *reader) saidWithin(path string) (said []string) {
	for _, s := range c.said {
		if within(s, path) {
			said = append(said, s)
		}
	}
	return said
}

const wantedForm = "one value, or low, mid and high, or a shape, or quantiles"

// form finds out in which form the quantity is written.
func (c *reader) form(path string, s *spreadFile) (form, bool) {
	switch {
	case s.Shape.given:
		for _, f := range shapeForms {
			if f.name == s.Shape.value {
				return f, true
			}
		}
		var names []string
		for _, f := range shapeForms {
			names = append(names, f.name)
		}
		c.fault(join(path, "shape"), s.Shape.value, listed(names))
		return form{}, false
	case s.Value.given:
		return valueForm, true
	case s.Low.given || s.Mid.given || s.High.given:
		return tripleForm, true
	}
	c.fault(path, "", wantedForm)
	return form{}, false
}

// values reads the numbers of a form.
func (c *reader) values(path string, s *spreadFile, f form, m measure) (map[string]float64, string) {
	values := map[string]float64{}
	var words []string
	for _, key := range append(slices.Clone(f.needs), f.may...) {
		t := s.number(key)
		if t.given || slices.Contains(f.needs, key) {
			values[key] = c.number(join(path, key), t, f.takes(m, key))
			words = append(words, strings.ReplaceAll(key, "_", " ")+" "+t.value)
		}
	}
	c.only(path, s, f)
	switch f.name {
	case valueForm.name:
		return values, s.Value.value
	case tripleForm.name:
		return values, strings.Join(words, ", ")
	}
	return values, f.name + ", " + strings.Join(words, ", ")
}

// only notes keys that do not go with the form.
func (c *reader) only(path string, s *spreadFile, f form) {
	for _, key := range numberKeys {
		if t := s.number(key); t.given && !slices.Contains(f.needs, key) && !slices.Contains(f.may, key) {
			c.fault(join(path, key), t.value, "nothing here: this does not go with "+f.name)
		}
	}
	if s.Shape.given && f.name == "quantiles" {
		c.fault(join(path, "shape"), s.Shape.value, "nothing here: this does not go with "+f.name)
	}
	if s.Quantiles != nil && f.name != "quantiles" {
		c.fault(join(path, "quantiles"), "", "nothing here: this does not go with "+f.name)
	}
}
