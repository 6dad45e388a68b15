package lesson

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"spraywright/calc"
)

// A node is an element of MathML (W3C MathML Core): a leaf with text, or one with others in it.
type node struct {
	tag, text string
	in        []*node
}

// mathML lays out a formula as reports write it, "WFT = DFT ÷ n ÷ (VS ÷ 100)": what divides stands beneath a bar, and
// brackets that the bar makes needless go. What is no formula becomes plain text.
func mathML(text string, comma bool) *node {
	p := &parser{rest: strings.TrimSpace(text), comma: comma}
	n := p.equation()
	if p.failed || p.rest != "" {
		return &node{tag: "mtext", text: text}
	}
	return n
}

// A parser reads a formula from the left.
type parser struct {
	rest   string
	comma  bool // decimals follow a comma
	failed bool
}

// next takes a sign off, with the spaces around it, where it is the next.
func (p *parser) next(sign string) bool {
	rest, ok := strings.CutPrefix(strings.TrimLeft(p.rest, " "), sign)
	if ok {
		p.rest = strings.TrimLeft(rest, " ")
	}
	return ok
}

func (p *parser) equation() *node {
	row := &node{tag: "mrow", in: []*node{p.sum()}}
	for p.next("=") {
		row.in = append(row.in, sign("="), p.sum())
	}
	return row.bare()
}

// sum reads "a + b − c".
func (p *parser) sum() *node {
	row := &node{tag: "mrow"}
	if p.next("−") {
		row.in = append(row.in, sign("−"))
	}
	row.in = append(row.in, p.product())
	for {
		switch {
		case p.next("+"):
			row.in = append(row.in, sign("+"))
		case p.next("−"):
			row.in = append(row.in, sign("−"))
		default:
			return row.bare()
		}
		row.in = append(row.in, p.product())
	}
}

// product reads "a × b ÷ c × d": what divides goes beneath one bar, in the order in which it stands.
func (p *parser) product() *node {
	above, below := &node{tag: "mrow"}, &node{tag: "mrow"}
	above.times(p.power())
	for {
		switch {
		case p.next("×"):
			above.times(p.power())
		case p.next("÷"):
			below.times(p.power())
		case below.in == nil:
			return above.loose()
		default:
			return &node{tag: "mfrac", in: []*node{above.loose(), below.loose()}}
		}
	}
}

// times adds a factor. Brackets stay around a sum.
func (n *node) times(factor *node) {
	if n.in != nil {
		n.in = append(n.in, sign("×"))
	}
	n.in = append(n.in, factor)
}

// power reads "a²", "a^b" and a minus before a number.
func (p *parser) power() *node {
	if p.next("−") {
		return &node{tag: "mrow", in: []*node{sign("−"), p.power()}}
	}
	base := p.atom()
	if digits := p.raised(); digits != "" {
		return &node{tag: "msup", in: []*node{base, number(digits)}}
	}
	if p.next("^") {
		return &node{tag: "msup", in: []*node{base, p.atom().loose()}}
	}
	return base
}

// raised takes digits set high off, and gives them as plain ones.
func (p *parser) raised() string {
	const high = "⁰¹²³⁴⁵⁶⁷⁸⁹⁻"
	text := ""
	for p.rest != "" {
		r, size := utf8.DecodeRuneInString(p.rest)
		i := strings.IndexRune(high, r)
		if i < 0 {
			break
		}
		n := utf8.RuneCountInString(high[:i])
		text += string([]rune("0123456789−")[n])
		p.rest = p.rest[size:]
	}
	return text
}

// atom reads a number, a name, a function with what it is of, a root, or what stands in brackets.
func (p *parser) atom() *node {
	r, _ := utf8.DecodeRuneInString(p.rest)
	switch {
	case p.next("√"):
		p.expect("(")
		n := p.sum()
		p.expect(")")
		return &node{tag: "msqrt", in: []*node{n}}
	case p.next("("):
		n := p.sum()
		p.expect(")")
		return &node{tag: "mrow", in: []*node{sign("("), n, sign(")")}}
	case r >= '0' && r <= '9':
		return number(p.take(func(i int, r rune, after string) bool {
			return r >= '0' && r <= '9' || (r == '.' && !p.comma || r == ',' && p.comma) && after != "" && after[0] >= '0' && after[0] <= '9'
		}))
	case unicode.IsLetter(r):
		return p.named()
	}
	p.failed, p.rest = true, ""
	return &node{tag: "mtext"}
}

func (p *parser) expect(sign string) {
	if !p.next(sign) {
		p.failed, p.rest = true, ""
	}
}

// take takes characters off as long as is holds for one; after is what follows it.
func (p *parser) take(is func(i int, r rune, after string) bool) string {
	for i, r := range p.rest {
		if !is(i, r, p.rest[i+utf8.RuneLen(r):]) {
			text := p.rest[:i]
			p.rest = p.rest[i:]
			return text
		}
	}
	text := p.rest
	p.rest = ""
	return text
}

// named reads a name, "ρ_2", or a function of some numbers. A function's name may be several words: "round up".
func (p *parser) named() *node {
	name := strings.TrimRight(p.take(func(_ int, r rune, after string) bool {
		first, _ := utf8.DecodeRuneInString(after)
		return unicode.IsLetter(r) || unicode.IsDigit(r) && !strings.ContainsRune("⁰¹²³⁴⁵⁶⁷⁸⁹", r) || r == '_' || r == ' ' && unicode.IsLetter(first)
	}), " ")
	n := symbol(name)
	if !p.next("(") {
		return n
	}
	call := &node{tag: "mrow", in: []*node{n, sign("("), p.sum()}}
	for p.next(",") || p.next(";") {
		mark := ","
		if p.comma {
			mark = ";"
		}
		call.in = append(call.in, sign(mark), p.sum())
	}
	p.expect(")")
	call.in = append(call.in, sign(")"))
	return call
}

// symbol is a name, what follows its underscore set low.
func symbol(name string) *node {
	base, low, has := strings.Cut(name, "_")
	n := &node{tag: "mi", text: base}
	if !has {
		return n
	}
	return &node{tag: "msub", in: []*node{n, {tag: "mi", text: strings.ReplaceAll(low, "_", " ")}}}
}

func sign(s string) *node   { return &node{tag: "mo", text: s} }
func number(s string) *node { return &node{tag: "mn", text: s} }

// bare is a row's only element instead of the row.
func (n *node) bare() *node {
	if n.tag == "mrow" && len(n.in) == 1 {
		return n.in[0]
	}
	return n
}

// loose is what needs no brackets: what stands alone, and products and fractions among factors.
func (n *node) loose() *node {
	n = n.bare()
	if inner := n.bracketed(); inner != nil {
		return inner.loose()
	}
	if n.tag == "mrow" && (len(n.in) < 2 || n.in[1].text == "×") {
		for i, f := range n.in {
			if inner := f.bracketed(); inner != nil && !inner.isSum() {
				n.in[i] = inner
			}
		}
	}
	return n
}

// bracketed is what stands in the brackets that are all of n, or nil.
func (n *node) bracketed() *node {
	if n.tag == "mrow" && len(n.in) == 3 && n.in[0].text == "(" {
		return n.in[1]
	}
	return nil
}

func (n *node) isSum() bool {
	if n.tag != "mrow" {
		return false
	}
	for _, e := range n.in {
		if e.text == "+" || e.text == "−" {
			return true
		}
	}
	return false
}

// write writes the elements, each with how many of those that follow stand in it.
func (n *node) write(w calc.JSON, key string) {
	var all []*node
	var gather func(n *node)
	gather = func(n *node) {
		all = append(all, n)
		for _, e := range n.in {
			gather(e)
		}
	}
	gather(n)
	w.List(key, len(all), func(i int) {
		w.Text("tag", all[i].tag)
		w.Text("text", all[i].text)
		w.Ints("in", []int{len(all[i].in)})
	})
}
