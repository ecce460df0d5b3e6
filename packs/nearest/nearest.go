// Package nearest finds the word that was probably meant: for "did you mean" beside a name,
// a key or a unit that is not known. Of the libraries that count such faults some count two
// letters turned round as two, and the one that counts them as one brings a dozen other
// measures; what is needed here is thirty lines.
package nearest

import "strings"

// Word gives the one of words that was most likely meant where word stands: the one that
// differs from it by the fewest letters typed wrong, left out, put in or turned round. It
// returns "" when none is near: more than one fault in every three letters, or more than
// three. Of several equally near the first of words is given. Capitals count as small
// letters, and blanks, underscores and middle dots as dashes.
func Word(word string, words []string) string {
	w := plain(word)
	if len(w) > 60 {
		return "" // a sentence, no name; and the cost grows with the length
	}
	best, least := "", 0
	for _, each := range words {
		n := plain(each)
		if d := len(n) - len(w); d > 3 || d < -3 {
			continue
		}
		cost := faults(w, n)
		if cost > max(1, min(3, len(n)/3)) || cost >= max(len(n), len(w)) {
			continue
		}
		if best == "" || cost < least {
			best, least = each, cost
		}
	}
	return best
}

// plain spells a word in small letters with dashes.
func plain(word string) []rune {
	return []rune(strings.NewReplacer(" ", "-", "_", "-", "·", "-").Replace(strings.ToLower(word)))
}

// faults counts the letters typed wrong, left out, put in, or turned round with
// their neighbour that make b from a: the optimal string alignment distance.
func faults(a, b []rune) int {
	// Three rows of the table are enough: the one before last is needed for two
	// letters turned round.
	before, last, row := make([]int, len(b)+1), make([]int, len(b)+1), make([]int, len(b)+1)
	for j := range last {
		last[j] = j
	}
	for i := 1; i <= len(a); i++ {
		row[0] = i
		for j := 1; j <= len(b); j++ {
			same := 1
			if a[i-1] == b[j-1] {
				same = 0
			}
			row[j] = min(last[j]+1, row[j-1]+1, last[j-1]+same)
			if i > 1 && j > 1 && a[i-1] == b[j-2] && a[i-2] == b[j-1] {
				row[j] = min(row[j], before[j-2]+1)
			}
		}
		before, last, row = last, row, before
	}
	return last[len(b)]
}
