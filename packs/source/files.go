package source

import (
	"bytes"
	"fmt"
	"io"
	"io/fs"
	"strings"
)

// MaxSize is the most bytes a file may have: 4 MB, some thirty times the
// largest definition a planner is likely to write.
const MaxSize = 4 << 20

// Files holds the bytes of each file that was read, by the name under which
// its problems are reported.
type Files map[string][]byte

// Load reads the named file of fsys into f. A file above MaxSize is returned
// as a problem, and then f does not hold it; no more than MaxSize bytes and one
// are ever read. The error is that of fsys, wrapped: the file is not there or
// cannot be read.
func (f Files) Load(fsys fs.FS, name string) (Problems, error) {
	file, err := fsys.Open(name)
	if err != nil {
		return nil, fmt.Errorf("open file: %w", err)
	}
	defer file.Close()
	data, err := io.ReadAll(io.LimitReader(file, MaxSize+1))
	if err != nil {
		return nil, fmt.Errorf("read %s: %w", name, err)
	}
	if len(data) > MaxSize {
		return Problems{TooLarge(name)}, nil
	}
	f[name] = data
	return nil, nil
}

// TooLarge is the problem of a file above MaxSize.
func TooLarge(name string) Problem {
	return Problem{
		Pos:      Pos{File: name},
		Severity: Error,
		Code:     "too-large",
		Message:  "the file is larger than 4 MB, too large for a definition",
		Help:     []string{"is it the right file? A definition of a large machine has about 100 kB"},
	}
}

// byteOrderMark is U+FEFF in UTF-8, which some editors put before the text.
var byteOrderMark = []byte("\xef\xbb\xbf")

// Lines cuts a file into its lines without their ends and without a byte order
// mark. It returns at least one line, and an empty last one after a final line
// end, so that Lines(data)[pos.Line-1] is the line of a place.
func Lines(data []byte) []string {
	text := string(bytes.TrimPrefix(data, byteOrderMark))
	if strings.ContainsRune(text, '\r') {
		text = strings.ReplaceAll(text, "\r\n", "\n")
		text = strings.ReplaceAll(text, "\r", "\n")
	}
	return strings.Split(text, "\n")
}
