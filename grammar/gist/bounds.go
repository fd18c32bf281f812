package gist

import "strings"

// The words by which a figure bounds from above or below are many, but all of one build: a denial, a word that compares, and "than".
const (
	gistLarger  = `more bigger larger wider greater longer taller higher broader fatter further farther`
	gistSmaller = `less smaller narrower tighter closer nearer shorter lower slimmer thinner fewer`
	gistApart   = `further_apart farther_apart further_away farther_away more_apart wider_apart`
	gistClose   = `closer_together nearer_together tighter_together`
	gistDenials = `no not never nothing none not_be never_be not_to_be not_any not_be_any not_get not_get_any never_get not_sit not_end_up not_ever_be not_go
	not_come not_rise not_reach not_stand not_come_out not_come_any not_sit_any not_stand_any not_go_any not_lie not_have never_sit never_go never_stand
	not_one not_a_bit not_a_hair`
)

// boundSenses are the senses of bounds of every build.
var boundSenses = func() string {
	var s strings.Builder
	row := func(senses, denials, comparing string) {
		s.WriteString(senses + ":")
		for _, c := range strings.Fields(comparing) {
			if denials == "" {
				s.WriteString(" " + c + "_than")
			}
			for _, d := range strings.Fields(denials) {
				s.WriteString(" " + d + "_" + c + "_than")
			}
		}
		s.WriteString("\n")
	}
	row("atmost", gistDenials, gistLarger)
	row("atleast", gistDenials, gistSmaller)
	row("atmost+apart", gistDenials, gistApart)
	row("atleast+apart", gistDenials, gistClose)
	row("over", "", gistLarger)
	row("under", "", gistSmaller)
	row("over+apart", "", gistApart)
	row("under+apart", "", gistClose)
	return s.String()
}()
