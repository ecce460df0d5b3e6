// Package packs turns one equipment definition into a job: repeated over its
// places, numbered, ordered, proved and put back. Load is its front door; all
// results are reached from the Job that it returns.
//
// A Job says what has to be on paper and never how it looks: fixed words and
// layout belong to the package templates. Quantities are exact as written; what
// is computed from them carries its unit in its type. Load reads no clock, no
// environment and no file but those of the fs.FS that it is given, and the same
// inputs give the same Job.
package packs
