package units

import "strings"

// NearestWord gives the word of the list that was most likely meant: the one that
// takes the fewest letters put in, left out, swapped or changed, and at most one
// for every three of its letters. It is "" when none is that near; of two equally
// near ones the first of the list is given.
func NearestWord(word string, words []string) string {
	best, least := "", 0
	for _, w := range words {
		d := distance(plain(word), plain(w))
		if d <= max(1, len([]rune(w))/3) && d < len([]rune(w)) && (best == "" || d < least) {
			best, least = w, d
		}
	}
	return best
}

// plain takes away what people leave out or put in without thinking.
func plain(word string) []rune {
	if len(word) > 40 {
		word = word[:40] // nothing in the lists is so long; keeps the cost down
	}
	return []rune(strings.NewReplacer(" ", "", "-", "", "·", "", "_", "").Replace(strings.ToLower(word)))
}

// distance is the number of letters put in, left out, changed, or swapped with
// their neighbour that turn a into b.
func distance(a, b []rune) int {
	before, last, row := make([]int, len(b)+1), make([]int, len(b)+1), make([]int, len(b)+1)
	for j := range last {
		last[j] = j
	}
	for i := 1; i <= len(a); i++ {
		row[0] = i
		for j := 1; j <= len(b); j++ {
			cost := 1
			if a[i-1] == b[j-1] {
				cost = 0
			}
			row[j] = min(last[j-1]+cost, last[j]+1, row[j-1]+1)
			if i > 1 && j > 1 && a[i-1] == b[j-2] && a[i-2] == b[j-1] {
				row[j] = min(row[j], before[j-2]+1)
			}
		}
		before, last, row = last, row, before
	}
	return last[len(b)]
}
