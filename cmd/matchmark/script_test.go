package main

import (
	"os"
	"os/exec"
	"path/filepath"
	"runtime/debug"
	"testing"

	"github.com/rogpeppe/go-internal/testscript"
)

func TestMain(m *testing.M) {
	testscript.Main(tests{m}, map[string]func(){"matchmark": main})
}

// tests are those of this package.
type tests struct{ *testing.M }

func (m tests) Run() int {
	debug.SetGCPercent(400) // thousands of packs are made and thrown away
	debug.SetMemoryLimit(2 << 30)
	return m.M.Run()
}

// built is the program, for what can only be seen from outside of a process: this one under the
// name of the command, as the scripts run it.
func built(t *testing.T) string {
	t.Helper()
	program, err := exec.LookPath("matchmark")
	if err != nil {
		t.Fatal(err)
	}
	return program
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
