package main

import (
	"bufio"
	"bytes"
	"encoding/json"
	"errors"
	"io"
	"strings"

	"saywright/solver"
)

// inputLimit is how much of one line is kept, in bytes; the rest of a longer line is read over.
const inputLimit = 16 << 20

// pipe answers each line of in, in order, and flushes each answer. It returns the exit status: 1 when the last answer
// that was not to an empty line is blocked or unclear.
func pipe(in io.Reader, out io.Writer, talk *Talk, show screen) int {
	lines := bufio.NewReaderSize(in, 1<<16)
	w := bufio.NewWriter(out)
	status := 0
	for {
		line, err := readLine(lines)
		if err != nil && line == "" {
			return status
		}
		a := reply(talk, line)
		if strings.TrimSpace(line) != "" {
			status = statusOf(a)
		}
		show.answer(w, a)
		if w.Flush() != nil || show.leave && isQuit(a) { // nobody reads any more, or nobody speaks
			return status
		}
	}
}

// readLine reads one line without its ending. The error is io.EOF where nothing more came.
func readLine(r *bufio.Reader) (string, error) {
	var line []byte
	for {
		part, err := r.ReadSlice('\n')
		if room := inputLimit - len(line); room > 0 {
			line = append(line, part[:min(room, len(part))]...)
		}
		if !errors.Is(err, bufio.ErrBufferFull) {
			line = bytes.TrimSuffix(line, []byte("\n"))
			return string(bytes.TrimSuffix(line, []byte("\r"))), err
		}
	}
}

// writeJSON writes an answer as one line of JSON.
func writeJSON(w io.Writer, a *solver.Answer) error {
	e := json.NewEncoder(w)
	e.SetEscapeHTML(false) // "45 <= 44" is read by people too
	return e.Encode(a)
}
