package pdf

import (
	"bytes"

	"github.com/klauspost/compress/zlib"
)

// A packer compresses all streams of a run of documents: a new compressor costs more
// than a page's work. The standard library's takes twice as long, and what it gives is a
// twentieth larger.
type packer struct {
	z   *zlib.Writer
	out bytes.Buffer
}

func newPacker() *packer {
	p := &packer{}
	p.z, _ = zlib.NewWriterLevel(&p.out, zlib.BestSpeed) // the level is one
	return p
}

// pack compresses some data, as /FlateDecode reads it. A buffer takes all that is written.
func (p *packer) pack(data []byte) []byte {
	p.out.Reset()
	p.z.Reset(&p.out)
	_, _ = p.z.Write(data)
	_ = p.z.Close()
	return bytes.Clone(p.out.Bytes())
}
