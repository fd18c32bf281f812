package solver

// Metric reports whether lengths are shown in millimeters: the person said so, or said nothing of units and every length in metric ones.
func (b Book) Metric() bool {
	for i := len(b.said) - 1; i >= 0; i-- {
		if b.said[i].Name.Quantity == Units {
			return b.said[i].Value.Word == "metric"
		}
	}
	return b.Metered()
}

// Metered reports whether lengths stand, and each of them was said in a metric unit.
func (b Book) Metered() bool {
	found := false
	for _, s := range b.said {
		switch s.Value.Unit {
		case Inch:
			return false
		case Millimeter:
			found = true
		}
	}
	return found
}

// mixed reports whether some lengths were said in a metric unit, though lengths are shown in inches and nothing was said of units.
func (b Book) mixed() bool {
	metric := false
	for _, s := range b.said {
		if s.Name.Quantity == Units {
			return false
		}
		metric = metric || s.Value.Unit == Millimeter
	}
	return metric && !b.Metric()
}
