package filled_test

import (
	"bytes"
	"encoding/csv"
	"math/big"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"matchmark/packs/filled"
	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/packs/units"
)

// blankRows is the file that print writes for a job, as rows.
func blankRows(t testing.TB, jb *job.Job) [][]string {
	t.Helper()
	var out bytes.Buffer
	if err := filled.WriteBlank(&out, jb, map[string]int{}); err != nil {
		t.Fatal(err)
	}
	rows, err := csv.NewReader(strings.NewReader(strings.TrimPrefix(out.String(), "\ufeff"))).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	return rows
}

// column is the index of a column.
func column(t testing.TB, rows [][]string, name string) int {
	t.Helper()
	i := slices.Index(rows[0], name)
	if i < 0 {
		t.Fatalf("there is no column %s in %v", name, rows[0])
	}
	return i
}

// typed is a file with values: those of the head, and one for each box that has one.
func typed(t testing.TB, jb *job.Job, separator rune, values map[string]string) []byte {
	t.Helper()
	rows := blankRows(t, jb)
	value, side := column(t, rows, "value"), column(t, rows, "side")
	blanks := map[string]string{}
	for _, b := range jb.Blanks() {
		blanks[b.Dim.Mark+"|"+map[job.When]string{job.AsFound: "found", job.AsLeft: "left"}[b.When]+"|"+filled.Position(b)] = values[b.Key()]
	}
	position := column(t, rows, "position")
	for _, row := range rows[1:] {
		switch row[0] {
		case "typed by":
			row[value] = "A. Penn"
		case "typed on":
			row[value] = "2026-03-14"
		default:
			if v := blanks[row[0]+"|"+row[side]+"|"+row[position]]; v != "" {
				row[value] = v
			}
		}
	}
	var out bytes.Buffer
	w := csv.NewWriter(&out)
	w.Comma = separator
	if err := w.WriteAll(rows); err != nil {
		t.Fatal(err)
	}
	return out.Bytes()
}

// anyValue draws a value that a box takes: near what is expected, as nothing else is
// certain to be what stands on the paper.
func anyValue(dice *rand.Rand, b job.Blank) *units.Quantity {
	low, high := b.Dim.Expected()
	switch {
	case low == nil && high == nil:
		one := units.Whole(1)
		if nominal := b.Dim.Hint.Nominal; nominal != nil {
			one = nominal.Number
		} else if in := b.Dim.By; in != nil && in.High != nil {
			one = in.High.Number.Quo(units.Whole(2))
		}
		low, high = &one, &one
	case low == nil:
		low = high
	case high == nil:
		high = low
	}
	if in := b.Dim.By; in != nil && in.Low != nil && in.High != nil && low.Cmp(in.Low.Number) <= 0 {
		low = high // a limit that begins where the instrument ends
	}
	share := big.NewRat(dice.Int64N(101), 100)
	at := new(big.Rat).Sub(high.Rat(), low.Rat())
	n := units.Exact(at.Mul(at, share).Add(at, low.Rat()), 0)
	q := units.Quantity{Number: n.Round(b.Box.After, units.Nearest), Unit: b.Box.Unit}
	if b.Box.Form == reading.Fraction {
		parts := n.Mul(units.Whole(b.Box.Denominator)).Round(0, units.Nearest)
		q.Number = units.Parts(parts.Quo(units.Whole(b.Box.Denominator)).Rat(), b.Box.Denominator)
	}
	return &q
}

// randomValues draws a value for most boxes that a reading goes into; the key of each is
// that of its box.
func randomValues(t *rapid.T, jb *job.Job) map[string]*units.Quantity {
	out := map[string]*units.Quantity{}
	dice := rand.New(rand.NewPCG(rapid.Uint64().Draw(t, "dice"), 1))
	for _, b := range jb.Blanks() {
		number := b.Box.Form == reading.Digits || b.Box.Form == reading.Fraction
		if number && b.Kind == job.ReadingBlank && b.Dim.Leaves() == 0 && b.Dim.OneIs == nil && dice.IntN(10) > 0 {
			out[b.Key()] = anyValue(dice, b)
		}
	}
	return out
}

// TestValuesComeBack: whatever is typed into the boxes of a job is read back as typed,
// with a point and commas between the cells, and with a comma and semicolons.
func TestValuesComeBack(t *testing.T) {
	for _, name := range []string{"storm-pump.yaml", "triplex-pump.yaml", "bevel-gearbox.yaml", "exhaust-fan.yaml"} {
		jb := starter(t, name)
		rapid.Check(t, func(rt *rapid.T) {
			want := randomValues(rt, jb)
			jb.Site.Comma = rapid.Bool().Draw(rt, "comma")
			separator, text := ',', map[string]string{}
			for key, q := range want {
				text[key] = q.Text()
				if jb.Site.Comma {
					separator, text[key] = ';', strings.Replace(q.Text(), ".", ",", 1)
				}
			}
			f := filled.Read("readings.csv", typed(t, jb, separator, text), jb)
			for _, p := range f.Told {
				rt.Errorf("%s: %s", name, p.Message)
			}
			if len(f.Entries) != len(want) {
				rt.Errorf("%s: %d values are read, %d were typed", name, len(f.Entries), len(want))
			}
			for _, e := range f.Entries {
				w := want[e.Blank.Key()]
				if w == nil || e.Quantity == nil || e.Quantity.Text() != w.Text() {
					rt.Errorf("%s: %s came back as %q, %v was typed", name, e.Blank.Key(), e.Text, w)
				}
			}
		})
	}
}

// TestNoCellIsAFormula: no cell of the file begins like a formula, whatever the author of
// a definition writes, and what keeps it from that is taken off again.
func TestNoCellIsAFormula(t *testing.T) {
	jb := stormPump(t)
	hostile := []string{"=1+1", "+SUM(A1)", "-2+3", "@cmd", "\t=1", " =1", "＝1", "'x"}
	for i, d := range jb.Dims {
		d.What = hostile[i%len(hostile)]
		for k := range d.Positions.Cols {
			d.Positions.Cols[k] = hostile[k%len(hostile)]
		}
	}
	for _, row := range blankRows(t, jb) {
		for _, cell := range row {
			if c := strings.TrimLeft(cell, " \t"); c != "" && strings.ContainsAny(c[:1], "=+-@") || strings.HasPrefix(cell, "\t") {
				t.Errorf("the cell %q is a formula", cell)
			}
		}
	}
}
