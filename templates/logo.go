package templates

import (
	"errors"

	"matchmark/layout"
	"matchmark/layout/svg"
	"matchmark/packs/job"
	"matchmark/packs/source"
)

// The room that the logo of a site has on the front sheet.
const logoWide, logoHigh layout.Mm = 60, 14

// logo is the logo of a site: a drawing as paths, else a picture. What a drawing has that
// is not printed is told at its place in the file of the drawing.
func logo(site job.Site) layout.Block {
	if !svg.Is(site.Logo) {
		b := layout.Picture(site.Logo, logoWide, logoHigh, site.LogoAt)
		for i, said := 0, b.Misfits(); i < len(said); i++ { // made here, of no other block
			said[i].Text = site.LogoFile
		}
		return b
	}
	b, err := svg.Block(site.Logo, logoWide, logoHigh, site.LogoAt)
	if e := (*svg.Error)(nil); errors.As(err, &e) {
		b = layout.Space(logoWide, logoHigh)
		at := source.Pos{File: site.LogoFile, Line: e.Line, Col: e.Col, Width: 1}
		b.AddMisfits(layout.Misfit{Ref: at, Kind: layout.BadImage, Text: site.LogoFile, Detail: e.What})
	}
	return b
}
