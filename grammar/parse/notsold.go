package parse

import "strings"

// pricesAmong reports whether a price is spoken of where something is forgotten: in the words that forget, or beside what is named.
func (k *clause) pricesAmong(head string) bool {
	if strings.Contains(head, "price") || strings.Contains(head, "cost") {
		return true
	}
	for _, it := range k.items {
		if !it.value() && (it.Text == "price" || it.Text == "prices" || it.Text == "cost" || it.Text == "costs") {
			return true
		}
	}
	return false
}
