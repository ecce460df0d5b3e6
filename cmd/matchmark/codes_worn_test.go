package main

import (
	"fmt"
	"image"
	"image/png"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/templates"
)

// worn are what happens to a code on its way from the printer to the reader, each as a
// change of the picture at so many dots a millimetre.
var worn = []struct {
	name string
	wear func(g *image.Gray, perMm float64) *image.Gray
}{
	{"as printed", func(g *image.Gray, _ float64) *image.Gray { return g }},
	{"blurred by 0.30 mm", func(g *image.Gray, mm float64) *image.Gray { return blurred(g, 0.30*mm) }},
	{"turned by 15 degrees", func(g *image.Gray, _ float64) *image.Gray { return turned(g, 15) }},
	{"copied six times", func(g *image.Gray, mm float64) *image.Gray { return copied(g, mm, 6, 128) }},
	{"copied twice and dark", func(g *image.Gray, mm float64) *image.Gray { return copied(g, mm, 2, 170) }},
	{"dots grown by 0.05 mm", func(g *image.Gray, mm float64) *image.Gray { return grown(g, 0.05*mm) }},
	{"a spot in the middle", func(g *image.Gray, mm float64) *image.Gray { return spotted(g, mm, 0.5, 0.5) }},
	{"a spot at the edge", func(g *image.Gray, mm float64) *image.Gray { return spotted(g, mm, 0.80, 0.49) }},
}

// Codes of tags are read by two decoders that have nothing to do with each other (zbar, and
// ZXing in C++) at three resolutions, in grey and in black and white, and when worn.
func TestCodesAreReadWhenWorn(t *testing.T) {
	if os.Getenv("CI_OUTSIDE") != "1" {
		t.Skip("needs two decoders and some minutes: CI_OUTSIDE=1")
	}
	t.Parallel()
	_, pack := composed(t, "exhaust-fan.yaml", templates.Options{Paper: layout.A4})
	dir := t.TempDir()
	want := map[string]string{}
	file := painted(t, pack.Tags)
	for _, perInch := range []int{203, 300, 600} {
		perMm := float64(perInch) / 25.4
		pages := renderedAt(t, file, perInch)
		for i, f := range pack.Tags.Pages {
			seen := 0
			for _, it := range f.Items {
				m, ok := it.Shape.(layout.Modules)
				if !ok || seen == 2 { // two codes of each page: of tag and stub, or of two labels
					continue
				}
				seen++
				cut := cutOut(pages[i], it, perMm)
				for _, w := range worn {
					for _, twoTone := range []bool{false, true} {
						g := w.wear(cut, perMm)
						if twoTone {
							g = threshold(g, 128)
						}
						name := filepath.Join(dir, fmt.Sprintf("%04d.png", len(want)))
						want[name] = fmt.Sprintf("%s\t%d dots an inch, %s, two tones %v", m.Content(), perInch, w.name, twoTone)
						writePNG(t, name, g)
					}
				}
			}
		}
	}
	for _, d := range []struct {
		name string
		read func(file string) string
	}{{"zbar", readZbar}, {"ZXing", zxingReader(t, dir)}} {
		failed := map[string]int{}
		for file, text := range want {
			content, how, _ := strings.Cut(text, "\t")
			if got := d.read(file); got != content {
				failed[how]++
			}
		}
		for how, n := range failed {
			t.Errorf("%s does not read %d codes: %s", d.name, n, how)
		}
	}
	t.Logf("%d pictures of codes", len(want))
}

// readZbar reads one picture with zbarimg.
func readZbar(file string) string {
	out, _ := exec.Command("zbarimg", "--quiet", "--raw", "-Sdisable", "-Sqrcode.enable", file).Output()
	return strings.TrimRight(string(out), "\n")
}

// zxingReader reads all pictures of a folder at once with ZXing in C++, through the Python
// of Debian's package.
func zxingReader(t *testing.T, dir string) func(string) string {
	t.Helper()
	const script = `
import glob, sys, zxingcpp
from PIL import Image
for f in sorted(glob.glob(sys.argv[1] + "/*.png")):
    r = zxingcpp.read_barcodes(Image.open(f).convert("L"))
    print(f + "\t" + (r[0].text if r else ""))
`
	out, err := exec.Command("/usr/bin/python3", "-c", script, dir).Output()
	if err != nil {
		t.Fatalf("python3-zxing-cpp and python3-pil of Debian are needed: %v", err)
	}
	read := map[string]string{}
	for _, line := range strings.Split(string(out), "\n") {
		if file, text, ok := strings.Cut(line, "\t"); ok {
			read[file] = text
		}
	}
	return func(file string) string { return read[file] }
}

// cutOut is a code with some white about it.
func cutOut(page image.Image, it layout.Item, perMm float64) *image.Gray {
	l, top, r, b := it.Bounds()
	px := func(v layout.Mm) int { return int(math.Round(float64(v) * perMm)) }
	const more = 3
	out := image.NewGray(image.Rect(0, 0, px(r-l)+2*px(more), px(b-top)+2*px(more)))
	for i := range out.Pix {
		out.Pix[i] = 255
	}
	g := page.(*image.Gray)
	for y := range px(b - top) {
		for x := range px(r - l) {
			out.SetGray(x+px(more), y+px(more), g.GrayAt(px(l)+x, px(top)+y))
		}
	}
	return out
}

// sampled makes a picture of the same size from a function of its places.
func sampled(g *image.Gray, at func(x, y int) float64) *image.Gray {
	out := image.NewGray(g.Rect)
	for y := range g.Rect.Dy() {
		for x := range g.Rect.Dx() {
			out.Pix[y*out.Stride+x] = uint8(max(0, min(255, math.Round(at(x, y)))))
		}
	}
	return out
}

// dot is the tone at a place, white outside of the picture.
func dot(g *image.Gray, x, y int) float64 {
	if x < 0 || y < 0 || x >= g.Rect.Dx() || y >= g.Rect.Dy() {
		return 255
	}
	return float64(g.Pix[y*g.Stride+x])
}

// blurred spreads every dot over a bell curve whose width at half its height is given.
func blurred(g *image.Gray, wide float64) *image.Gray {
	sigma := wide / 2.355
	n := int(math.Ceil(3 * sigma))
	bell := make([]float64, 2*n+1)
	sum := 0.0
	for i := range bell {
		bell[i] = math.Exp(-float64((i-n)*(i-n)) / (2 * sigma * sigma))
		sum += bell[i]
	}
	across := func(g *image.Gray, dx, dy int) *image.Gray {
		return sampled(g, func(x, y int) float64 {
			v := 0.0
			for i, w := range bell {
				v += w / sum * dot(g, x+dx*(i-n), y+dy*(i-n))
			}
			return v
		})
	}
	return across(across(g, 1, 0), 0, 1)
}

// turned turns the picture about its middle.
func turned(g *image.Gray, degrees float64) *image.Gray {
	sin, cos := math.Sincos(degrees * math.Pi / 180)
	cx, cy := float64(g.Rect.Dx())/2, float64(g.Rect.Dy())/2
	return sampled(g, func(x, y int) float64 {
		dx, dy := float64(x)-cx, float64(y)-cy
		fx, fy := cx+dx*cos-dy*sin, cy+dx*sin+dy*cos
		x0, y0 := math.Floor(fx), math.Floor(fy)
		u, v := fx-x0, fy-y0
		i, k := int(x0), int(y0)
		return (1-v)*((1-u)*dot(g, i, k)+u*dot(g, i+1, k)) + v*((1-u)*dot(g, i, k+1)+u*dot(g, i+1, k+1))
	})
}

// copied is a copy of a copy: each a little out of focus, and steep about a tone.
func copied(g *image.Gray, perMm float64, times int, about float64) *image.Gray {
	for range times {
		g = blurred(g, 0.12*perMm)
		soft := g
		g = sampled(g, func(x, y int) float64 { return 127.5 + 3*(dot(soft, x, y)-about) })
	}
	return g
}

// grown lets dark dots grow all round.
func grown(g *image.Gray, by float64) *image.Gray {
	n := int(math.Ceil(by))
	return sampled(g, func(x, y int) float64 {
		least := 255.0
		for dy := -n; dy <= n; dy++ {
			for dx := -n; dx <= n; dx++ {
				if math.Hypot(float64(dx), float64(dy)) <= by {
					least = min(least, dot(g, x+dx, y+dy))
				}
			}
		}
		return least
	})
}

// spotted has a dark round spot on the code off its three finders, its middle at so much of
// the code's side across and down: a tenth of its area at level H, as tags and box labels
// have it, a twentieth on the smaller code at level Q of a bag label. One over the small
// square near the free corner, by which readers find how the paper is bent, is not always
// read.
func spotted(g *image.Gray, perMm, across, down float64) *image.Gray {
	const cut, module, levelQ = 3, 0.6, 33 // mm cut out about the code, mm a square, squares of the usual code at level Q
	whole := float64(g.Rect.Dx())/perMm - 2*cut
	share := 0.10
	if whole < (levelQ+1)*module {
		share = 0.05
	}
	white := cut + layout.QuietModules*module
	side := whole - 2*layout.QuietModules*module
	radius := math.Sqrt(share*side*side/math.Pi) * perMm
	x0, y0 := (white+across*side)*perMm, (white+down*side)*perMm
	return sampled(g, func(x, y int) float64 {
		if math.Hypot(float64(x)-x0, float64(y)-y0) < radius {
			return 60
		}
		return dot(g, x, y)
	})
}

// threshold leaves black and white.
func threshold(g *image.Gray, at float64) *image.Gray {
	return sampled(g, func(x, y int) float64 {
		if dot(g, x, y) < at {
			return 0
		}
		return 255
	})
}

func writePNG(t *testing.T, name string, g *image.Gray) {
	t.Helper()
	f, err := os.Create(name)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	if err := png.Encode(f, g); err != nil {
		t.Fatal(err)
	}
}
