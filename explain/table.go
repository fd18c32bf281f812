package explain

import "strings"

// table is rows and columns. On a narrow terminal columns of words wrap, then the room between columns shrinks, and where
// even that is too wide each row is told as a list.
type table struct {
	title string
	head  []string
	rows  [][]string
	words []bool // columns of words: to the left; figures stand to the right
}

// newTable starts a table; a head that begins with "<" is that of a column of words.
func newTable(head ...string) *table {
	t := &table{}
	for _, h := range head {
		name, isWords := strings.CutPrefix(h, "<")
		t.head, t.words = append(t.head, name), append(t.words, isWords)
	}
	return t
}

func (t *table) row(cells ...string) { t.rows = append(t.rows, cells) }

func (t table) settled(fix func(string) string) block {
	u := table{title: fix(t.title), words: t.words, head: make([]string, len(t.head))}
	for i, h := range t.head {
		u.head[i] = fix(h)
	}
	for _, r := range t.rows {
		row := make([]string, len(r))
		for i, c := range r {
			row[i] = fix(c)
		}
		u.rows = append(u.rows, row)
	}
	return u
}

func (t table) lines(o Options) []string {
	t = t.used()
	widths := t.widths()
	var out []string
	if t.title != "" {
		for _, l := range wrap(t.title, o.width()) {
			out = append(out, inked(l, bold, o))
		}
	}
	between := 2
	if !t.squeeze(widths, total(widths, between)-o.width()) {
		if between = 1; !t.squeeze(widths, total(widths, between)-o.width()) {
			return append(out, t.listed(o)...)
		}
	}
	if strings.Join(t.head, "") != "" {
		for _, l := range t.line(t.head, widths, between) {
			out = append(out, inked(l, faint, o))
		}
	}
	for _, r := range t.rows {
		out = append(out, t.line(r, widths, between)...)
	}
	return out
}

// used drops the columns in which nothing stands.
func (t table) used() table {
	u := table{title: t.title}
	for i, h := range t.head {
		empty := true
		for _, r := range t.rows {
			empty = empty && (i >= len(r) || r[i] == "")
		}
		if empty {
			continue
		}
		u.head, u.words = append(u.head, h), append(u.words, t.words[i])
		for j, r := range t.rows {
			if len(u.rows) <= j {
				u.rows = append(u.rows, nil)
			}
			cell := ""
			if i < len(r) {
				cell = r[i]
			}
			u.rows[j] = append(u.rows[j], cell)
		}
	}
	return u
}

func (t table) widths() []int {
	w := make([]int, len(t.head))
	for i, h := range t.head {
		w[i] = cells(h)
		for _, r := range t.rows {
			w[i] = max(w[i], cells(r[i]))
		}
	}
	return w
}

func total(widths []int, between int) int {
	n := between * (len(widths) - 1)
	for _, w := range widths {
		n += w
	}
	return n
}

const leastColumn = 10 // a column of words is not made narrower than this

// squeeze takes over columns from the columns of words, one at a time from the widest.
func (t table) squeeze(widths []int, over int) bool {
	for ; over > 0; over-- {
		widest := -1
		for i, w := range widths {
			if t.words[i] && w > leastColumn && (widest < 0 || w > widths[widest]) {
				widest = i
			}
		}
		if widest < 0 {
			return false
		}
		widths[widest]--
	}
	return true
}

// line lays one row; a cell of words that was squeezed goes on below.
func (t table) line(row []string, widths []int, between int) []string {
	parts := make([][]string, len(row))
	deep := 1
	for i, c := range row {
		parts[i] = wrap(c, widths[i])
		deep = max(deep, len(parts[i]))
	}
	out := make([]string, deep)
	for k := range out {
		var b strings.Builder
		for i := range row {
			if i > 0 {
				b.WriteString(strings.Repeat(" ", between))
			}
			c := ""
			if k < len(parts[i]) {
				c = parts[i][k]
			}
			if t.words[i] {
				b.WriteString(padded(c, widths[i]))
			} else {
				b.WriteString(strings.Repeat(" ", max(0, widths[i]-cells(c))) + c)
			}
		}
		out[k] = strings.TrimRight(b.String(), " ")
	}
	return out
}

// listed tells each row as a list: its first cell, and the others under it with their heads.
func (t table) listed(o Options) []string {
	var out []string
	for _, r := range t.rows {
		out = append(out, wrap(r[0], o.width())...)
		for i := 1; i < len(r); i++ {
			if r[i] != "" {
				out = append(out, indentAll(wrap(strings.TrimSpace(t.head[i]+" "+r[i]), o.width()-4))...)
			}
		}
	}
	return out
}
