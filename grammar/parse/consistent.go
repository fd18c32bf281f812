package parse

import "saywright/solver"

// consistent reports whether the values of one clause can stand together: different quantities, or two sides of one.
func consistent(list []made) bool {
	seen := map[string]solver.Op{}
	for _, m := range list {
		name := m.st.Name.String()
		op, twice := seen[name]
		if twice && !(lower(op) && upper(m.st.Op) || upper(op) && lower(m.st.Op)) {
			return false
		}
		seen[name] = m.st.Op
	}
	return len(kindsOf(list, solver.Length, solver.Count)) < 2
}

// kindsOf lists which quantities of the given kinds are spoken of.
func kindsOf(list []made, kinds ...solver.Kind) map[string]bool {
	names := map[string]bool{}
	for _, m := range list {
		for _, k := range kinds {
			if m.kind == k {
				names[m.st.Name.String()] = true
			}
		}
	}
	return names
}

func lower(o solver.Op) bool { return o == solver.GT || o == solver.GE }

func upper(o solver.Op) bool { return o == solver.LT || o == solver.LE }
