package pdf

import (
	"bytes"
	"io"
	"os"
	"testing"

	"matchmark/layout"
)

func TestShow(t *testing.T) {
	var b bytes.Buffer
	if err := Write(&b, sample(layout.A4)); err != nil {
		t.Fatal(err)
	}
	os.WriteFile("/tmp/probe/s.pdf", b.Bytes(), 0o644)
}

func BenchmarkWrite(b *testing.B) {
	d := sample(layout.A4)
	for i := 0; len(d.Pages) < 33; i++ {
		d.Pages = append(d.Pages, d.Pages[i])
	}
	b.ReportAllocs()
	for b.Loop() {
		if err := Write(io.Discard, d); err != nil {
			b.Fatal(err)
		}
	}
}
