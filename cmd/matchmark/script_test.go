package main

import (
	"os"
	"path/filepath"
	"runtime/debug"
	"testing"

	"github.com/rogpeppe/go-internal/testscript"
)

func TestMain(m *testing.M) {
	debug.SetGCPercent(200) // thousands of packs are made and thrown away
	debug.SetMemoryLimit(2 << 30)
	testscript.Main(m, map[string]func(){"matchmark": main})
}

// TestScripts runs the command as a planner does, one topic a script. The
// starters lie in $STARTERS.
func TestScripts(t *testing.T) {
	starters, err := filepath.Abs(startersDir)
	if err != nil {
		t.Fatal(err)
	}
	testscript.Run(t, testscript.Params{
		Dir:                 "testdata/script",
		RequireExplicitExec: true,
		RequireUniqueNames:  true,
		UpdateScripts:       os.Getenv("UPDATE_SCRIPTS") == "1",
		Setup: func(e *testscript.Env) error {
			e.Vars = append(e.Vars, "STARTERS="+starters)
			return nil
		},
	})
}
