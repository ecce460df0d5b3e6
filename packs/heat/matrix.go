package heat

// The matrix of a net: symmetrical and positive, stored row by row from the first link of
// each to the diagonal (the envelope), and factored there into L D L'.
//
// Its rows follow a wave that goes through the net from one end, cell by cell to those
// beside it: a cell is then linked to none but the few last on the front of the wave, so
// that rows are short, whichever way hub and shaft are long, and none begins before one
// above it.
// Source: George and Liu, Computer Solution of Large Sparse Positive Definite Systems, ch. 4
// (the order is that of Cuthill and McKee), from memory.

// A matrix is one of a net, with the right-hand side that it is solved for.
type matrix struct {
	rowOf    []int // of each cell
	diagonal []int // of each cell, and beside of each link: where in m it stands
	beside   []int

	first, row []int // row i holds its columns first[i] to i; column j is at row[i]+j
	m, inverse []float64
	x          []float64 // by rows: what is solved for, then the answer
}

// newMatrix makes room for a matrix; the wave begins at the cell end.
func newMatrix(cells int, links []link, end int) *matrix {
	n := &matrix{
		rowOf: make([]int, cells), diagonal: make([]int, cells), beside: make([]int, len(links)),
		first: make([]int, cells), row: make([]int, cells), inverse: make([]float64, cells), x: make([]float64, cells),
	}
	n.order(links, end)
	for i := range n.first {
		n.first[i] = i
	}
	for _, l := range links {
		a, b := n.rowOf[l.a], n.rowOf[l.b]
		n.first[max(a, b)] = min(n.first[max(a, b)], a, b)
	}
	size := 0
	for i, f := range n.first {
		n.row[i] = size - f
		size += i - f + 1
	}
	n.m = make([]float64, size)
	for cell, i := range n.rowOf {
		n.diagonal[cell] = n.row[i] + i
	}
	for k, l := range links {
		a, b := n.rowOf[l.a], n.rowOf[l.b]
		n.beside[k] = n.row[max(a, b)] + min(a, b)
	}
	return n
}

// order gives each cell its row. A net is of one piece.
func (n *matrix) order(links []link, end int) {
	beside := make([][]int, len(n.rowOf))
	for _, l := range links {
		beside[l.a] = append(beside[l.a], l.b)
		beside[l.b] = append(beside[l.b], l.a)
	}
	for i := range n.rowOf {
		n.rowOf[i] = -1
	}
	wave := []int{end}
	n.rowOf[end] = 0
	for i := 0; i < len(wave); i++ {
		for _, cell := range beside[wave[i]] {
			if n.rowOf[cell] < 0 {
				n.rowOf[cell] = len(wave)
				wave = append(wave, cell)
			}
		}
	}
}

// factor turns the matrix into L D L', row by row.
func (n *matrix) factor() {
	for i, f := range n.first {
		ri := n.m[n.row[i]+f : n.row[i]+i+1]
		for j := f + 1; j < i; j++ { // such a row does not begin behind f
			ri[j-f] -= dot(n.m[n.row[j]+f:n.row[j]+j], ri)
		}
		diag := ri[i-f]
		for k, inverse := range n.inverse[f:i] {
			v := ri[k] * inverse
			diag -= v * ri[k]
			ri[k] = v
		}
		n.inverse[i] = 1 / diag
	}
}

// dot is the product of a row and the beginning of another one.
func dot(a, b []float64) float64 {
	sum := 0.0
	b = b[:len(a)]
	for k, v := range a {
		sum += v * b[k]
	}
	return sum
}

// solve turns x into the answer of the factored matrix.
func (n *matrix) solve() {
	x := n.x
	for i, f := range n.first {
		x[i] -= dot(n.m[n.row[i]+f:n.row[i]+i], x[f:i])
	}
	for i, inverse := range n.inverse {
		x[i] *= inverse
	}
	for i := len(x) - 1; i >= 0; i-- {
		f, xi := n.first[i], x[i]
		for k, v := range n.m[n.row[i]+f : n.row[i]+i] {
			x[f+k] -= v * xi
		}
	}
}
