package main

import (
	"go/parser"
	source "go/token"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// readers are the packages of the grammar, from the bottom to the top: each knows only those before it.
var readers = []string{"act", "askback", "spelling", "scan", "lexicon", "measure", "chunk", "phrase", "ways", "lex", "parse",
	"idiom", "lumberlist", "paraphrase", "hear", "gist", "aside", "takeback", "contrast", "reread", "guard"}

// mayKnow tells, for a folder of the tree, what of the tree it may import.
func mayKnow(folder, path string) bool {
	under := func(of string) bool { return path == of || strings.HasPrefix(path, of+"/") }
	at, ok := strings.CutPrefix(folder, "grammar/")
	switch {
	case folder == "solver" || strings.HasPrefix(folder, "solver/"):
		return under("solver")
	case folder == "explain" || strings.HasPrefix(folder, "explain/"):
		return under("solver") || under("explain")
	case folder == "grammar":
		return under("solver") || strings.HasPrefix(path, "grammar/")
	case ok:
		of := slices.Index(readers, at)
		knows := slices.Index(readers, strings.TrimPrefix(path, "grammar/"))
		return under("solver") || of >= 0 && knows >= 0 && knows < of
	}
	return path == "grammar" || under("solver") || under("explain")
}

// Packages know one another one way only, and what is not ours is known where it is needed: the syntax of participle where lines are
// read, readline where they are typed.
func TestArrowsGoOneWay(t *testing.T) {
	root := filepath.Join("..", "..")
	seen := map[string]bool{}
	require.NoError(t, filepath.WalkDir(root, func(path string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() || filepath.Ext(path) != ".go" || strings.HasSuffix(path, "_test.go") {
			return err
		}
		folder, err := filepath.Rel(root, filepath.Dir(path))
		require.NoError(t, err)
		folder = filepath.ToSlash(folder)
		seen[folder] = true
		file, err := parser.ParseFile(source.NewFileSet(), path, nil, parser.ImportsOnly)
		require.NoError(t, err)
		for _, i := range file.Imports {
			name, err := strconv.Unquote(i.Path.Value)
			require.NoError(t, err)
			if ours, ok := strings.CutPrefix(name, "saywright/"); ok {
				require.True(t, mayKnow(folder, ours), "%s imports %s", path, ours)
				continue
			}
			switch {
			case strings.Contains(name, "participle"):
				require.Contains(t, []string{"grammar/lexicon", "grammar/lex", "grammar/parse"}, folder, path)
			case strings.Contains(name, "."):
				require.True(t, folder == "cmd/saywright" && strings.Contains(name, "readline"), "%s imports %s", path, name)
			}
		}
		return nil
	}))
	for _, name := range readers {
		require.True(t, seen["grammar/"+name], name)
	}
	require.False(t, mayKnow("grammar/lex", "grammar/parse"))
	require.False(t, mayKnow("solver", "grammar"))
	require.False(t, mayKnow("cmd/saywright", "grammar/guard"))
}

// Every package says what it does, and what it does not know.
func TestPackagesSayWhatTheyDo(t *testing.T) {
	for _, name := range readers {
		files, err := filepath.Glob(filepath.Join("..", "..", "grammar", name, "*.go"))
		require.NoError(t, err)
		said := slices.ContainsFunc(files, func(f string) bool {
			text, err := os.ReadFile(f)
			require.NoError(t, err)
			return strings.HasPrefix(string(text), "// Package "+name+" ") && strings.Contains(string(text), " not")
		})
		require.True(t, said, "package %s says what it does", name)
	}
}
