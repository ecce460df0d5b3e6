package main

import (
	"fmt"
	"runtime/debug"

	"matchmark/packs"
)

// released is the version that a release was built as; the release script sets it.
var released string

// buildVersion is the version of this program: of a release its tag, else the commit
// that it was built from.
func buildVersion() string {
	if released != "" {
		return released
	}
	info, ok := debug.ReadBuildInfo()
	if !ok {
		return "unknown"
	}
	if v := info.Main.Version; v != "" && v != "(devel)" {
		return v
	}
	for _, s := range info.Settings {
		if s.Key == "vcs.revision" && len(s.Value) > 12 {
			return "commit " + s.Value[:12]
		}
	}
	return "of this source"
}

// version is what --version says: the program, and the number of what it prints, which
// is part of the digest on every page.
func version() string {
	return fmt.Sprintf("matchmark %s, paper format %d\n", buildVersion(), packs.Format)
}
