package svg

import (
	"errors"
	"fmt"
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"matchmark/layout"
)

// drawn gives the outlines of a drawing at one millimetre a unit.
func drawn(t *testing.T, body string) []layout.Path {
	t.Helper()
	b, err := Block([]byte(`<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 100">`+body+`</svg>`), 100, 100, nil)
	if err != nil {
		t.Fatalf("%s: %v", body, err)
	}
	var out []layout.Path
	for _, it := range b.Items() {
		out = append(out, it.Shape.(layout.Path))
	}
	return out
}

// ends gives the points that an outline passes.
func ends(p layout.Path) string {
	var out []string
	for _, o := range p.Ops {
		if o.Verb == layout.Close {
			out = append(out, "z")
			continue
		}
		out = append(out, fmt.Sprintf("%.4g,%.4g", math.Round(float64(o.P.X)*1e6)/1e6+0, math.Round(float64(o.P.Y)*1e6)/1e6+0))
	}
	return strings.Join(out, " ")
}

// TestSameOutline: what SVG 1.1 writes in two ways is one outline.
func TestSameOutline(t *testing.T) {
	for _, c := range [][2]string{
		{`<path d="M10 20L30 20L30 40z"/>`, `<path d="m10,20h20v20z"/>`},
		{`<path d="M10 20L30 20L30 40z"/>`, `<path d="M10,20 30,20 30,40Z"/>`},
		{`<path d="M10 20L30 20L30 40z"/>`, `<polygon points="10,20 30 20 30,40"/>`},
		{`<path d="M10 20L30 20L30 40z"/>`, `<g transform="translate(10 20) scale(2)"><path d="M0 0h10v10z"/></g>`},
		{`<path d="M10 20L30 20L30 40z"/>`, `<path d="M0 0h20v20z" transform="matrix(1 0 0 1 10 20)"/>`},
		{`<path d="M10 .5L20.5.5L20 9z"/>`, `<path d="M1e1.5 20.5.5 20 9z"/>`},
		{`<path d="M10 10C10 20 20 30 30 30C40 30 50 20 50 10"/>`, `<path d="M10 10C10 20 20 30 30 30S50 20 50 10"/>`},
		{`<path d="M10 10Q20 30 30 10Q40 -10 50 10"/>`, `<path d="M10 10q10 20 20 0t20 0"/>`},
		{`<rect x="10" y="20" width="30" height="5"/>`, `<path d="M10 20H40V25H10z"/>`},
		{`<path d="M10 50a40 40 0 0 1 80 0z"/>`, `<path d="M10 50A40,40,0,01,90,50z"/>`},
		{`<path d="M20 0L20 10L10 10z"/>`, `<path d="M0 0L10 0L10 10z" transform="rotate(90) translate(0 -20)"/>`},
	} {
		a, b := drawn(t, c[0]), drawn(t, c[1])
		if len(a) != 1 || len(b) != 1 || ends(a[0]) != ends(b[0]) {
			t.Errorf("%s is %s\n%s is %s", c[0], ends(a[0]), c[1], ends(b[0]))
		}
	}
}

// TestArcs: all points of an arc lie on its ellipse: within 3 parts of 10,000 of the
// radius, which is what a cubic curve keeps to over a quarter. The arcs are those of the
// drawing in SVG 1.1, chapter 8.3.8 (from memory), scaled down.
func TestArcs(t *testing.T) {
	for _, c := range []struct {
		d          string
		cx, cy, r  float64
		left, from float64 // the least x that it comes to
	}{
		{"M30 20h-15a15 15 0 1 0 15 -15z", 30, 20, 15, 15, 0},
		{"M27.5 17.5v-15a15 15 0 0 0 -15 15z", 27.5, 17.5, 15, 12.5, 0},
	} {
		p := drawn(t, `<path d="`+c.d+`"/>`)[0]
		least := 1e9
		var at layout.Point
		for _, o := range p.Ops {
			if o.Verb == layout.CurveTo {
				for i := 0; i <= 20; i++ {
					u := float64(i) / 20
					x := bezier(float64(at.X), float64(o.A.X), float64(o.B.X), float64(o.P.X), u)
					y := bezier(float64(at.Y), float64(o.A.Y), float64(o.B.Y), float64(o.P.Y), u)
					if r := math.Hypot(x-c.cx, y-c.cy); math.Abs(r-c.r) > 3e-4*c.r {
						t.Errorf("%s: (%.3f, %.3f) is %.4f from the centre", c.d, x, y, r)
					}
					least = min(least, x)
				}
			}
			at = o.P
		}
		if math.Abs(least-c.left) > 0.01 {
			t.Errorf("%s comes to x = %.3f, want %.3f", c.d, least, c.left)
		}
	}
}

func bezier(a, b, c, d, u float64) float64 {
	v := 1 - u
	return v*v*v*a + 3*v*v*u*b + 3*v*u*u*c + u*u*u*d
}

// TestFills: a colour is taken as light as it looks, and the rule of filling is kept.
func TestFills(t *testing.T) {
	for _, c := range []struct {
		look string
		ink  layout.Ink
		wind bool
	}{
		{``, layout.Black, true},
		{`fill="#fff"`, layout.White, true},
		{`style="fill:#003366;fill-rule:evenodd;stroke:none"`, layout.Soft, false},
		{`fill="#888888"`, layout.Faint, true},
		{`fill="#ffcc00" stroke-width="2"`, layout.Pale, true},
	} {
		p := drawn(t, `<g `+c.look+`><rect width="9" height="9"/></g>`)
		if len(p) != 1 || p[0].Fill != c.ink || p[0].Wind != c.wind {
			t.Errorf("%s: %+v", c.look, p)
		}
	}
	if p := drawn(t, `<rect width="9" height="9" fill="none"/><metadata><x/></metadata><circle cx="5" cy="5" r="2"/>`); len(p) != 1 {
		t.Errorf("%d paths", len(p))
	}
}

// TestRefused: what is not printed is told with its line, never left out.
func TestRefused(t *testing.T) {
	for body, word := range map[string]string{
		`<text>Works</text>`:                                      "make paths of it",
		`<image href="x.png"/>`:                                   "picture",
		`<style>.a{fill:red}</style>`:                             "<style>",
		`<use href="#a"/>`:                                        "<use>",
		`<line x1="0" x2="9"/>`:                                   "<line>",
		`<rect width="9" height="9" stroke="#000"/>`:              "stroke",
		`<rect width="9" height="9" fill="url(#g)"/>`:             "plain colour",
		`<rect width="9" height="9" opacity=".5"/>`:               "shines through",
		`<rect width="9" height="9" style="clip-path:url(#c)"/>`:  "clip-path",
		`<rect width="9" height="9" style="display:none"/>`:       "hidden",
		`<rect width="9mm" height="9"/>`:                          "plain number",
		`<rect width="9" height="9" transform="skewX(4)"/>`:       "transform",
		`<rect width="200" height="9"/>`:                          "view box",
		`<path d="M0 0C0 -90 90 -90 90 0"/>`:                      "view box",
		`<path d="L1 1"/>`:                                        "letter",
		`<path d="M1 1 X"/>`:                                      "letter",
		`<path d="M1 1 L2"/>`:                                     "number",
		`<path d="M1 1 L2 1e999"/>`:                               "number",
		`<path d="M0 0` + strings.Repeat("h1h-1", 20_000) + `"/>`: "20000 steps",
		``:                "nothing is drawn",
		`<g><rect`:        "damaged",
		`<!ENTITY a "b">`: "nothing is drawn",
		`&a;`:             "damaged",
	} {
		_, err := Block([]byte("<svg viewBox='0 0 100 100'>\n"+body+"\n</svg>"), 100, 100, nil)
		var e *Error
		if !errors.As(err, &e) || !strings.Contains(e.What, word) || e.Line < 2 {
			t.Errorf("%.60s: %v", body, err)
		}
	}
	for _, whole := range []string{"<html/>", "<svg><g/></svg>", "<svg viewBox='0 0 0 9'/>", "<svg width='9mm' height='9'/>", "<", ""} {
		if _, err := Block([]byte(whole), 60, 14, nil); err == nil {
			t.Errorf("%q is taken", whole)
		}
	}
}

// TestAnyData: whatever stands in the data of a path, it is refused or drawn with numbers
// that paper takes.
func TestAnyData(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := rapid.StringMatching(`M[MLHVCSQTAZmlhvcsqtaz0-9 .,e+-]{0,60}`).Draw(t, "d")
		b, err := Block([]byte(`<svg viewBox="-1000 -1000 2000 2000"><path d="`+d+`"/></svg>`), 60, 14, nil)
		if err != nil {
			return
		}
		for _, it := range b.Items() {
			for _, o := range it.Shape.(layout.Path).Ops {
				for _, v := range []layout.Mm{o.A.X, o.A.Y, o.B.X, o.B.Y, o.P.X, o.P.Y} {
					if math.IsNaN(float64(v)) || math.Abs(float64(v)) > 1e9 {
						t.Fatalf("%q: %v", d, v)
					}
				}
			}
		}
	})
}
