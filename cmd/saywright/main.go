// Saywright hears what somebody wants of a half wall, in plain words, and answers with a layout and its arithmetic,
// or with the rule that blocks it and the least change that would mend it.
//
// This command opens the doors between hearing (grammar), working it out (solver) and telling (explain), and holds
// the conversation: what stands, the way back, what was tried and asked, walls kept in files. It knows no words
// and no geometry of its own.
package main

import (
	"flag"
	"fmt"
	"io"
	"os"
	"runtime/debug"
	"strings"

	"saywright/explain"
)

const usage = `saywright hears what you want of a half wall, and answers with a layout or with what stands in its way.

    saywright                            a conversation in this terminal (Ctrl-D leaves)
    saywright wall 48 high, gap 2.5      one answer
    saywright < lines.txt                one answer for each line
    saywright -json < lines.txt          the same, one JSON object for each line

`

const after = `
Exit status: 0 when all was answered, 1 when the last answer is blocked or was unclear (one answer, or lines from
a pipe), 2 for flags that are not known. NO_COLOR is honored. A line that begins with - goes after --.
Walls saved by name are in $XDG_DATA_HOME/saywright, lines said before in $XDG_STATE_HOME/saywright.
What it works out is arithmetic and rules of thumb; local code and a licensed professional decide.
`

func main() {
	// The word tables fill the first few megabytes at once. Collecting garbage meanwhile would be most of a short run.
	debug.SetGCPercent(800)
	os.Exit(run(os.Args[1:], os.Stdin, os.Stdout, os.Stderr))
}

// run is the program; it returns the exit status.
func run(args []string, in, out, errs *os.File) int {
	show := screen{fixed: explain.Options{Width: 80}}
	flags := flag.NewFlagSet("saywright", flag.ContinueOnError)
	flags.SetOutput(io.Discard)
	flags.BoolVar(&show.json, "json", false, "answer in JSON Lines")
	flags.IntVar(&show.width, "width", 0, "lay text out in `N` columns, 20 to 400")
	noColor := flags.Bool("no-color", false, "no color")
	plain := flags.Bool("plain", false, "plain ASCII")
	version := flags.Bool("version", false, "print the version")
	switch err := flags.Parse(args); {
	case err == flag.ErrHelp:
		describe(out, flags)
		return 0
	case err == nil && show.width != 0 && (show.width < 20 || show.width > 400):
		err = fmt.Errorf("-width: got %d, want 20 to 400", show.width)
		fallthrough
	case err != nil:
		fmt.Fprintf(errs, "%v; saywright -h tells the flags\n", err)
		return 2
	}
	if *version {
		fmt.Fprintln(out, "saywright", versionOf())
		return 0
	}
	talking := flags.NArg() == 0 && !show.json && isTerminal(in) && isTerminal(out)
	show.fixed.Color = !*noColor && !show.json && colored()
	show.fixed.ASCII = *plain || !show.json && isTerminal(out) && !utf8Terminal()
	talk := newTalk(dataFolder(), show.options)
	switch {
	case talking:
		return converse(talk, show)
	case flags.NArg() > 0:
		return pipe(strings.NewReader(strings.Join(flags.Args(), " ")), out, talk, show)
	}
	return pipe(in, out, talk, show)
}

func describe(w io.Writer, flags *flag.FlagSet) {
	io.WriteString(w, usage)
	flags.SetOutput(w)
	flags.PrintDefaults()
	io.WriteString(w, after)
}

func versionOf() string {
	info, ok := debug.ReadBuildInfo()
	if !ok || info.Main.Version == "" {
		return "(unknown)"
	}
	return info.Main.Version
}
