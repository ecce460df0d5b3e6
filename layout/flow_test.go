package layout

import (
	"fmt"
	"maps"
	"slices"
	"testing"

	"pgregory.net/rapid"
)

// page is a paper whose inner height is 100 mm and inner width 80 mm.
var page = Paper{Name: "test", W: 100, H: 120, Left: 10, Right: 10, Top: 10, Bottom: 10}

// named is a piece of the given height with an anchor of its name.
func named(name string, h Mm) Piece {
	return Piece{Block: Drawn(10, h, Item{Ref: name, Shape: Rect{W: 10, H: h}}).Anchored(name)}
}

func TestPaginateBreaks(t *testing.T) {
	t.Parallel()
	head := Space(80, 10)
	with := func(p Piece, f func(*Piece)) Piece { f(&p); return p }
	keep := func(p *Piece) { p.KeepNext = true }
	group := func(n int) func(*Piece) { return func(p *Piece) { p.Group = n } }
	under := func(p *Piece) { p.Under = []*Block{&head} }
	for _, c := range []struct {
		name   string
		pieces []Piece
		want   map[string]int
	}{
		{"what fits exactly stays", []Piece{named("a", 50), named("b", 50)}, map[string]int{"a": 1, "b": 1}},
		{"what does not goes on", []Piece{named("a", 50), named("b", 50.1)}, map[string]int{"a": 1, "b": 2}},
		{"a gap counts", []Piece{named("a", 50), with(named("b", 50), func(p *Piece) { p.Gap = 1 })}, map[string]int{"a": 1, "b": 2}},
		{"but not at the top", []Piece{named("a", 60), with(named("b", 100), func(p *Piece) { p.Gap = 9 })}, map[string]int{"a": 1, "b": 2}},
		{"a heading goes with what it heads", []Piece{named("a", 80), with(named("h", 10), keep), named("b", 20)},
			map[string]int{"a": 1, "h": 2, "b": 2}},
		{"two headings too", []Piece{named("a", 70), with(named("h", 10), keep), with(named("i", 10), keep), named("b", 20)},
			map[string]int{"a": 1, "h": 2, "i": 2, "b": 2}},
		{"a group stays together", []Piece{named("a", 50), with(named("b", 30), group(1)), with(named("c", 30), group(1))},
			map[string]int{"a": 1, "b": 2, "c": 2}},
		{"another group does not", []Piece{named("a", 50), with(named("b", 30), group(1)), with(named("c", 30), group(2))},
			map[string]int{"a": 1, "b": 1, "c": 2}},
		{"a group no page can hold is parted", []Piece{named("a", 20), with(named("b", 60), group(1)), with(named("c", 60), group(1))},
			map[string]int{"a": 1, "b": 1, "c": 2}},
		{"never right after its heading", []Piece{named("a", 60), with(named("h", 10), keep), with(named("b", 60), group(1)), with(named("c", 60), group(1))},
			map[string]int{"a": 1, "h": 2, "b": 2, "c": 3}},
		{"what may part does where that saves a page", []Piece{named("a", 40), with(with(named("b", 40), keep), func(p *Piece) { p.MayPart = true }), named("c", 55), named("d", 40)},
			map[string]int{"a": 1, "b": 1, "c": 2, "d": 2}},
		{"and not where it saves none", []Piece{named("a", 75), with(with(named("b", 15), keep), func(p *Piece) { p.MayPart = true }), named("c", 30)},
			map[string]int{"a": 1, "b": 2, "c": 2}},
		{"a group is parted where that saves a page", []Piece{named("a", 60), with(named("b", 40), group(1)), with(named("c", 50), group(1)), named("d", 50)},
			map[string]int{"a": 1, "b": 1, "c": 2, "d": 2}},
		{"a heading that stands in the head of its page takes no room there",
			[]Piece{named("a", 60), with(with(named("h", 20), keep), func(p *Piece) { top := named("h", 0).Block; p.AtTop = &top }), named("b", 60), named("c", 40)},
			map[string]int{"a": 1, "h": 2, "b": 2, "c": 2}},
		{"a new page where asked", []Piece{named("a", 10), with(named("b", 10), func(p *Piece) { p.NewPage = true })}, map[string]int{"a": 1, "b": 2}},
		{"a repeated head takes its room", []Piece{with(named("h", 10), keep), with(named("a", 90), under), with(named("b", 90), under)},
			map[string]int{"h": 1, "a": 1, "b": 2}},
		{"and pushes on what it leaves no room for", []Piece{with(named("a", 60), under), with(named("b", 50), under), with(named("c", 45), under)},
			map[string]int{"a": 1, "b": 2, "c": 3}},
	} {
		t.Run(c.name, func(t *testing.T) {
			t.Parallel()
			sheets := []Sheet{{Name: "s", Pieces: c.pieces}}
			p := Paginate(page, sheets)
			if alone := AnchorPages(page, sheets); !maps.Equal(alone, p.Anchors) {
				t.Errorf("without pages the anchors are on %v, want %v", alone, p.Anchors)
			}
			for name, want := range c.want {
				if got := p.Anchors[name]; got != want {
					t.Errorf("%s is on page %d, want %d", name, got, want)
				}
			}
			if len(p.Misfits) > 0 {
				t.Errorf("misfits %v", p.Misfits)
			}
		})
	}
}

func TestPaginateMisfits(t *testing.T) {
	t.Parallel()
	tall := named("tall", 101)
	wide := named("wide", 10)
	wide.Block.W = 81.5
	p := Paginate(page, []Sheet{{Pieces: []Piece{named("a", 10), tall, named("b", 10), wide}}})
	if len(p.Misfits) != 2 {
		t.Fatalf("misfits %v, want two", p.Misfits)
	}
	if m := p.Misfits[0]; m.Kind != TooHigh || m.Ref != "tall" || m.Over < 0.999 || m.Over > 1.001 {
		t.Errorf("misfit %+v, want the tall piece over by 1 mm", m)
	}
	if m := p.Misfits[1]; m.Kind != TooWide || m.Ref != "wide" || m.Over < 1.499 || m.Over > 1.501 {
		t.Errorf("misfit %+v, want the wide piece over by 1.5 mm", m)
	}
	if p.Anchors["tall"] != 2 || p.Anchors["b"] != 3 {
		t.Errorf("anchors %v, want the tall piece alone on page 2", p.Anchors)
	}
}

// However pieces are chosen: all are set once and in order, none leaves its page, and
// as few pages as can be end with a heading. A heading may have to be parted from what
// it heads for the sake of another, so only their number is a law.
func TestPaginateLaws(t *testing.T) {
	t.Parallel()
	head := Space(80, 8)
	rapid.Check(t, func(t *rapid.T) {
		var ps []Piece
		for i := range rapid.IntRange(1, 40).Draw(t, "pieces") {
			p := named(fmt.Sprint(i), Mm(rapid.IntRange(2, 60).Draw(t, "height")))
			p.Gap = Mm(rapid.IntRange(0, 4).Draw(t, "gap"))
			p.KeepNext = rapid.IntRange(0, 4).Draw(t, "keep") == 0
			p.Group = rapid.IntRange(0, 2).Draw(t, "group")
			if rapid.Bool().Draw(t, "under") {
				p.Under = []*Block{&head}
			}
			ps = append(ps, p)
		}
		p := Paginate(page, []Sheet{{Pieces: ps}})
		next, stranded := 0, 0
		for n, f := range p.Frames {
			y := page.Top
			for _, it := range f.Items {
				if it.Ref != fmt.Sprint(next) {
					t.Fatalf("page %d sets %v, want piece %d", n+1, it.Ref, next)
				}
				if it.Y < y-slack {
					t.Fatalf("piece %d stands at %v, above %v", next, it.Y, y)
				}
				if y = it.Y + ps[next].Block.H; y > page.H-page.Bottom+slack {
					t.Fatalf("piece %d reaches down to %v", next, y)
				}
				next++
			}
			if next < len(ps) && ps[next-1].KeepNext {
				stranded++
			}
		}
		if next != len(ps) {
			t.Fatalf("%d pieces set of %d", next, len(ps))
		}
		if least := leastStranded(ps, head.H); stranded != least {
			t.Fatalf("%d pages end with a heading, want %d", stranded, least)
		}
	})
}

// leastStranded tries every way to set the pieces on pages 100 mm high and returns how
// many of them end with a heading in the best one. A page that begins between two
// pieces that both stand under the head begins with the head again.
func leastStranded(ps []Piece, head Mm) int {
	from := make([]int, len(ps)+1)
	for i := len(ps) - 1; i >= 0; i-- {
		from[i] = len(ps)
		var h Mm
		if i > 0 && ps[i].Under != nil && ps[i-1].Under != nil {
			h = head
		}
		for to := i; to < len(ps); to++ {
			if to > i {
				h += ps[to].Gap
			}
			if h += ps[to].Block.H; h > 100 {
				break
			}
			n := from[to+1]
			if to+1 < len(ps) && ps[to].KeepNext {
				n++
			}
			from[i] = min(from[i], n)
		}
	}
	return from[0]
}

// A line that closes what stands above it once stood alone at the top of the next
// page, below the words that the step goes on.
func TestClosingLineIsLeftOut(t *testing.T) {
	t.Parallel()
	room := page.H - page.Top - page.Bottom
	for _, c := range []struct {
		name  string
		first Mm
		set   []string
	}{
		{"the line fits", room - 2, []string{"a", "line", "b"}},
		{"the page is full", room, []string{"a", "b"}},
	} {
		first, line := named("a", c.first), named("line", 1)
		first.KeepNext, line.Closes, line.Gap = true, true, 1
		var got []string
		p := Paginate(page, []Sheet{{Pieces: []Piece{first, line, named("b", 10)}}})
		for _, f := range p.Frames {
			for _, it := range f.Items {
				got = append(got, it.Ref.(string))
			}
		}
		if !slices.Equal(got, c.set) || len(p.Frames) != 2 {
			t.Errorf("%s: set %v on %d pages, want %v on 2", c.name, got, len(p.Frames), c.set)
		}
	}
}

func TestSettle(t *testing.T) {
	t.Parallel()
	passes := 0
	p, ok := Settle(func(known map[string]int, total int) *Pages {
		passes++
		// The reference takes a page of its own as long as it is not known.
		h := Mm(20)
		if known["b"] == 0 {
			h = 100
		}
		return Paginate(page, []Sheet{{Pieces: []Piece{named("a", h), named("b", 30)}}})
	})
	if !ok || passes != 3 || p.Anchors["b"] != 1 {
		t.Errorf("settled %v after %d passes on page %d, want after 3 on page 1", ok, passes, p.Anchors["b"])
	}
	_, ok = Settle(func(known map[string]int, total int) *Pages {
		h := Mm(20)
		if known["b"] != 2 {
			h = 100
		}
		return Paginate(page, []Sheet{{Pieces: []Piece{named("a", h), named("b", 30)}}})
	})
	if ok {
		t.Error("pages that swing to and fro are said to be settled")
	}
}

func BenchmarkPaginate(b *testing.B) {
	s := newFake()
	step := s.Para(80, []Run{T(Body, "Measure how far the lock nut stands from the shaft end, then take it off.")}, ParaOpts{})
	row := Beside(5, step.Fill(60, step.H, 0, 0), s.Box(RoleTime, "time", nil))
	var ps []Piece
	for i := range 300 {
		ps = append(ps, Piece{Block: row, Gap: 2, KeepNext: i%5 == 0})
	}
	b.ReportAllocs()
	for b.Loop() {
		Paginate(A4, []Sheet{{Name: "s", Pieces: ps}})
	}
}
