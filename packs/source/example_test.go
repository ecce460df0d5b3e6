package source_test

import (
	"os"

	"matchmark/packs/source"
)

func ExampleProblems_Write() {
	files := source.Files{"fan.yaml": []byte("parts:\n  nut: {nmae: Lock nut}\n")}
	var problems source.Problems
	problems.Add(source.Pos{File: "fan.yaml", Line: 2, Col: 9, Width: 4}, "unknown-key",
		`"nmae" is not a key of a part`, "did you mean name?")
	if err := problems.Write(os.Stdout, files); err != nil {
		panic(err)
	}
	// Output:
	// fan.yaml:2:9: "nmae" is not a key of a part [unknown-key]
	//     nut: {nmae: Lock nut}
	//           ^~~~
	//   did you mean name?
}
