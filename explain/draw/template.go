package draw

import (
	"bytes"
	"embed"
	"html/template"
	"sync"
)

//go:embed job.html pole.html
var pages embed.FS

// parsed reads the page templates once, when the first page is asked for.
var parsed = sync.OnceValue(func() *template.Template {
	return template.Must(template.ParseFS(pages, "*.html"))
})

func render(name string, data any) ([]byte, error) {
	var b bytes.Buffer
	if err := parsed().ExecuteTemplate(&b, name, data); err != nil {
		return nil, err
	}
	return []byte(shown(b.String())), nil // a person's words may hold what no page can
}
