package main

import (
	"strings"
	"testing"

	"matchmark/layout"
)

// TestWritable: files whose names one system cannot hold are refused there before any is
// written; on Windows aux.yaml went to a device, and of two names that differ in their
// case the second replaced the first.
func TestWritable(t *testing.T) {
	for _, c := range []struct {
		system string
		names  []string
		want   string
	}{
		{"windows", []string{"pump.yaml", "common/bolts.yaml", "print-again.txt"}, ""},
		{"windows", []string{"pump.yaml", "common/aux.yaml"}, "common/aux.yaml is a name that Windows"},
		{"windows", []string{"NUL"}, "Windows"},
		{"windows", []string{"com1.csv"}, "Windows"},
		{"windows", []string{"what?.yaml"}, "Windows"},
		{"windows", []string{"logo.png."}, "Windows"},
		{"linux", []string{"aux.yaml", "what?.yaml"}, ""},
		{"windows", []string{"a/Bolts.yaml", "a/bolts.yaml"}, "are one file"},
		{"darwin", []string{"Bolts.yaml", "bolts.yaml"}, "are one file"},
		{"linux", []string{"Bolts.yaml", "bolts.yaml"}, ""},
	} {
		var list []layout.Attachment
		for _, n := range c.names {
			list = append(list, layout.Attachment{Name: n})
		}
		said := ""
		if err := writable(list, c.system); err != nil {
			said = err.Error()
		}
		if (said == "") != (c.want == "") || !strings.Contains(said, c.want) {
			t.Errorf("%v on %s: %q, want %q", c.names, c.system, said, c.want)
		}
	}
}
