package main

import (
	"io"
	"sync"
	"sync/atomic"
)

// lineLimit is the most characters of one line that reach readline: it redraws the whole line at each character.
const lineLimit = 4000

// tooLong stands in the place of a line over lineLimit. It is of Unicode's private use area: no keyboard has it.
const tooLong = '\uE0F1'

// Control keys that keys treats in a way of its own.
const (
	ctrlC     = 0x03
	ctrlD     = 0x04
	tab       = '\t'
	enter     = '\r'
	newline   = '\n'
	ctrlU     = 0x15
	escape    = 0x1b
	backspace = 0x7f
)

// editing are the control keys that readline knows. It would put any other into the line; it takes NUL for the end
// of input, and ^Z would stop the parent process too.
var editing = func() (known [32]bool) {
	for _, k := range []byte{1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 16, 18, 19, 20, 21, 23, 25} {
		known[k] = true
	}
	return known
}()

// keys reads the terminal for readline and mends on the way what readline v1.5.1 cannot take. It works on bytes:
// readline's own filter works on runes, and ends the line when it drops one.
type keys struct {
	from   io.Reader
	chunks chan []byte
	rest   []byte
	closed chan struct{}
	once   sync.Once

	held   []byte // an escape sequence of which the end has not come yet
	before byte   // the byte before this one
	long   int    // characters since the line began
	over   bool   // the rest of this line is dropped

	busy  atomic.Bool // an answer is being worked out
	drop  chan struct{}
	leave atomic.Bool // ^D came, or the input ended, since the last line
}

func newKeys(from io.Reader) *keys {
	k := &keys{from: from, chunks: make(chan []byte), closed: make(chan struct{}), drop: make(chan struct{}, 1)}
	go k.pump()
	return k
}

// pump reads all the time, so that ^C is seen while an answer is being worked out.
func (k *keys) pump() {
	defer close(k.chunks)
	buf := make([]byte, 4096)
	for {
		n, err := k.from.Read(buf)
		if out := k.mend(buf[:n]); len(out) > 0 {
			select {
			case k.chunks <- out:
			case <-k.closed:
				return
			}
		}
		if err != nil {
			k.leave.Store(true)
			return
		}
	}
}

// Read hands on the bytes that readline may have.
func (k *keys) Read(p []byte) (int, error) {
	if len(k.rest) == 0 {
		select {
		case chunk, ok := <-k.chunks:
			if !ok {
				return 0, io.EOF
			}
			k.rest = chunk
		case <-k.closed:
			return 0, io.EOF
		}
	}
	n := copy(p, k.rest)
	k.rest = k.rest[n:]
	return n, nil
}

// Close ends every read, those under way too.
func (k *keys) Close() error {
	k.once.Do(func() { close(k.closed) })
	return nil
}

// mend returns what is left of a chunk for readline.
func (k *keys) mend(chunk []byte) []byte {
	out := make([]byte, 0, len(chunk)+8)
	for i, b := range chunk {
		switch {
		case len(k.held) > 0 || b == escape:
			out = append(out, k.sequence(b)...)
		case b == ctrlC && k.busy.Load():
			select {
			case k.drop <- struct{}{}:
			default:
			}
		case b == newline && k.before == enter: // a paste from another system
		case b == enter || b == newline:
			out = append(out, k.endLine(b)...)
		case b == tab && i < len(chunk)-1: // in a paste; nothing waits behind a key that was pressed
			out = append(out, k.text(' ')...)
		case b < 32:
			out = append(out, k.control(b)...)
		default:
			out = append(out, k.text(b)...)
		}
		k.before = b
	}
	return out
}

func (k *keys) control(b byte) []byte {
	if !editing[b] || k.over && b != ctrlC {
		return nil
	}
	switch b {
	case ctrlC, ctrlU:
		k.long, k.over = 0, false
	case ctrlD:
		k.leave.Store(true)
	}
	return []byte{b}
}

func (k *keys) text(b byte) []byte {
	if k.over {
		return nil
	}
	if b == backspace {
		k.long = max(k.long-1, 0)
	} else if b&0xC0 != 0x80 { // the first byte of a character
		if k.long == lineLimit {
			k.over = true
			return nil
		}
		k.long++
	}
	return []byte{b}
}

func (k *keys) endLine(b byte) []byte {
	over := k.over
	k.long, k.over = 0, false
	if !over {
		return []byte{b}
	}
	// ^E and ^U empty the line wherever its cursor is.
	return append([]byte("\x05\x15"+string(tooLong)), b)
}

// sequence gathers an escape sequence. Holding back a lone escape changes nothing: readline waits for what follows too.
func (k *keys) sequence(b byte) []byte {
	if b < 32 && len(k.held) > 0 { // a control key ends what is no sequence: readline would take it for a part of one
		k.held = nil
		return k.mend([]byte{b})
	}
	k.held = append(k.held, b)
	if len(k.held) < 3 && (len(k.held) == 1 || b == '[') {
		return nil
	}
	if k.held[1] == '[' && (b >= '0' && b <= '9' || b == ';') && len(k.held) < 16 {
		return nil
	}
	whole := string(k.held)
	k.held = nil
	if k.over {
		return nil
	}
	switch whole {
	case "\x1b[1~", "\x1b[7~": // Home, as tmux and some terminals send it
		return []byte{0x01}
	case "\x1b[4~", "\x1b[8~": // End
		return []byte{0x05}
	}
	return []byte(whole)
}
