package check_test

import (
	"math"
	"strings"
	"testing"

	"coredays/model/check"
)

const calm = "sites[0].weather={months: [{hs: 1 m, sd: 0.25 m}, {hs: 1 m, sd: 0.25 m}, {hs: 1 m, sd: 0.25 m}, {hs: 1 m, sd: 0.25 m}, {hs: 1 m, sd: 0.25 m}, {hs: 1 m, sd: 0.25 m}, " +
	"{hs: 1 m, sd: 0.25 m}, {hs: 1 m, sd: 0.25 m}, {hs: 1 m, sd: 0.25 m}, {hs: 1 m, sd: 0.25 m}, {hs: 1 m, sd: 0.25 m}, {hs: 1 m, sd: 0.25 m}]}"

// placed is the feasible plan at another place and date.
func placed(t *testing.T, position, depth, sails string, more ...string) []check.Finding {
	t.Helper()
	return checked(t, append([]string{"sites[0].places=check only", "sites[0].position=" + position, "ports.from.position=" + position, "ports.to.position=" + position,
		"sites[0].water_depth=" + depth, "sails=" + sails, calm}, more...)...)
}

// one is the finding whose sentence begins so.
func one(t *testing.T, found []check.Finding, what string) check.Finding {
	t.Helper()
	for _, f := range found {
		if strings.HasPrefix(f.What, what) {
			return f
		}
	}
	t.Fatalf("nothing begins with %q", what)
	return check.Finding{}
}

// 19 N 129 E has 75 days with a storm of gale force in the forty Augusts of the table (6.048 %), none in February.
func TestCyclonesNearASiteAreACautionInTheirSeason(t *testing.T) {
	const what = "days with a cyclone of gale force within 300 km"
	f := one(t, placed(t, "19N 129E", "5000 m", "2027-08-02T08:00Z"), what)
	if f.Verdict != check.Caution || math.Abs(f.Value-6.048) > 0.001 || f.Limit != 1 || !strings.Contains(f.Cure, "the plan has no time for them") || !strings.Contains(f.Source, "2.5 degrees") {
		t.Errorf("%+v", f)
	}
	// 7.75 % closed, by hand in model/places
	f = one(t, placed(t, "19N 129E", "5000 m", "2027-08-02T08:00Z", "sites[0].places=built in"), what)
	if f.Verdict != check.Caution || !strings.Contains(f.Cure, "about 7.7 % of the time") {
		t.Errorf("%+v", f)
	}
	if f = one(t, placed(t, "19N 129E", "5000 m", "2027-02-02T08:00Z"), what); f.Verdict != check.Pass || f.Value != 0 {
		t.Errorf("%+v", f)
	}
	for _, f := range placed(t, "19N 129E", "5000 m", "2027-08-02T08:00Z", "sites[0].places=off") {
		if strings.HasPrefix(f.What, what) {
			t.Error("a place that is off is looked at")
		}
	}
}

func TestIceAndCurrentsAreCautions(t *testing.T) {
	if f := one(t, placed(t, "66S 30W", "4500 m", "2027-09-02T08:00Z"), "time in months with sea ice"); f.Verdict != check.Caution || f.Value != 100 || !strings.Contains(f.Cure, "as a rule in 100 %") {
		t.Errorf("%+v", f)
	}
	if f := one(t, placed(t, "20N 40W", "4500 m", "2027-09-02T08:00Z"), "time in months with sea ice"); f.Verdict != check.Pass || f.Value != 0 {
		t.Errorf("%+v", f)
	}
	// 3.0 kn from ahead, 1.5 abeam: at 30° off the bow 3/√(0.75 + 0.25×4) = 2.268 kn. The table's greatest in
	// the Florida Strait is above 1.20 m/s, 2.33 kn.
	f := one(t, placed(t, "25.5N 79.5W", "700 m", "2027-07-02T08:00Z", "sites[0].layers=[{bottom: 400 mbsf, lithology: chalk}]"), "monthly mean current")
	if math.Abs(f.Limit-2.268) > 0.001 || f.Value <= 0.5 {
		t.Errorf("%+v", f)
	}
	weak := placed(t, "25.5N 79.5W", "700 m", "2027-07-02T08:00Z", "most_current=0.5 kn")
	if f := one(t, weak, "monthly mean current"); f.Verdict != check.Caution || math.Abs(f.Limit-0.378) > 0.001 || !strings.Contains(f.Source, "1 degree") {
		t.Errorf("%+v", f)
	}
}

// Where the sea north-east of Hawaii is some 5,000 m deep, 3,000 m is outside the widened range by hundreds of metres,
// 480 m by thousands.
func TestWhatNobodyMeansIsStoppedAndNothingElse(t *testing.T) {
	for name, c := range map[string]struct {
		position, depth, what string
		want                  check.Verdict
	}{
		"a depth of its cell":           {"30N 140W", "4800 m", "water depth", check.Pass},
		"a depth that is doubtful":      {"30N 140W", "3000 m", "water depth and the shallowest", check.Caution},
		"a depth of a tenth":            {"30N 140W", "480 m", "water depth and the shallowest", check.Stop},
		"an abyss on the shelf":         {"54N 4E", "4800 m", "water depth and the deepest", check.Stop},
		"the middle of Asia":            {"45N 90E", "1000 m", "site lies at sea", check.Stop},
		"a coast":                       {"38N 123.2W", "1000 m", "site lies at sea", check.Pass},
		"sea on the other side of 180°": {"30S 179.9W", "4800 m", "site lies at sea", check.Pass},
	} {
		found := placed(t, c.position, c.depth, "2027-05-02T08:00Z")
		if f := one(t, found, c.what); f.Verdict != c.want {
			t.Errorf("%s: %v, want %v: %+v", name, f.Verdict, c.want, f)
		}
	}
}

func TestTwoSitesAtOnePlaceAreACaution(t *testing.T) {
	second := func(position string) string {
		return "sites=[{name: A, position: 0N 145W, water_depth: 3420 m, approved_to: 100 mbsf, holes: [{name: A, core: [{with: APC, to: refusal}]}]}, " +
			"{name: B, position: " + position + ", water_depth: 3420 m, approved_to: 100 mbsf, holes: [{name: A, core: [{with: APC, to: refusal}]}]}]"
	}
	// 0.0005° of the equator are 55.6 m, 0.001° 111.2 m.
	if f := one(t, checked(t, second("0N 145.0005W")), "sites lie apart"); f.Verdict != check.Caution || math.Abs(f.Value-55.6) > 0.1 {
		t.Errorf("%+v", f)
	}
	if f := one(t, checked(t, second("0N 145.001W")), "sites lie apart"); f.Verdict != check.Pass {
		t.Errorf("%+v", f)
	}
}
