package svg

import (
	"encoding/xml"
	"math"
	"slices"
	"strconv"
	"strings"

	"matchmark/layout"
)

// heeded are the properties that change what is seen, besides those of strokes.
var heeded = []string{"fill", "fill-rule", "stroke", "opacity", "fill-opacity", "clip-path", "mask", "filter", "display", "visibility", "transform", "class"}

// styles takes over how an element looks, from its attributes and its style.
func (r *reader) styles(t xml.StartElement, l *look) error {
	for _, a := range t.Attr {
		if a.Name.Space != "" {
			continue
		}
		if a.Name.Local != "style" {
			if err := r.property(a.Name.Local, strings.TrimSpace(a.Value), l); err != nil {
				return err
			}
			continue
		}
		for _, rule := range strings.Split(a.Value, ";") {
			if name, value, ok := strings.Cut(rule, ":"); ok {
				if err := r.property(strings.TrimSpace(name), strings.TrimSpace(value), l); err != nil {
					return err
				}
			}
		}
	}
	return nil
}

// property takes over one property.
func (r *reader) property(name, value string, l *look) error {
	if !slices.Contains(heeded, name) {
		return nil
	}
	switch name {
	case "fill":
		return r.fill(value, l)
	case "fill-rule":
		l.wind = value != "evenodd"
	case "transform":
		m, ok := transform(value)
		if !ok {
			return r.fail("transform=%q is not understood: in the drawing program apply the transforms to the paths", value)
		}
		l.at = l.at.times(m)
	case "opacity", "fill-opacity":
		if n, err := strconv.ParseFloat(value, 64); err != nil || n != 1 {
			return r.fail("%s %s: nothing on this paper shines through; give it a lighter fill", name, value)
		}
	case "stroke":
		if value != "none" {
			return r.fail("a stroke is not printed: in the drawing program make paths of the strokes")
		}
	case "display", "visibility":
		if value == "none" || value == "hidden" || value == "collapse" {
			return r.fail("something hidden stands here: take it out of the drawing")
		}
	case "class": // without a style sheet, which is refused, it changes nothing
	default:
		if value != "none" {
			return r.fail("%s is not printed: in the drawing program cut the paths to what is seen", name)
		}
	}
	return nil
}

// fill reads a colour; the paper has greys, so that it is taken as light as it looks.
func (r *reader) fill(value string, l *look) error {
	named := map[string]string{"black": "#000000", "white": "#ffffff", "currentColor": "#000000", "gray": "#808080", "grey": "#808080"}
	switch {
	case value == "none":
		l.fill = layout.Usual
		return nil
	case value == "inherit":
		return nil
	case named[value] != "":
		value = named[value]
	}
	hex, ok := strings.CutPrefix(value, "#")
	if len(hex) == 3 {
		hex = string([]byte{hex[0], hex[0], hex[1], hex[1], hex[2], hex[2]})
	}
	n, err := strconv.ParseUint(hex, 16, 32)
	if !ok || err != nil || len(hex) != 6 {
		return r.fail("fill %s is no plain colour: write it as #rrggbb, without gradients and patterns", value)
	}
	l.fill = tone(float64(n>>16&255)/255, float64(n>>8&255)/255, float64(n&255)/255)
	return nil
}

// tone is the ink that is as light as a colour of sRGB: by its luma (ITU-R BT.601),
// 0.299 R + 0.587 G + 0.114 B.
func tone(red, green, blue float64) layout.Ink {
	luma := 0.299*red + 0.587*green + 0.114*blue
	best := layout.Black
	for ink := layout.Black; ink <= layout.White; ink++ {
		if math.Abs(ink.Level()-luma) < math.Abs(best.Level()-luma) {
			best = ink
		}
	}
	return best
}
