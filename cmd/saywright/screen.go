package main

import (
	"io"
	"os"
	"strings"

	"saywright/explain"
	"saywright/solver"
)

// screen is how answers are put out: as JSON Lines, or as text of a width.
type screen struct {
	json  bool
	leave bool // reading ends at quit
	width int  // as told by a flag; 0 is that of the terminal
	fixed explain.Options
}

// options returns how a text is laid out now: a terminal's width may have changed.
func (s screen) options() explain.Options {
	o := s.fixed
	if s.width > 0 {
		o.Width = s.width
	} else if isTerminal(os.Stdout) {
		o.Width = columns()
	}
	return o
}

// answer puts out one answer.
func (s screen) answer(w io.Writer, a *solver.Answer) error {
	if s.json {
		return writeJSON(w, a)
	}
	_, err := io.WriteString(w, strings.TrimRight(a.Text, "\n")+"\n\n")
	return err
}

// greet says how to begin.
func (s screen) greet(w io.Writer) {
	io.WriteString(w, explain.Greeting(s.options())+"\n\n")
}

// utf8Terminal reports whether the locale says UTF-8. Its variables go before each other as POSIX has it
// (IEEE Std 1003.1, 8.2: LC_ALL, then LC_CTYPE, then LANG; empty counts as not set).
func utf8Terminal() bool {
	for _, variable := range []string{"LC_ALL", "LC_CTYPE", "LANG"} {
		if v := strings.ToLower(os.Getenv(variable)); v != "" {
			return strings.Contains(v, "utf-8") || strings.Contains(v, "utf8")
		}
	}
	return false
}

// colored reports whether a terminal wants color (no-color.org: any value of NO_COLOR but the empty one says no).
func colored() bool {
	return isTerminal(os.Stdout) && os.Getenv("NO_COLOR") == "" && os.Getenv("TERM") != "dumb"
}

func statusOf(a *solver.Answer) int {
	if a.Verdict == solver.Blocked || a.Verdict == solver.Unclear {
		return 1
	}
	return 0
}

func isQuit(a *solver.Answer) bool {
	return len(a.Heard) > 0 && a.Heard[len(a.Heard)-1] == "quit"
}
