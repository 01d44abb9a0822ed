package scenario

import (
	"path/filepath"

	"coredays/model/rig"
	"coredays/model/spread"
	"coredays/scenario/document"
	"coredays/scenario/entry"
	"coredays/scenario/fault"
)

// ratesFile mirrors a file of rates, such as coredays rates --yaml writes.
type ratesFile struct {
	Version document.Text              `mapstructure:"version"`
	Rates   map[string]document.Spread `mapstructure:"rates"`
}

// fileKey names, among the rates of a scenario, the file that has more of them.
const fileKey = "file"

// ratesBeside reads the rates in a file beside the scenario, where it names one. What the scenario states itself goes
// before the file, and the file before the ship.
func (c *clerk) ratesBeside(path string, given map[string]document.Spread, base [rig.Rates]spread.Quantity) [rig.Rates]spread.Quantity {
	named, has := given[fileKey]
	if !has {
		return base
	}
	name := named.Value.Value
	if !named.Short || name == "" {
		c.Fault(document.Join(path, fileKey), name, "the path of a file of rates, such as rates.yaml")
		return base
	}
	file := name
	if !filepath.IsAbs(file) {
		file = filepath.Join(filepath.Dir(c.File), file)
	}
	c.reads = append(c.reads, file)
	data, err := document.ReadFile(file)
	if err != nil {
		c.Fault(document.Join(path, fileKey), name, "the path of a file of rates ("+err.Error()+")")
		return base
	}
	rates, faults := readRates(file, data, base)
	c.Faults = append(c.Faults, faults...)
	return rates
}

// readRates reads a file of rates over those in base.
func readRates(name string, data []byte, base [rig.Rates]spread.Quantity) ([rig.Rates]spread.Quantity, fault.List) {
	v, o := document.Load(name, data)
	if len(o.Faults) > 0 && !o.OnlyEmpty() {
		return base, o.Faults
	}
	c := &clerk{Reader: &entry.Reader{Outline: o}}
	var f ratesFile
	c.Said = document.Decode(v, o, &f)
	c.Version(f.Version)
	if inner, has := f.Rates[fileKey]; has {
		c.Fault(document.Join("rates", fileKey), inner.Value.Value, "nothing here: a file of rates names no other")
		delete(f.Rates, fileKey)
	}
	base = c.rates("rates", f.Rates, base)
	c.repairs(f.Rates, base)
	c.servicing(f.Rates, base)
	return base, o.Faults
}

// ReadRates reads a file of rates over those in base. Where it is wrong the error is a fault.List.
func ReadRates(name string, data []byte, base [rig.Rates]spread.Quantity) ([rig.Rates]spread.Quantity, error) {
	rates, faults := readRates(name, data, base)
	return rates, faults.OrNil()
}

// BuiltInRates are those of the built-in ship.
func BuiltInRates() [rig.Rates]spread.Quantity { return builtIn().ship.Rates }
