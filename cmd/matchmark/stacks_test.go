package main

import (
	"strings"
	"testing"

	"matchmark/packs/source"
)

// stackJob is a small job in which a stack is written down, and its mark stands again where a
// later step fits parts.
const stackJob = `pack: 1
equipment: {tag: X-1, name: Valve}
job: {number: "4", title: Springs, revision: A, issued: 2026-03-02}
parts:
  cover: {name: Cover}
  spring: {name: Spring, count: 4}
  plug: {name: Plug}
stacks:
  K1: {what: Springs of the valve, from: the plug, ORDER}
containers:
  C1: {name: Springs, kind: bag}
  C2: {name: Cover and plug, kind: box}
steps:
  - section: Test
    steps:
      - {step: cover-off, do: Take the cover off., remove: [cover], into: C2}
      - {step: springs-off, do: Take the springs out., stacks: [K1], remove: [spring], into: C1}
      - {step: springs-on, do: Lay the springs in., after: {springs-off: they are clean}, fit: [spring]SPRINGS}
      - {step: cover-on, do: Put the cover on., after: {springs-on: they are under it}, fit: [cover]COVER}
      - {step: plug-off, after: {}, do: Take the plug out., remove: [plug], into: C2, back: Put the plug in.}
  - reverse: [Test]
`

func stackText(order, springs, cover string) string {
	return strings.NewReplacer("ORDER", order, "SPRINGS", springs, "COVER", cover).Replace(stackJob)
}

// A stack that is put together before all is apart had no line to tick, and check was silent;
// so it was where its mark stood at a step that fits another part.
func TestStackIsTickedWhereItIsPutTogether(t *testing.T) {
	t.Parallel()
	const again = ", stacks: [K1]"
	for _, order := range []string{"order: [spring, spring, spring, spring]", "order: \"hollow sides together\", count: 4"} {
		for _, c := range []struct {
			springs, cover string
			told           bool
		}{{again, "", false}, {"", again, true}} {
			text := stackText(order, c.springs, c.cover)
			_, problems := loadText(text)
			var twice []source.Problem
			for _, p := range problems {
				if p.Code == "twice" {
					twice = append(twice, p)
				}
			}
			if told := len(twice) > 0; told != c.told {
				t.Errorf("%s, at the springs%s, at the cover%s: told %v, want %v", order, c.springs, c.cover, told, c.told)
			}
			if c.told {
				continue
			}
			step := between(sheetsOf(t, text)["traveler"], "Lay the springs in", "Put the cover on")
			wantAll(t, "the step that lays the springs in", step, "[ ] K1 Springs of the valve in the order from the plug outward that was written down (p.")
		}
	}
}
