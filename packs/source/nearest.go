package source

import "strings"

// Nearest gives the name that was probably meant where word stands: the one
// that differs from it by the fewest letters typed wrong, left out, put in or
// turned round. It returns "" when none is near: more than one fault in every
// three letters. Of several equally near the first of names is given. Capitals
// count as small letters, blanks and underscores as dashes.
func Nearest(word string, names []string) string {
	best, bestCost := "", 0
	w := plain(word)
	if len(w) > 60 {
		return "" // a sentence, no name; and the cost grows with the length
	}
	for _, name := range names {
		n := plain(name)
		if d := len(n) - len(w); d > 3 || d < -3 {
			continue
		}
		cost := faults(w, n)
		if cost > max(1, min(3, len(n)/3)) || cost >= max(len(n), len(w)) {
			continue
		}
		if best == "" || cost < bestCost {
			best, bestCost = name, cost
		}
	}
	return best
}

// plain spells a name in small letters with dashes.
func plain(s string) []rune {
	return []rune(strings.NewReplacer(" ", "-", "_", "-").Replace(strings.ToLower(s)))
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
