package chart

import (
	"gonum.org/v1/plot/plotter"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"
)

// sides are where words may stand to their mark, the better first; below its right and above its left a
// curve that rises leaves room.
var sides = []remark{{align: 1, dx: 3, dy: -3}, {align: -1, dx: -3, dy: 3}, {align: 1, dx: 3, dy: -9}, {align: -1, dx: -3, dy: 9},
	{align: 1, dx: 3, dy: -16}, {align: -1, dx: -3, dy: 16}, {align: 1, dx: 3, dy: 9}, {align: -1, dx: -3, dy: -9}}

// whereFree writes words beside their marks, each on the first side where it meets neither a line nor
// other words nor the edge, and on the first of all where there is none.
func whereFree(names []remark, lines ...plotter.XYs) drawing {
	return func(c draw.Canvas, at func(x, y float64) vg.Point) {
		var taken []vg.Rectangle
		for _, l := range lines {
			taken = append(taken, boxesOf(placed(l, at))...)
		}
		for _, name := range names {
			p := at(name.x, name.y)
			chosen := name.on(sides[0])
			for _, side := range sides {
				if box := name.on(side).box(p); within(c.Rectangle, box) && !meets(box, taken) {
					chosen = name.on(side)
					break
				}
			}
			chosen.write(c, p)
			taken = append(taken, chosen.box(p))
		}
	}
}

// on is the remark on a side of its mark.
func (r remark) on(side remark) remark {
	r.align, r.dx, r.dy = side.align, side.dx, side.dy
	return r
}

// boxesOf are boxes around the parts of a line.
func boxesOf(points []vg.Point) (list []vg.Rectangle) {
	for i := 1; i < len(points); i++ {
		a, b := points[i-1], points[i]
		list = append(list, vg.Rectangle{Min: vg.Point{X: min(a.X, b.X) - 1, Y: min(a.Y, b.Y) - 1}, Max: vg.Point{X: max(a.X, b.X) + 1, Y: max(a.Y, b.Y) + 1}})
	}
	return list
}

func within(whole, part vg.Rectangle) bool {
	return part.Min.X >= whole.Min.X && part.Max.X <= whole.Max.X && part.Min.Y >= whole.Min.Y && part.Max.Y <= whole.Max.Y
}

func meets(box vg.Rectangle, taken []vg.Rectangle) bool {
	for _, t := range taken {
		if box.Min.X < t.Max.X && t.Min.X < box.Max.X && box.Min.Y < t.Max.Y && t.Min.Y < box.Max.Y {
			return true
		}
	}
	return false
}
