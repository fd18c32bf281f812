package main

import (
	"bytes"
	"context"
	"errors"
	"io"
	"os"
	"os/signal"
	"strings"
	"syscall"
	"time"

	"github.com/chzyer/readline"

	"saywright/solver"
)

// closeWithin is how long the terminal is waited for at the end: readline's Close can wait for a key for ever.
const closeWithin = 200 * time.Millisecond

func isTerminal(f *os.File) bool { return readline.IsTerminal(int(f.Fd())) }

// columns is the width of the terminal. Under 20 it is taken for unknown: readline hangs at 0.
func columns() int {
	if cols, _, err := readline.GetSize(int(os.Stdout.Fd())); err == nil && cols >= 20 {
		return cols
	}
	return 80
}

// converse holds a conversation on a terminal until the person leaves.
func converse(talk *Talk, show screen) int {
	fd := int(os.Stdin.Fd())
	// Raw for the whole conversation: a paste that comes while an answer is worked out is then not echoed twice.
	before, err := readline.MakeRaw(fd)
	if err != nil {
		return converseBy(talk, show)
	}
	restore := func() { readline.Restore(fd, before) }
	defer restore()
	restoreOnSignal(restore)

	typed := newKeys(os.Stdin)
	lines, err := listen(typed)
	if err != nil {
		restore()
		return converseBy(talk, show)
	}
	defer closing(lines)
	show.greet(os.Stdout)
	for {
		line, err := lines.Readline()
		left := typed.leave.Swap(false)
		switch {
		case errors.Is(err, readline.ErrInterrupt):
			continue
		case err != nil && !left: // the Delete key on an empty line, which readline takes for ^D
			continue
		case err != nil:
			return 0
		case strings.TrimSpace(line) == "":
			continue
		case strings.ContainsRune(line, tooLong):
			show.answer(os.Stdout, talk.tooLong())
			continue
		}
		lines.SaveHistory(line)
		a := replyUnlessDropped(talk, line, typed)
		show.answer(os.Stdout, a)
		if left || isQuit(a) {
			return 0
		}
	}
}

// converseBy reads plain lines where the terminal cannot be edited on.
func converseBy(talk *Talk, show screen) int {
	show.leave = true
	return pipe(os.Stdin, os.Stdout, talk, show)
}

func listen(typed *keys) (*readline.Instance, error) {
	complete := &completer{}
	nothing := func() error { return nil }
	lines, err := readline.NewEx(&readline.Config{
		Prompt:                 "> ", // readline miscounts the rows of longer ones
		HistoryFile:            historyFile(stateFolder()),
		HistoryLimit:           historyLimit,
		DisableAutoSaveHistory: true,
		HistorySearchFold:      true,
		AutoComplete:           complete,
		InterruptPrompt:        "^C",
		EOFPrompt:              "\n", // nothing
		Stdin:                  typed,
		Stdout:                 clearing{os.Stdout},
		FuncGetWidth:           columns,
		FuncMakeRaw:            nothing,
		FuncExitRaw:            nothing,
	})
	if err == nil {
		complete.list = lines.Stdout()
	}
	return lines, err
}

// clearing makes ^L clear the screen; readline only moves the cursor home.
type clearing struct{ io.Writer }

func (c clearing) Write(b []byte) (int, error) {
	if bytes.Equal(b, []byte("\x1b[H")) {
		_, err := c.Writer.Write([]byte("\x1b[H\x1b[2J"))
		return len(b), err
	}
	return c.Writer.Write(b)
}

func closing(c io.Closer) {
	done := make(chan struct{})
	go func() {
		c.Close()
		close(done)
	}()
	select {
	case <-done:
	case <-time.After(closeWithin):
	}
}

func restoreOnSignal(restore func()) {
	came := make(chan os.Signal, 1)
	signal.Notify(came, syscall.SIGTERM, syscall.SIGHUP, syscall.SIGINT)
	go func() {
		s := <-came
		restore()
		os.Stdout.WriteString("\n")
		os.Exit(128 + int(s.(syscall.Signal)))
	}()
}

// replyUnlessDropped works out an answer; ^C drops the line, and what stood before it stands.
func replyUnlessDropped(talk *Talk, line string, typed *keys) *solver.Answer {
	ctx, drop := context.WithCancel(context.Background())
	defer drop()
	select { // a ^C that came for an earlier line
	case <-typed.drop:
	default:
	}
	typed.busy.Store(true)
	defer typed.busy.Store(false)
	done := make(chan turn, 1)
	go func() { done <- talk.ponder(ctx, line) }()
	select {
	case t := <-done:
		return talk.keep(t)
	case <-typed.drop:
		return talk.dropped(line)
	}
}
