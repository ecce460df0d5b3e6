package def

import (
	"math/rand"
	"os"
	"runtime"
	"strings"
	"testing"
	"time"

	"matchmark/packs/source"
)

// pieces are what a file may be made of without end.
var pieces = []string{
	"a: {b: c}\n", "- x\n", "  - {step: s, do: Look., after: {}}\n", "{", "[", "a: [", "a: {b: ", "&a [*a, ", "*a, ", "'", "\"", "\"\\u200b", "#", " #7", "|\n  x\n", ">-\n", "? ", ": ",
	"!x ", "---\n", "...\n", "\t", "\r", "\u00a0", "\u200b", "\u0430a", "D7: {", "steps: ", "parts: {p: {name: ", "0,05 mm ", "as found +/- ", "é", "漢", "\xff", "\x01", "%", "@", "`", "<<: ",
}

// megabyte repeats one to three pieces up to 1 MB.
func megabyte(r *rand.Rand) string {
	head := ""
	if r.Intn(2) == 0 {
		head = "pack: 1\nequipment: {tag: X, name: Y}\nparts:\n"
	}
	var unit strings.Builder
	for range 1 + r.Intn(3) {
		unit.WriteString(pieces[r.Intn(len(pieces))])
	}
	return head + strings.Repeat(unit.String(), (1<<20-len(head))/unit.Len())
}

// TestAnyMegabyte: any file of 1 MB is read in bounded time and memory by the readers of
// definitions, job files and site files. A read takes well under a second on an idle
// machine; the bound leaves room for a busy one, and nothing that grows with the square
// of the file stays below it.
func TestAnyMegabyte(t *testing.T) {
	if testing.Short() {
		t.Skip("left out with -short")
	}
	readers := map[string]func(string, []byte) source.Problems{
		"definition": func(n string, b []byte) source.Problems { _, ps := Read(n, b); return ps },
		"job file":   func(n string, b []byte) source.Problems { _, ps := ReadJob(n, b); return ps },
		"site file":  func(n string, b []byte) source.Problems { _, ps := ReadSite(n, b); return ps },
	}
	r, files := rand.New(rand.NewSource(3)), 4
	if os.Getenv("CI_OUTSIDE") == "1" {
		files = 25
	}
	for range files {
		text := megabyte(r)
		for name, read := range readers {
			var before, after runtime.MemStats
			runtime.ReadMemStats(&before)
			start := time.Now()
			ps := read("x.yaml", []byte(text))
			took := time.Since(start)
			runtime.ReadMemStats(&after)
			if used := (after.TotalAlloc - before.TotalAlloc) >> 20; took > 20*time.Second || used > 400 {
				t.Errorf("a %s of 1 MB of %.40q takes %v and %d MB", name, text[len(text)-40:], took, used)
			}
			checkInside(t, []byte(text), ps)
		}
	}
}
