package explain

import "saywright/solver"

// CSV writes the table of a topic for another program; "" where the answer has none.
func CSV(a *solver.Answer, topic string) string { return "" }
