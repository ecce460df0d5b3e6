package dimension

import (
	"fmt"
	"regexp"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs/reading"
	"matchmark/templates/block"
	"matchmark/templates/words"
)

// tornHead and tornTail are what no line of a limit begins or ends with: a number, or a
// sign between figures.
var (
	tornHead = regexp.MustCompile(`^([0-9]|[±–/…]|[+−][0-9])`)
	tornTail = regexp.MustCompile(`([+−±–/…]|at least|at most|about)$`)
)

// Limits were torn over the end of a line: "at least" and below it "0.06 mm", "0.30 –" and
// "0.60 mm", "8.00" and "+0.50 / −0.00 mm". The half that is read first is a limit too.
func TestLimitsAreNotTorn(t *testing.T) {
	t.Parallel()
	for _, code := range []string{"en", "de", "fr", "pl", "es"} {
		w, err := words.In(code)
		if err != nil {
			t.Fatal(err)
		}
		c := block.New(pdf.NewFaces(), layout.Pen{}, nil, w, 180)
		rapid.Check(t, func(t *rapid.T) {
			typed := limitTyped(t)
			l, fault := reading.Parse(typed)
			if fault != nil {
				t.Fatalf("%s: %s", typed, fault.Message)
			}
			for _, line := range append(l.Words().Main, l.Words().Small...) {
				text := PartWords(w, line)
				width := layout.Mm(rapid.IntRange(40, 110).Draw(t, "width"))
				for _, held := range strings.Split(text, " ") { // in less room it must be torn
					width = max(width, c.Words(layout.Limit, held).W)
				}
				para := c.Para(width, []layout.Run{layout.T(layout.Body, "behind other words:   "), layout.T(layout.Limit, text)}, layout.ParaOpts{})
				if rows := linesOf(para); len(rows) > 1 {
					for i, row := range rows {
						behind := i > 0 && !strings.HasSuffix(rows[i-1], "words:") // in the midst of the limit
						if behind && tornHead.MatchString(row) || i < len(rows)-1 && tornTail.MatchString(row) {
							t.Errorf("%s: %s, torn over lines %q", code, typed, rows)
						}
					}
				}
			}
		})
	}
}

// limitTyped draws a limit as a planner types it.
func limitTyped(t *rapid.T) string {
	n := func(name string) string {
		return fmt.Sprintf("%d.%02d", rapid.IntRange(1, 900).Draw(t, name), rapid.IntRange(0, 98).Draw(t, name))
	}
	more := func(text string) string { // a little above it
		var whole, part int
		fmt.Sscanf(text, "%d.%d", &whole, &part)
		return fmt.Sprintf("%d.%02d", whole, part+1)
	}
	low := n("low")
	return rapid.SampledFrom([]string{
		"at least " + low + " mm", "at most " + low + " mm", low + " to " + more(low) + " mm",
		low + " +/- 0.05 mm", low + " +0.50/-0.00 mm", low + " +0.30/-0.10 mm", "as found +/- 0.05 mm",
		"mean " + low + " to " + more(low) + " mm and spread at most 0.20 mm",
		"mean of D15 + 0.06 mm +/- 0.03 mm", "1 7/16 +/- 1/16 in", "D3 + " + low + " mm +/- 0.10 mm",
	}).Draw(t, "limit")
}

// linesOf are the lines of a paragraph from top to bottom.
func linesOf(b layout.Block) []string {
	var out []string
	y := layout.Mm(-1)
	for _, item := range b.Items() {
		text, ok := item.Shape.(layout.Text)
		switch {
		case !ok:
		case len(out) == 0 || item.Y > y+1:
			out, y = append(out, text.S), item.Y
		default:
			out[len(out)-1] = strings.TrimSpace(out[len(out)-1] + " " + text.S)
		}
	}
	return out
}

// "spread at" ended a line, and "most 0.50 mm" began the next.
func TestHeld(t *testing.T) {
	for _, x := range []struct{ in, want string }{
		{"spread at most 0.50 mm", "spread at\u00a0most\u00a00.50 mm"},
		{"old part at least 44.900\u00a0mm", "old part at\u00a0least\u00a044.900\u00a0mm"},
		{"au plus 5", "au\u00a0plus\u00a05"},
		{"mean 0.07 – 0.12", "mean\u00a00.07\u00a0–\u00a00.12"},
		{"as found ± 0.05", "as found\u00a0±\u00a00.05"},
		{"no limit at all", "no limit at all"},
		{"", ""},
	} {
		if got := held(x.in); got != x.want {
			t.Errorf("%q: got %q, want %q", x.in, got, x.want)
		}
	}
}
