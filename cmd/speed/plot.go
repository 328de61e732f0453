package main

import (
	"bytes"
	"fmt"
	"math"
)

// curve is how long something takes as it grows by the factors.
type curve struct {
	name  string
	times []float64 // seconds
}

// The drawing, in its own units.
const (
	wide, high   = 640, 400
	left, bottom = 70, 40
	right, top   = 190, 20
)

// inks tell the curves apart, also in print: each has dashes of its own.
var inks = []struct{ colour, dash string }{
	{"#1b5e20", ""}, {"#7b1fa2", "6 3"}, {"#b71c1c", "2 3"}, {"#0d47a1", "10 4"}, {"#5d4037", "1 2"}, {"#455a64", "8 2 2 2"},
}

// draw draws curves by factor and time, both by their logarithms: what takes twice as
// long for twice as much rises as steeply as the grey lines.
func draw(curves []curve) []byte {
	low, most := math.Inf(1), 0.0
	for _, c := range curves {
		for _, t := range c.times {
			low, most = min(low, t), max(most, t)
		}
	}
	first, last := math.Floor(math.Log10(low)), math.Ceil(math.Log10(most))
	width, height := float64(wide-left-right), float64(high-top-bottom)
	x := func(factor float64) float64 {
		return left + width*math.Log2(factor)/math.Log2(float64(factors[len(factors)-1]))
	}
	y := func(t float64) float64 { return top + height*(last-math.Log10(t))/(last-first) }

	var b bytes.Buffer
	fmt.Fprintf(&b, `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 %d %d" font-family="sans-serif" font-size="12">`+"\n", wide, high)
	fmt.Fprintf(&b, `<rect width="%d" height="%d" fill="#fff"/>`+"\n", wide, high)
	for d := first; d <= last; d++ {
		at := y(math.Pow(10, d))
		fmt.Fprintf(&b, `<line x1="%d" y1="%.1f" x2="%d" y2="%.1f" stroke="#ddd"/><text x="%d" y="%.1f" text-anchor="end">%g ms</text>`+"\n", left, at, wide-right, at, left-6, at+4, 1000*math.Pow(10, d))
	}
	for _, f := range factors {
		fmt.Fprintf(&b, `<text x="%.1f" y="%d" text-anchor="middle">× %d</text>`+"\n", x(float64(f)), high-bottom+18, f)
	}
	for d := first; d < last; d++ {
		start := math.Pow(10, d)
		fmt.Fprintf(&b, `<line x1="%.1f" y1="%.1f" x2="%.1f" y2="%.1f" stroke="#bbb" stroke-width=".5"/>`+"\n", x(1), y(start), x(10), y(10*start))
	}
	for i, c := range curves {
		ink := inks[i%len(inks)]
		fmt.Fprintf(&b, `<polyline fill="none" stroke="%s" stroke-width="2" stroke-dasharray="%s" points="`, ink.colour, ink.dash)
		for k, t := range c.times {
			fmt.Fprintf(&b, "%.1f,%.1f ", x(float64(factors[k])), y(t))
		}
		end := float64(top + 16*i + 10)
		fmt.Fprintf(&b, `"/><line x1="%d" y1="%.1f" x2="%d" y2="%.1f" stroke="%s" stroke-width="2" stroke-dasharray="%s"/><text x="%d" y="%.1f">%s</text>`+"\n",
			wide-right+16, end, wide-right+50, end, ink.colour, ink.dash, wide-right+56, end+4, c.name)
	}
	b.WriteString("</svg>\n")
	return b.Bytes()
}
