package main

import (
	"runtime"
	"sync/atomic"
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/explain"
)

func TestCtrlCDropsALineThatTakesLong(t *testing.T) {
	talk := testTalk(t, &explain.Options{Width: 80})
	talk.Reply("gap = 2 in")
	asked, wait := make(chan struct{}), make(chan struct{})
	var slow atomic.Bool
	slow.Store(true)
	talk.show = func() explain.Options {
		if slow.CompareAndSwap(true, false) { // the first time only
			close(asked)
			<-wait
		}
		return explain.Options{Width: 80}
	}
	typed := &keys{drop: make(chan struct{}, 1)}
	typed.drop <- struct{}{} // left over from an earlier line
	go func() {
		<-asked
		for !typed.busy.Load() {
			runtime.Gosched()
		}
		typed.mend([]byte{ctrlC})
	}()
	a := replyUnlessDropped(talk, "gap = 3 in", typed)
	require.Equal(t, "dropped", a.Ask.Key)
	require.NotEmpty(t, a.Text)
	close(wait)
	require.Equal(t, []string{"gap = 2 in"}, forms(talk.now.book("")))
	require.False(t, typed.busy.Load())

	a = replyUnlessDropped(talk, "gap = 3 in", typed)
	require.Equal(t, []string{"gap = 3 in"}, a.Heard, "the next line is answered")
}

func TestTheEndIsWaitedForOnlyAWhile(t *testing.T) {
	stuck := make(chan struct{})
	defer close(stuck)
	closing(closer(func() error { <-stuck; return nil })) // returns, or the test hangs
}

type closer func() error

func (c closer) Close() error { return c() }
