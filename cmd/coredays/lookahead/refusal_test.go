package lookahead

import (
	"strings"
	"testing"
)

// Two short piston cores in a row are a refusal by the plan's rule, and the half-length corer takes over. Where the crew
// went on with the same corer it was none.
func TestTheCrewThatGoesOnWasNotRefused(t *testing.T) {
	p, f := expedition(t)
	for _, c := range []struct {
		short   []string // cores of hole B of PR-2 that are 5 m long
		refused bool
	}{{[]string{"9", "10"}, true}, {[]string{"6", "7"}, false}, {[]string{"10"}, false}} {
		changed := f
		table := string(f.Cores.Data)
		for _, core := range c.short {
			at := strings.Index(table, "PR-2,B,"+core+",H,")
			line, rest, _ := strings.Cut(table[at:], "\n")
			table = table[:at] + strings.Replace(line, ",9.5,", ",5.0,", 1) + "\n" + rest
		}
		changed.Cores = &File{"cores.csv", []byte(table)}
		st, _, err := Read(p, changed)
		if err != nil {
			t.Fatal(err)
		}
		if h := &st.Now.Hole; h.Half != c.refused || (st.Items[st.Now.Item].Refused > 0) != c.refused || h.Stage != 0 {
			t.Errorf("short %v: stage %d, half-length %v, refused at %.1f m", c.short, h.Stage, h.Half, float64(st.Items[st.Now.Item].Refused))
		}
	}
}
