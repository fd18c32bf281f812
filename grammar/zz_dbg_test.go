package grammar

import (
	"bufio"
	"fmt"
	"os"
	"testing"
)

func TestDbg(t *testing.T) {
	f, err := os.Open(os.Getenv("DBG"))
	if err != nil {
		t.Skip()
	}
	sc := bufio.NewScanner(f)
	for sc.Scan() {
		line := sc.Text()
		letters, _ := foldLine(line)
		toks := lex(split(letters), Context{})
		fmt.Println("LINE", line)
		for i := range toks {
			k := &toks[i]
			fmt.Printf("   [%s] %s", k.before, k.text)
			for _, f := range k.found {
				fmt.Printf(" {%d %s}", f.entry.kind, f.entry.key)
			}
			fmt.Printf(" kind=%d idx=%d\n", k.kind, k.index)
		}
		r := Read(line, Context{})
		for _, a := range r.Acts {
			fmt.Println("   ACT", a.String())
		}
		if r.Ask != nil {
			fmt.Println("   ASK", *r.Ask.At, r.Ask.Text)
		}
	}
}

func TestDbg2(t *testing.T) {
	senses := []sense{meaning("| stiffeners, stiffener spacing, stiffener size"), meaning("| rails, added posts, bays, openings, stiffeners, coats, ?shopping, ?hardware, have"), meaning("bay | stiffeners, stiffener spacing, rails, gap, stiffener size, rail size, bays, short, cut, measured, opening, added posts")}
	for a := range aspects {
		if n := score(senses, a); n > 0 {
			fmt.Println(aspects[a], n)
		}
	}
}
