package main

import (
	"bytes"
	"os"
	"path/filepath"
)

// historyLimit is the most lines that are kept. The file is cut here, because readline writes it anew for all to read.
const historyLimit = 500

// Modes of the files that are written.
const (
	forOwner = 0o600 // what was said, and walls saved by name
	forAll   = 0o644 // drawings: made to be handed on
)

// xdg returns the folder of this program under an XDG base folder (XDG Base Directory Specification 0.8: what is not
// an absolute path is ignored), "" where there is no home either.
func xdg(variable string, fallback ...string) string {
	base := os.Getenv(variable)
	if !filepath.IsAbs(base) {
		home, err := os.UserHomeDir()
		if err != nil || !filepath.IsAbs(home) {
			return ""
		}
		base = filepath.Join(append([]string{home}, fallback...)...)
	}
	return filepath.Join(base, "saywright")
}

func stateFolder() string { return xdg("XDG_STATE_HOME", ".local", "state") }

func dataFolder() string { return xdg("XDG_DATA_HOME", ".local", "share") }

// historyFile readies the file of lines said before, for its owner alone. "" means that nothing is kept.
func historyFile(folder string) string {
	if folder == "" || os.MkdirAll(folder, 0o700) != nil {
		return ""
	}
	name := filepath.Join(folder, "history")
	was, err := os.ReadFile(name)
	if err != nil && !os.IsNotExist(err) {
		return ""
	}
	if was == nil || bytes.Count(was, []byte("\n")) >= historyLimit {
		if replaceFile(name, lastLines(was, historyLimit/2), forOwner) != nil {
			return ""
		}
	}
	if os.Chmod(name, forOwner) != nil {
		return ""
	}
	return name
}

func lastLines(text []byte, n int) []byte {
	lines := bytes.SplitAfter(text, []byte("\n"))
	return bytes.Join(lines[max(len(lines)-n-1, 0):], nil)
}

// replaceFile writes a file so that at any moment either the old or the new one is there, whole.
func replaceFile(name string, content []byte, mode os.FileMode) error {
	draft, err := os.CreateTemp(filepath.Dir(name), ".draft-*")
	if err != nil {
		return err
	}
	defer os.Remove(draft.Name())
	_, err = draft.Write(content)
	if err == nil {
		err = draft.Sync()
	}
	if err == nil {
		err = draft.Chmod(mode)
	}
	if e := draft.Close(); err == nil {
		err = e
	}
	if err != nil {
		return err
	}
	return os.Rename(draft.Name(), name)
}
