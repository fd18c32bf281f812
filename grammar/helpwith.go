package grammar

func (s *speech) helpWith(g *group) {
	list := strip(idleGone(corrected(g.items)))
	a := Act{Kind: HelpMe, Topic: g.topic}
	if len(list) > 0 || g.topic == "" {
		n, ok := s.nameOf(g, list)
		if !ok && len(list) > 0 {
			s.notUnderstood(g, list)
			return
		}
		a.Topic = n.Topic
		if n.Name != nil {
			a.Topic = string(n.Name.Quantity)
		}
	}
	s.act(g, a)
}

// corrected returns what stands after the last word of correction: "with the gap, no, with the opening".
func corrected(list []item) []item {
	for i := len(list) - 1; i > 0; i-- {
		if it := list[i]; !it.value() && (it.kind == kNo || it.kind == kFix) && len(strip(list[i+1:])) > 0 {
			return list[i+1:]
		}
	}
	return list
}
