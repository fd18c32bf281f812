package explain

// asked answers a question.
func (v *voice) asked() {
	v.stated()
}

func (v *voice) optionsTable() {}
