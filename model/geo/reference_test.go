package geo

import (
	"encoding/csv"
	"fmt"
	"math"
	"math/rand/v2"
	"os"
	"os/exec"
	"slices"
	"strconv"
	"strings"
	"testing"

	"coredays/model/unit"
)

// The sphere against the ellipsoid, leg for leg: north-south its radius stands for radii of
// curvature from b²/a at the equator to a²/b at the poles, east-west for radii from a to a²/b.
const (
	mostTooLong  = meanRadius/(polarRadius*polarRadius/equatorialRadius) - 1
	mostTooShort = 1 - meanRadius/(equatorialRadius*equatorialRadius/polarRadius)
)

// rows reads a file of testdata after the line with its source and the one with its headings.
func rows(t *testing.T, name string) [][]string {
	file, err := os.Open("testdata/" + name)
	if err != nil {
		t.Fatal(err)
	}
	defer file.Close()
	reader := csv.NewReader(file)
	reader.Comment = '#'
	records, err := reader.ReadAll()
	if err != nil || len(records) < 2 {
		t.Fatalf("%s: %d rows, %v", name, len(records), err)
	}
	return records[1:]
}

// numbers reads the fields of a row that are figures.
func numbers(t *testing.T, fields []string) []float64 {
	var values []float64
	for _, field := range fields {
		value, err := strconv.ParseFloat(field, 64)
		if err != nil {
			t.Fatal(err)
		}
		values = append(values, value)
	}
	return values
}

// checkDistance compares with a length on the ellipsoid and one on the sphere, in metres.
func checkDistance(t *testing.T, a, b Position, ellipsoid, sphere unit.Length) {
	t.Helper()
	got := Distance(a, b)
	if !near(got, sphere, rounding(got)) {
		t.Errorf("%s to %s is %.4f m, GeodSolve on the sphere: %.4f m", a, b, got, sphere)
	}
	if got > ellipsoid*(1+mostTooLong)+rounding(got) || got < ellipsoid*(1-mostTooShort)-rounding(got) {
		t.Errorf("%s to %s is %.4f m, GeodSolve on the ellipsoid: %.4f m", a, b, got, ellipsoid)
	}
}

func TestSphereIsWithinTheStatedShareOfTheEllipsoid(t *testing.T) {
	if long, short := fmt.Sprintf("%.2f %%", 100*mostTooLong), fmt.Sprintf("%.2f %%", 100*mostTooShort); long != "0.56 %" || short != "0.45 %" {
		t.Errorf("the sphere is up to %s too long, %s too short; the comments say 0.56 %% and 0.45 %%", long, short)
	}
}

func TestDistancesAreThoseOfTheReferenceTool(t *testing.T) {
	for _, row := range rows(t, "distances.csv") {
		n := numbers(t, row)
		checkDistance(t, Position{n[0], n[1]}, Position{n[2], n[3]}, unit.Length(n[4]), unit.Length(n[5]))
	}
}

func TestDistancesAreThoseOfTheReferenceToolRunNow(t *testing.T) {
	program, err := exec.LookPath("GeodSolve")
	if err != nil {
		t.Skip("the program GeodSolve (GeographicLib) is not installed; distances are checked against its stored figures alone")
	}
	pairs := scattered(500)
	var input strings.Builder
	for _, p := range pairs {
		fmt.Fprintln(&input, p[0].Latitude, p[0].Longitude, p[1].Latitude, p[1].Longitude)
	}
	ellipsoid := solve(t, program, input.String())
	sphere := solve(t, program, input.String(), "-e", strconv.FormatFloat(meanRadius, 'f', -1, 64), "0")
	for i, p := range pairs {
		checkDistance(t, p[0], p[1], ellipsoid[i], sphere[i])
	}
}

// scattered gives pairs of positions, half of them within a few degrees of each other.
func scattered(count int) [][2]Position {
	random := rand.New(rand.NewPCG(1, 2))
	uniform := func(from, to float64) float64 { return from + (to-from)*random.Float64() }
	var pairs [][2]Position
	for i := range count {
		a := Position{uniform(-90, 90), uniform(-180, 180)}
		b := Position{uniform(-90, 90), uniform(-180, 180)}
		if i%2 == 0 {
			b = Position{max(-90, min(90, a.Latitude+uniform(-3, 3))), wrapped(a.Longitude + uniform(-3, 3))}
		}
		pairs = append(pairs, [2]Position{a, b})
	}
	return pairs
}

// solve runs the inverse geodesic for lines of two positions and gives the lengths.
func solve(t *testing.T, program, input string, options ...string) []unit.Length {
	command := exec.Command(program, append([]string{"-i", "-p", "6"}, options...)...)
	command.Stdin = strings.NewReader(input)
	output, err := command.Output()
	if err != nil {
		t.Fatal(err)
	}
	var lengths []unit.Length
	for line := range strings.Lines(string(output)) {
		lengths = append(lengths, unit.Length(numbers(t, strings.Fields(line))[2]))
	}
	return lengths
}

// A ship may sail another way than the great circle, and reports count the approach to a site
// differently: the nine legs are 0.95 to 1.23 of it. The middle one must be within what the sphere is off.
func TestPublishedLegsBetweenSitesAreGreatCircles(t *testing.T) {
	var ratios []float64
	for _, row := range rows(t, "published_legs.csv") {
		n := numbers(t, row[2:7])
		sailed := unit.Length(n[4]) * unit.NauticalMile
		ratios = append(ratios, float64(sailed/Distance(Position{n[0], n[1]}, Position{n[2], n[3]})))
	}
	slices.Sort(ratios)
	if middle := ratios[len(ratios)/2]; math.Abs(middle-1) > 0.006 {
		t.Errorf("the middle of the published legs is %.4f of the great circle; all: %.3f", middle, ratios)
	}
}
