package main

import (
	"fmt"
	"path"
	"path/filepath"
	"strings"

	"matchmark/layout"
	"matchmark/packs"
	"matchmark/packs/job"
)

// howName is the attached file that says how a pack is printed again.
const howName = "print-again.txt"

// attached are the files that a pack was made from, to be kept inside it: byte for byte
// as they were read, and a note of the program, its paper format and the command. A job
// that is a row of a table is kept as the job file that was made of it.
func attached(jb *job.Job, in packs.Inputs, row bool) []layout.Attachment {
	var out []layout.Attachment
	command := "matchmark print"
	taken := map[string]bool{howName: true}
	add := func(flag, name, what, kind string) {
		data, read := jb.Files[name]
		if name == "" || !read {
			return
		}
		plain := kind + path.Ext(name)
		if base := filepath.Base(strings.ReplaceAll(name, "\\", "/")); name != stdinName && !strings.ContainsAny(base, ":\x00") && base != "/" {
			plain = base
		}
		if row && name == in.Job {
			plain = kind + ".yaml"
		}
		for taken[plain] {
			plain = kind + "-" + plain // of two folders
		}
		taken[plain] = true
		command += flag + " " + plain
		out = append(out, layout.Attachment{Name: plain, What: what, Type: "text/plain", Origin: true, Data: data})
	}
	add("", in.Definition, "the equipment definition", "definition")
	add(" --job", in.Job, "the job file", "job")
	add(" --site", in.Site, "the site file", "site")
	for _, name := range in.Last {
		add(" --last", name, "readings of an earlier outage", "last")
	}
	how := fmt.Sprintf("%s\nprogram: matchmark %s\npaper format: %d\npack digest: %s\n", command, buildVersion(), packs.Format, jb.Digest)
	return append(out, layout.Attachment{Name: howName, What: "how this pack is printed again", Type: "text/plain", Data: []byte(how)})
}
