package main

import (
	"os/exec"
	"path/filepath"
	"syscall"
	"testing"
)

// TestBatchIsFlat: of a job that is printed no more is kept than its line in the index, so
// that many take no more memory than few. Measured on two cores: 25 jobs 68 MB, 100 jobs
// 76 MB; the collector takes its time by what is held, so a half more is allowed.
func TestBatchIsFlat(t *testing.T) {
	program := built(t)
	peak := func(n int) int64 {
		dir := t.TempDir()
		file := writeShortJob(t, dir)
		cmd := exec.Command(program, "print", file, "--jobs", outageTable(t, dir, n), "--out", filepath.Join(dir, "out"))
		if said, err := cmd.CombinedOutput(); err != nil {
			t.Fatalf("%d jobs: %v\n%.500s", n, err, said)
		}
		return int64(cmd.ProcessState.SysUsage().(*syscall.Rusage).Maxrss) // kB; of fewer bits on some machines
	}
	few, many := peak(15), peak(90)
	t.Logf("15 jobs %d MB, 90 jobs %d MB", few>>10, many>>10)
	if many > few*3/2 || many > 400<<10 {
		t.Errorf("90 jobs take %d MB, 15 take %d MB", many>>10, few>>10)
	}
}
