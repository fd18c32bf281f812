package act

import "saywright/solver"

// Pending is a question that waits for its answer, and the line that it was asked about.
type Pending struct {
	Line     string
	Question solver.Question
}
