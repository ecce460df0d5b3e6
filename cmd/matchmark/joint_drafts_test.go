package main

import (
	"os"
	"path/filepath"
	"testing"
	"testing/fstest"

	"gopkg.in/yaml.v3"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs"
	"matchmark/templates"
)

// TestDraftsOfJointsWithAnyKeyLeftOut takes away one key after another of joints and
// alignments and composes what is left: a draft has holes where nothing is written, and
// every sheet walks round them. What cannot be worked out prints no figure.
func TestDraftsOfJointsWithAnyKeyLeftOut(t *testing.T) {
	longTest(t)
	t.Parallel()
	data, err := os.ReadFile(filepath.Join(testdata, "good", "joints.yaml"))
	if err != nil {
		t.Fatal(err)
	}
	var doc yaml.Node
	if err := yaml.Unmarshal(data, &doc); err != nil {
		t.Fatal(err)
	}
	root, drafts := doc.Content[0], 0
	var visit func(path string, n *yaml.Node)
	visit = func(path string, n *yaml.Node) {
		for i := 0; i < len(n.Content); i++ {
			step := 1
			name := path + "[]"
			if n.Kind == yaml.MappingNode {
				if i%2 == 1 {
					continue
				}
				step, name = 2, path+"."+n.Content[i].Value
			}
			was := n.Content
			n.Content = append(append([]*yaml.Node{}, was[:i]...), was[i+step:]...)
			text, err := yaml.Marshal(root)
			if err != nil {
				t.Fatal(err)
			}
			n.Content = was
			drafts++
			composeDraft(t, name, text)
			if n.Kind == yaml.MappingNode {
				visit(name, n.Content[i+1])
			} else {
				visit(name, n.Content[i])
			}
		}
	}
	for i := 0; i+1 < len(root.Content); i += 2 {
		if k := root.Content[i].Value; k == "joints" || k == "alignments" {
			visit(k, root.Content[i+1])
		}
	}
	if drafts < 150 {
		t.Errorf("%d drafts were made, there are more keys", drafts)
	}
}

// composeDraft composes what is left of a definition; a panic fails the test by itself.
func composeDraft(t *testing.T, name string, text []byte) {
	t.Helper()
	jb, _ := packs.Load(fstest.MapFS{"draft.yaml": {Data: text}}, packs.Inputs{Definition: "draft.yaml"})
	for _, j := range jb.Joints {
		if j.Result != nil && j.Hole {
			t.Errorf("%s: %s has figures, and something of it could not be read", name, j.Mark)
		}
	}
	templates.Compose(jb, templates.Options{Paper: layout.A4, Draft: true}, pdf.NewFaces(), nil)
}
