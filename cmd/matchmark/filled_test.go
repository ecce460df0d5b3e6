package main

import (
	"math"
	"math/big"
	"regexp"
	"slices"
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/packs/units"
	"matchmark/templates"
)

// A mark on paper that belongs to a sum: an operation, or a box to write in.
type ink struct {
	x, y   float64 // of its middle
	left   float64
	text   string // empty for a box
	copied bool
	after  int // decimals of a box
}

// inks collects the signs and boxes of the sums of a dimension on the pages of a
// sheet, row by row as they are read.
func inks(pack *templates.Pack, sheet string, d *job.Dim) [][]ink {
	var out [][]ink
	for _, f := range pack.Pages.BySheet() {
		if f.Sheet != sheet {
			continue
		}
		var all []ink
		for _, it := range f.Items {
			if it.Ref != layout.Ref(d.At) {
				continue
			}
			left, top, right, bottom := it.Bounds()
			mark := ink{x: float64(left+right) / 2, y: float64(top+bottom) / 2, left: float64(left)}
			switch s := it.Shape.(type) {
			case layout.Text:
				if it.Role != "sum" || strings.HasPrefix(s.S, "by hand") {
					continue
				}
				mark.text = strings.ReplaceAll(s.S, "\u00a0", " ")
			case layout.Rect:
				if it.Role != layout.RoleValue {
					continue
				}
				mark.copied = s.Dash > 0
				if s.Point > 0 {
					mark.after = s.Cells - s.Point
				}
			default:
				continue
			}
			all = append(all, mark)
		}
		slices.SortStableFunc(all, func(a, b ink) int { return int(math.Round(10 * (a.y - b.y))) })
		var row []ink
		flush := func() {
			if slices.ContainsFunc(row, func(m ink) bool { return m.text != "" }) {
				slices.SortFunc(row, func(a, b ink) int { return int(math.Round(10 * (a.left - b.left))) })
				out = append(out, row)
			}
			row = nil
		}
		for _, m := range all {
			if len(row) > 0 && m.y-row[0].y > 5 {
				flush()
			}
			row = append(row, m)
		}
		flush()
	}
	return out
}

var step = regexp.MustCompile(`[÷×]\s*[0-9.]+|[0-9.]+ mm|[+−=]|rounded`)

// byPen does the sums as a person with a pen does: what is copied is taken from
// the list in the order of the dashed boxes, an operation works on what stands
// before it, a solid box is written to its decimals. It gives what stands in the
// last solid box of each sum.
func byPen(t *testing.T, rows [][]ink, copies []string) []*big.Rat {
	t.Helper()
	var results []*big.Rat
	total := new(big.Rat)
	take := func() *big.Rat {
		if len(copies) == 0 {
			t.Fatal("more boxes to copy into than readings")
		}
		v, _ := new(big.Rat).SetString(copies[0])
		copies = copies[1:]
		return v
	}
	for _, row := range rows {
		sign, cur := "", new(big.Rat)
		sum := false // what is read is the end of a sum
		end := func() {
			switch {
			case sum:
				results = append(results, new(big.Rat).Set(total))
				total = new(big.Rat)
			case sign == "−":
				total.Sub(total, cur)
			default:
				total.Add(total, cur)
			}
		}
		begun := 0 // where the line of the sum begins: a row may hold several
		for i, m := range row {
			if i > begun && strings.Contains("+−=", m.text) && m.text != "" {
				end()
				sign, cur, sum, begun = "", new(big.Rat), false, i
			}
			if m.text == "" {
				switch {
				case m.copied:
					cur.Add(cur, take())
				case sum:
					cur.Set(total)
					fallthrough
				default:
					rounded := i+1 < len(row) && strings.Contains(row[i+1].text, "rounded")
					v := units.Exact(cur, 0).Round(m.after, units.Nearest)
					if !rounded && v.Rat().Cmp(cur) != 0 {
						t.Errorf("%s does not go into a box of %d decimals", cur.RatString(), m.after)
					}
					cur.Set(v.Rat())
				}
				continue
			}
			for k, s := range step.FindAllString(m.text, -1) {
				n, _ := new(big.Rat).SetString(strings.TrimSpace(strings.Trim(s, "÷× m")))
				switch {
				case i == begun && k == 0 && (s == "+" || s == "−"):
					sign = s
				case i == begun && k == 0 && s == "=":
					sum = true
				case strings.HasPrefix(s, "÷"):
					cur.Quo(cur, n)
				case strings.HasPrefix(s, "×"):
					cur.Mul(cur, n)
				case strings.HasSuffix(s, "mm"):
					cur.Add(cur, n)
				}
			}
		}
		end()
	}
	if len(copies) > 0 {
		t.Errorf("%d readings have no box to be copied into: %v", len(copies), copies)
	}
	return results
}

// TestFilledExample works a filled-in pack of the storm pump through from its paper
// alone. The figures and verdicts are those of the demonstration's own filled sheet
// (D20 1.46 and 1.12 mm, D22 0.35 mm of 0.20 and 0.15, D14 0.050 mm); the single
// readings under them are chosen to give its means.
func TestFilledExample(t *testing.T) {
	t.Parallel()
	jb, pack := composed(t, "storm-pump.yaml", templates.Options{Paper: layout.A4})
	dim := func(mark string) *job.Dim {
		for _, d := range jb.Dims {
			if d.Mark == mark {
				return d
			}
		}
		t.Fatalf("there is no %s", mark)
		return nil
	}
	judged := func(d *job.Dim, l *reading.Limit, found string, values ...string) reading.Verdict {
		t.Helper()
		var qs []*units.Quantity
		parse := func(s string) *units.Quantity {
			q, err := units.ParseQuantity(s)
			if err != nil {
				t.Fatal(err)
			}
			return &q
		}
		for _, v := range values {
			qs = append(qs, parse(v))
		}
		env := reading.Env{}
		if found != "" {
			env.Found = []*units.Quantity{parse(found)}
		}
		return l.Judge(qs, env).Verdict
	}
	same := func(mark string, got *big.Rat, want string) {
		t.Helper()
		if w, _ := new(big.Rat).SetString(want); got.Cmp(w) != 0 {
			t.Errorf("%s comes out as %s, want %s", mark, got.FloatString(4), want)
		}
	}

	// D20: the sums of the rings are copied, divided, taken off.
	d20 := dim("D20/DE")
	rows := inks(pack, "traveler", d20)
	got := byPen(t, rows, []string{"1262.100", "1257.720", "1261.080", "1257.720"})
	if len(got) != 2 {
		t.Fatalf("D20 has %d sums on the traveler, want one an end", len(got))
	}
	same("D20/DE", got[0], "1.46")
	same("D20/NDE", got[1], "1.12")
	if v := judged(d20, d20.Reuse, "", "1.46 mm"); v != reading.Over {
		t.Errorf("1.46 mm is judged %v, and the ring is to be renewed", v)
	}
	if v := judged(d20, d20.Reuse, "", "1.12 mm"); v != reading.In {
		t.Errorf("1.12 mm is judged %v, and the old ring may stay", v)
	}

	// D14: seat less bore, four readings each.
	d14 := dim("D14")
	got = byPen(t, inks(pack, "traveler", d14), []string{"480.244", "480.044"})
	same("D14", got[0], "0.050")
	if v := judged(d14, d14.Found, "", "0.050 mm"); v != reading.In {
		t.Errorf("0.050 mm is judged %v, want in", v)
	}

	// D22: A less B and 0.08, to the leaves in hand.
	d22 := dim("D22/NDE")
	got = byPen(t, inks(pack, "reassembly", d22)[:4], []string{"37.290", "36.480"})
	same("D22", got[0], "0.35")
	if s := textsOf(pack, "reassembly", d22.At); !strings.Contains(s, "0.35 0.20+0.15") {
		t.Errorf("the table of packs does not make 0.35 of 0.20 and 0.15: %s", s)
	}

	// D11: half the travel, and the two ends about it.
	ends := inks(pack, "reassembly", dim("D11"))
	half := byPen(t, [][]ink{ends[0], {{text: "="}, {after: 3}}}, []string{"7.10"})
	same("D11", half[0], "3.55")
	if text := textsOf(pack, "reassembly", dim("D11").At); !strings.Contains(text, "target − 0.25 =") || !strings.Contains(text, "target + 0.25 =") {
		t.Errorf("the ends about the half are not on paper: %s", text)
	}

	// What is judged as it is read.
	for _, x := range []struct {
		mark, found string
		limit       func(*job.Dim) *reading.Limit
		values      []string
		want        reading.Verdict
	}{
		{"D7/DE", "", found, []string{"61.2 mm", "60.8 mm", "61.0 mm", "58.9 mm", "60.4 mm", "61.1 mm"}, reading.Under},
		{"D4", "2.35 mm", left, []string{"2.40 mm"}, reading.In},
		{"D16/NDE", "", found, []string{"240.010 mm", "240.012 mm", "240.015 mm", "240.058 mm", "240.011 mm", "240.012 mm", "240.014 mm", "240.013 mm"}, reading.Over},
		{"D12/DE-DIS", "0.85 mm", left, []string{"0.85 mm"}, reading.In},
		{"D12/NDE-SUC", "0.65 mm", left, []string{"0.75 mm"}, reading.Over},
	} {
		d := dim(x.mark)
		if v := judged(d, x.limit(d), x.found, x.values...); v != x.want {
			t.Errorf("%s: %v is judged %v, want %v", x.mark, x.values, v, x.want)
		}
	}
}

func found(d *job.Dim) *reading.Limit {
	if d.Found != nil {
		return d.Found
	}
	return d.Left
}

func left(d *job.Dim) *reading.Limit { return d.Left }
