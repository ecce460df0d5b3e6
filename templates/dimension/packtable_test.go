package dimension

import (
	"math"
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/templates/words"
)

// What to do with a figure that the table of packs has not took a line over the whole width,
// while the last of its columns stood half empty.
func TestOutsideTheTableStandsInWhatItsLastColumnLeaves(t *testing.T) {
	t.Parallel()
	jb, c := starter("bevel-gearbox.yaml", 180)
	tested := 0
	for _, d := range jb.Dims {
		if d.Shims == nil || len(d.Shims.Rows) < 4 {
			continue
		}
		for columns := 1; columns <= 3; columns++ {
			deep := (len(d.Shims.Rows) + columns - 1) / columns
			first := packColumn(c, d, d.Shims.Rows[:deep])
			table := packColumns(c, d, columns)
			if math.Abs(float64(table.rows.H-first.H)) > 0.01 {
				t.Errorf("%s in %d columns: %.2f mm high, its first column %.2f mm", d.Mark, columns, table.rows.H, first.H)
			}
			if told := strings.Contains(text(table.rows), "Outside the table"); told != table.told {
				t.Errorf("%s in %d columns: says it in the table %v, told %v", d.Mark, columns, told, table.told)
			}
			if table.told {
				tested++
			}
			if table.told && columns == 1 {
				t.Errorf("%s: in one column there is nothing left over", d.Mark)
			}
		}
	}
	if tested == 0 {
		t.Error("no table has room in its last column")
	}
}

// The verdict on a pack stood in a row of its own, for the names of the boxes for the ends of
// its limit stood before them.
func TestEndsOfPacksStandInTheRowOfTheVerdict(t *testing.T) {
	t.Parallel()
	jb, c := starter("triplex-pump.yaml", 184)
	tested := 0
	for _, st := range jb.Steps() {
		if len(st.Set) < 2 || st.Set[0].Base != "D25" {
			continue
		}
		set, _ := Blocks(c, st.Set, Left, st.At, false)
		var least, verdict []layout.Mm
		for _, b := range set {
			for _, it := range b.Items() {
				switch s, _ := it.Shape.(layout.Text); {
				case strings.HasPrefix(s.S, words.English.Ladder.LowEnd):
					least = append(least, it.Y)
				case s.S == words.English.Common.OutOfLimits:
					verdict = append(verdict, it.Y)
				}
			}
		}
		if len(least) != len(st.Set) || len(verdict) != len(st.Set) {
			t.Fatalf("%s: %d lower ends, %d verdicts, want %d", st.Name(), len(least), len(verdict), len(st.Set))
		}
		for i := range least {
			tested++
			if down := verdict[i] - least[i]; down < 0 || down > 12 {
				t.Errorf("%s: the verdict stands %.1f mm below the name of the lower end, want the same row", st.Name(), down)
			}
		}
	}
	if tested == 0 {
		t.Error("no step sets the packs D25")
	}
}

// text is all that stands in a block.
func text(b layout.Block) string {
	var out []string
	for _, it := range b.Items() {
		if s, ok := it.Shape.(layout.Text); ok {
			out = append(out, s.S)
		}
	}
	return strings.Join(out, " ")
}
