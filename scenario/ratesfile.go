package scenario

import (
	"path/filepath"

	"coredays/model/rig"
	"coredays/model/spread"
)

// ratesFile mirrors a file of rates, such as coredays rates --yaml writes.
type ratesFile struct {
	Version text                  `mapstructure:"version"`
	Rates   map[string]spreadFile `mapstructure:"rates"`
}

// fileKey names, among the rates of a scenario, the file that has more of them.
const fileKey = "file"

// ratesBeside reads the rates in a file beside the scenario, where it names one. What the scenario states itself goes
// before the file, and the file before the ship.
func (c *clerk) ratesBeside(path string, given map[string]spreadFile, base [rig.Rates]spread.Quantity) [rig.Rates]spread.Quantity {
	named, has := given[fileKey]
	if !has {
		return base
	}
	name := named.Value.value
	if !named.short || name == "" {
		c.fault(join(path, fileKey), name, "the path of a file of rates, such as rates.yaml")
		return base
	}
	file := name
	if !filepath.IsAbs(file) {
		file = filepath.Join(filepath.Dir(c.file), file)
	}
	c.reads = append(c.reads, file)
	data, err := readFile(file)
	if err != nil {
		c.fault(join(path, fileKey), name, "the path of a file of rates ("+err.Error()+")")
		return base
	}
	rates, faults := readRates(file, data, base)
	c.faults = append(c.faults, faults...)
	return rates
}

// readRates reads a file of rates over those in base.
func readRates(name string, data []byte, base [rig.Rates]spread.Quantity) ([rig.Rates]spread.Quantity, Faults) {
	v, o := load(name, data)
	if len(o.faults) > 0 && !o.onlyEmpty() {
		return base, o.faults
	}
	c := &clerk{reader: &reader{outline: o}}
	var f ratesFile
	c.said = decode(v, o, &f)
	c.version(f.Version)
	if inner, has := f.Rates[fileKey]; has {
		c.fault(join("rates", fileKey), inner.Value.value, "nothing here: a file of rates names no other")
		delete(f.Rates, fileKey)
	}
	base = c.rates("rates", f.Rates, base)
	c.repairs(f.Rates, base)
	c.servicing(f.Rates, base)
	return base, o.faults
}

// ReadRates reads a file of rates over those in base. Where it is wrong the error is Faults.
func ReadRates(name string, data []byte, base [rig.Rates]spread.Quantity) ([rig.Rates]spread.Quantity, error) {
	rates, faults := readRates(name, data, base)
	return rates, faults.orNil()
}

// BuiltInRates are those of the built-in ship.
func BuiltInRates() [rig.Rates]spread.Quantity { return builtIn().ship.Rates }
