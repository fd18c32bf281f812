package main

import (
	"errors"
	"fmt"
	"io/fs"
	"net/url"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"saywright/grammar"
)

// header is the first line of a saved file; its figure grows when the lines below it come to mean something else.
const header = "saywright 1"

// ending is what the files of saved walls end in.
const ending = ".wall"

// shelf keeps walls in files of one folder. What is written in a line waits in drafts until all of that line is clear.
type shelf struct {
	folder string // "" where nothing can be kept
	drafts map[string]string
}

var errName = errors.New("got a name that no file can have, want letters, digits and spaces, 80 at most")

// file returns the path for a name, always inside the folder. Two names have one file only where they differ in case
// or in blanks alone.
func (s shelf) file(name string) (string, error) {
	plain := strings.ToLower(strings.Join(strings.Fields(name), " "))
	if plain == "" || len(plain) > 80 {
		return "", errName
	}
	if s.folder == "" {
		return "", errors.New("there is no folder to keep it in: HOME is not set")
	}
	var b strings.Builder
	for _, r := range plain {
		if r == ' ' || r == '-' || r == '_' || r >= '0' && r <= '9' || r >= 'a' && r <= 'z' {
			b.WriteRune(r)
		} else {
			b.WriteString(strings.ReplaceAll(escapeAll(string(r)), "%", "="))
		}
	}
	return filepath.Join(s.folder, b.String()+ending), nil
}

func escapeAll(s string) string {
	var b strings.Builder
	for _, c := range []byte(s) {
		fmt.Fprintf(&b, "%%%02X", c)
	}
	return b.String()
}

// load reads what was saved under a name.
func (s shelf) load(name string) (standing, error) {
	path, err := s.file(name)
	if err != nil {
		return standing{}, err
	}
	if draft, ok := s.drafts[path]; ok {
		return unpack(draft)
	}
	content, err := os.ReadFile(path)
	if err != nil {
		return standing{}, err
	}
	return unpack(string(content))
}

// save readies a file; write puts it on the disk.
func (s *shelf) save(name string, what standing) error {
	path, err := s.file(name)
	if err != nil {
		return err
	}
	next := map[string]string{path: pack(what)}
	for p, content := range s.drafts {
		if p != path {
			next[p] = content
		}
	}
	s.drafts = next
	return nil
}

// before is the name under which the last save but one is kept, so that saving twice loses nothing.
func before(name string) string { return name + " before" }

// write puts the drafts on the disk. A file that held something else is kept beside it.
func (s *shelf) write() error {
	for path, content := range s.drafts {
		if err := os.MkdirAll(s.folder, 0o700); err != nil {
			return err
		}
		was, err := os.ReadFile(path)
		if err == nil && string(was) != content {
			err = replaceFile(strings.TrimSuffix(path, ending)+" before"+ending, was, forOwner)
		}
		if err != nil && !errors.Is(err, fs.ErrNotExist) {
			return err
		}
		if err := replaceFile(path, []byte(content), forOwner); err != nil {
			return err
		}
	}
	s.drafts = nil
	return nil
}

// names lists what was saved.
func (s shelf) names() []string {
	files, _ := os.ReadDir(s.folder)
	var list []string
	for _, f := range files {
		if name, ok := strings.CutSuffix(f.Name(), ending); ok && !f.IsDir() {
			if plain, err := url.PathUnescape(strings.ReplaceAll(name, "=", "%")); err == nil {
				list = append(list, plain)
			}
		}
	}
	slices.Sort(list)
	return list
}

// pack writes what stands, one normal form a line.
func pack(what standing) string {
	lines := []string{header}
	for _, b := range what.books {
		for _, form := range forms(b) {
			lines = append(lines, prefixed(b.Wall, form))
		}
	}
	if what.hand != "" || len(what.books) > 1 {
		lines = append(lines, "at hand: "+what.hand)
	}
	return strings.Join(lines, "\n") + "\n"
}

func prefixed(wall, form string) string {
	if wall == "" {
		return form
	}
	return wall + ": " + form
}

// unpack reads what pack wrote. The error says which line it cannot read; nothing is taken by halves.
func unpack(content string) (standing, error) {
	lines := strings.Split(strings.TrimRight(strings.ReplaceAll(content, "\r\n", "\n"), "\n"), "\n")
	if lines[0] != header {
		return standing{}, fmt.Errorf("line 1: got %q, want %q", clip(lines[0], 40), header)
	}
	var what standing
	for i, line := range lines[1:] {
		next, err := what.unpackLine(line)
		if err != nil {
			return standing{}, fmt.Errorf("line %d: %w", i+2, err)
		}
		what = next
	}
	return what, nil
}

func (s standing) unpackLine(line string) (standing, error) {
	if strings.TrimSpace(line) == "" {
		return s, nil
	}
	if hand, ok := strings.CutPrefix(line, "at hand:"); ok {
		s.hand = strings.TrimSpace(hand)
		return s, nil
	}
	if wall, limit, ok := strings.Cut(line, "set aside "); ok && (wall == "" || strings.HasSuffix(wall, ": ")) {
		return s.with(s.book(strings.TrimSuffix(wall, ": ")).SetAside(limit)), nil
	}
	acts, err := grammar.Parse(line)
	if err != nil {
		return s, err
	}
	for _, a := range acts {
		if a.Kind != grammar.State || len(a.Statements) != 1 {
			return s, fmt.Errorf("got %q, want a statement", clip(line, 40))
		}
		st := a.Statements[0]
		wall := st.Name.Wall
		st.Name.Wall = ""
		b, _, _, err := s.book(wall).With(st, nil)
		if err != nil {
			return s, err
		}
		s = s.with(b)
	}
	return s, nil
}

// clip shortens a text for a message.
func clip(s string, most int) string {
	if r := []rune(s); len(r) > most {
		return string(r[:most]) + "…"
	}
	return s
}
