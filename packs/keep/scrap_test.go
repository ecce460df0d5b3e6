package keep_test

import (
	"bytes"
	"encoding/csv"
	"strings"
	"testing"
	"testing/fstest"

	"matchmark/packs"
	"matchmark/packs/keep"
)

// The scrap bag of a job whose old pieces are all held against the new ones first stood in the
// register with no piece, no contents and no step.
func TestScrapBagTellsWhatComesLater(t *testing.T) {
	t.Parallel()
	for _, c := range []struct {
		name, hub, disc             string
		pieces, contents, off, code string
	}{
		{"all later", "C1", "C1", "5", "later, at R1.2: 1 old Hub; later, at R1.1: 4 old Disc", "1.1; 1.2", "\x1dQ5\x1d"},
		{"one later", "scrap", "C1", "5", "1 Hub; later, at R1.1: 4 old Disc", "1.1; 1.2", "\x1dQ5\x1d"},
		{"all at once", "scrap", "scrap", "5", "1 Hub; 4 Disc", "1.1; 1.2", "\x1dQ5\x1d"},
	} {
		text := strings.NewReplacer("HUB", c.hub, "DISC", c.disc).Replace(`
pack: 1
equipment: {tag: P-12, name: Pump}
job: {number: WO-97, title: Trial, revision: A, issued: 2026-03-02}
parts: {hub: {name: Hub, renew: always}, disc: {name: Disc, count: 4, renew: always}, pin: {name: Pin}}
containers: {C1: {name: Old ones, kind: box}}
steps:
  - section: Open
    steps:
    - {step: off, do: "Hub off.", remove: [pin, hub], into: {pin: C1, hub: HUB}}
    - {step: off2, do: "Discs off.", remove: [disc], into: DISC}
  - section: Shut
    steps:
    - {step: on2, do: "New discs on.", fit: [disc]}
    - {step: on, do: "New hub on.", fit: [hub, pin]}
`)
		jb, problems := packs.Load(fstest.MapFS{"pump.yaml": {Data: []byte(text)}}, packs.Inputs{Definition: "pump.yaml"})
		if problems.Errors() > 0 {
			t.Fatal(c.name, problems)
		}
		var b bytes.Buffer
		if err := keep.WriteRegister(&b, jb, false); err != nil {
			t.Fatal(err)
		}
		rows, err := csv.NewReader(&b).ReadAll()
		if err != nil {
			t.Fatal(err)
		}
		found := false
		for _, row := range rows[1:] {
			at := map[string]string{}
			for i, head := range rows[0] {
				at[head] = row[i]
			}
			if at["mark"] != "SCRAP" {
				continue
			}
			found = true
			if at["pieces"] != c.pieces || strings.Trim(at["contents"], "'") != c.contents || strings.Trim(at["off at"], "'") != c.off {
				t.Errorf("%s: %s pieces, %q, off at %s", c.name, at["pieces"], at["contents"], at["off at"])
			}
		}
		if !found {
			t.Errorf("%s: no scrap bag", c.name)
		}
		for _, tag := range jb.Tags {
			if tag.Scrap && !strings.Contains(tag.Enveloped(), c.code) {
				t.Errorf("%s: its code says %q", c.name, tag.Enveloped())
			}
		}
	}
}
