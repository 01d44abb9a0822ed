package scenario

import (
	"errors"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"unicode/utf16"

	"coredays/scenario/fault"
)

// formats are the three in which a scenario may be written, each with a whole one.
var formats = map[string]string{
	".yaml": "version: 1\ntitle: Bouée\nsails: 2027-01-14T08:00Z\nsea_days: 30 d\n" +
		"ports: {from: {name: Port Aldous, position: 42.9S 147.6E}, to: {name: Port Merrin, position: 46.1S 171.2E}}\n" +
		"sites:\n  - name: SB-01\n    position: 48 37.2S 158 06.0E\n    water_depth: 3420 m\n    approved_to: 200 mbsf\n" +
		"    holes: [{name: A, core: [{with: APC, to: refusal}]}]\n",
	".toml": "version = 1\ntitle = \"Bouée\"\nsails = \"2027-01-14T08:00Z\"\nsea_days = \"30 d\"\n" +
		"ports = {from = {name = \"Port Aldous\", position = \"42.9S 147.6E\"}, to = {name = \"Port Merrin\", position = \"46.1S 171.2E\"}}\n" +
		"[[sites]]\nname = \"SB-01\"\nposition = \"48 37.2S 158 06.0E\"\nwater_depth = \"3420 m\"\napproved_to = \"200 mbsf\"\n" +
		"holes = [{name = \"A\", core = [{with = \"APC\", to = \"refusal\"}]}]\n",
	".json": `{"version": 1, "title": "Bouée", "sails": "2027-01-14T08:00Z", "sea_days": "30 d",
 "ports": {"from": {"name": "Port Aldous", "position": "42.9S 147.6E"}, "to": {"name": "Port Merrin", "position": "46.1S 171.2E"}},
 "sites": [{"name": "SB-01", "position": "48 37.2S 158 06.0E", "water_depth": "3420 m", "approved_to": "200 mbsf",
 "holes": [{"name": "A", "core": [{"with": "APC", "to": "refusal"}]}]}]}
`,
}

func TestAScenarioIsReadAsEditorsSaveIt(t *testing.T) {
	for format, text := range formats {
		for name, change := range map[string]func(string) string{
			"as it is":          func(s string) string { return s },
			"a byte order mark": func(s string) string { return "\ufeff" + s },
			"carriage returns":  func(s string) string { return strings.ReplaceAll(s, "\n", "\r\n") },
			"both":              func(s string) string { return "\ufeff" + strings.ReplaceAll(s, "\n", "\r\n") },
			"returns alone":     func(s string) string { return strings.ReplaceAll(s, "\n", "\r") },
			"a remark after a mark": func(s string) string {
				if format == ".json" {
					return s
				}
				return "\ufeff# kept by hand\n" + s
			},
		} {
			if p, err := Read("plan"+format, []byte(change(text))); err != nil || p.Title != "Bouée" {
				t.Errorf("%s with %s: %v", format, name, err)
			}
		}
	}
}

func TestAScenarioOrShipThatIsNoTextSaysWhatItIs(t *testing.T) {
	for format, text := range formats {
		for name, c := range map[string]struct {
			data string
			line int
			want string
		}{
			"UTF-16":     {inUTF16(text), 0, "text in UTF-8 is wanted, and this is in UTF-16: save it as UTF-8"},
			"Latin-1":    {strings.ReplaceAll(text, "é", "\xe9"), 1 + strings.Count(text[:strings.Index(text, "é")], "\n"), "this has the byte 0xE9 on this line, as text in Latin-1 or Windows-1252 has: save it as UTF-8"},
			"a workbook": {"PK\x03\x04\x14\x00\x06\x00", 0, "this is a workbook"},
			"a NUL":      {text + "\x00", 1 + strings.Count(text, "\n"), "this has a NUL byte on this line"},
		} {
			_, err := Read("plan"+format, []byte(c.data))
			faults, _ := errors.AsType[fault.List](err)
			if len(faults) != 1 || faults[0].Line != c.line || !strings.Contains(err.Error(), c.want) {
				t.Errorf("%s in %s: got %v, want line %d: %s", name, format, err, c.line, c.want)
			}
			if _, faults := readShip("ship"+format, []byte(c.data)); len(faults) != 1 || !strings.Contains(faults.Error(), c.want) {
				t.Errorf("a ship in %s, %s: %v", name, format, faults)
			}
		}
	}
}

func TestARecordThatAScenarioNamesIsNotRepeated(t *testing.T) {
	folder := t.TempDir()
	text := strings.Replace(formats[".yaml"], "    approved_to", "    weather: {record: passwd.csv}\n    approved_to", 1)
	for name, data := range map[string]string{"plan.yaml": text, "passwd.csv": "root:x:0:0:root:/root:/bin/bash\n"} {
		if err := os.WriteFile(filepath.Join(folder, name), []byte(data), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	_, err := Open(filepath.Join(folder, "plan.yaml"))
	const want = `plan.yaml:10: sites[0].weather.record: "passwd.csv": a record of the sea of a year and more; passwd.csv: no line of headings with a time`
	if err == nil || !strings.Contains(err.Error(), want) || strings.Contains(err.Error(), "root") {
		t.Errorf("got  %v\nwant %s", err, want)
	}
}

// inUTF16 is a text as some editors save it when asked for Unicode.
func inUTF16(text string) string {
	data := []byte("\xff\xfe")
	for _, u := range utf16.Encode([]rune(text)) {
		data = append(data, byte(u), byte(u>>8))
	}
	return string(data)
}
