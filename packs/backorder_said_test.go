package packs_test

import (
	"slices"
	"strings"
	"testing"

	"matchmark/packs/source"
)

// Two parts go back in the order in which they came off: an error where an after: line says that
// one is behind the other, a warning where they only stand one below the other, silence where the
// line says that nothing has to come first. Common practice, no source.
func TestBackOrderIsAnErrorOnlyOfWhatIsSaid(t *testing.T) {
	t.Parallel()
	for _, x := range []struct {
		after string
		told  bool
		want  source.Severity
	}{
		{"after: {shell: it is under it}, ", true, source.Error},
		{"", true, source.Warning},
		{"after: {}, ", false, source.Warning},
	} {
		text := lawHead + `parts: {shell: {name: Shell}, ring: {name: Ring}}
steps:
  - section: Off
    steps:
      - {step: shell, after: {}, do: Shell off., remove: [shell], into: bench}
      - {step: ring, AFTERdo: Ring off., remove: [ring], into: bench}
  - section: On
    steps:
      - {step: shell-in, after: {}, do: Shell in., fit: [shell]}
      - {step: ring-in, after: {}, do: Ring in., fit: [ring]}
`
		_, problems := loadLaw(strings.Replace(text, "AFTER", x.after, 1))
		i := slices.IndexFunc(problems, func(p source.Problem) bool { return p.Code == "back-order" })
		if i >= 0 != x.told || i >= 0 && problems[i].Severity != x.want {
			t.Errorf("%q: told %t, want %t with severity %d:\n%v", x.after, i >= 0, x.told, x.want, problems)
		}
	}
}
