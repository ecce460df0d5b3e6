package layout

import (
	"bytes"
	"image"
	_ "image/jpeg" // so that sizes of both kinds can be read
	_ "image/png"
)

// Picture sets a PNG or JPEG picture, such as a site's logo, as large as goes into
// w by h with its sides in proportion. A picture that cannot be read, or of a kind
// that the painter cannot store (an interlaced PNG, or one of 16 bits a colour),
// is a misfit and leaves its room empty.
func Picture(data []byte, w, h Mm, ref Ref) Block {
	cfg, kind, err := image.DecodeConfig(bytes.NewReader(data))
	why := ""
	switch {
	case err != nil || cfg.Width <= 0 || cfg.Height <= 0:
		why = "is neither a PNG nor a JPEG picture"
	case kind == "png" && pngHeader(data).depth == 16:
		why = "has 16 bits a colour; store it with 8"
	case kind == "png" && pngHeader(data).interlaced:
		why = "is an interlaced PNG; store it without interlacing"
	}
	if why != "" {
		out := Space(w, h)
		out.AddMisfits(Misfit{Ref: ref, Kind: BadImage, Detail: why})
		return out
	}
	if kind == "jpeg" {
		kind = "jpg"
	}
	scale := min(w/Mm(cfg.Width), h/Mm(cfg.Height))
	pic := Image{W: scale * Mm(cfg.Width), H: scale * Mm(cfg.Height), Kind: kind, Data: data}
	return Drawn(pic.W, pic.H, Item{Ref: ref, Shape: pic})
}

// pngHeader reads the two facts of a PNG that image.Config does not tell, from
// the first chunk (PNG specification, IHDR): it begins at byte 16 with width and
// height in four bytes each, then depth, colour, compression, filter, interlace.
func pngHeader(data []byte) (h struct {
	depth      int
	interlaced bool
}) {
	if len(data) > 28 {
		h.depth, h.interlaced = int(data[24]), data[28] != 0
	}
	return h
}
