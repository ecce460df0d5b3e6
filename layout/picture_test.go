package layout

import (
	"bytes"
	"encoding/binary"
	"hash/crc32"
	"image"
	"image/jpeg"
	"image/png"
	"strings"
	"testing"
)

func TestPicture(t *testing.T) {
	t.Parallel()
	var p, j, deep bytes.Buffer
	for _, err := range []error{
		png.Encode(&p, image.NewGray(image.Rect(0, 0, 40, 20))),
		jpeg.Encode(&j, image.NewGray(image.Rect(0, 0, 10, 30)), nil),
		png.Encode(&deep, image.NewGray16(image.Rect(0, 0, 4, 4))),
	} {
		if err != nil {
			t.Fatal(err)
		}
	}
	laced := bytes.Clone(p.Bytes())
	laced[28] = 1
	// The checksum of the chunk covers its name and content (PNG specification).
	binary.BigEndian.PutUint32(laced[29:], crc32.ChecksumIEEE(laced[12:29]))
	for _, c := range []struct {
		name string
		data []byte
		w, h Mm
		word string // of the misfit; empty for none
	}{
		{"a wide PNG", p.Bytes(), 30, 15, ""},
		{"a tall JPEG", j.Bytes(), 8, 24, ""},
		{"16 bits a colour", deep.Bytes(), 30, 24, "16 bits"},
		{"interlaced", laced, 30, 24, "interlaced"},
		{"no picture", []byte("GIF89a"), 30, 24, "neither"},
		{"nothing", nil, 30, 24, "neither"},
	} {
		b := Picture(c.data, 30, 24, "r")
		if d := b.W - c.w; d > slack || d < -slack || b.H-c.h > slack || c.h-b.H > slack {
			t.Errorf("%s: %v x %v mm, want %v x %v", c.name, b.W, b.H, c.w, c.h)
		}
		if c.word == "" {
			if len(b.Misfits()) > 0 || len(b.Items()) != 1 {
				t.Errorf("%s: items %d, misfits %v", c.name, len(b.Items()), b.Misfits())
			}
			continue
		}
		if len(b.Misfits()) != 1 || len(b.Items()) > 0 {
			t.Fatalf("%s: items %d, misfits %v; want one misfit", c.name, len(b.Items()), b.Misfits())
		}
		if m := b.Misfits()[0]; m.Kind != BadImage || m.Ref != "r" || !strings.Contains(m.Detail, c.word) {
			t.Errorf("%s: misfit %+v, want one that says %q", c.name, m, c.word)
		}
	}
}
