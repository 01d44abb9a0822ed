package sea

import (
	"strings"
	"testing"
)

func TestInShallowWaterWavesAreHalfOfTheBuiltInClimate(t *testing.T) {
	open, err := BuiltIn(-10, -30)
	if err != nil {
		t.Fatal(err)
	}
	near, deep := open.NearShore(300), open.NearShore(301)
	for m := range open.Mean {
		if near.Mean[m] != open.Mean[m]/2 || near.Variation[m] != open.Variation[m] || deep.Mean[m] != open.Mean[m] {
			t.Errorf("month %d: %g m in the open, %g m in 300 m of water, %g m in 301 m", m+1, open.Mean[m], near.Mean[m], deep.Mean[m])
		}
	}
	if !strings.Contains(near.Source, "half of its waves") || deep.Source != open.Source {
		t.Errorf("sources %q and %q", near.Source, deep.Source)
	}
}
