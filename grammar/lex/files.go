package lex

import (
	"strings"

	"saywright/grammar/lexicon"
)

// savePlan, drawFile and printFile are commands that a name decides.
var (
	savePlan  = &lexicon.Entry{Kind: lexicon.Cmd, Key: "save"}
	drawFile  = &lexicon.Entry{Kind: lexicon.Cmd, Key: "draw to"}
	printFile = &lexicon.Entry{Kind: lexicon.Cmd, Key: "print to"}
)

// asFile takes a command to save under the name of a page or a picture for one to print or to draw it: "call it job.html".
func (t *Token) asFile(name string) {
	switch {
	case t.Key() != "save":
	case strings.HasSuffix(name, ".html"), strings.HasSuffix(name, ".htm"):
		t.Found = []lexicon.Found{{Entry: printFile}}
	case strings.HasSuffix(name, ".svg"):
		t.Found = []lexicon.Found{{Entry: drawFile}}
	}
}
