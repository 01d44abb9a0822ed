package ship

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/stat"

	"coredays/model/chance"
)

// On the agenda of the ship, arrivals take the slot of the sea and departures that of the rig.
const (
	arrival   = TheSea
	departure = TheRig
)

// queue is a single server with exponential times between arrivals and of service.
type queue struct {
	agenda            agenda
	stream            chance.Source
	arriving, serving float64 // rates
	drawn             int
	inside            int
	now, area         float64
}

func (q *queue) exponential(rate float64) float64 {
	q.drawn++
	return -math.Log(q.stream.Uniform(q.drawn)) / rate
}

// run serves so many customers and returns the mean number inside over that time.
func (q *queue) run(customers int) float64 {
	from, area := q.now, q.area
	for customers > 0 {
		who := q.agenda.who
		q.area += float64(q.inside) * (q.agenda.Next - q.now)
		q.now = q.agenda.Next
		if who == arrival {
			q.inside++
			q.agenda.Plan(arrival, q.now+q.exponential(q.arriving))
		} else {
			q.inside--
			customers--
			q.agenda.Plan(departure, math.Inf(1))
		}
		if q.inside > 0 && math.IsInf(q.agenda.At[departure], 1) {
			q.agenda.Plan(departure, q.now+q.exponential(q.serving))
		}
	}
	return (q.area - area) / (q.now - from)
}

func TestAgendaMeetsTheClosedFormOfASingleServer(t *testing.T) {
	for _, load := range []float64{0.3, 0.6, 0.8} {
		q := queue{agenda: newAgenda(), stream: chance.Replication(5, int(load*10)), arriving: load, serving: 1}
		q.agenda.Plan(arrival, 0)
		q.run(20_000) // warm-up
		var batches []float64
		for range 40 {
			batches = append(batches, q.run(20_000))
		}
		mean, sd := stat.MeanStdDev(batches, nil)
		want := load / (1 - load) // M/M/1: L = rho / (1 - rho), Kleinrock, Queueing Systems vol. 1, eq. 3.24 (from memory)
		if se := stat.StdErr(sd, 40); math.Abs(mean-want) > 4*se {
			t.Errorf("load %g: %.4f inside on average, closed form %.4f, standard error %.4f", load, mean, want, se)
		}
	}
}

func TestActsAtTheSameInstantGoInTheOrderOfTheActors(t *testing.T) {
	a := newAgenda()
	a.Plan(TheRig, 7)
	a.Plan(TheSea, 7)
	if a.who != TheSea || a.Next != 7 {
		t.Errorf("first is actor %d at %g, want the sea at 7", a.who, a.Next)
	}
	a.Plan(TheSea, 8)
	if a.who != TheRig {
		t.Errorf("then actor %d, want the rig", a.who)
	}
}

func BenchmarkAgendaEvent(b *testing.B) {
	q := queue{agenda: newAgenda(), stream: chance.Replication(5, 1), arriving: 0.8, serving: 1}
	q.agenda.Plan(arrival, 0)
	b.ReportAllocs()
	for b.Loop() {
		q.run(500) // 1,000 events, one draw each
	}
	b.ReportMetric(float64(b.Elapsed().Nanoseconds())/float64(b.N)/1000, "ns/event")
}
