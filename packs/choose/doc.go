// Package choose leaves out of a definition what one machine does not have: the
// options that are not fitted, the builds that it is not of. What is left speaks
// of one machine only.
package choose

// keys lists the keys of a map, for the names that a problem offers.
func keys[V any](m map[string]V) []string {
	out := make([]string, 0, len(m))
	for k := range m {
		out = append(out, k)
	}
	return out
}
