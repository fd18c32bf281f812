package main

import (
	"io"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// The sequences are those of ECMA-48 (CSI) and of xterm's and tmux's documentation of Home and End.
func TestKeysMendWhatReadlineCannotTake(t *testing.T) {
	for _, c := range []struct{ name, typed, want string }{
		{"text passes", "gap 2½″\r", "gap 2½″\r"},
		{"NUL and ^Z go", "a\x00b\x1ac\r", "abc\r"},
		{"control keys that readline would write go", "a\x0f\x11\x16\x1c\x1d\x1fb\r", "ab\r"},
		{"editing keys pass", "\x01\x05\x15\x17\x0b\x19\x12", "\x01\x05\x15\x17\x0b\x19\x12"},
		{"Home of tmux", "\x1b[1~x", "\x01x"},
		{"End of tmux", "\x1b[4~x", "\x05x"},
		{"arrows pass", "\x1b[A\x1b[D\x1bOC", "\x1b[A\x1b[D\x1bOC"},
		{"Delete passes", "\x1b[3~", "\x1b[3~"},
		{"words by Ctrl and arrow pass", "\x1b[1;5D", "\x1b[1;5D"},
		{"Alt with a control key is that key", "a\x1b\x14b\x1b\r", "a\x14b\r"},
		{"a control key within a sequence ends it", "\x1b[\x00a\x1b[1\rb", "a\rb"},
		{"a tab typed completes", "op\t", "op\t"},
		{"a tab in a paste is a blank", "gap\t2\r", "gap 2\r"},
		{"a paste from another system ends each line once", "a\r\nb\r\n", "a\rb\r"},
	} {
		require.Equal(t, c.want, string((&keys{}).mend([]byte(c.typed))), c.name)
		if len(c.typed) > 1 && !strings.Contains(c.name, "tab") { // the same, a byte at a time
			k, got := &keys{}, ""
			for _, b := range []byte(c.typed) {
				got += string(k.mend([]byte{b}))
			}
			require.Equal(t, c.want, got, c.name)
		}
	}
}

func TestKeysRefuseLongLines(t *testing.T) {
	at := strings.Repeat("½", lineLimit)
	k := &keys{}
	require.Equal(t, at+"\r", string(k.mend([]byte(at+"\r"))), "as long as may be")
	got := string(k.mend([]byte(at + "½\rgap 2\r")))
	require.Equal(t, at+"\x05\x15"+string(tooLong)+"\rgap 2\r", got, "longer: marked, and the next line is whole")
	got = string(k.mend([]byte(at + "½½\x03gap 2\r")))
	require.Equal(t, at+"\x03gap 2\r", got, "^C forgives")
	got = string(k.mend([]byte(at + "\x7fx\r")))
	require.Equal(t, at+"\x7fx\r", got, "what was rubbed out does not count")
}

func TestKeysTellCtrlDFromTheEnd(t *testing.T) {
	k := newKeys(strings.NewReader("gap\r"))
	got, err := io.ReadAll(k)
	require.NoError(t, err)
	require.Equal(t, "gap\r", string(got))
	require.True(t, k.leave.Load(), "the end of input leaves")

	k = &keys{}
	k.mend([]byte("\x1b[3~"))
	require.False(t, k.leave.Load(), "Delete does not leave, though readline takes it for ^D")
	k.mend([]byte{ctrlD})
	require.True(t, k.leave.Load())
}

func TestCtrlCDropsTheAnswerUnderWay(t *testing.T) {
	k := &keys{drop: make(chan struct{}, 1)}
	require.Equal(t, "\x03", string(k.mend([]byte{ctrlC})), "at the prompt it is readline's")
	k.busy.Store(true)
	require.Empty(t, k.mend([]byte{ctrlC}))
	require.Empty(t, k.mend([]byte{ctrlC}), "a second one does not wait")
	require.Len(t, k.drop, 1)
}

func TestKeysEndAtClose(t *testing.T) {
	r, w := io.Pipe()
	defer w.Close()
	k := newKeys(r)
	done := make(chan error)
	go func() {
		_, err := k.Read(make([]byte, 8))
		done <- err
	}()
	require.NoError(t, k.Close())
	require.Equal(t, io.EOF, <-done)
}

func FuzzKeys(f *testing.F) {
	for _, s := range []string{"gap 2\r", "\x1b[1~\x1b[", "\x1b\x1b\x1b[[", "\x1b[\x00", "\x00\x1a\t\r\n", "\x1b[1;2;3;4;5;6;7;8;9;10~"} {
		f.Add([]byte(s))
	}
	f.Fuzz(func(t *testing.T, typed []byte) {
		whole := (&keys{drop: make(chan struct{}, 1)}).mend(typed)
		for _, b := range whole {
			require.True(t, b >= 32 || editing[b] || b == escape, "readline cannot take %q", b)
		}
	})
}
