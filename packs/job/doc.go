// Package job is a decided job as plain data: what one definition says of one
// machine, repeated over its places, numbered, put in order, with all that was
// worked out. Later rooms and the printed sheets read it.
//
// Where a problem stands in the definition the job has a hole (a nil, an empty
// text), and whoever reads it walks round the hole.
package job
