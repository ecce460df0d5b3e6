package layout

import (
	"fmt"
	"strings"
)

// Dump gives a frame as text, one line an item as drawn, lengths in millimetres
// with two decimals: for comparing pages in tests.
func Dump(f Frame) string {
	var b strings.Builder
	fmt.Fprintf(&b, "frame %s %.2f x %.2f\n", f.Sheet, f.W, f.H)
	for _, it := range f.Items {
		dumpItem(&b, it)
	}
	return b.String()
}

func dumpItem(b *strings.Builder, it Item) {
	fmt.Fprintf(b, "%7s %7s  ", mm(it.X), mm(it.Y))
	switch s := it.Shape.(type) {
	case Text:
		fmt.Fprintf(b, "text %s %.4g pt w %s %q%s", s.Face, float64(s.Size), mm(s.Width), s.S, inkWord(s.Ink))
	case Line:
		fmt.Fprintf(b, "line to %s %s%s", mm(s.DX), mm(s.DY), stroke(s.Weight, s.Dash, s.Ink))
	case Rect:
		fmt.Fprintf(b, "rect %s x %s%s", mm(s.W), mm(s.H), stroke(s.Weight, s.Dash, s.Ink))
		if s.Radius > 0 {
			fmt.Fprintf(b, " round %s", mm(s.Radius))
		}
		if s.Fill != Usual {
			fmt.Fprintf(b, " fill%s", inkWord(s.Fill))
		}
		if s.Cells > 0 {
			fmt.Fprintf(b, " cells %d point %d", s.Cells, s.Point)
		}
	case Path:
		x := s.extent()
		fmt.Fprintf(b, "path %d steps within %s %s %s %s%s", len(s.Ops), mm(x.x0), mm(x.y0), mm(x.x1), mm(x.y1), stroke(s.Weight, s.Dash, s.Ink))
		if s.Fill != Usual {
			fmt.Fprintf(b, " fill%s", inkWord(s.Fill))
		}
		if s.Alt != "" {
			fmt.Fprintf(b, " for %q", s.Alt)
		}
	case Modules:
		fmt.Fprintf(b, "qr %s, %d modules, %q", mm(s.Size), s.Count(), s.Content())
	case Image:
		fmt.Fprintf(b, "image %s x %s %s %d bytes", mm(s.W), mm(s.H), s.Kind, len(s.Data))
	}
	if it.Turn != 0 {
		fmt.Fprintf(b, " turn %.4g", it.Turn)
	}
	if it.Role != "" {
		fmt.Fprintf(b, " [%s]", it.Role)
	}
	b.WriteByte('\n')
}

// mm prints a length with two decimals and no negative zero.
func mm(m Mm) string {
	t := fmt.Sprintf("%.2f", float64(m))
	if t == "-0.00" {
		return "0.00"
	}
	return t
}

func stroke(weight, dash Mm, ink Ink) string {
	t := ""
	if weight > 0 {
		t = " stroke " + mm(weight) + inkWord(ink)
	}
	if dash > 0 {
		t += " dash " + mm(dash)
	}
	return t
}

func inkWord(i Ink) string {
	return [...]string{"", " black", " soft", " faint", " pale", " white", " ?"}[min(i, White+1)]
}
