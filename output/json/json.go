package json

import (
	"bytes"
	"encoding/json"
	"io"
	"strconv"
	"time"

	"coredays/model/result"
	"coredays/output/words"
)

// number is a float64 in JSON with all its digits; what is no number is null.
type number float64

// MarshalJSON writes the number.
func (n number) MarshalJSON() ([]byte, error) {
	if !words.Defined(float64(n)) {
		return []byte("null"), nil
	}
	return strconv.AppendFloat(nil, float64(n)+0, 'g', -1, 64), nil // + 0 makes a negative zero a plain one
}

// spreadJSON is a spread as promised, with the count of replications it rests on.
type spreadJSON struct {
	N     int       `json:"n"`
	Mean  number    `json:"mean"`
	SD    number    `json:"sd"`
	P10   number    `json:"p10"`
	P50   number    `json:"p50"`
	P90   number    `json:"p90"`
	P10CI [2]number `json:"p10_ci"`
	P50CI [2]number `json:"p50_ci"`
	P90CI [2]number `json:"p90_ci"`
}

// spreadOf leaves out of a spread what its few replications do not tell.
func spreadOf(s result.Spread) spreadJSON {
	s = words.Supported(s)
	return spreadJSON{s.N, number(s.Mean), number(s.SD), number(s.P10), number(s.P50), number(s.P90),
		pairOf(s.P10CI), pairOf(s.P50CI), pairOf(s.P90CI)}
}

func pairOf(ci [2]float64) [2]number { return [2]number{number(ci[0]), number(ci[1])} }

func daysOf(s result.Spread) spreadJSON { return spreadOf(words.InDays(s)) }

// datesJSON are the moments of P10, P50 and P90; null where there are none.
type datesJSON struct {
	P10 *time.Time `json:"p10"`
	P50 *time.Time `json:"p50"`
	P90 *time.Time `json:"p90"`
}

func datesOf(sails time.Time, after result.Spread) datesJSON {
	after = words.Supported(after)
	return datesJSON{dateOf(sails, after.P10), dateOf(sails, after.P50), dateOf(sails, after.P90)}
}

// dateOf describes a moment to the second: no simulated one means more.
func dateOf(sails time.Time, seconds float64) *time.Time {
	at, exists := words.DateAfter(sails, seconds)
	if !exists {
		return nil
	}
	at = at.Round(time.Second)
	return &at
}

// writeJSON writes a value in one piece, set in for people who look.
func writeJSON(w io.Writer, value any) error {
	var text bytes.Buffer
	encoder := json.NewEncoder(&text)
	encoder.SetIndent("", " ")
	encoder.SetEscapeHTML(false)
	if err := encoder.Encode(value); err != nil {
		return err
	}
	_, err := w.Write(text.Bytes())
	return err
}
