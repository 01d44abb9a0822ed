package scenario

import (
	"fmt"
	"os"
	"testing"
)

// The built-in ship has density-resistivity, sonic-image and seismic.
func TestLoggingIsAskedForByWhatIsMeasured(t *testing.T) {
	base, err := os.ReadFile("testdata/broken/base.yaml")
	if err != nil {
		t.Fatal(err)
	}
	for words, want := range map[string]string{
		"density": "[0]", "density, resistivity": "[0]", "image, gamma": "[1 0]", "velocity, check shots": "[1 2]", "standard suite": "[0 1]",
		"standard suite, seismic": "[0 1 2]", "sonic, standard suite": "[1 0]", "seismic, porosity": "[2 0]",
	} {
		p, err := WithSettings(base, "base.yaml", []string{"sites[0].holes[1].logging=[" + words + "]"})
		if err != nil {
			t.Fatal(err)
		}
		if got := fmt.Sprint(p.Sites[0].Items[1].Hole.Logging); got != want {
			t.Errorf("%s: strings %s, wanted %s", words, got, want)
		}
	}
}
