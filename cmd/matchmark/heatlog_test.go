package main

import (
	"regexp"
	"testing"

	"matchmark/layout"
	"matchmark/templates"
)

// logTime is a time of the temperature log.
var logTime = regexp.MustCompile(`^\d+:\d\d$`)

// TestTheLogOfAPullStandsOnOnePage: its times run down one half and then down the other,
// so that a log over two pages is read in a wrong order.
func TestTheLogOfAPullStandsOnOnePage(t *testing.T) {
	t.Parallel()
	for _, paper := range papers {
		jb, pack := composed(t, "storm-pump.yaml", templates.Options{Paper: paper})
		pulled := 0
		for _, h := range jb.Heats {
			if h.Pull != nil {
				pulled++
			}
		}
		pages, times := 0, 0
		for _, p := range pack.Pages.Pages {
			on := 0
			for _, it := range p.Items {
				if text, ok := it.Shape.(layout.Text); ok && p.Sheet == "heats" && logTime.MatchString(text.S) {
					on++
				}
			}
			if on > 0 {
				pages++
			}
			times += on
		}
		if pages != pulled || times < 6 {
			t.Errorf("%s: %d logs, %d times on %d pages", paper.Name, pulled, times, pages)
		}
	}
}
