package parse

import (
	"regexp"

	"saywright/grammar/scan"
	"saywright/solver"
)

// What somebody else could do is tried, and what somebody else did sets nothing.

// OthersCould is what somebody else could do, or anybody: it is tried.
var OthersCould = regexp.MustCompile(`^(?:(?:and|but|so|well|because|though|ok|okay|now|see|look) )*(?:(?:he|she|they|one|somebody|someone|anybody|anyone|(?:my|our|the) (?:neighbor|brother|dad|father|boss|framer|carpenter|contractor|builder|crew|guy|fellow|man|apprentice|joiner))(?: probably| surely| easily| always| also| just)* (?:could|might|can|would)(?: probably| surely| easily| always| also| just)* |you(?: probably| surely| easily| always| also| just)* (?:could|might|can)(?: probably| surely| easily| always| also| just)* )(?:do|make|build|manage|get by|get away|pull|get)(?: it| this| that| the wall| the job| the whole thing)? (?:off )?(?:in|with|on|out of) `)

// CouldYou asks whether a wall can be done with so many: "could you do it in six rails".
var CouldYou = regexp.MustCompile(`^(?:(?:and|but|so|well|ok|okay|now) )*(?:could|can|might) (?:you|he|she|they|one|somebody|someone|anybody|anyone)(?: still| even| really| just| also| maybe| possibly)* (?:do|build|manage|pull off|pull|get away with) (?:it|this|that|the wall|the job|the whole thing)?(?: off)? ?(?:in|with|on|out of) `)

// OthersDid tells how somebody else did a wall: nothing is set by it.
var OthersDid = regexp.MustCompile(`^(?:(?:and|but|so|well|because|though|see|look) )*(?:he|she|they|somebody|someone|(?:my|our|the|his|her|their)(?: other| last| first)? [a-z]+)(?: once| only| always| just| also)* (?:did|built|does|is doing|are doing|was doing|has done|have done|had done|'s doing) (?:it|his|hers|theirs|that one|his own|her own|their own)(?: all| once| only| just)* (?:in|with|at|out of|on) `)

// BegsPlease reports whether a line is put as a plea.
func BegsPlease(atoms []scan.Atom) bool {
	for _, a := range atoms {
		if a.Text == "please" || a.Text == "kindly" {
			return true
		}
	}
	return false
}

// ToldOfYard reports whether statements are of what is sold, priced or at hand.
func ToldOfYard(all []solver.Statement) bool {
	for _, st := range all {
		switch st.Name.Quantity {
		case solver.Stock, solver.Price, solver.Have, solver.Extra, solver.Measured:
			return true
		}
	}
	return false
}
