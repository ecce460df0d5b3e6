package main

import (
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"runtime/debug"
	"sync"
	"testing"

	"github.com/rogpeppe/go-internal/testscript"
)

func TestMain(m *testing.M) {
	testscript.Main(tests{m}, map[string]func(){"matchmark": main})
}

// tests are those of this package, with what they share set up before and taken away after.
type tests struct{ *testing.M }

func (m tests) Run() int {
	debug.SetGCPercent(400) // thousands of packs are made and thrown away
	debug.SetMemoryLimit(2 << 30)
	defer os.RemoveAll(programDir)
	return m.M.Run()
}

// programDir has the program once a test has built it.
var programDir string

// built is the program, for what can only be seen from outside of a process.
func built(t *testing.T) string {
	t.Helper()
	program, err := builtOnce()
	if err != nil {
		t.Fatal(err)
	}
	return program
}

var builtOnce = sync.OnceValues(func() (string, error) {
	var err error
	if programDir, err = os.MkdirTemp("", "matchmark"); err != nil {
		return "", err
	}
	program := filepath.Join(programDir, "matchmark")
	if out, err := exec.Command("go", "build", "-o", program, ".").CombinedOutput(); err != nil {
		return "", fmt.Errorf("%w\n%s", err, out)
	}
	return program, nil
})

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
