package source

import (
	"bytes"
	"errors"
	"io"
	"io/fs"
	"strings"
)

// MaxSize is the most bytes a file may have: 4 MB, some thirty times the
// largest definition a planner is likely to write.
const MaxSize = 4 << 20

// Unreadable is the code of the problem that a file cannot be opened or read at
// all, which says nothing about what stands in it.
const Unreadable = "unreadable"

// Files holds the bytes of each file that was read, by the name under which
// its problems are reported.
type Files map[string][]byte

// Read reads the named file of fsys. A file that cannot be opened or read is one
// problem with the code Unreadable, a file above MaxSize one with the code
// too-large; both speak of the file as a whole. No more than MaxSize bytes and
// one are ever read.
func Read(fsys fs.FS, name string) ([]byte, Problems) {
	file, err := fsys.Open(name)
	if err != nil {
		return nil, unreadable(name, err)
	}
	defer file.Close()
	data, err := io.ReadAll(io.LimitReader(file, MaxSize+1))
	if err != nil {
		return nil, unreadable(name, err)
	}
	if len(data) > MaxSize {
		return nil, Problems{TooLarge(name)}
	}
	return data, nil
}

// unreadable is the problem of a file that the system does not give.
func unreadable(name string, err error) Problems {
	var path *fs.PathError
	if errors.As(err, &path) {
		err = path.Err // the name already stands before the message
	}
	return Problems{{Pos: Pos{File: name}, Severity: Error, Code: Unreadable, Message: "the file cannot be read: " + err.Error()}}
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
