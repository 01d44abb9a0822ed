package sitetable

import (
	"bytes"
	"math"
	"strings"
	"testing"

	"github.com/xuri/excelize/v2"

	"coredays/scenario"
)

// Three invented sites: 48°37.2' S is 48.62 S, 158°06.0' E is 158.1 E; 12,000 ft are 3657.6 m.
const plain = `Site,Latitude,Longitude,Water depth (m),Target (mbsf),Priority
SB-01,48 37.2S,158 06.0E,4850,300,primary
SB-02,-46.21,153.67,4600.5,,2
Ünï 3,46 12.6 S,179 58.5 W,5100 m,120,alternate
`

func near(a, b float64) bool { return math.Abs(a-b) < 1e-9 }

func holds(t *testing.T, name string, sites []Site, err error) {
	t.Helper()
	if err != nil {
		t.Errorf("%s: %v", name, err)
		return
	}
	if len(sites) != 3 {
		t.Errorf("%s: %d sites", name, len(sites))
		return
	}
	a, b, c := sites[0], sites[1], sites[2]
	if a.Name != "SB-01" || !near(a.Position.Latitude, -48.62) || !near(a.Position.Longitude, 158.1) || a.Depth != 4850 || a.Target != 300 || a.Alternate {
		t.Errorf("%s: %+v", name, a)
	}
	if b.Name != "SB-02" || !near(b.Position.Latitude, -46.21) || !near(b.Position.Longitude, 153.67) || b.Depth != 4600.5 || b.Target != 0 || !b.Alternate {
		t.Errorf("%s: %+v", name, b)
	}
	if c.Name != "Ünï 3" || !near(c.Position.Latitude, -46.21) || !near(c.Position.Longitude, -179.975) || c.Depth != 5100 || c.Target != 120 || !c.Alternate {
		t.Errorf("%s: %+v", name, c)
	}
}

func TestTablesAreTakenAsSpreadsheetsKeepThem(t *testing.T) {
	const pieces = `Proposed sites;;;;;;;;;
;;;;;;;;;
Site;Latitude;;;Longitude;;;Water depth;Target;Priority
;deg;min;N/S;deg;min;E/W;(m);(m);
SB-01;48;37,2;S;158;6,0;E;4850;300;1
;;;;;;;;;
SB-02;46;12,6;S;153;40,2;E;4600,5;;2
Ünï 3;46;12,6;S;179;58,5;W;5100;120;2
`
	const signed = `name	lat deg	lat min	long deg	long min	depth m	target m	rank
SB-01	-48	37.2	158	06.0	4850	300	1
SB-02	-46	12.6	153	40.2	4600.5		2
Ünï 3	-46	12.6	-179	58.5	5100	120	2
`
	const one = `Name,Position,Water depth,Penetration (mbsf),Priority
SB-01,"48 37.2S, 158 06.0E",4850 m,300,primary
SB-02,-46.21 153.67,4.6005 km,,2
Ünï 3,46°12.6'S 179°58.5'W,5100 m,120,alternate
`
	for name, text := range map[string]string{
		"plain": plain, "a byte order mark": "\ufeff" + plain, "carriage returns": strings.ReplaceAll(plain, "\n", "\r\n"), "blank rows": strings.ReplaceAll(plain, "\n", "\n,,,,,\n\n"),
		"semicolons and decimal commas": strings.NewReplacer(",", ";", ".", ",").Replace(plain), "a title above": "Sites of the proposal\n\n" + plain,
		"a column a piece, under a heading of two rows": pieces, "signs and tabs": signed, "position in one cell": one,
	} {
		sites, err := Read("sites.csv", []byte(text))
		holds(t, name, sites, err)
	}
}

func TestAWorkbookIsReadLikeATable(t *testing.T) {
	book := excelize.NewFile()
	for i, row := range [][]any{{"Sites of the proposal"}, {}, {"Site", "Latitude", nil, nil, "Longitude", nil, nil, "Water depth (m)", "Target (mbsf)", "Priority"},
		{nil, "deg", "min", "N/S", "deg", "min", "E/W"}, {"SB-01", 48, 37.2, "S", 158, 6, "E", 4850, 300, "primary"}, {},
		{"SB-02", 46, 12.6, "S", 153, 40.2, "E", 4600.5, nil, "alternate"}, {"Ünï 3", 46, 12.6, "S", 179, 58.5, "W", 5100, 120, "alternate"}} {
		at, _ := excelize.CoordinatesToCellName(1, i+1)
		if err := book.SetSheetRow("Sheet1", at, &row); err != nil {
			t.Fatal(err)
		}
	}
	for _, merged := range [][2]string{{"A1", "J1"}, {"B3", "D3"}, {"E3", "G3"}} {
		if err := book.MergeCell("Sheet1", merged[0], merged[1]); err != nil {
			t.Fatal(err)
		}
	}
	var b bytes.Buffer
	if err := book.Write(&b); err != nil {
		t.Fatal(err)
	}
	sites, err := Read("sites.xlsx", b.Bytes())
	holds(t, "workbook", sites, err)
	if _, err := Read("sites.xlsx", []byte("no workbook")); err == nil || !strings.HasPrefix(err.Error(), "sites.xlsx: a workbook") {
		t.Errorf("%v", err)
	}
}

func TestTheScenarioOfATableRuns(t *testing.T) {
	sites, err := Read("sites.csv", []byte(plain))
	if err != nil {
		t.Fatal(err)
	}
	p, err := scenario.Read("plan.yaml", Scenario("sites.csv", sites))
	if err != nil {
		t.Fatal(err)
	}
	if len(p.Sites) != 3 || p.Sites[2].Name != "Ünï 3" || p.Sites[1].WaterDepth != 4600.5 || !p.Sites[2].Alternate || math.Abs(p.Sites[0].Position.Longitude-158.1) > 1e-6 {
		t.Errorf("%+v", p.Sites)
	}
}

func TestADepthThatIsNotGivenIsThatOfThePlaceAndSaysSo(t *testing.T) {
	sites, err := Read("s.csv", []byte("name,lat,lon\nA,19N,129E\n"))
	if err != nil {
		t.Fatal(err)
	}
	if s := sites[0]; !s.Filled || s.Depth < 4500 || s.Depth > 6500 {
		t.Errorf("%+v", s)
	}
	text := string(Scenario("s.csv", sites))
	for _, want := range []string{"# SET: not in the table, so the mean of its cell", "days with a cyclone within 300 km: Jun 2 %, Jul 4 %, Aug 6 %"} {
		if !strings.Contains(text, want) {
			t.Errorf("no %q in\n%s", want, text)
		}
	}
}

func TestFaultsOfAllRowsAreToldAtOnce(t *testing.T) {
	_, err := Read("s.csv", []byte(`name,lat,lon,water depth,target (m),priority
A,19N,129E,5000,,
,19N,129E,5000 m,,
A,19X,129E,5000 m,,
B,91N,129E,5000 m,,
C,19N,129E,-5000 m,x,first
`))
	if err == nil {
		t.Fatal("no fault")
	}
	for _, want := range []string{`s.csv:2: water depth: "5000": a length with its unit`, `s.csv:3: name: a name`, `s.csv:4: name: "A": a name that no other site has; line 2`, `s.csv:4: position: "19X`,
		`s.csv:5: position: "91N 129E"`, `s.csv:6: water depth: "-5000 m": from 10 m`, `s.csv:6: target: "x"`, `s.csv:6: priority: "first": primary or alternate`} {
		if !strings.Contains(err.Error(), want) {
			t.Errorf("no %q in\n%v", want, err)
		}
	}
	for name, text := range map[string]string{"nothing": "", "no heading": "1,2,3\n", "no rows": "name,lat,lon\n", "two names": "name,site,lat,lon\nA,B,1N,2E\n"} {
		if _, err := Read("s.csv", []byte(text)); err == nil || !strings.HasPrefix(err.Error(), "s.csv:") {
			t.Errorf("%s: %v", name, err)
		}
	}
}
