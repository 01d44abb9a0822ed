package spread

// Falling is what a falling function makes of a quantity: hard rock is slow rock. Its high values come
// from the low ones of what it is made of.
type Falling struct {
	Of Shape
	By func(float64) float64
}

// Quantile returns the function's value at the opposite quantile.
func (f Falling) Quantile(p float64) float64 { return f.By(f.Of.Quantile(1 - p)) }
