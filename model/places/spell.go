package places

import (
	"math"
	"time"

	"coredays/model/chance"
	"coredays/model/unit"
)

// The spells of a year are a function of the random stream and of the calendar: whoever comes to the place at a date
// meets the same ones, whatever was done before.

// searched is how many months ahead a closing is looked for.
const searched = 24

// At reports whether a place is closed at a moment, and when that changes next. Where nothing ever closes it, or
// nothing opens it again within two years, found is false.
func (y *Year) At(stream chance.Source, moment time.Time) (closed bool, until time.Time, found bool) {
	stream = stream.For(y.Key)
	end, closed := y.covered(stream, moment)
	if closed {
		return true, end, end.Sub(moment) < searched*28*24*time.Hour
	}
	until, found = y.opensUpTo(stream, moment)
	return false, until, found
}

// covered is the end of what closes the place at a moment, with whatever follows without a gap.
func (y *Year) covered(stream chance.Source, moment time.Time) (end time.Time, closed bool) {
	end = moment
	for range searched { // each round is a storm or a month of ice
		further := y.coveredOnce(stream, end)
		if !further.After(end) {
			break
		}
		end = further
	}
	return end, end.After(moment)
}

// coveredOnce is the latest end of the spells that hold a moment; the moment itself where none does.
func (y *Year) coveredOnce(stream chance.Source, moment time.Time) time.Time {
	latest := moment
	month := monthOf(moment)
	if y.Ice[month.Month()-1] == IceAsARule {
		latest = month.AddDate(0, 1, 0)
	}
	for shift := -1; shift <= 1; shift++ {
		y.storms(stream, month.AddDate(0, shift, 0), func(from, to time.Time) {
			if !from.After(moment) && to.After(latest) {
				latest = to
			}
		})
	}
	return latest
}

// opensUpTo is when an open place closes next.
func (y *Year) opensUpTo(stream chance.Source, moment time.Time) (next time.Time, found bool) {
	take := func(from time.Time) {
		if from.After(moment) && (!found || from.Before(next)) {
			next, found = from, true
		}
	}
	month := monthOf(moment)
	for shift := 0; shift < searched; shift++ {
		m := month.AddDate(0, shift, 0)
		if y.Ice[m.Month()-1] == IceAsARule {
			take(m)
		}
		y.storms(stream, m, func(from, _ time.Time) { take(from) })
		if found && !next.After(m.AddDate(0, 1, 0).Add(-seconds(Before))) {
			break // what comes in later months begins later
		}
	}
	return next, found
}

// monthOf is the beginning of the month of a moment.
func monthOf(moment time.Time) time.Time {
	moment = moment.UTC()
	return time.Date(moment.Year(), moment.Month(), 1, 0, 0, 0, 0, time.UTC)
}

// storms visits the spells of the storms of a month. Their number is a Poisson number, as such storms come
// (common practice); each comes at any time of the month, and crosses the circle of CycloneReach at any
// distance from its middle: of the mean chord, π/4 of the width, the chord at a share u of the way from the
// middle to the rim is 4/π √(1-u²).
func (y *Year) storms(stream chance.Source, month time.Time, visit func(from, to time.Time)) {
	c := y.Cyclones[month.Month()-1]
	if c.Storms == 0 {
		return
	}
	stream = stream.For(chance.Key(month.Year()*12 + int(month.Month())))
	length, near := MonthDays(month.Month())*24*float64(time.Hour), float64(c.Near())*float64(time.Second)
	for k := range poisson(c.Storms, stream.Uniform(0)) {
		u := stream.Uniform(2 + 2*k)
		there := month.Add(time.Duration(stream.Uniform(1+2*k) * length))
		stays := time.Duration(near * 4 / math.Pi * math.Sqrt(1-u*u))
		visit(there.Add(-seconds(Before)), there.Add(stays).Add(seconds(After)))
	}
}

// poisson is the number that a uniform draw stands for, by adding up chances.
func poisson(mean, u float64) (n int) {
	chance := math.Exp(-mean)
	for sum := chance; u > sum && n < mostStorms; sum += chance {
		n++
		chance *= mean / float64(n)
	}
	return n
}

// mostStorms keeps rounding from going on for ever: of a mean of 1.8, the greatest of the table, more than 20
// come in a month with a chance below 1e-14.
const mostStorms = 20

func seconds(d unit.Duration) time.Duration { return time.Duration(float64(d) * float64(time.Second)) }
