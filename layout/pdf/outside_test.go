package pdf

import (
	"bytes"
	"encoding/json"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"matchmark/layout"
)

// outside runs a tool that was not made here on a painted file. Where the tool is
// missing the test is skipped, unless CI_OUTSIDE=1 says that it must be there.
// The word FILE among the arguments stands for the file.
func outside(t *testing.T, file []byte, tool string, args ...string) string {
	t.Helper()
	path, err := exec.LookPath(tool)
	if err != nil {
		if os.Getenv("CI_OUTSIDE") == "1" {
			t.Fatalf("%s is not installed", tool)
		}
		t.Skipf("%s is not installed; the file is not checked with it", tool)
	}
	name := filepath.Join(t.TempDir(), "file.pdf")
	if err := os.WriteFile(name, file, 0o600); err != nil {
		t.Fatal(err)
	}
	for i, a := range args {
		args[i] = strings.ReplaceAll(a, "FILE", name)
	}
	cmd := exec.Command(path, args...)
	var out, talk bytes.Buffer
	cmd.Stdout, cmd.Stderr = &out, &talk
	if err := cmd.Run(); err != nil {
		t.Fatalf("%s: %v\n%.2000s%.2000s", tool, err, out.String(), talk.String())
	}
	if talk.Len() > 0 {
		t.Errorf("%s says: %.2000s", tool, talk.String())
	}
	return out.String()
}

// painted writes a document to memory.
func painted(t *testing.T, d *layout.Doc) []byte {
	t.Helper()
	var b bytes.Buffer
	if err := Write(&b, d); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

func TestQpdfFindsNothing(t *testing.T) {
	t.Parallel()
	out := outside(t, painted(t, sample(layout.A4)), "qpdf", "--check", "FILE")
	if !strings.Contains(out, "No syntax or stream encoding errors") {
		t.Errorf("qpdf says: %s", out)
	}
}

func TestPdfinfo(t *testing.T) {
	t.Parallel()
	out := outside(t, painted(t, sample(layout.Letter)), "pdfinfo", "FILE")
	for _, want := range []string{
		`Title: +Kiln exhaust fan — bearing change 🔧\n`, `Subject: +job pack\n`, `Page size: +612 x 792 pts \(letter\)`,
		`CreationDate: +.*Mar +2 .* 2026`, `PDF version: +1\.7`, `JavaScript: +no`, `Encrypted: +no`,
	} {
		if !regexp.MustCompile(want).MatchString(out) {
			t.Errorf("pdfinfo does not say %q:\n%s", want, out)
		}
	}
}

func TestFontsAreEmbeddedSubsets(t *testing.T) {
	t.Parallel()
	file := painted(t, sample(layout.A4))
	out := outside(t, file, "pdffonts", "FILE")
	lines := strings.Split(strings.TrimSpace(out), "\n")[2:]
	if len(lines) != 3 {
		t.Errorf("%d fonts, want regular, bold and mono:\n%s", len(lines), out)
	}
	for _, l := range lines {
		if !regexp.MustCompile(`^[A-Z]{6}\+Go\S* +CID TrueType +Identity-H +yes yes yes`).MatchString(l) {
			t.Errorf("not an embedded subset with a map to characters: %s", l)
		}
	}
	if len(file) > 150_000 {
		t.Errorf("the file has %d bytes; whole fonts would have that many", len(file))
	}
}

// Every sign of every face comes back from the file as text.
func TestAllSignsAreRecovered(t *testing.T) {
	t.Parallel()
	f := NewFaces()
	for face := range layout.NumFaces {
		var all []rune
		for r := rune('!'); r < 0xfffe; r++ {
			if f.Has(face, r) && r != 0xad && r != 0xa0 {
				all = append(all, r)
			}
		}
		d := &layout.Doc{Pages: []layout.Frame{{W: 210, H: 297}}}
		var want strings.Builder
		for i := 0; i < len(all); i += 20 {
			s := string(all[i:min(i+20, len(all))])
			want.WriteString(s)
			d.Pages[0].Items = append(d.Pages[0].Items, layout.Item{X: 20, Y: layout.Mm(20 + i/20*6), Shape: layout.Text{
				S: s, Face: face, Size: 10, Width: f.Width(face, 10, s)}})
		}
		got := outside(t, painted(t, d), "pdftotext", "-raw", "-enc", "UTF-8", "FILE", "-")
		for _, r := range want.String() {
			if !strings.ContainsRune(got, r) && !strings.ContainsRune(got, folded(r)) {
				t.Errorf("%s: %q %U is lost", face, r, r)
			}
		}
	}
}

// folded gives what pdftotext writes for signs that it takes apart: the ligatures,
// by their first letter.
func folded(r rune) rune {
	if r == 'ﬁ' || r == 'ﬂ' {
		return 'f'
	}
	return r
}

// Text comes back in the order in which it is read, and drawn signs with it.
func TestReadingOrder(t *testing.T) {
	t.Parallel()
	got := outside(t, painted(t, sample(layout.A4)), "pdftotext", "-raw", "-f", "1", "-l", "1", "FILE", "-")
	at := 0
	for _, want := range []string{
		"Traveler", "FN-11", "Kiln exhaust fan", "WO-5512", "1 of 4", "rev B", "3 Bearings, drive end", "3.1", "Measure how far",
		"⌀", "130", "left-hand", "C2/DE", "☐", "☑", "✓", "⚠", "initials", "time", "as found", "mm", "3.2", "handover", "7c419e02",
	} {
		i := strings.Index(got[at:], want)
		if i < 0 {
			t.Fatalf("%q does not come after %q in:\n%s", want, got[:at], got)
		}
		at += i + len(want)
	}
}

// Words stand where the frame says, upright and turned pages alike.
func TestPlacesOnPage(t *testing.T) {
	t.Parallel()
	f := NewFaces()
	text := func(x, y layout.Mm, turn float64, s string) layout.Item {
		return layout.Item{X: x, Y: y, Turn: turn, Shape: layout.Text{S: s, Size: 10, Width: f.Width(layout.Regular, 10, s)}}
	}
	d := &layout.Doc{Pages: []layout.Frame{{W: 210, H: 297, Items: []layout.Item{
		text(30, 40, 0, "upright"), text(100, 200, 90, "turned"), text(150, 60, 0, "right"),
	}}}}
	out := outside(t, painted(t, d), "pdftotext", "-bbox", "FILE", "-")
	for _, it := range d.Pages[0].Items {
		s := it.Shape.(layout.Text).S
		m := regexp.MustCompile(`xMin="([\d.]+)" yMin="([\d.]+)" xMax="([\d.]+)" yMax="([\d.]+)">` + s + `<`).FindStringSubmatch(out)
		if m == nil {
			t.Fatalf("%q is not found in\n%s", s, out)
		}
		l, top, r, bottom := it.Bounds()
		for i, want := range []layout.Mm{l, top, r, bottom} {
			var got float64
			if err := json.Unmarshal([]byte(m[i+1]), &got); err != nil {
				t.Fatal(err)
			}
			// Poppler takes ascent and descent from the font as it likes; along
			// the line it must agree.
			tol := layout.Mm(0.05)
			if across := i%2 == 1; across != (it.Turn == 90) {
				tol = 1.5
			}
			if d := layout.Pt(got).Mm() - want; d > tol || d < -tol {
				t.Errorf("%q: side %d at %.2f mm, want %.2f", s, i, layout.Pt(got).Mm(), want)
			}
		}
	}
}

// The outline leads to the pages and heights it was given, and counts its lines.
func TestOutline(t *testing.T) {
	t.Parallel()
	d := sample(layout.A4)
	d.Outline = []layout.Entry{
		{Title: "Traveler", Page: 0},
		{Title: "3 Bearings", Level: 1, Page: 0, Y: 40},
		{Title: "3.1", Level: 2, Page: 0, Y: 60},
		{Title: "3.4 ⌀", Level: 2, Page: 1, Y: 80},
		{Title: "Matrix", Page: 3, Closed: true},
		{Title: "folded", Level: 1, Page: 3},
	}
	out := outside(t, painted(t, d), "qpdf", "--json=2", "--json-key=outlines", "FILE")
	var got struct {
		Outlines []node
	}
	if err := json.Unmarshal([]byte(out), &got); err != nil {
		t.Fatal(err)
	}
	var flat []node
	var walk func(ns []node)
	walk = func(ns []node) {
		for _, n := range ns {
			flat = append(flat, n)
			walk(n.Kids)
		}
	}
	walk(got.Outlines)
	if len(flat) != len(d.Outline) || len(got.Outlines) != 2 || len(got.Outlines[0].Kids) != 1 || len(got.Outlines[0].Kids[0].Kids) != 2 {
		t.Fatalf("outline of another form:\n%s", out)
	}
	for i, e := range d.Outline {
		n := flat[i]
		if n.Title != e.Title || n.Page != e.Page+1 {
			t.Errorf("entry %q leads to page %d, want %q to %d", n.Title, n.Page, e.Title, e.Page+1)
		}
		if n.Open == e.Closed && len(n.Kids) > 0 {
			t.Errorf("entry %q is open: %v", n.Title, n.Open)
		}
		y, ok := n.Dest[3].(float64)
		if want := float64((297 - e.Y).Pt()); !ok || y < want-0.01 || y > want+0.01 {
			t.Errorf("entry %q leads to %v, want %.2f from the foot", n.Title, n.Dest[3], want)
		}
	}
}

// node is an entry of the outline as qpdf tells it.
type node struct {
	Title string
	Page  int `json:"destpageposfrom1"`
	Open  bool
	Dest  []any
	Kids  []node
}

// Codes are read from the page as it is printed at 300 dots to the inch.
func TestCodesRead(t *testing.T) {
	t.Parallel()
	s := layout.NewSetter(NewFaces(), layout.Pen{})
	b := layout.Above(10, s.QR("WO-5512/B/C2/DE/3OF18", 20, 0.5, nil), s.QR("WO-5512/B/P9OF26", 14, 0.4, nil), s.QR("WO-5512/B/X1/1OF6", 17, 0.5, nil).Turned())
	p := layout.Paginate(layout.A4, []layout.Sheet{{Name: "s", Pieces: []layout.Piece{{Block: b}}}})
	if len(p.Misfits) > 0 {
		t.Fatal(p.Misfits)
	}
	file := painted(t, &layout.Doc{Pages: p.Frames})
	dir := t.TempDir()
	outside(t, file, "pdftoppm", "-r", "300", "-x", "200", "-W", "400", "-H", "1200", "-gray", "-png", "FILE", filepath.Join(dir, "page"))
	pages, err := filepath.Glob(filepath.Join(dir, "page*.png"))
	if err != nil || len(pages) != 1 {
		t.Fatalf("pages %v, %v", pages, err)
	}
	got := outside(t, nil, "zbarimg", "--quiet", "--nodbus", "--raw", "-Sdisable", "-Sqrcode.enable", pages[0])
	for _, want := range []string{"WO-5512/B/C2/DE/3OF18\n", "WO-5512/B/P9OF26\n", "WO-5512/B/X1/1OF6\n"} {
		if !strings.Contains(got, want) {
			t.Errorf("%q is not read; got %q", want, got)
		}
	}
}
