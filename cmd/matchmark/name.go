package main

import (
	"crypto/sha256"
	"encoding/hex"
	"regexp"
	"strings"
)

// reserved are the names that Windows keeps for devices, whatever stands behind their
// first dot.
var reserved = regexp.MustCompile(`(?i)^(con|prn|aux|nul|com[0-9]|lpt[0-9]) *(\.|$)`)

// anywhere reports whether a file of a name can be written on every system: Windows keeps
// names for devices, has signs of its own in paths, and drops a dot or a space at the end.
func anywhere(name string) bool {
	return name != "" && !reserved.MatchString(name) && !strings.ContainsAny(name, "<>:\"/\\|?*\x00") && strings.TrimRight(name, ". ") == name
}

// fileName makes part of a file name of a job number and revision: letters, digits, dash,
// dot and underscore stay, all else becomes a dash. Six figures of the digest of the name
// then follow, so that two jobs never get the same files: WO/1 and WO-1 are two. A name
// that is a device on Windows, or hidden because it begins with a dot, begins with an
// underscore.
func fileName(s string) string {
	name := plainName(s)
	if name != s {
		sum := sha256.Sum256([]byte(s))
		name += "-" + hex.EncodeToString(sum[:3])
	}
	return allowedName(name)
}

// plainName has a dash for all that is not a letter, digit, dash, dot or underscore.
func plainName(s string) string {
	return strings.Map(func(r rune) rune {
		switch {
		case r >= 'a' && r <= 'z', r >= 'A' && r <= 'Z', r >= '0' && r <= '9', r == '-', r == '_', r == '.':
			return r
		}
		return '-'
	}, s)
}

// allowedName puts an underscore before a name that a system keeps or hides.
func allowedName(name string) string {
	if reserved.MatchString(name) || strings.HasPrefix(name, ".") {
		name = "_" + name
	}
	return name
}
