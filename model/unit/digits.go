package unit

import (
	"errors"
	"math"
	"math/big"
)

// wideBits is the precision between text and value. Converted in float64 alone, some values have
// no text at all in some units: no float64 number of feet times 0.3048 makes 0.84 m.
const wideBits = 128

// enoughDigits tell any float64 from its neighbours in any unit: its 53 bits are 16 decimal digits,
// and two more leave the rounded text well within half a unit of the last bit.
const enoughDigits = 18

var (
	errNoNumber = errors.New("is not a number")
	errTooLarge = errors.New("is too large a number")
)

// wide reads a decimal number.
func wide(number string) (*big.Float, error) {
	value, _, err := big.ParseFloat(number, 10, wideBits, big.ToNearestEven)
	if err != nil {
		return nil, errNoNumber
	}
	if value.IsInf() {
		return nil, errTooLarge
	}
	return value, nil
}

// narrow rounds to float64, once.
func narrow(value *big.Float) (float64, error) {
	nearest, _ := value.Float64()
	if math.IsInf(nearest, 0) {
		return 0, errTooLarge
	}
	return nearest + 0, nil // + 0 makes a negative zero a plain one
}

// fewestDigits is the shortest decimal number that times size is the value.
func fewestDigits(value, size float64) string {
	ratio := new(big.Float).SetPrec(wideBits).SetFloat64(value + 0)
	ratio.Quo(ratio, big.NewFloat(size))
	var shorter *big.Float
	for digits := 1; digits <= enoughDigits; digits++ {
		shorter, _ = wide(ratio.Text('g', digits))
		back := new(big.Float).Mul(shorter, big.NewFloat(size))
		if nearest, _ := back.Float64(); nearest == value {
			break
		}
	}
	return plain(shorter)
}

// plain writes a number without an exponent unless that takes a long row of zeros.
func plain(number *big.Float) string {
	if size := math.Abs(float64(number.MantExp(nil))); size > 60 {
		return number.Text('g', -1)
	}
	return number.Text('f', -1)
}
