package pdf

import (
	"matchmark/layout"
	"testing"
)

func BenchmarkFaces(b *testing.B) {
	for b.Loop() {
		f := NewFaces()
		for i := layout.Face(0); i < layout.NumFaces; i++ {
			f.Has(i, 'a')
		}
	}
}
func BenchmarkWidth(b *testing.B) {
	f := NewFaces()
	for b.Loop() {
		f.Width(0, 10, "Measure how far the lock nut stands")
	}
}
