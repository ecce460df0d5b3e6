package source

import (
	"bytes"
	"errors"
	"io/fs"
	"strings"
	"testing"
	"testing/fstest"
)

// endless is a file without an end; it counts what is read of it.
type endless struct{ read int }

func (e *endless) Open(string) (fs.File, error) { return e, nil }
func (e *endless) Stat() (fs.FileInfo, error)   { return nil, errors.New("no size known") }
func (e *endless) Close() error                 { return nil }
func (e *endless) Read(p []byte) (int, error)   { e.read += len(p); return len(p), nil }

func TestReadTakesFilesUpToTheLimitAndNoMoreOfOthers(t *testing.T) {
	fsys := fstest.MapFS{
		"fan.yaml":  {Data: []byte("pack: 1\n")},
		"full.yaml": {Data: bytes.Repeat([]byte("x"), MaxSize)},
		"over.yaml": {Data: bytes.Repeat([]byte("x"), MaxSize+1)},
		"dir/x":     {Data: nil},
	}
	for _, c := range []struct {
		name string
		size int
		code string
	}{
		{"fan.yaml", 8, ""}, {"full.yaml", MaxSize, ""}, {"over.yaml", 0, "too-large"},
		{"none.yaml", 0, Unreadable}, {"dir", 0, Unreadable}, {"../fan.yaml", 0, Unreadable},
	} {
		data, ps := Read(fsys, c.name)
		code := ""
		if len(ps) > 0 {
			code = ps[0].Code
			if ps[0].Pos != (Pos{File: c.name}) || ps[0].Severity != Error {
				t.Errorf("%s: the problem is placed at %v", c.name, ps[0].Pos)
			}
			if strings.Contains(ps[0].Message, c.name) {
				t.Errorf("%s: the message %q names the file again", c.name, ps[0].Message)
			}
		}
		if len(data) != c.size || code != c.code {
			t.Errorf("%s: %d bytes and %q, want %d and %q", c.name, len(data), code, c.size, c.code)
		}
	}
	e := &endless{}
	if _, ps := Read(e, "pipe"); len(ps) != 1 || ps[0].Code != "too-large" || e.read > MaxSize+1<<20 {
		t.Errorf("a file without an end gives %v after %d bytes", ps, e.read)
	}
}

func TestLinesEndAtEveryUsualLineEnd(t *testing.T) {
	for _, c := range []struct{ text, want string }{
		{"", ""}, {"a", "a"}, {"a\n", "a|"}, {"a\r\nb", "a|b"}, {"a\rb\n\nc", "a|b||c"}, {"\ufeffa\nb\ufeff", "a|b\ufeff"},
		{"a\u2028b\u0085c", "a\u2028b\u0085c"},
	} {
		if got := strings.Join(Lines([]byte(c.text)), "|"); got != c.want {
			t.Errorf("%q is cut into %q, want %q", c.text, got, c.want)
		}
	}
}

func TestPlacesOrder(t *testing.T) {
	a, b := Pos{"a", 1, 2, 1}, Pos{"a", 1, 3, 1}
	if !a.Before(b) || b.Before(a) || a.Before(a) || !(Pos{}).IsZero() || a.IsZero() {
		t.Error("places are not in the order of the file")
	}
	for _, c := range []struct {
		p    Pos
		want string
	}{{a, "a:1:2"}, {Pos{File: "a"}, "a"}, {Pos{File: "a", Line: 4}, "a:4"}, {Pos{}, ""}} {
		if got := c.p.String(); got != c.want {
			t.Errorf("%#v is written %q, want %q", c.p, got, c.want)
		}
	}
}
