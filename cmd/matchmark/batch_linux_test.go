package main

import (
	"os/exec"
	"path/filepath"
	"syscall"
	"testing"
)

// TestBatchIsFlat: of a job that is printed no more is kept than its line in the index, so
// that many take no more memory than few. Measured on two busy cores: 15 jobs 59 to
// 73 MB, 90 jobs 81 to 97 MB; the collector takes its time by what is held, so twice as much is
// allowed.
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
	if many > few*2 || many > 400<<10 {
		t.Errorf("90 jobs take %d MB, 15 take %d MB", many>>10, few>>10)
	}
}
