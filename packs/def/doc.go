// Package def reads a definition, the YAML file that describes one machine and
// the work on it, and the job file and site file that go with it.
//
// It gives what was written and nothing else: every scalar with its text as
// typed and its place, maps in the order of the file. Numbers, quantities and
// limits stay text; names are not resolved; no default is filled in. Deciding is
// the business of package packs.
//
// One table of keys (keys_*.go) drives the reader (Read, ReadJob, ReadSite), the JSON
// Schema (Schema) and the list of keys for people (Reference): a key is one
// entry with its name, its meaning, what may stand behind it, an example, and
// where it lands. What is not in the table does not exist.
//
// All problems of a file are told in one run, each with its place, and never
// with a panic, whatever the file holds. Refused are: files above 4 MB, that are
// not UTF-8 text, that are nested over 100 levels, that repeat over 10,000
// entries through aliases or hold over 100,000 lines, commas and brackets; a
// second document; doubled keys and keys without a value; merge keys and tags.
// Where YAML itself cannot read on, the fault is found and put into words here,
// because the places that the YAML library reports are not reliable; a fault
// within one value is stepped over, so that the rest is read all the same.
//
// Anchors and aliases are followed. A text behind an anchor has the place where
// it was typed, also when an alias repeats it.
package def

//go:generate go test -run TestKeysFile -update
