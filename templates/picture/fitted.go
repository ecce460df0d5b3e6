package picture

import (
	"matchmark/layout"
)

// fitted sets a name in a drawing: in one line, or where that is wider than the room in
// as many as it takes. A word that is wider by itself is a misfit.
func fitted(set *layout.Setter, st layout.Style, text string, room layout.Mm, o layout.ParaOpts) layout.Block {
	if set.Width(st, text) <= room {
		return set.Line(0, []layout.Run{layout.T(st, text)}, o)
	}
	return set.Para(room, []layout.Run{layout.T(st, text)}, o)
}
