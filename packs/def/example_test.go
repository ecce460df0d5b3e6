package def_test

import (
	"fmt"
	"os"

	"matchmark/packs/def"
	"matchmark/packs/source"
)

func ExampleRead() {
	data := []byte(`pack: 1
equipment: {tag: FN-11, name: Kiln exhaust fan}
parts:
  nut: {name: Lock nut, hand: lft}
steps:
  - step: nut
    do: Take the nut off.
    remove: nut
`)
	d, problems := def.Read("fan.yaml", data)
	if err := problems.Write(os.Stdout, source.Files{"fan.yaml": data}); err != nil {
		panic(err)
	}
	step := d.Sections[0].Steps[0]
	fmt.Printf("line %d: %s\n", step.Do.One.At.Line, step.Do.One.Value)
	// Output:
	// fan.yaml:4:31: hand cannot be "lft" [not-allowed]
	//     nut: {name: Lock nut, hand: lft}
	//                                 ^~~
	//   did you mean left?
	//   hand takes: left, right
	// line 7: Take the nut off.
}
