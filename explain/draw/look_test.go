package draw

import (
	"fmt"
	"os"
	"testing"
)

func TestLook(t *testing.T) {
	if os.Getenv("LOOK") == "" {
		t.Skip()
	}
	for name, a := range walls() {
		for _, w := range []int{40, 80} {
			fmt.Println("==", name, w)
			fmt.Print(Elevation(a, Options{Width: w, Mark: os.Getenv("MARK"), ASCII: os.Getenv("ASC") != ""}))
		}
	}
}
