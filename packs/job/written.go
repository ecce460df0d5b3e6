package job

import "matchmark/packs/source"

// AsWritten is what a value says that is kept as it stands in the file: a text its words, a
// place in the file nothing. It reports whether the value is one of these.
func AsWritten(v any) (says string, ok bool) {
	switch x := v.(type) {
	case source.Pos:
		return "", true
	case source.Text:
		return x.Value, true
	}
	return "", false
}
