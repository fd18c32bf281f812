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

func TestLookBeside(t *testing.T) {
	if os.Getenv("LOOK") == "" {
		t.Skip()
	}
	a, b := walls()["upstream"], common(5, "5/2", "bbo", 1, n(56), n(56), n(30))
	fmt.Print(SideBySide(a, wallOf(b), Options{Width: 80}))
	fmt.Print(SideBySide(a, wallOf(b), Options{Width: 40, ASCII: true}))
	c := common(5, "2", "b", 2, n(100))
	c.bottom = q("9/2")
	fmt.Print(SideBySide(walls()["no-opening"], wallOf(c), Options{Width: 100}))
}

func TestLookSVG(t *testing.T) {
	if os.Getenv("LOOK") == "" {
		t.Skip()
	}
	os.MkdirAll("/tmp/look", 0o755)
	for name, a := range walls() {
		b, err := SVG(a, Sheet{Wall: "Saltreed Landing, " + name, Date: "2031-05-04"})
		if err != nil {
			t.Fatal(name, err)
		}
		os.WriteFile("/tmp/look/"+name+".svg", b, 0o644)
	}
}

func TestLookRandom(t *testing.T) {
	if os.Getenv("LOOK") == "" {
		t.Skip()
	}
	for i, a := range randomWalls(36) {
		b, _ := SVG(a, Sheet{Wall: fmt.Sprint("random ", i), Date: "2031-05-04", Page: []string{"letter", "a4"}[i%2]})
		os.WriteFile(fmt.Sprintf("/tmp/look/r%02d.svg", i), b, 0o644)
	}
}

func TestLookClash(t *testing.T) {
	if os.Getenv("LOOK") == "" {
		t.Skip()
	}
	for _, name := range drawable() {
		fmt.Println("==", name)
		os.WriteFile("/tmp/look/c-"+name+".svg", ClashSVG(nil, conflicts()[name]), 0o644)
		fmt.Print(Clash(nil, conflicts()[name], Options{Width: 60}))
		fmt.Println()
		fmt.Print(Clash(nil, conflicts()[name], Options{Width: 40, ASCII: true}))
	}
}

func TestLookJob(t *testing.T) {
	if os.Getenv("LOOK") == "" {
		t.Skip()
	}
	all := walls()
	all["full"], all["blocked"] = fullJob(), blockedJob()
	for name, a := range all {
		b, err := JobSheet(a, Sheet{Wall: "Saltreed Landing, " + name, Date: "2031-05-04"})
		if err != nil {
			t.Fatal(name, err)
		}
		os.WriteFile("/tmp/look/job-"+name+".html", b, 0o644)
		if b, err = StoryPole(a, Sheet{Wall: "Saltreed Landing, " + name, Date: "2031-05-04"}); err == nil {
			os.WriteFile("/tmp/look/pole-"+name+".html", b, 0o644)
		}
	}
}
