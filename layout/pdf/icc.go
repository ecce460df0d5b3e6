package pdf

import (
	"encoding/binary"
	"math"
)

// sRGB is a colour profile (ICC.1:2001-04, version 2.1) of the sRGB primaries, adapted to
// the white of the profile, D50, and a gamma of 2.2. The primaries are those of IEC
// 61966-2-1 adapted by the Bradford matrix, as tabulated by B. Lindbloom, from memory;
// their sum is the white point (checked in a test). The pages use black, white and
// greys alone, and pictures; the profile says what those are on any machine.
func sRGB() []byte {
	xyz := func(x, y, z float64) []byte {
		b := append([]byte("XYZ "), 0, 0, 0, 0)
		for _, v := range [3]float64{x, y, z} {
			b = binary.BigEndian.AppendUint32(b, uint32(math.Round(v*65536)))
		}
		return b
	}
	gamma := append([]byte("curv"), 0, 0, 0, 0, 0, 0, 0, 1, 2, 0x33, 0, 0) // 2.2 in 256ths, and two bytes to fill up
	// A description in ASCII, and none in Unicode and in the old script code.
	desc := append([]byte("desc"), 0, 0, 0, 0, 0, 0, 0, 5)
	desc = append(append(desc, "sRGB\x00"...), make([]byte, 4+4+2+1+67+1)...)
	tags := []struct {
		name string
		data []byte
	}{
		{"desc", desc},
		{"cprt", append(append([]byte("text"), 0, 0, 0, 0), "Public domain\x00\x00\x00"...)},
		{"wtpt", xyz(0.9642, 1, 0.8249)},
		{"rXYZ", xyz(redX, redY, redZ)}, {"gXYZ", xyz(greenX, greenY, greenZ)}, {"bXYZ", xyz(blueX, blueY, blueZ)},
		{"rTRC", gamma}, {"gTRC", gamma}, {"bTRC", gamma},
	}
	table := binary.BigEndian.AppendUint32(nil, uint32(len(tags)))
	var data []byte
	start := 128 + 4 + 12*len(tags)
	for _, t := range tags {
		for len(data)%4 != 0 {
			data = append(data, 0)
		}
		table = append(table, t.name...)
		table = binary.BigEndian.AppendUint32(table, uint32(start+len(data)))
		table = binary.BigEndian.AppendUint32(table, uint32(len(t.data)))
		data = append(data, t.data...)
	}
	for len(data)%4 != 0 {
		data = append(data, 0)
	}
	head := make([]byte, 128)
	binary.BigEndian.PutUint32(head, uint32(start+len(data)))
	copy(head[8:], "\x02\x10\x00\x00mntrRGB XYZ ")
	copy(head[24:], "\x07\xd0\x00\x01\x00\x01") // made in the year 2000: the profile never changes
	copy(head[36:], "acsp")
	copy(head[68:], xyz(0.9642, 1, 0.8249)[8:])
	return append(append(head, table...), data...)
}

// The primaries of sRGB in the white of the profile.
const (
	redX, redY, redZ       = 0.4360747, 0.2225045, 0.0139322
	greenX, greenY, greenZ = 0.3850649, 0.7168786, 0.0971045
	blueX, blueY, blueZ    = 0.1430804, 0.0606169, 0.7141733
)
