package def

import (
	"strings"

	"gopkg.in/yaml.v3"
)

// faceHelp says what to write in place of a map with several parts or places: one part whose
// face differs by place, where that is what was written, else one dimension for each part.
func (e *entry) faceHelp(list []pair, r *reader) []string {
	one, faces := "", []string{}
	for _, p := range list {
		part, place, _ := strings.Cut(p.key.Value, "/") // hub/DE: face
		face := r.follow(p.value)
		if face != nil && face.Kind == yaml.MappingNode && len(face.Content) == 2 { // DE: {hub: face}
			place, part, face = p.key.Value, face.Content[0].Value, r.follow(face.Content[1])
		}
		if face == nil || face.Kind != yaml.ScalarNode || place == "" || one != "" && part != one {
			return []string{"for example " + e.name + ": " + e.blank(), "each: where the part stands at several places, and one dimension for each of several parts"}
		}
		one, faces = part, append(faces, place+": "+face.Value)
	}
	return []string{"with each: " + e.name + ": {" + one + ": {" + strings.Join(faces, ", ") + "}}"}
}
