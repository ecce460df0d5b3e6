package main

import (
	"os"
	"path/filepath"

	"matchmark/packs"
)

// siteBeside is the name of the site file that is taken without being named, when it
// lies beside the definition or in a folder above it, up to the first that holds one.
const siteBeside = "matchmark-site.yaml"

// inputs are the files of one job: the definition, and those that go with it.
func (i *inputFlags) inputs(definition string) packs.Inputs {
	in := packs.Inputs{Definition: inputName(definition), Job: inputName(i.job), Site: inputName(i.site), Language: string(i.language)}
	if in.Site == "" && in.Definition != stdinName {
		in.Site = findSite(filepath.Dir(definition))
	}
	return in
}

// findSite looks for a site file in a folder and those above it.
func findSite(dir string) string {
	for range 32 {
		path := filepath.Join(dir, siteBeside)
		if info, err := os.Stat(path); err == nil && info.Mode().IsRegular() {
			return path
		}
		whole, err := filepath.Abs(dir)
		if err != nil || filepath.Dir(whole) == whole {
			return ""
		}
		dir = filepath.Join(dir, "..")
	}
	return ""
}
