package packs_test

import (
	"testing"

	"pgregory.net/rapid"

	"matchmark/packs/job"
)

// Of a random job every piece that comes off is on one tag, the tags of a container and its
// bags make up what goes into it, what goes in comes out, and no two tags have one key.
func TestTagsCountEveryPiece(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		drawn := drawJob(t, true)
		jb, problems := loadLaw(drawn.text())
		if problems.Errors() > 0 {
			return
		}
		off := 0
		for _, n := range drawn.off {
			off += n
		}
		tagged, keys := 0, map[string]bool{}
		perContainer := map[string]int{}
		for _, tag := range jb.Tags {
			tagged += job.Pieces(tag.In)
			if tag.Container != nil {
				perContainer[tag.Container.Mark] += job.Pieces(tag.In)
			}
			if !tag.Scrap && !tag.Spare && job.Pieces(tag.In) != job.Pieces(tag.Out) {
				t.Fatalf("%s takes %d pieces and gives %d", tag.Mark, job.Pieces(tag.In), job.Pieces(tag.Out))
			}
			if keys[tag.Key] {
				t.Fatalf("two tags have the key %s", tag.Key)
			}
			keys[tag.Key] = true
		}
		if tagged != off {
			t.Fatalf("%d pieces come off, the tags have %d", off, tagged)
		}
		for _, c := range jb.Containers {
			if perContainer[c.Mark] != drawn.kept[c.Mark] {
				t.Fatalf("%s holds %d pieces, its tags say %d", c.Mark, drawn.kept[c.Mark], perContainer[c.Mark])
			}
		}
	})
}

// Of a random job the pieces of each kind make up what comes off, what goes back and what is
// scrapped make up the pieces of the kind, and none is left over.
func TestKindsCountEveryPiece(t *testing.T) {
	t.Parallel()
	good := 0
	rapid.Check(t, func(t *rapid.T) {
		drawn := drawJob(t, true)
		jb, problems := loadLaw(drawn.text())
		if problems.Errors() > 0 {
			return
		}
		good++
		kinds := map[string]job.Kind{}
		for _, k := range jb.Kinds() {
			if k.Off != k.Back+k.Scrap {
				t.Fatalf("%s: %d come off, %d go back and %d to scrap", k.Name, k.Off, k.Back, k.Scrap)
			}
			kinds[k.Name] = k
		}
		for _, p := range jb.Parts {
			n := drawn.off[p.Key]
			k, listed := kinds[p.Name]
			switch {
			case listed != (n > 1):
				t.Fatalf("%d of %s come off, and it is counted as a kind: %v", n, p.Name, listed)
			case !listed:
			case k.Off != n || k.Scrap != drawn.scrapped[p.Key]:
				t.Fatalf("%s: %d of %d come off, %d of %d to scrap", p.Name, k.Off, n, k.Scrap, drawn.scrapped[p.Key])
			case k.New > 0 != (drawn.renewed[p.Key] && drawn.scrapped[p.Key] > 0):
				t.Fatalf("%s: %d new ones go on", p.Name, k.New)
			}
		}
	})
	if good < 5 {
		t.Errorf("only %d of the random jobs are free of problems", good)
	}
}
