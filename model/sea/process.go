package sea

import (
	"fmt"
	"math"

	"coredays/model/unit"
)

// Default memories of the score, tuned on 3-hour means of eight NDBC buoys and a hindcast point.
// Fitted one by one they are 18-34 h and 3-6 h at stormy middle latitudes, 37-73 h and 3-5 h in
// the trade winds. One memory alone makes the path rough and halves the mean spells.
const (
	LongMemory  = 36 * unit.Hour
	ShortMemory = 3 * unit.Hour
)

// Process makes the standard normal score of the sea in equal steps of time. It is a
// continuous-time autoregression of order two: weather U that forgets over the long memory T1,
// and a sea S that follows it over the short memory T2,
//
//	dU = -U/T1 dt + dW,   dS = (U-S)/T2 dt,
//
// the score being S over its standard deviation. The step is exact, whatever its length, but what
// happens between two steps is not seen: mean spells are 6 % longer than the formula of MeanSpell
// in steps of 1 h and 18 % in steps of 3 h, at the default memories and half the time above.
// Records compared with were hourly, so steps of 1 h are the ones that agree with them.
type Process struct {
	long, short float64 // h
	weather     float64 // what U keeps over a step
	follow      float64 // what the score takes from U
	keep        float64 // what the score keeps
	n11         float64 // noise of U by the first normal
	n21, n22    float64 // noise of the score by the first and second normal
	s1, s2      float64 // first score by the first and second normal
}

// State is the sea at one moment: the weather behind it and its score.
type State struct{ weather, score float64 }

// Score is the standard normal score, for Table.Height.
func (s State) Score() float64 { return s.score }

// CheckMemory says what keeps memories and a step from making a Process.
func CheckMemory(long, short, step unit.Duration) error {
	for _, d := range []unit.Duration{long, short, step} {
		if !(d > 0) || math.IsInf(float64(d), 0) {
			return fmt.Errorf("memory of the sea %g h and %g h in steps of %g h: each must be above 0", long.Hours(), short.Hours(), step.Hours())
		}
	}
	return nil
}

// NewProcess compiles a process for one length of step. It panics on times that CheckMemory
// refuses, which only a fault in the program can bring here.
func NewProcess(long, short, step unit.Duration) *Process {
	if err := CheckMemory(long, short, step); err != nil {
		panic(err)
	}
	t1, t2, dt := long.Hours(), short.Hours(), step.Hours()
	v := t1 / (t1 + t2)                       // Var S = Cov(U,S) with Var U = 1
	a11, a21, a22 := transition(t1, t2, dt)   // the step as a matrix A
	l11, l21, l22 := spread(v, a11, a21, a22) // the noise of the step
	sd := math.Sqrt(v)                        // scales S to the score
	return &Process{
		long: t1, short: t2,
		weather: a11, follow: a21 / sd, keep: a22,
		n11: l11, n21: l21 / sd, n22: l22 / sd,
		s1: sd, s2: math.Sqrt(1 - v), // Cholesky of P = [[1,v],[v,v]], scaled
	}
}

// transition is A = exp(M dt) of the two equations. a21 = T1/(T1-T2) (e1-e2) is written so that
// equal memories need no case of their own.
func transition(t1, t2, dt float64) (a11, a21, a22 float64) {
	a11, a22 = math.Exp(-dt/t1), math.Exp(-dt/t2)
	a21 = a22 * dt / t2
	if x := dt/t2 - dt/t1; x != 0 {
		a21 *= math.Expm1(x) / x
	}
	return a11, a21, a22
}

// spread is the Cholesky factor of the step's noise covariance P - A P A', P = [[1,v],[v,v]].
func spread(v, a11, a21, a22 float64) (l11, l21, l22 float64) {
	c11 := 1 - a11*a11
	c21 := v - a11*(a21+a22*v)
	c22 := v - (a21*a21 + 2*a21*a22*v + a22*a22*v)
	l11 = math.Sqrt(c11)
	l21 = c21 / l11
	return l11, l21, math.Sqrt(max(0, c22-l21*l21)) // rounding, in steps of seconds
}

// Start is a state drawn from the long run, by two independent standard normals.
func (p *Process) Start(n1, n2 float64) State {
	return State{weather: n1, score: p.s1*n1 + p.s2*n2}
}

// Next is the state one step later, by two independent standard normals.
func (p *Process) Next(s State, n1, n2 float64) State {
	return State{
		weather: p.weather*s.weather + p.n11*n1,
		score:   p.follow*s.weather + p.keep*s.score + p.n21*n1 + p.n22*n2,
	}
}
