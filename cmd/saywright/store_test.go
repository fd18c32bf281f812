package main

import (
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// stood returns what stands after normal forms were said.
func stood(t *testing.T, lines ...string) standing {
	t.Helper()
	what, err := unpack(header + "\n" + strings.Join(lines, "\n") + "\n")
	require.NoError(t, err)
	return what
}

func TestPackAndUnpackRoundTrip(t *testing.T) {
	for _, lines := range [][]string{
		{"wall height = 48 in", "gap = 2-1/2 in", "opening >= 24 in", "gap < 4 in"},
		{"units = metric", "gap = 63 mm", "rail size = 90x45", "span = 3700 mm"},
		{"gap in 2 in..3 in", "wall height ~ 48 in", "bottom gap = gap", "opening >= 2 * gap", "equal bays", "smallest gap"},
		{"stock = 96 in, 144 in", "price 2x6 192 in = 14.50", "have 2x6 144 in x 6", "extra 2x6 45-1/2 in x 12", "price screws 100 = 9.00"},
		{"measured bay 1 rail 3 = 68-3/8 in", "fixed rail 2 top = 16 in", "left post leans 3/8 in right in 48 in", "floor falls 1/8 in per 12 in"},
		{"drop = 40 in", "set aside guard"},
		{"wall height = 48 in", "north wall: gap = 2 in", "north wall: drop = 40 in", "north wall: set aside guard", "at hand: north wall"},
	} {
		what := stood(t, lines...)
		require.Equal(t, header+"\n"+strings.Join(lines, "\n")+"\n", pack(what))
		again, err := unpack(pack(what))
		require.NoError(t, err)
		require.True(t, what.same(again))
	}
}

func TestUnpackTellsTheLineItCannotRead(t *testing.T) {
	for content, want := range map[string]string{
		"":                         `line 1: got "", want "saywright 1"`,
		"saywright 2\ngap = 2 in":  `line 1: got "saywright 2", want "saywright 1"`,
		header + "\ngap = 2 in\n%": "line 3:",
		header + "\nundo":          `line 2: got "undo", want a statement`,
		header + "\ngap = 1/0 in":  "line 2:",
		header + "\ngap += 2 in":   "line 2:",
	} {
		_, err := unpack(content)
		require.ErrorContains(t, err, want)
	}
}

func TestFilesStayInTheFolder(t *testing.T) {
	s := shelf{folder: t.TempDir()}
	seen := map[string]string{}
	for _, name := range []string{"porch", "back patio", "../porch", "..", ".", ".hidden", "/etc/passwd", `a\b`, "a\x00b", "C:porch",
		"träger", "a/b", "a=b", "a%b", "con", "a=2Fb", "~", "-rf"} {
		path, err := s.file(name)
		require.NoError(t, err)
		require.Equal(t, s.folder, filepath.Dir(path), name)
		require.NotContains(t, filepath.Base(path)[:1], ".", name)
		require.Empty(t, seen[path], "%q and %q share a file", name, seen[path])
		seen[path] = name
	}
	for _, same := range []string{"Porch", " porch ", "PORCH"} {
		path, err := s.file(same)
		require.NoError(t, err)
		require.Equal(t, "porch", seen[path])
	}
	for _, bad := range []string{"", "  ", strings.Repeat("a", 81)} {
		_, err := s.file(bad)
		require.ErrorIs(t, err, errName)
	}
	_, err := shelf{}.file("porch")
	require.ErrorContains(t, err, "HOME")
}

func TestShelfKeepsTheOneBefore(t *testing.T) {
	s := shelf{folder: filepath.Join(t.TempDir(), "not", "yet")}
	_, err := s.load("porch")
	require.ErrorIs(t, err, fs.ErrNotExist)

	first, second := stood(t, "gap = 2 in"), stood(t, "gap = 3 in")
	require.NoError(t, s.save("Back Patio", first))
	got, err := s.load("back patio")
	require.NoError(t, err)
	require.True(t, first.same(got), "what waits to be written can be opened in the same line")
	require.NoDirExists(t, s.folder, "nothing is written before the line is clear")
	require.NoError(t, s.write())
	require.NoError(t, s.save("back patio", second))
	require.NoError(t, s.write())

	for name, want := range map[string]standing{"back patio": second, before("back patio"): first} {
		got, err := s.load(name)
		require.NoError(t, err)
		require.True(t, want.same(got), name)
	}
	require.NoError(t, s.save("back patio", second)) // the same again must not cost the one before
	require.NoError(t, s.write())
	got, err = s.load(before("back patio"))
	require.NoError(t, err)
	require.True(t, first.same(got))

	require.Equal(t, []string{"back patio", "back patio before"}, s.names())
	files, err := os.ReadDir(s.folder)
	require.NoError(t, err)
	require.Len(t, files, 2, "no drafts are left")
	for _, f := range files {
		info, err := f.Info()
		require.NoError(t, err)
		require.Equal(t, fs.FileMode(0o600), info.Mode().Perm())
	}
}

func TestHistoryIsForItsOwnerAlone(t *testing.T) {
	folder := filepath.Join(t.TempDir(), "state", "saywright")
	name := historyFile(folder)
	info, err := os.Stat(name)
	require.NoError(t, err)
	require.Equal(t, fs.FileMode(0o600), info.Mode().Perm())

	require.NoError(t, os.Chmod(name, 0o644))
	require.NoError(t, os.WriteFile(name, []byte(strings.Repeat("gap 2\n", historyLimit)+"last\n"), 0o644))
	require.Equal(t, name, historyFile(folder))
	info, err = os.Stat(name)
	require.NoError(t, err)
	require.Equal(t, fs.FileMode(0o600), info.Mode().Perm())
	content, err := os.ReadFile(name)
	require.NoError(t, err)
	require.Equal(t, historyLimit/2, strings.Count(string(content), "\n"), "cut before readline would")
	require.True(t, strings.HasSuffix(string(content), "gap 2\nlast\n"))

	require.Empty(t, historyFile(""))
	require.Empty(t, historyFile(filepath.Join(name, "below a file")))
}

func TestFoldersAreThoseOfXDG(t *testing.T) {
	t.Setenv("HOME", "/home/someone")
	t.Setenv("XDG_DATA_HOME", "")
	require.Equal(t, "/home/someone/.local/share/saywright", dataFolder())
	t.Setenv("XDG_STATE_HOME", "relative/is/ignored")
	require.Equal(t, "/home/someone/.local/state/saywright", stateFolder())
	t.Setenv("XDG_DATA_HOME", "/data")
	require.Equal(t, "/data/saywright", dataFolder())
	t.Setenv("HOME", "")
	require.Empty(t, stateFolder())
}

func FuzzUnpack(f *testing.F) {
	f.Add(header + "\ngap = 2 in\nnorth wall: set aside guard\nat hand: north wall\n")
	f.Fuzz(func(t *testing.T, content string) {
		what, err := unpack(content)
		if err != nil {
			return
		}
		again, err := unpack(pack(what))
		require.NoError(t, err)
		require.True(t, what.same(again), "%q", content)
	})
}
