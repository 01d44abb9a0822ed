package scenario

import (
	"encoding/json"
	"testing"

	"coredays/scenario/edit"
)

func TestWhatIsTypedKeepsItsOrderAndItsLetters(t *testing.T) {
	got, err := json.Marshal(edit.Typed([]byte("z: 1.50\na: {low: 2 d, e: }\nl: [yes, 'it''s', {}]\n")))
	if want := `{"z":"1.50","a":{"low":"2 d","e":""},"l":["yes","it's",{}]}`; err != nil || string(got) != want {
		t.Errorf("%s (%v), want %s", got, err, want)
	}
	if got := edit.Typed([]byte("a: [")); got != nil {
		t.Errorf("what is no YAML gives %v", got)
	}
}
