package main

import (
	"fmt"
	"slices"
	"strings"

	"matchmark/packs/def"
)

// A language is a flag that takes one of the languages of the paper, by ISO 639-1.
type language string

func (l *language) String() string { return string(*l) }
func (l *language) Type() string   { return "language" }

// Set takes a language that texts can be written in.
func (l *language) Set(text string) error {
	if !slices.Contains(def.Tongues, text) {
		return fmt.Errorf("the languages of the paper are %s", strings.Join(def.Tongues, ", "))
	}
	*l = language(text)
	return nil
}
