package packs_test

import (
	"os"
	"runtime/debug"
	"testing"
)

func TestMain(m *testing.M) {
	debug.SetGCPercent(400) // thousands of jobs are made and thrown away: a fifth of the time
	os.Exit(m.Run())
}
