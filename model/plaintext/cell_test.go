package plaintext

import (
	"testing"

	"pgregory.net/rapid"
)

func TestCellsThatASpreadsheetWouldRunAreGuarded(t *testing.T) {
	for text, want := range map[string]string{
		"=1+1": "'=1+1", "+cmd": "'+cmd", "-cmd": "'-cmd", "@SUM(A1)": "'@SUM(A1)", "\t=1+1": "'\t=1+1", "\r=1": "'\r=1", " =1": "' =1", "＝1+1": "'＝1+1",
		"-2+3": "'-2+3", "+49 30": "'+49 30", "-0x1p-2": "'-0x1p-2", "-Inf": "'-Inf", "'=1": "''=1", "\x1b=1": "'\x1b=1",
		"-12.5": "-12.5", "+3": "+3", "-1e-7": "-1e-7", "-.5": "-.5", "0": "0", "-": "-", "": "", "SB-01": "SB-01", "a=b": "a=b", "'tis": "'tis", "’=1": "’=1",
	} {
		got := Guarded(text)
		if got != want {
			t.Errorf("%q is guarded as %q, want %q", text, got, want)
		}
		if back := Unguarded(got); back != text {
			t.Errorf("%q comes back as %q", text, back)
		}
	}
}

func TestAGuardedTextComesBackAsItWas(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		text := rapid.StringMatching(`['=+@ \t-]{0,4}[a-z0-9=.']{0,4}`).Draw(t, "text")
		cell := Guarded(text)
		if armed(cell) {
			t.Errorf("%q is left to be run as %q", text, cell)
		}
		if back := Unguarded(cell); back != text {
			t.Errorf("%q comes back as %q", text, back)
		}
	})
}
