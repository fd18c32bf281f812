package main

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"time"

	"saywright/explain"
	"saywright/explain/draw"
	"saywright/grammar"
	"saywright/solver"
)

// file is a drawing or a job sheet, ready to be written.
type file struct {
	path    string
	content []byte
}

// ours stands in every drawing and job sheet that this program writes: only such files are written over.
const ours = "saywright"

func today() string { return time.Now().Format(time.DateOnly) }

func writeFiles(files []file) error {
	for _, f := range files {
		if err := replaceFile(f.path, f.content, forAll); err != nil {
			return fmt.Errorf("%s: %s", f.path, reason(err))
		}
	}
	return nil
}

// reason is why a file could not be read or written, without the path: a person said that.
func reason(err error) string {
	var path *fs.PathError
	var link *os.LinkError
	switch {
	case errors.As(err, &path):
		return path.Err.Error()
	case errors.As(err, &link):
		return link.Err.Error()
	}
	return err.Error()
}

func (r *round) save(a grammar.Act) {
	name := a.Words[0]
	if r.talk.now.empty() {
		r.none("nothing to save", "wall 48 high")
		return
	}
	was, err := r.talk.shelf.load(name)
	if e := r.talk.shelf.save(name, r.talk.now); e != nil {
		r.badFile("cannot save", name, e)
		return
	}
	facts := []solver.Fact{{Key: "saved", Names: []string{name}, Nums: counts(r.talk.now.size())}}
	if err == nil && pack(was) != pack(r.talk.now) {
		facts = append(facts, solver.Fact{Key: "saved before", Names: []string{name, before(name)}})
	}
	r.tell("save", facts...)
}

func (s standing) size() int {
	n := 0
	for _, b := range s.books {
		n += len(forms(b))
	}
	return n
}

// open lets what was saved stand in the place of all that stands; undo brings that back.
func (r *round) open(a grammar.Act) {
	what, ok := r.load(a.Words[0])
	if !ok {
		return
	}
	r.talk.tried, r.talk.lesson, r.talk.stepAt = nil, nil, 0
	r.stand(what, solver.Reply{Kind: "command", Topic: "open"}, nil,
		solver.Fact{Key: "opened", Names: a.Words[:1], Nums: counts(what.size())})
}

// load reads a saved wall, or says why there is none.
func (r *round) load(name string) (standing, bool) {
	what, err := r.talk.shelf.load(name)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		q := solver.Question{Key: "not saved", Facts: []solver.Fact{{Key: "name", Names: []string{name}}, {Key: "saved", Names: r.talk.shelf.names()}}}
		for _, n := range r.talk.shelf.names() {
			q.Choices = append(q.Choices, "open "+n)
		}
		if len(q.Choices) > 5 {
			q.Choices = nil
		}
		r.nothing = &q
	case err != nil:
		r.badFile("cannot open", name, err)
	}
	return what, err == nil
}

func (r *round) badFile(key, name string, err error) {
	r.none(key, "", solver.Fact{Key: "why", Names: []string{name, reason(err)}})
}

// wallNamed finds a wall by what a person calls it: this one, a wall of the conversation, or a saved one.
func (r *round) wallNamed(name string) (solver.Book, bool) {
	if name == "this" {
		return r.talk.now.book(r.talk.now.hand), true
	}
	if i := r.talk.now.at(name); i >= 0 && name != "" {
		return r.talk.now.books[i], true
	}
	what, ok := r.load(name)
	return what.book(what.hand), ok
}

// compare lays two walls side by side.
func (r *round) compare(a grammar.Act) {
	var sides [2]*solver.Answer
	for i, name := range a.Words {
		b, ok := r.wallNamed(name)
		if !ok {
			return
		}
		sides[i] = solver.Solve(b)
	}
	own := r.part(solver.Book{}, nil, &solver.Answer{Verdict: sides[1].Verdict, Change: solver.Differences(sides[0], sides[1])},
		solver.Reply{Kind: "command", Topic: "compare"}, solver.Fact{Key: "compared", Names: a.Words},
		solver.Fact{Key: "verdicts", Names: []string{string(sides[0].Verdict), string(sides[1].Verdict)}})
	own.Metric = r.talk.now.inMillimeters()
}

// sameAs says of the wall at hand all that was said of another.
func (r *round) sameAs(a grammar.Act) {
	from, ok := r.wallNamed(a.Words[0])
	if !ok {
		return
	}
	to := r.talk.now.book(r.talk.now.hand)
	if from.Wall == to.Wall && a.Words[0] == to.Wall {
		r.none("same wall", "", solver.Fact{Key: "name", Names: a.Words})
		return
	}
	var told []solver.Replaced
	for _, s := range from.Standing() {
		next, _, replaced, err := to.With(s, nil)
		if err != nil {
			r.cannot(s, err)
			return
		}
		to, told = next, append(told, replaced...)
	}
	r.stand(r.talk.now.with(to), solver.Reply{Kind: "command", Topic: "same as"}, told,
		solver.Fact{Key: "same as", Names: append([]string{a.Words[0]}, formsOf(from.Standing())...)})
}

// drawTo readies a drawing, or the job sheet where the file's name says so.
func (r *round) drawTo(a grammar.Act) { r.paper(a, ".svg") }

// printTo readies the job sheet, or a drawing where the file's name says so.
func (r *round) printTo(a grammar.Act) { r.paper(a, ".html") }

func (r *round) paper(a grammar.Act, ending string) {
	path := a.Words[0]
	switch strings.ToLower(filepath.Ext(path)) {
	case ".svg":
		ending = ".svg"
	case ".html", ".htm":
		ending = ".html"
	default:
		path += ending
	}
	switch {
	case ending == ".svg":
		r.picture(a, path, "drawn", draw.SVG)
	case strings.Contains(strings.ToLower(filepath.Base(path)), "pole"):
		r.picture(a, path, "printed", draw.StoryPole) // landing-pole.html: the story pole at full size
	default:
		r.picture(a, path, "printed", draw.JobSheet)
	}
}

// picture readies a file. It is never written over one that this program did not write.
func (r *round) picture(a grammar.Act, path, key string, made func(*solver.Answer, draw.Sheet) ([]byte, error)) {
	if q := inTheWay(path); q != nil {
		r.nothing = q
		return
	}
	b, base := r.at("")
	whole := r.everything(b, base)
	explain.Say(whole, r.talk.show()) // the drawing shows sums, steps and cautions in words
	content, err := made(whole, draw.Sheet{Wall: b.Wall, Date: r.talk.today()})
	if err != nil {
		r.none("nothing to draw", "wall 48 high, span 12 feet", solver.Fact{Key: "why", Names: []string{err.Error()}})
		return
	}
	r.files = append(r.files, file{path, content})
	r.tell(string(a.Kind), solver.Fact{Key: key, Names: []string{path}})
}

// everything is the answer to what stands with all tables that a job sheet shows.
func (r *round) everything(b solver.Book, base *solver.Answer) *solver.Answer {
	whole := *base
	whole.Work, whole.Assumed, whole.Cautions = slices.Clip(whole.Work), slices.Clip(whole.Assumed), slices.Clip(whole.Cautions)
	topics := []string{"marks", "cuts", "shopping", "steps", "cautions"}
	if l := base.Layout; l != nil && l.Along != nil && len(l.Posts) > 0 {
		topics = append(topics, "anchors")
	}
	for _, topic := range topics {
		part := solver.Ask(b, base, topic, nil)
		whole.Facts = append(slices.Clip(whole.Facts), part.Facts...)
		join(&whole, part)
	}
	whole.Verdict, whole.Layout, whole.Options, whole.Metric = base.Verdict, base.Layout, base.Options, r.talk.now.inMillimeters()
	return &whole
}

// inTheWay asks for another name where a file is there that is not one of ours.
func inTheWay(path string) *solver.Question {
	content, err := os.ReadFile(path)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return nil
	case err == nil && strings.Contains(string(content[:min(len(content), 4096)]), ours):
		return nil
	}
	names := []string{path}
	if err != nil {
		names = append(names, reason(err))
	}
	return &solver.Question{Key: "file in the way", Facts: []solver.Fact{{Key: "why", Names: names}}}
}
