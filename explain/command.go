package explain

import (
	"strings"

	"saywright/solver"
)

// command answers what was done: undone, kept, forgotten, saved.
func (v *voice) command() {
	for _, f := range v.a.Facts {
		v.done(f)
	}
	if v.a.Layout != nil || len(v.a.Conflicts)+len(v.a.Because) > 0 {
		v.stated()
	}
}

func (v *voice) phrases(list []string) string {
	var out []string
	for _, s := range list {
		out = append(out, v.phrase(s))
	}
	return and(out)
}

func (v *voice) done(f solver.Fact) {
	name := ""
	if len(f.Names) > 0 {
		name = quoted(f.Names[0])
	}
	switch f.Key {
	case "undone":
		v.p.say("Taken back: "+v.phrases(f.Names), noInk)
	case "redone":
		v.p.say("Back again: "+v.phrases(f.Names), noInk)
	case "kept":
		v.p.say("Kept: "+v.phrases(f.Names), noInk)
	case "forgot":
		v.p.say("Forgotten: "+v.phrases(f.Names), noInk)
	case "set aside":
		v.p.say("The "+name+" is set aside: it blocks no more, and its caution stays", noInk)
	case "started over":
		v.p.say("All forgotten", noInk)
	case "saved":
		v.p.say("Saved as "+name, noInk)
	case "opened":
		v.p.say(name+" is open", noInk)
	case "drawn", "printed":
		v.p.say("It is in "+name, noInk)
	case "recap":
		v.recap(f)
	case "help":
		v.help(f)
	}
}

func (v *voice) recap(f solver.Fact) {
	if len(f.Names) == 0 {
		return
	}
	if f.Names[0] != "" {
		v.p.add(para{text: quoted(f.Names[0]) + ":", ink: bold})
	}
	for _, s := range f.Names[1:] {
		v.p.add(para{text: "  " + quoted(s), raw: true})
	}
}

func (v *voice) help(f solver.Fact) {
	if len(f.Names) < 2 {
		return
	}
	v.p.add(para{text: strings.Join(f.Names[1:], "\n")})
}

// Greeting is what a conversation begins with.
func Greeting(o Options) string {
	p := page{}
	p.add(para{text: "Say what wall you want, such as: wall 48 high, gap two and a half. `help` tells more, `quit` leaves."})
	return p.text(o)
}
