package pdf

import (
	"crypto/sha256"
	"fmt"
	"maps"
	"slices"

	"matchmark/layout"
)

// needs is what documents set: signs by face, and pictures.
type needs struct {
	signs    [layout.NumFaces]map[rune]struct{}
	pictures []layout.Image
	digests  [][sha256.Size]byte // of the pictures
}

// collect looks through all pages and refuses text that cannot be written.
func collect(d *layout.Doc) (n needs, err error) {
	for _, f := range d.Pages {
		for _, it := range f.Items {
			switch s := it.Shape.(type) {
			case layout.Text:
				err = n.addText(s.Face, s.S)
			case layout.Path:
				if s.Alt != "" {
					err = n.addText(layout.Regular, s.Alt)
				}
			case layout.Image:
				n.addPicture(s)
			}
			if err != nil {
				return n, err
			}
		}
	}
	return n, nil
}

func (n *needs) addText(face layout.Face, s string) error {
	if face >= layout.NumFaces {
		return fmt.Errorf("text %q is set in a face that does not exist", s)
	}
	if err := checkText(s); err != nil {
		return err
	}
	if n.signs[face] == nil {
		n.signs[face] = map[rune]struct{}{' ': {}} // between words, spaces.go
	}
	for _, r := range s {
		n.signs[face][r] = struct{}{}
	}
	return nil
}

func (n *needs) addPicture(p layout.Image) {
	sum := sha256.Sum256(p.Data)
	if !slices.Contains(n.digests, sum) {
		n.pictures = append(n.pictures, p)
		n.digests = append(n.digests, sum)
	}
}

// haveSigns and havePictures report whether they hold all that a document needs of a face, and
// of pictures.
func (n *needs) haveSigns(face int, signs map[rune]struct{}) bool {
	for r := range signs {
		if _, there := n.signs[face][r]; !there {
			return false
		}
	}
	return true
}

func (n *needs) havePictures(digests [][sha256.Size]byte) bool {
	return !slices.ContainsFunc(digests, func(d [sha256.Size]byte) bool { return !slices.Contains(n.digests, d) })
}

// sorted gives the signs in the order of their codes.
func sorted(signs map[rune]struct{}) string {
	return string(slices.Sorted(maps.Keys(signs)))
}
