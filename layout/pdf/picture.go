package pdf

import (
	"bytes"
	"crypto/sha256"
	"fmt"
	"math"

	"github.com/go-pdf/fpdf"

	"matchmark/layout"
)

// pictures places the document's pictures. The library keeps them by name, in
// the order of their names; the name is made of the content, so a picture on many
// pages is stored once.
type pictures struct{ f *fpdf.Fpdf }

// place paints a picture. The library writes the drawing of a picture itself, so
// the content that comes before is handed over first.
func (c *pictures) place(p *page, it layout.Item, pic layout.Image) error {
	name := fmt.Sprintf("%x", sha256.Sum256(pic.Data))
	opt := fpdf.ImageOptions{ImageType: pic.Kind}
	c.f.RegisterImageOptionsReader(name, opt, bytes.NewReader(pic.Data))
	if err := c.f.Error(); err != nil {
		return fmt.Errorf("read picture: %w", err)
	}
	x, y := it.X, it.Y
	if it.Turn != 0 {
		sin, cos := math.Sincos(it.Turn * math.Pi / 180)
		p.op("q")
		p.matrix(cos, sin, x, y)
		// The library measures y from the top of the page, which the matrix has
		// moved to the picture's place.
		x, y = 0, layout.Mm(p.h/ptPerMm)
	}
	c.f.RawWriteBuf(bytes.NewReader(p.buf))
	p.buf = p.buf[:0]
	c.f.ImageOptions(name, float64(x)*ptPerMm, float64(y)*ptPerMm, float64(pic.W)*ptPerMm, float64(pic.H)*ptPerMm, false, opt, 0, "")
	if it.Turn != 0 {
		p.op("Q")
	}
	return c.f.Error()
}
