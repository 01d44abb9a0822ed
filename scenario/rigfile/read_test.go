package rigfile

import (
	"testing"

	"coredays/model/riglog"
)

func TestTheProgramsOwnWordsCanBeRead(t *testing.T) {
	if _, err := ReadWords("words.yaml", Starter()); err != nil {
		t.Fatal(err)
	}
}

func TestALineMayLumpWorkTogether(t *testing.T) {
	doing, all := Own().meaning("Out of hole, laid out assembly, secured")
	if got := len(doing); got != 3 || !all {
		t.Errorf("%v, whole %v", doing, all)
	}
	var p riglog.Papers
	r := Reading{}
	if err := r.Read(&p, "log.csv", []byte("from,to,what,site,hole\n2027-01-01 00:00,2027-01-01 08:15,\"out of hole, laid out assembly, secured\",S1,A\n2027-01-01 08:15,2027-01-01 09:00,made tea,S1,A\n")); err != nil {
		t.Fatal(err)
	}
	if len(p.Lines) != 2 || !p.Lines[0].Lumped() || p.Lines[1].Mapped {
		t.Errorf("%+v", p.Lines)
	}
	if u := riglog.Unmapped(p.Lines); len(u) != 1 || u[0].What != "made tea" || u[0].Hours != 0.75 {
		t.Errorf("%+v", u)
	}
}

// The length of line out goes by several names.
func TestTheLinesChannelIsKnownByItsNames(t *testing.T) {
	for _, name := range []string{"wire_m", "wire_out_m", "line_out_m", "Line out (m)", "wire depth [m]", "wireline_depth_m", "line_depth_m"} {
		if _, known := headed([]string{"time", name})["wire"]; !known {
			t.Errorf("%q is not known as the line's channel", name)
		}
	}
}
