package explain

import "saywright/solver"

// cautions says the warnings, each with its source where that is a published one.
func (v *voice) cautions() {
	for _, c := range v.a.Cautions {
		if c.Text == "" {
			continue
		}
		text := c.Text
		if published(c.Source) {
			text += " (" + quoted(c.Source) + ")"
		}
		v.p.add(para{lead: "Caution: ", text: text, ink: warning})
	}
}

func published(source string) bool {
	switch source {
	case "", solver.NoSource, "geometry", "as measured":
		return false
	}
	return true
}

func (v *voice) fillCaution(c *solver.Caution) {}

func (v *voice) fillStep(s *solver.StepOf) {}
