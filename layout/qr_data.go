package layout

// What a QR symbol of at most version 6 holds: its text in the shortest runs of figures,
// capitals or bytes, and the check bytes behind it (ISO/IEC 18004, 7.4 and 7.5). Larger ones,
// which no tag has, are left to the library; both make the same symbols, module for module.

// qrLevel is how much of a symbol may be lost: a quarter, or three tenths.
type qrLevel int

const (
	qrQ qrLevel = iota
	qrH
)

// qrBlocks is how the bytes of a symbol are parted: so many blocks of so many bytes, the
// last of them of one byte more, each with so many check bytes (table 9).
type qrBlocks struct{ blocks, longer, bytes, checks int }

var qrVersions = [2][6]qrBlocks{
	qrQ: {{1, 0, 13, 13}, {1, 0, 22, 22}, {2, 0, 17, 18}, {2, 0, 24, 26}, {4, 2, 15, 18}, {4, 0, 19, 24}},
	qrH: {{1, 0, 9, 17}, {1, 0, 16, 28}, {2, 0, 13, 22}, {4, 0, 9, 16}, {4, 2, 11, 22}, {4, 0, 15, 28}},
}

func (b qrBlocks) room() int { return b.blocks*b.bytes + b.longer }

// The modes of a run, the narrowest first, and how many bits tell its length (table 3,
// versions 1 to 9).
const (
	qrFigures = iota
	qrCapitals
	qrBytes
)

var qrLengthBits = [3]int{10, 9, 8}

// qrCapital is the value of each sign of the mode for capitals, 0xff of others.
var qrCapital = func() (t [256]byte) {
	for i := range t {
		t[i] = 0xff
	}
	for i, c := range []byte("0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:") {
		t[c] = byte(i)
	}
	return t
}()

// A qrRun is a part of a text in one mode.
type qrRun struct {
	mode int
	text string
}

func (r qrRun) bits() int {
	n := len(r.text)
	switch head := 4 + qrLengthBits[r.mode]; r.mode {
	case qrFigures:
		return head + n/3*10 + [3]int{0, 4, 7}[n%3]
	case qrCapitals:
		return head + n/2*11 + n%2*6
	default:
		return head + 8*n
	}
}

// qrRuns parts a text into runs: signs of one mode, the next taken along where the two are
// shorter as one; all as one run where that is no longer.
func qrRuns(text string) (runs []qrRun, bits int) {
	mode := func(c byte) int {
		switch {
		case c >= '0' && c <= '9':
			return qrFigures
		case qrCapital[c] != 0xff:
			return qrCapitals
		}
		return qrBytes
	}
	widest := 0
	var parts []qrRun
	for from := 0; from < len(text); {
		m, to := mode(text[from]), from+1
		for to < len(text) && mode(text[to]) == m {
			to++
		}
		parts = append(parts, qrRun{m, text[from:to]})
		widest, from = max(widest, m), to
	}
	at := 0
	for i := 0; i < len(parts); {
		run := parts[i]
		for i++; i < len(parts) && parts[i].mode <= run.mode; i++ {
			both := qrRun{run.mode, text[at : at+len(run.text)+len(parts[i].text)]}
			if both.bits() >= run.bits()+parts[i].bits() {
				break
			}
			run = both
		}
		at += len(run.text)
		runs, bits = append(runs, run), bits+run.bits()
	}
	if one := (qrRun{widest, text}); one.bits() <= bits {
		return []qrRun{one}, one.bits()
	}
	return runs, bits
}

// A bitList is written from the high bit of each byte down.
type bitList struct {
	bytes []byte
	n     int
}

func (l *bitList) add(v, bits int) {
	for i := bits - 1; i >= 0; i-- {
		if l.n%8 == 0 {
			l.bytes = append(l.bytes, 0)
		}
		l.bytes[l.n/8] |= byte(v>>i&1) << (7 - l.n%8)
		l.n++
	}
}

func (l *bitList) addRun(r qrRun) {
	l.add(1<<r.mode, 4)
	l.add(len(r.text), qrLengthBits[r.mode])
	step := [3]int{3, 2, 1}[r.mode]
	for t := r.text; t != ""; t = t[min(step, len(t)):] {
		v, n := 0, min(step, len(t))
		for i := range n {
			switch r.mode {
			case qrFigures:
				v = v*10 + int(t[i]-'0')
			case qrCapitals:
				v = v*45 + int(qrCapital[t[i]])
			default:
				v = int(t[i])
			}
		}
		l.add(v, [3][4]int{{0, 4, 7, 10}, {0, 6, 11}, {0, 8}}[r.mode][n])
	}
}

// qrBytesOf is the bytes of a symbol as they are laid: text, end, filling, each block with its
// check bytes, the blocks taken byte by byte in turn.
func qrBytesOf(runs []qrRun, v qrBlocks) []byte {
	var l bitList
	for _, r := range runs {
		l.addRun(r)
	}
	l.add(0, min(4, 8*v.room()-l.n))
	l.n = 8 * len(l.bytes)
	for fill := 0xec; len(l.bytes) < v.room(); fill ^= 0xec ^ 0x11 {
		l.add(fill, 8)
	}
	divisor := qrDivisor(v.checks)
	blocks, checks := make([][]byte, v.blocks), make([][]byte, v.blocks)
	rest := l.bytes
	for i := range blocks {
		n := v.bytes
		if i >= v.blocks-v.longer {
			n++
		}
		blocks[i], rest = rest[:n], rest[n:]
		checks[i] = qrChecks(blocks[i], divisor)
	}
	var out []byte
	for _, list := range [][][]byte{blocks, checks} {
		for k := range len(list[v.blocks-1]) {
			for _, b := range list {
				if k < len(b) {
					out = append(out, b[k])
				}
			}
		}
	}
	return out
}

// qrPower and qrLog are the field of 256 elements, modulo x^8+x^4+x^3+x^2+1 (7.5.2).
var qrPower, qrLog = func() (power [255]byte, log [256]byte) {
	x := 1
	for i := range power {
		power[i], log[x] = byte(x), byte(i)
		if x <<= 1; x > 255 {
			x ^= 0x11d
		}
	}
	return power, log
}()

func qrTimes(a, b byte) byte {
	if a == 0 || b == 0 {
		return 0
	}
	return qrPower[(int(qrLog[a])+int(qrLog[b]))%255]
}

// qrDivisor is the polynomial that check bytes are the remainder by, its first factor 1 left
// out (annex A).
func qrDivisor(degree int) []byte {
	d := make([]byte, degree)
	d[degree-1] = 1
	for i := range degree {
		for k := range d {
			d[k] = qrTimes(d[k], qrPower[i])
			if k+1 < degree {
				d[k] ^= d[k+1]
			}
		}
	}
	return d
}

// qrChecks is the check bytes of a block.
func qrChecks(block, divisor []byte) []byte {
	rest := make([]byte, len(divisor), len(divisor)+1)
	for _, b := range block {
		f := b ^ rest[0]
		rest = append(rest[1:], 0)
		for i, d := range divisor {
			rest[i] ^= qrTimes(d, f)
		}
	}
	return rest
}
