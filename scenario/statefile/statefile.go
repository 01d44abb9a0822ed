// Package statefile writes where a ship stands as a commented file that the crew puts right, and reads it again; and
// reads tables of waves forecast.
package statefile

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"math"
	"regexp"
	"strings"
	"text/template"
	"time"

	"go.yaml.in/yaml/v3"

	"coredays/model/coring"
	"coredays/model/plan"
	"coredays/model/state"
)

// file mirrors a state file.
type file struct {
	At       string   `yaml:"at"`
	Site     string   `yaml:"site"`
	Hole     string   `yaml:"hole"`
	Depth    *float64 `yaml:"depth_m"`
	Bit      *float64 `yaml:"bit_m"`
	Assembly string   `yaml:"assembly"`
	BitHours *float64 `yaml:"bit_hours"`
	Funnel   *bool    `yaml:"funnel"`
	Over     *float64 `yaml:"over_h"`
	Waves    *float64 `yaml:"waves_m"`
	ToGo     *float64 `yaml:"to_go_nmi"`
	HomeBy   string   `yaml:"home_by"`
	Open     *float64 `yaml:"open_h"`
	Strings  *float64 `yaml:"assemblies_lost"`
	Pipe     *float64 `yaml:"pipe_lost_m"`

	Approvals []approvalFile `yaml:"approvals"`
	Holes     []holeFile     `yaml:"holes"`
}

type approvalFile struct {
	Site string   `yaml:"site"`
	To   *float64 `yaml:"to_mbsf"`
}

type holeFile struct {
	Site    string   `yaml:"site"`
	Hole    string   `yaml:"hole"`
	Status  string   `yaml:"status"`
	Depth   *float64 `yaml:"depth_m"`
	Refused *float64 `yaml:"refused_m"`
	Rank    *float64 `yaml:"rank"`
}

// Read reads a state file.
func Read(name string, data []byte) (state.Correction, error) {
	c := state.NoCorrection()
	var f file
	d := yaml.NewDecoder(bytes.NewReader(data))
	d.KnownFields(true)
	if err := d.Decode(&f); err != nil && !errors.Is(err, io.EOF) {
		return c, errors.Join(faultsOf(name, err)...)
	}
	var wrong []error
	number := func(key string, to *float64, from *float64, most float64) {
		switch {
		case from == nil:
		case !(*from >= 0 && *from <= most):
			wrong = append(wrong, fmt.Errorf("%s: %s: %g, wanted 0 to %g", name, key, *from, most))
		default:
			*to = *from
		}
	}
	moment := func(key string, to *time.Time, text string) {
		if text == "" {
			return
		}
		at, err := momentOf(text)
		if err != nil {
			wrong = append(wrong, fmt.Errorf("%s: %s: %q, wanted a time such as 2027-03-18T03:00Z", name, key, text))
		}
		*to = at
	}
	moment("at", &c.At, f.At)
	moment("home_by", &c.HomeBy, f.HomeBy)
	c.Site, c.Hole, c.Assembly, c.Funnel = f.Site, f.Hole, f.Assembly, f.Funnel
	number("depth_m", &c.Depth, f.Depth, 12000)
	number("bit_m", &c.Bit, f.Bit, 12000)
	number("bit_hours", &c.BitHours, f.BitHours, 1000)
	number("over_h", &c.Over, f.Over, 1000)
	number("waves_m", &c.Waves, f.Waves, 30)
	number("to_go_nmi", &c.ToGo, f.ToGo, 12000)
	number("open_h", &c.OpenHours, f.Open, 10000)
	number("assemblies_lost", &c.Assemblies, f.Strings, 100)
	number("pipe_lost_m", &c.Pipe, f.Pipe, 12000)
	whole := func(key string, from *float64) {
		if from != nil && *from != math.Trunc(*from) {
			wrong = append(wrong, fmt.Errorf("%s: %s: %g, wanted a whole number", name, key, *from))
		}
	}
	whole("assemblies_lost", f.Strings)
	for _, a := range f.Approvals {
		x := state.Approval{Site: a.Site, To: math.NaN()}
		number("approvals: to_mbsf", &x.To, a.To, 9000)
		c.Approvals = append(c.Approvals, x)
	}
	for _, h := range f.Holes {
		x := state.HoleCorrection{Site: h.Site, Hole: h.Hole, Status: h.Status, Depth: math.NaN(), Refused: math.NaN()}
		number("holes: depth_m", &x.Depth, h.Depth, 12000)
		number("holes: refused_m", &x.Refused, h.Refused, 12000)
		if h.Rank != nil {
			rank := 1.0
			if whole("holes: rank", h.Rank); *h.Rank < 1 {
				wrong = append(wrong, fmt.Errorf("%s: holes: rank: %g, wanted 1 to 100", name, *h.Rank))
			}
			number("holes: rank", &rank, h.Rank, 100)
			x.Rank = int(rank)
		}
		c.Holes = append(c.Holes, x)
	}
	return c, errors.Join(wrong...)
}

// strange and unlike are what the YAML reader says of a key that is not known, and of the rest.
var (
	strange = regexp.MustCompile(`^line (\d+): field (\S+) not found`)
	unlike  = regexp.MustCompile(`^line (\d+): (.*)$`)
)

// faultsOf says in words of the file what the YAML reader says.
func faultsOf(name string, err error) (list []error) {
	lines := []string{strings.TrimPrefix(err.Error(), "yaml: ")}
	if wrong, is := errors.AsType[*yaml.TypeError](err); is {
		lines = lines[:0]
		for _, e := range wrong.Errors {
			lines = append(lines, fmt.Sprint(e))
		}
	}
	for _, line := range lines {
		if m := strange.FindStringSubmatch(line); m != nil {
			list = append(list, fmt.Errorf("%s:%s: there is no key %s in a state file: coredays lookahead --write-state writes one with all keys", name, m[1], m[2]))
		} else if m := unlike.FindStringSubmatch(line); m != nil {
			list = append(list, fmt.Errorf("%s:%s: %s", name, m[1], m[2]))
		} else {
			list = append(list, fmt.Errorf("%s: %s", name, line))
		}
	}
	return list
}

// momentOf reads a time, UTC where no zone is stated.
func momentOf(text string) (at time.Time, err error) {
	for _, layout := range []string{time.RFC3339, "2006-01-02T15:04Z07:00", "2006-01-02T15:04", "2006-01-02 15:04"} {
		if at, err = time.Parse(layout, text); err == nil {
			return at.UTC(), nil
		}
	}
	return at, err
}

var form = template.Must(template.New("state").Parse(`# Where the ship stands, as the log tells it. Put right what is wrong and give the file to --state.
# Lines that are taken out stay as the log has them. Depths are metres.
at: {{.At}}                # UTC
{{with .Site}}site: {{.}}
{{end}}{{with .Hole}}hole: {{.}}
{{end}}{{with .Depth}}depth_m: {{.}}            # of the hole in hand, below the sea floor
{{end}}bit_m: {{.Bit}}               # of the bit, below the sea surface; 0 with all pipe on deck
assembly: {{.Assembly}}          # {{.Assemblies}}
bit_hours: {{.BitHours}}             # that the bit in use has rotated
{{with .Open}}open_h: {{.}}                # hours since the hole in hand was opened
{{end}}funnel: {{.Funnel}}             # the hole in hand has one
assemblies_lost: {{.Strings}}        # left in holes so far, with drill pipe: less is left of what the ship has on board
pipe_lost_m: {{.Pipe}}
# over_h: 6             # hours that what is in hand, or trouble, still lasts by your own estimate
# waves_m: 3.2          # significant wave height now
{{if not .Site}}# to_go_nmi: 120        # nautical miles still to sail to where she is bound
{{end}}home_by: {{.HomeBy}}     # latest arrival in port
approvals:              # as amended; holes go no deeper
{{range .Approvals}}  {{if not .To}}# {{end}}- {site: {{.Site}}, to_mbsf: {{or .To "500"}}}{{if not .To}}    # none is stated{{end}}
{{end}}holes:                  # ranks as amended: 1 is dropped last
{{range .Holes}}  - {site: {{.Site}}, hole: {{.Hole}}, rank: {{.Rank}}, status: {{.Status}}{{with .Depth}}, depth_m: {{.}}{{end}}{{with .Refused}}, refused_m: {{.}}{{end}}}
{{end}}`))

// Write writes a state as a file to put right.
func Write(w io.Writer, p *plan.Plan, s *state.State) error {
	type approval struct{ Site, To string }
	type hole struct {
		Site, Hole, Status, Depth, Refused string
		Rank                               int
	}
	now := &s.Now
	v := struct {
		At, Site, Hole, Depth, Bit, Assembly, Assemblies, BitHours, HomeBy, Open, Pipe string
		Strings                                                                        int
		Funnel                                                                         bool
		Approvals                                                                      []approval
		Holes                                                                          []hole
	}{At: s.At.UTC().Format("2006-01-02T15:04Z"), Bit: fmt.Sprintf("%.1f", float64(now.Bit)), Assembly: "none", Assemblies: "none, " + assemblies(),
		BitHours: fmt.Sprintf("%.1f", float64(now.Rotated)/3600), Funnel: now.Hole.Funnel, HomeBy: homeBy(p, s).UTC().Format("2006-01-02T15:04Z"),
		Strings: s.Gone.Assemblies, Pipe: fmt.Sprintf("%.1f", float64(s.Gone.Pipe))}
	if now.Assembly != coring.NoBHA {
		v.Assembly = now.Assembly.String()
	}
	if now.Site != state.None {
		v.Site = quoted(p.Sites[now.Site].Name)
	}
	figure := func(m float64) string {
		if m <= 0 {
			return ""
		}
		return fmt.Sprintf("%.1f", m)
	}
	if n := now.Item; n != state.None {
		v.Hole = quoted(p.Sites[s.Items[n].Site].Items[s.Items[n].Number].Name)
		v.Depth = figure(float64(now.Hole.Depth))
		if now.Hole.Open {
			v.Open = fmt.Sprintf("%.1f", s.At.Sub(s.OpenedAt()).Hours())
		}
	}
	for i := range p.Sites {
		v.Approvals = append(v.Approvals, approval{quoted(p.Sites[i].Name), figure(float64(p.Sites[i].ApprovedTo))})
	}
	for i := range s.Items {
		x := &s.Items[i]
		item := &p.Sites[x.Site].Items[x.Number]
		v.Holes = append(v.Holes, hole{quoted(p.Sites[x.Site].Name), quoted(item.Name), x.State.String(), figure(float64(x.Depth)), figure(float64(x.Refused)), item.Rank})
	}
	return form.Execute(w, v)
}

func homeBy(p *plan.Plan, s *state.State) time.Time {
	if !s.Home.IsZero() {
		return s.Home
	}
	return p.Sails.Add(time.Duration(float64(p.SeaDays) * float64(time.Second)))
}

// quoted is a name as YAML takes it in any place.
func quoted(name string) string { return fmt.Sprintf("%q", name) }

// assemblies names all there are.
func assemblies() string {
	seen := map[string]bool{}
	var list []string
	for t := range coring.Tools {
		if a := t.Assembly().String(); !seen[a] {
			seen[a], list = true, append(list, a)
		}
	}
	return strings.Join(list, " or ")
}
