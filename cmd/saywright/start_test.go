package main

import (
	"os"
	"os/exec"
	"path/filepath"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"saywright/explain"
)

// BenchmarkReply answers one more thing about a wall with two openings and ten statements, words and all.
func BenchmarkReply(b *testing.B) {
	said := []string{"wall height = 48 in", "rail size = 2x6", "bottom gap = gap", "span = 300 in", "openings = 2",
		"opening = 30 in", "opening 1 side = left", "opening 2 from right = 60 in", "bay <= 96 in"}
	talk := testTalkIn(b.TempDir(), &explain.Options{Width: 80})
	for _, line := range said {
		require.NotEqual(b, "unclear", string(talk.Reply(line).Verdict), line)
	}
	lines := []string{"gap in 2 in..3 in", "gap in 2 in..2-3/4 in"} // turn about, so that nothing is answered from memory
	b.ReportAllocs()
	for i := 0; b.Loop(); i++ {
		talk.Reply(lines[i%2])
	}
}

// BenchmarkStart starts the program and an empty Go program in turn, and reports how much longer ours takes.
func BenchmarkStart(b *testing.B) {
	dir := b.TempDir()
	ours, empty := filepath.Join(dir, "ours"), filepath.Join(dir, "empty")
	source := filepath.Join(dir, "empty.go")
	require.NoError(b, os.WriteFile(source, []byte("package main\n\nfunc main() {}\n"), 0o644))
	build := func(to, from string) {
		out, err := exec.Command("go", "build", "-o", to, from).CombinedOutput()
		require.NoError(b, err, string(out))
	}
	build(ours, ".")
	build(empty, source)
	run := func(name string, args ...string) time.Duration {
		at := time.Now()
		require.NoError(b, exec.Command(name, args...).Run())
		return time.Since(at)
	}
	var more time.Duration
	n := 0
	for b.Loop() {
		more += run(ours, "wall 48 high, gap 2.5") - run(empty)
		n++
	}
	b.ReportMetric(float64(more.Microseconds())/1000/float64(n), "ms-more/op")
}
