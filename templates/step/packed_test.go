package step

import (
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
)

// Permits, locks and what is seen took a row of their own for each verb, half of it empty: the
// unlocking before the trial run of the storm-water pump filled five rows where four hold it.
// Every tick keeps its box and its words, in the order in which the verbs stand.
func TestTicksOfSeveralVerbsFlowTogether(t *testing.T) {
	t.Parallel()
	tested := 0
	for _, name := range []string{"storm-pump.yaml", "triplex-pump.yaml", "bevel-gearbox.yaml", "exhaust-fan.yaml"} {
		c, steps := stepsOfStarter(name)
		for _, st := range steps {
			var rs []run
			for _, v := range st.VerbOrder() {
				if r := linesOf(c, st, v); r.guards {
					rs = append(rs, r)
				}
			}
			if len(rs) < 2 {
				continue
			}
			one := joinedRun(rs)
			apart, together := layout.Mm(0), Height(linesBelow(c, []run{one}))
			for _, r := range rs {
				apart += Height(linesBelow(c, []run{r}))
			}
			out, set := flowed(c, rs, eachBelow(c, rs))
			if len(out) == 1 && together >= apart-0.5 {
				t.Errorf("%s: the ticks together take %.1f mm, apart %.1f", st.Name(), together, apart)
			}
			if len(out) == 1 {
				tested++
			}
			checkTicks(t, c, st, rs, set)
		}
	}
	if tested < 8 {
		t.Errorf("the ticks of %d steps flow together, want 8 or more", tested)
	}
}

// The last line of a row was set in its share though it was wider.
func TestTheLastOfARowOfTicksFitsItsShare(t *testing.T) {
	t.Parallel()
	wide := run{guards: true, lines: func(width layout.Mm) []layout.Block {
		return []layout.Block{layout.Drawn(30, 6), layout.Drawn(80, 6)} // a word that does not part
	}}
	for _, x := range []struct {
		width layout.Mm
		rows  int
	}{{150, 1}, {100, 2}} {
		rows := packed(wide, x.width)
		if len(rows) != x.rows {
			t.Errorf("in %.0f mm they stand in %d rows, want %d", x.width, len(rows), x.rows)
		}
	}
}

// eachBelow are the pieces of each run alone.
func eachBelow(c *block.Composer, rs []run) [][]layout.Piece {
	var out [][]layout.Piece
	for i := range rs {
		out = append(out, linesBelow(c, rs[i:i+1]))
	}
	return out
}

// checkTicks sees that pieces have a box for each line of some runs, and all their words as they
// follow each other.
func checkTicks(t *testing.T, c *block.Composer, st *job.Step, rs []run, set [][]layout.Piece) {
	t.Helper()
	var want, got []string
	ticks, boxes := 0, 0
	for _, r := range rs {
		for _, line := range r.lines(c.Span) {
			ticks++
			want = append(want, drawnWords(line)...)
		}
	}
	for _, ps := range set {
		for _, p := range ps {
			if p.Block.W > c.Span+0.01 || len(p.Block.Misfits()) > 0 {
				t.Errorf("%s: a row of ticks is %.1f mm wide, its misfits %v", st.Name(), p.Block.W, p.Block.Misfits())
			}
			for _, it := range p.Block.Items() {
				if it.Role == layout.RoleTick {
					boxes++
				}
			}
			got = append(got, drawnWords(p.Block)...)
		}
	}
	if boxes != ticks {
		t.Errorf("%s has %d boxes for %d things to tick", st.Name(), boxes, ticks)
	}
	if g, w := strings.Join(got, " "), strings.Join(want, " "); g != w {
		t.Errorf("%s: got\n%s\nwant\n%s", st.Name(), g, w)
	}
}

// drawnWords are the words of a block as they are drawn.
func drawnWords(b layout.Block) []string {
	var out []string
	for _, it := range b.Items() {
		if text, ok := it.Shape.(layout.Text); ok {
			out = append(out, strings.Fields(strings.ReplaceAll(text.S, "\u00a0", " "))...)
		}
	}
	return out
}

// The words of a step that asks whether it is done ran on in the narrow column beside the boxes
// when the question had passed them.
func TestWordsBelowAQuestionTakeTheWholeWidth(t *testing.T) {
	t.Parallel()
	c, steps := stepsOfStarter("storm-pump.yaml")
	tested := 0
	for _, st := range steps {
		if st.If == nil {
			continue
		}
		for _, s := range signOffs(c, st, false) {
			tested++
			row := around(c, st, wordsOfStep(c, st), s)
			asked := branchLines(c, st, c.Span-block.NumberWidth-s.boxes.W-textGap)[0]
			right := layout.Mm(0)
			row.Each(func(it layout.Item) {
				_, top, r, _ := it.Bounds()
				if _, is := it.Shape.(layout.Text); is && top < s.boxes.H && r > c.Span-s.boxes.W-textGap && it.X < c.Span-s.boxes.W {
					t.Errorf("%s: words at %.1f mm run into the boxes", st.Name(), top)
				}
				if top > s.boxes.H {
					right = max(right, r)
				}
			})
			if asked.H < s.boxes.H && right < c.Span-s.boxes.W {
				t.Errorf("%s: words below the boxes end at %.1f mm, left of the boxes", st.Name(), right)
			}
		}
	}
	if tested == 0 {
		t.Error("no step of the storm-water pump asks whether it is done")
	}
}

// The lines of a step were set beside its boxes, one below the other, though below the boxes they
// would have shared a row: loosening the grub screws of the kiln exhaust fan took 4 mm more. No
// step is higher than with all its lines below.
func TestNoStepIsHigherThanWithItsLinesBelow(t *testing.T) {
	t.Parallel()
	tested := 0
	for _, name := range []string{"storm-pump.yaml", "triplex-pump.yaml", "bevel-gearbox.yaml", "exhaust-fan.yaml"} {
		c, steps := stepsOfStarter(name)
		for _, st := range steps {
			room := reasonHasRoom(st)
			reason := room && asksReason(c, st)
			rs := runs(c, st, room)
			first := rs[:inRow(rs)]
			below, lines := flowed(c, first, eachBelow(c, first))
			if len(below) < 2 {
				continue
			}
			tested++
			bare, _, _ := stepRow(c, st, nil, reason)
			row, rest, of := stepRow(c, st, first, reason)
			at := map[int]run{}
			for i, r := range of {
				at[i] = r
			}
			got, want := row.H+Height(inOneRow(c, rest, at, nil)), bare.H+settledHeight(c, below, lines)
			if got > want+0.5+tickGap {
				t.Errorf("%s: %.1f mm, with all lines below %.1f", st.Name(), got, want)
			}
		}
	}
	if tested < 40 {
		t.Errorf("%d steps have lines of several acts in their head, want 40 or more", tested)
	}
}
