package keep

import "matchmark/packs/phrase"

// What spreadsheets do to a text in a file of comma-separated values (common practice, from
// memory): a text that begins like a formula it runs (= + - @, or a tab or a line end before
// one of them); one that looks like a number it makes one, so that step 3.10 becomes 3.1 and
// job 00123 becomes 123; one that looks like a date it makes one, as 3-4, 1/2 and MAR1.
var (
	runs   = phrase.Of(`^[\s\pC]*[=+\-@|%]`)
	number = phrase.Of(`^\s*[0-9.,' ]*[0-9][0-9.,' ]*([eE][+-]?[0-9]+)?\s*%?$`)
	dated  = phrase.Of(`(?i)^\s*([0-9]{1,4}[-/.: ][0-9]{1,4}([-/.: ][0-9]{1,4})?|[0-9]{0,4}[-/. ]?(jan|feb|mar|apr|may|jun|jul|aug|sept?|oct|nov|dec)[a-z]*[-/. ]?[0-9]{0,4})\s*([ap]m?)?$`)
	truth  = phrase.Of(`(?i)^\s*(true|false)\s*$`)
)

// Cell is a text as it goes into a cell of a file of comma-separated values: an apostrophe
// stands before one that a spreadsheet would run, count or date. Programs that read the
// file take one apostrophe at the start off again. Texts that begin with one get another.
func Cell(text string) string {
	if text == "" {
		return ""
	}
	if text[0] == '\'' || runs.MatchString(text) || number.MatchString(text) || dated.MatchString(text) || truth.MatchString(text) {
		return "'" + text
	}
	return text
}
