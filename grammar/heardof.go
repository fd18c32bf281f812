package grammar

// hearsayVerbs are what comes to somebody's ears or eyes.
var hearsayVerbs = wordSet("heard read learned learnt seen noticed understand understood")

// withoutHearsay leaves out a reason that somebody has heard or read, where it names no figure: "no bay over six feet, because I've
// heard that long boards sag". It reports nothing of the wall that could be held against the rest.
func withoutHearsay(in []atom) []atom {
	for i := 0; i+3 < len(in); i++ {
		if !speakers[in[i].text] || i > 0 && !causes[in[i-1].text] && !phraseStartsClause(in[:i], nil) {
			continue
		}
		verb := i + 1
		for verb < len(in) && (in[verb].text == "have" || in[verb].text == "just" || in[verb].text == "also" || in[verb].text == "once" || in[verb].text == "always") {
			verb++
		}
		if verb+2 >= len(in) || !hearsayVerbs[in[verb].text] {
			continue
		}
		end := verb + 1
		for end < len(in) && !breaks(in[end]) && in[end].text != "so" {
			end++
		}
		caused := i > 0 && causes[in[i-1].text] && in[i-1].text != "or"
		if !onlyHearsay(in[verb+1:end], caused) {
			continue
		}
		if caused && i > 2 {
			from := i - 1
			if breaks(in[from-1]) && in[from-1].text == "," {
				from--
			}
			return cutOut(in, from, end)
		}
		rest := end
		for rest < len(in) && (breaks(in[rest]) || in[rest].text == "so" || in[rest].text == "and") {
			rest++
		}
		if so := rest - 1; rest+1 < len(in) && so > end && in[so].text == "so" || rest+1 < len(in) && rest > end && in[end].text == "so" {
			return cutOut(in, i, rest)
		}
	}
	return in
}

// onlyHearsay reports whether what was heard holds nothing that could be set, asked or ordered; a reason may compare.
func onlyHearsay(part []atom, caused bool) bool {
	if len(part) < 2 {
		return false
	}
	unknown := false
	list := lex(part, Context{})
	for i := range list {
		switch t := &list[i]; t.kind {
		case kNum, kSize, kWh, kWhere, kUnits, kCmd, kName, kSide, kNot, kNo, kFix:
			return false
		case kUnknown:
			if words().numberish(t.text) {
				return false
			}
			unknown = true
		case kPart, kIt, kFill, kStockWord, kCutWord, kTheirs, kMore:
		default:
			if !caused {
				return false
			}
		}
	}
	return unknown
}

// tooMuchOf and tooLittleOf are what something is too much of where it is made less, and where it is made more.
var (
	tooMuchOf   = wordSet("tall high big wide long large loose deep far")
	tooLittleOf = wordSet("low small short narrow tight close little")
	madeLess    = wordSet("lower narrow tighten reduce shrink trim shorten decrease drop halve")
	madeMore    = wordSet("raise widen increase lengthen stretch double loosen enlarge add")
	madeOther   = wordSet("make set put change bring")
)

// judgedLast leaves out a judgment that ends a line and tells why something is changed: "lower the wall two inches, it's too tall".
func judgedLast(in []atom) []atom {
	end := len(in)
	for end > 0 && in[end-1].kind == aSign {
		end--
	}
	last := end
	for last > 0 && besideJudged[in[last-1].text] {
		last--
	}
	if last < 6 || !tooMuchOf[in[last-1].text] && !tooLittleOf[in[last-1].text] || in[last-2].text != "too" {
		return in
	}
	verb := last - 3
	for verb > 1 && muchSo[in[verb].text] {
		verb--
	}
	if verb < 3 || !judges[in[verb].text] || !pointing[in[verb-1].text] {
		return in
	}
	from := verb - 1
	if causes[in[from-1].text] && in[from-1].text != "so" {
		from--
	}
	if !breaks(in[from-1]) && from == verb-1 {
		return in
	}
	much := tooMuchOf[in[last-1].text]
	for _, a := range in[:from] {
		if madeOther[a.text] || madeLess[a.text] && much || madeMore[a.text] && !much {
			return cutOut(in, from, end)
		}
	}
	return in
}
