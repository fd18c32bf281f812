package draw

import (
	"regexp"

	"saywright/solver"
	"saywright/solver/exact"
)

// inchesIn finds a length in inches in a normal form: "96 in", "3/32 in", "1-5/8 in", "-1/2 in".
var inchesIn = regexp.MustCompile(`(-?)(?:(\d+)-)?(\d+(?:[./]\d+)?) in\b`)

// assumed are the defaults that an answer leans on, their lengths in the unit of the sheet.
func (r reading) assumed(a *solver.Answer) []string {
	if !r.Metric {
		return a.Assumed
	}
	out := make([]string, len(a.Assumed))
	for i, form := range a.Assumed {
		out[i] = inchesIn.ReplaceAllStringFunc(form, r.inMillimeters)
	}
	return out
}

// inMillimeters writes one such length in millimeters, and leaves what is no number alone.
func (r reading) inMillimeters(said string) string {
	m := inchesIn.FindStringSubmatch(said)
	v, err := exact.Parse(m[3])
	if err != nil {
		return said
	}
	if m[2] != "" {
		v = v.Add(exact.Must(m[2]))
	}
	if m[1] != "" {
		v = v.Neg()
	}
	return r.Length(v) + " mm"
}
