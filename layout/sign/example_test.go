package sign_test

import (
	"fmt"

	"matchmark/layout/sign"
)

func Example() {
	b, ok := sign.Sign("W017", 15, nil)
	fmt.Println(b.W, b.H, ok)
	_, ok = sign.Sign("W079", 15, nil) // hot content: no drawing, print the number
	fmt.Println(ok)
	// Output:
	// 15 15 true
	// false
}
