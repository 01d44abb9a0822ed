package lookahead

import (
	"fmt"
	"image/color"
	"testing"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/plotter"
	"gonum.org/v1/plot/vg"
)

// reliability counts chances told by tenths, and what came of them.
type reliability [10]struct {
	n         int
	told, was float64
}

func (r *reliability) count(chance, was float64) {
	bin := &r[min(9, int(chance*10))]
	bin.n, bin.told, bin.was = bin.n+1, bin.told+chance, bin.was+was
}

// print prints how reliable chances are.
func (r *reliability) print() {
	fmt.Println("chances told of what is not done, and how often it was done:")
	for _, bin := range r {
		if bin.n > 0 {
			fmt.Printf("  %4d times told %.2f, was %.2f\n", bin.n, bin.told/float64(bin.n), bin.was/float64(bin.n))
		}
	}
}

// draw draws them beside the line on which they come true as often as told.
func (r *reliability) draw(t *testing.T, file string) {
	t.Helper()
	p := plot.New()
	p.X.Label.Text, p.Y.Label.Text = "chance told that a hole is done", "share that was done"
	p.X.Min, p.X.Max, p.Y.Min, p.Y.Max = 0, 1, 0, 1
	var points plotter.XYs
	for _, bin := range r {
		if bin.n > 0 {
			points = append(points, plotter.XY{X: bin.told / float64(bin.n), Y: bin.was / float64(bin.n)})
		}
	}
	even, err := plotter.NewLine(plotter.XYs{{X: 0, Y: 0}, {X: 1, Y: 1}})
	if err != nil {
		t.Fatal(err)
	}
	even.Color, even.Dashes = color.Gray{0x60}, []vg.Length{4, 3}
	seen, err := plotter.NewScatter(points)
	if err != nil {
		t.Fatal(err)
	}
	p.Add(plotter.NewGrid(), even, seen)
	if err := p.Save(10*vg.Centimeter, 10*vg.Centimeter, file); err != nil {
		t.Fatal(err)
	}
}

// The line of a table of chances by hand: of four chances of 0.25 one came true.
func TestChancesAreCountedByTenths(t *testing.T) {
	var r reliability
	for _, was := range []float64{0, 1, 0, 0} {
		r.count(0.25, was)
	}
	r.count(1, 1)
	if bin := r[2]; bin.n != 4 || bin.told != 1 || bin.was != 1 || r[9].n != 1 {
		t.Errorf("%v", r)
	}
}
