package main

import (
	"fmt"
	"io/fs"
	"maps"
	"path"
	"path/filepath"
	"slices"
	"strings"
	"unicode"

	"matchmark/layout"
	"matchmark/packs"
	"matchmark/packs/job"
)

// howName is the attached file that says how a pack is printed again.
const howName = "print-again.txt"

// attached are the files that a pack was made from, to be kept inside it: byte for byte
// as they were read, and a note of the program, its paper format and the command, which
// again goes on. A job that is a row of a table is kept as the job file that was made of it.
func attached(jb *job.Job, in packs.Inputs, row bool, again string) []layout.Attachment {
	var out []layout.Attachment
	command := "matchmark print"
	taken := map[string]bool{howName: true}
	add := func(flag, name, what, kind string) {
		data, read := jb.Files[name]
		if name == "" || !read {
			return
		}
		plain := kind + path.Ext(name)
		if base := filepath.Base(strings.ReplaceAll(name, "\\", "/")); name != stdinName && anywhere(base) && !strings.ContainsAny(base, signsInQuotes) {
			plain = base
		}
		if row && name == in.Job {
			plain = kind + ".yaml"
		}
		for taken[strings.ToLower(plain)] {
			plain = kind + "-" + plain // of two folders
		}
		taken[plain], taken[strings.ToLower(plain)] = true, true
		command += flag + " " + forShell(plain)
		out = append(out, layout.Attachment{Name: plain, What: what, Type: "text/plain", Origin: true, Data: data})
	}
	add("", in.Definition, "the equipment definition", "definition")
	add(" --job", in.Job, "the job file", "job")
	add(" --site", in.Site, "the site file", "site")
	for _, name := range in.Last {
		add(" --last", name, "readings of an earlier outage", "last")
	}
	command += again
	// What these files name lies as it did: beside them, or in folders below.
	for _, name := range slices.Sorted(maps.Keys(jb.Files)) {
		from, what := in.Definition, "a file that the definition includes or uses"
		switch name {
		case in.Definition, in.Job, in.Site:
			continue
		case jb.Site.LogoFile, jb.Site.Plain.File, jb.Site.Strong.File:
			from, what = in.Site, "a picture or a font of the site"
		}
		plain := below(from, name)
		if plain == "" || slices.Contains(in.Last, name) {
			continue
		}
		if taken[plain] {
			command += "\nnot kept, for another file has its name: " + plain
			continue
		}
		taken[plain] = true
		out = append(out, layout.Attachment{Name: plain, What: what, Type: "application/octet-stream", Origin: true, Data: jb.Files[name]})
	}
	how := fmt.Sprintf("%s\nprogram: matchmark %s\npaper format: %d\npack digest: %s\n", command, buildVersion(), packs.Format, jb.Digest)
	return append(out, layout.Attachment{Name: howName, What: "how this pack is printed again", Type: "text/plain", Data: []byte(how)})
}

// signsInQuotes mean something to one shell or another even between quotation marks: a file with
// one in its name is kept under another.
const signsInQuotes = "$`!%"

// forShell is the name of a file as it is typed at the prompt of all systems: in quotation marks
// where it has a blank or a sign that means something to one of them.
func forShell(name string) string {
	if strings.IndexFunc(name, func(r rune) bool {
		return !unicode.IsLetter(r) && !unicode.IsDigit(r) && !strings.ContainsRune("-_.,+/", r)
	}) < 0 {
		return name
	}
	return `"` + name + `"`
}

// below is the path of a file from the folder of another one that names it.
func below(root, name string) string {
	slashed := func(s string) string { return strings.ReplaceAll(s, "\\", "/") }
	dir := slashed(root)
	dir = dir[:strings.LastIndexByte(dir, '/')+1]
	if root == stdinName {
		dir = ""
	}
	rel, ok := strings.CutPrefix(slashed(name), dir)
	if !ok || !fs.ValidPath(rel) {
		return ""
	}
	return rel
}
