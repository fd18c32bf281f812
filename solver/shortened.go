package solver

import (
	"sort"

	"saywright/solver/exact"
)

// Shortened answers for each piece that came out too short ("short bay 1 rail 3 = 1/4 in"): how long it is now, how
// loose it would sit in its own place, which other pieces of the list it can still become, longest first, and whether a
// leftover of the plan gives the piece anew.
func (s *Site) Shortened() (f Findings) {
	all, q := s.gauges()
	if q == nil {
		q = s.doubts(all)
	}
	cuts := s.Cuts()
	if q == nil {
		q = cuts.Ask
	}
	if q != nil || len(cuts.Conflicts) > 0 || s.up() == nil {
		return Findings{Ask: q, Conflicts: cuts.Conflicts}
	}
	rails := s.railPieces(all)
	s.shareLengths(rails)
	for _, st := range s.Short {
		r := railNamed(rails, st.Name)
		if r == nil {
			f.Ask = asking("no such rail", figures("rails", exact.Int(st.Name.Rail), exact.Int(len(s.Layout.Tops))), forget(st))
			continue
		}
		f.and(s.shortRail(r, st, cuts.Cuts, rails))
	}
	return f
}

func railNamed(rails []*railPiece, n Name) *railPiece {
	for _, r := range rails {
		if r.rail == n.Rail && (r.gauge.bay == n.Bay || n.Bay == 0 && r.gauge.bay == 1) {
			return r
		}
	}
	return nil
}

func (s *Site) shortRail(r *railPiece, st Statement, cuts []Cut, rails []*railPiece) (f Findings) {
	now := Less(Num(r.length), Num(st.Value.Num))
	f.Work = append(f.Work, Line(r.name(), "came out", now))
	if now.Value.Sign() <= 0 || st.Value.Num.Sign() <= 0 {
		f.Ask = asking("short by how much", Fact{Key: "short", Names: []string{st.String()}, Nums: []exact.Rat{now.Value}}, forget(st))
		return f
	}
	loose := Less(Num(r.room), Num(now.Value))
	f.Work = append(f.Work, Line(r.name(), "play", loose))
	f.Facts = append(f.Facts, figures("short", exact.Int(r.gauge.bay), exact.Int(r.rail), now.Value, loose.Value))
	serves := s.wouldServe(r, now.Value, cuts)
	f.Facts = append(f.Facts, serves...)
	if len(serves) == 0 {
		f.and(s.allToThis(r, now.Value, rails))
	}
	f.Facts = append(f.Facts, s.fromLeftover(r)...)
	return f
}

// wouldServe lists the other pieces of the same size that are no longer than what is left, the longest first.
func (s *Site) wouldServe(r *railPiece, left exact.Rat, cuts []Cut) (facts []Fact) {
	var fit []Cut
	for _, c := range cuts {
		own := c.Piece == "rail" && c.Bay == r.gauge.bay && (c.Rail == r.rail || c.Rail == 0)
		if !own && sameSize(c.Size, s.RailSize) && c.Length.Cmp(left) <= 0 {
			fit = append(fit, c)
		}
	}
	sort.SliceStable(fit, func(i, j int) bool { return fit[j].Length.Less(fit[i].Length) })
	for _, c := range fit {
		facts = append(facts, Fact{Key: "would serve", Names: []string{pieceName(c)},
			Nums: []exact.Rat{c.Length, left.Sub(c.Length), exact.Int(c.Count)}})
	}
	return facts
}

// allToThis tells how loose the loosest rail of the bay would be with all of them cut to this length.
func (s *Site) allToThis(r *railPiece, left exact.Rat, rails []*railPiece) (f Findings) {
	loosest := r
	for _, o := range rails {
		if o.gauge == r.gauge && loosest.room.Less(o.room) {
			loosest = o
		}
	}
	play := Less(Num(loosest.room), Num(left))
	f.Work = []Work{Line(loosest.name(), "play with all cut to this", play)}
	f.Facts = []Fact{figures("serves nothing", exact.Int(loosest.gauge.bay), exact.Int(loosest.rail), left, play.Value)}
	return f
}

// fromLeftover looks for a leftover of the buying plan that gives the piece anew.
func (s *Site) fromLeftover(r *railPiece) (facts []Fact) {
	best := Board{}
	for _, b := range s.Buying().Plan {
		if sameSize(b.Size, s.RailSize) && !b.Left.Less(r.length) && (best.Times == 0 || b.Left.Less(best.Left)) {
			best = b
		}
	}
	if best.Times == 0 {
		return []Fact{figures("new board", r.length)}
	}
	return []Fact{figures("from a leftover", r.length, best.Board, best.Left)}
}
