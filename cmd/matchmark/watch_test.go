package main

import (
	"bytes"
	"context"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"
	"time"
)

// An overheard stream keeps what two goroutines write.
type overheard struct {
	mu sync.Mutex
	b  bytes.Buffer
}

func (s *overheard) Write(p []byte) (int, error) {
	s.mu.Lock()
	defer s.mu.Unlock()
	return s.b.Write(p)
}

func (s *overheard) String() string {
	s.mu.Lock()
	defer s.mu.Unlock()
	return s.b.String()
}

// TestWatch: a hundred fast saves, some cut in the middle as a slow editor leaves them,
// and what is on disk in the end is the print of the last one; at no time is a file
// there that is not whole.
func TestWatch(t *testing.T) {
	dir := t.TempDir()
	file, out := filepath.Join(dir, "pump.yaml"), filepath.Join(dir, "out")
	text := func(n int) string {
		return fmt.Sprintf("pack: 1\nequipment: {tag: P-1, name: Pump}\njob: {number: WO-1, title: Save %d, revision: A, issued: 2026-03-02}\nsteps: [{step: look, do: Look into the pump.}]\n", n)
	}
	save := func(s string) {
		if err := os.WriteFile(file, []byte(s), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	save(text(0))
	w := watchFlags{printFlags{out: out, tags: tagFlags{start: 1}}}
	ctx, stop := context.WithCancel(context.Background())
	var said, talk overheard
	ended := make(chan struct{})
	go func() {
		w.follow(ctx, file, streams{in: strings.NewReader(""), out: &said, err: &talk})
		close(ended)
	}()
	pack := filepath.Join(out, "WO-1-A-pack.pdf")
	for n := 1; n <= 100; n++ {
		if n%7 == 0 {
			save(text(n)[:60+n])
		}
		save(text(n))
		if data, err := os.ReadFile(pack); err == nil && !bytes.HasSuffix(bytes.TrimSpace(data), []byte("%%EOF")) {
			t.Fatalf("after save %d the pack is not whole", n)
		}
		time.Sleep(10 * time.Millisecond)
	}
	var want bytes.Buffer
	if code := run([]string{"print", file, "--out", "-"}, strings.NewReader(""), &want, &want); code != exitDone {
		t.Fatal(want.String())
	}
	deadline := time.Now().Add(20 * time.Second)
	for {
		data, err := os.ReadFile(pack)
		if err == nil && bytes.Equal(data, want.Bytes()) {
			break
		}
		if time.Now().After(deadline) {
			t.Fatalf("the last save is not printed\n%s%s", said.String(), talk.String())
		}
		time.Sleep(20 * time.Millisecond)
	}

	// A mistake is told, the last good print stays, and the next good save is printed.
	save(strings.Replace(text(101), "look,", "look, remvoe: [cap],", 1))
	waitFor(t, func() bool {
		return strings.Contains(talk.String(), "[unknown-key]") && strings.Contains(talk.String(), "stays")
	})
	if data, err := os.ReadFile(pack); err != nil || !bytes.Equal(data, want.Bytes()) {
		t.Error("the last good print is gone")
	}
	save(text(102))
	waitFor(t, func() bool {
		data, err := os.ReadFile(pack)
		return err == nil && !bytes.Equal(data, want.Bytes())
	})
	stop()
	<-ended
	if left, _ := filepath.Glob(filepath.Join(out, ".matchmark-*")); len(left) > 0 {
		t.Errorf("temporary files are left: %v", left)
	}
}

func waitFor(t *testing.T, ok func() bool) {
	t.Helper()
	for range 1000 {
		if ok() {
			return
		}
		time.Sleep(20 * time.Millisecond)
	}
	t.Fatal("waited 20 s in vain")
}
