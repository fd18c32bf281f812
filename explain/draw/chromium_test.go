package draw

import (
	"encoding/json"
	"flag"
	"fmt"
	"html"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
)

var lookAt = flag.String("look", "", "a folder to write every test wall's sheets to, to be looked at by eye")

// chromium runs a headless browser, or skips the test where none is installed.
func chromium(t *testing.T, args ...string) []byte {
	t.Helper()
	if testing.Short() {
		t.Skip("a browser takes seconds: left out of -short")
	}
	path := ""
	for _, name := range []string{"chromium", "chromium-browser", "google-chrome"} {
		if p, err := exec.LookPath(name); err == nil {
			path = p
			break
		}
	}
	if path == "" {
		t.Skip("no Chromium on this machine: what a browser shows is not looked at (apt-get install chromium)")
	}
	args = append([]string{"--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--hide-scrollbars",
		"--disable-background-networking", "--disable-component-update", "--disable-sync", "--user-data-dir=" + t.TempDir()}, args...)
	cmd := exec.Command(path, args...)
	done := time.AfterFunc(90*time.Second, func() { _ = cmd.Process.Kill() })
	defer done.Stop()
	out, err := cmd.Output()
	require.NoError(t, err, "%s", out)
	return out
}

func pageFile(t *testing.T, name, content string) string {
	path := filepath.Join(t.TempDir(), name)
	require.NoError(t, os.WriteFile(path, []byte(content), 0o600))
	return "file://" + path
}

// TestTextModelIsConservative measures every label of the tests' sheets in the sans-serif types that this machine has:
// none may be wider than the model of letter.go says.
func TestTextModelIsConservative(t *testing.T) {
	type label struct {
		Says string
		Bold bool
	}
	seen := map[label]bool{}
	list := randomWalls(60)
	for _, a := range walls() {
		list = append(list, a)
	}
	for _, a := range list {
		svg, err := SVG(a, Sheet{Wall: "Saltreed Landing, the WIDEST Mmm name (50 %)", Date: "2031-05-04"})
		require.NoError(t, err)
		for _, s := range reread(t, svg) {
			if s.name == "text" {
				seen[label{strings.TrimRight(s.says, "\n"), s.at["font-weight"] == "bold"}] = true
			}
		}
	}
	for c := rune(' '); c < 0x7f; c++ {
		seen[label{strings.Repeat(string(c), 12), false}], seen[label{strings.Repeat(string(c), 12), true}] = true, true
	}
	var labels []label
	for l := range seen {
		labels = append(labels, l)
	}
	data, err := json.Marshal(labels)
	require.NoError(t, err)
	types := []string{typeface, "'DejaVu Sans'", "'Liberation Sans'", "sans-serif"}
	names, err := json.Marshal(types)
	require.NoError(t, err)
	out := chromium(t, "--dump-dom", "--virtual-time-budget=4000", pageFile(t, "measure.html", `<!DOCTYPE html><meta charset="utf-8"><pre id="out"></pre><script>
const labels = `+string(data)+`, types = `+string(names)+`, g = document.createElement("canvas").getContext("2d"), widths = [];
for (const l of labels) { let most = 0; for (const f of types) { g.font = (l.Bold ? "bold " : "") + "100px " + f; most = Math.max(most, g.measureText(l.Says).width); } widths.push(most); }
document.getElementById("out").textContent = JSON.stringify(widths);
</script>`))
	m := regexp.MustCompile(`<pre id="out">(\[.*?\])</pre>`).FindSubmatch(out)
	require.NotNil(t, m, "the browser measured nothing: %.500s", out)
	var widths []float64
	require.NoError(t, json.Unmarshal(m[1], &widths))
	require.Len(t, widths, len(labels))
	tightest := 1.0
	for i, l := range labels {
		model := widthOf(l.Says, 100, l.Bold)
		require.LessOrEqual(t, widths[i], model+0.01, "%q bold %v", l.Says, l.Bold)
		if widths[i] > 0 {
			tightest = min(tightest, 1-widths[i]/model)
		}
	}
	t.Logf("%d labels in %d types; the model is at least %.1f %% over what is shown", len(labels), len(types), 100*tightest)
}

// TestPagesReadOnAPhone lays job sheets out 390 pixels wide, and as wide as a printed A4: nothing may stick out at the side.
func TestPagesReadOnAPhone(t *testing.T) {
	all := walls()
	all["full"], all["blocked"] = fullJob(), blockedJob()
	var b strings.Builder
	b.WriteString(`<!DOCTYPE html><meta charset="utf-8"><pre id="out"></pre>`)
	for _, name := range sortedNames(all) {
		page, err := JobSheet(all[name], Sheet{Wall: "Saltreed Landing, the longest of all the walls on the upstream side: " + name})
		require.NoError(t, err)
		for _, wide := range []int{390, 735} { // 735: A4 less its margins, 186 mm, and the page's own padding
			fmt.Fprintf(&b, `<iframe title="%s %d" style="width:%dpx;height:2000px;border:0" srcdoc="%s"></iframe>`, name, wide, wide, html.EscapeString(string(page)))
		}
	}
	b.WriteString(`<script>addEventListener("load", () => { const out = {};
for (const f of document.querySelectorAll("iframe")) out[f.title] = f.contentDocument.documentElement.scrollWidth;
document.getElementById("out").textContent = JSON.stringify(out); });</script>`)
	out := chromium(t, "--dump-dom", "--virtual-time-budget=8000", pageFile(t, "phone.html", b.String()))
	m := regexp.MustCompile(`<pre id="out">(\{.*?\})</pre>`).FindSubmatch(out)
	require.NotNil(t, m, "the browser measured nothing: %.500s", out)
	widths := map[string]float64{}
	require.NoError(t, json.Unmarshal(m[1], &widths))
	require.Len(t, widths, 2*len(all))
	for name, w := range widths {
		require.LessOrEqual(t, w, atof(t, name[strings.LastIndexByte(name, ' ')+1:]), name)
	}
}

var (
	pdfPages = regexp.MustCompile(`/Type\s*/Page\b[^s]`)
	pdfBox   = regexp.MustCompile(`/MediaBox\s*\[0 0 ([0-9.]+) ([0-9.]+)\]`)
)

// TestPagesPrint prints to PDF on both papers: the job sheet on the paper asked for, the story pole on as many pages
// as it was cut into and not one more.
func TestPagesPrint(t *testing.T) {
	for page, size := range map[string][2]string{"letter": {"612", "792"}, "a4": {"594.95996", "841.91998"}} {
		for _, kind := range []string{"job", "pole"} {
			sheet := Sheet{Wall: "Saltreed Landing", Date: "2031-05-04", Page: page}
			doc, err := JobSheet(fullJob(), sheet)
			if kind == "pole" {
				doc, err = StoryPole(fullJob(), sheet)
			}
			require.NoError(t, err)
			pdf := filepath.Join(t.TempDir(), kind+".pdf")
			chromium(t, "--no-pdf-header-footer", "--print-to-pdf="+pdf, pageFile(t, kind+".html", string(doc)))
			got, err := os.ReadFile(pdf)
			require.NoError(t, err)
			count := len(pdfPages.FindAll(got, -1))
			box := pdfBox.FindSubmatch(got)
			require.NotNil(t, box)
			require.InDelta(t, atof(t, size[0]), atof(t, string(box[1])), 1.5, "%s on %s", kind, page)
			require.InDelta(t, atof(t, size[1]), atof(t, string(box[2])), 1.5, "%s on %s", kind, page)
			if kind == "pole" {
				require.Equal(t, strings.Count(string(doc), `<div class="sheet">`), count)
			} else {
				require.True(t, count >= 3 && count <= 6, "%d pages", count)
			}
		}
	}
}

func atof(t testing.TB, s string) float64 { return shape{at: map[string]string{"v": s}}.num(t, "v") }

// TestLook writes the sheets of all test walls and of some random ones where -look says, for eyes.
func TestLook(t *testing.T) {
	if *lookAt == "" {
		t.Skip("no folder given with -look")
	}
	require.NoError(t, os.MkdirAll(*lookAt, 0o755))
	all := walls()
	for i, a := range randomWalls(24) {
		all[fmt.Sprintf("random-%02d", i)] = a
	}
	all["full"], all["blocked"] = fullJob(), blockedJob()
	write := func(name string, b []byte, err error) {
		if err == nil && b != nil {
			require.NoError(t, os.WriteFile(filepath.Join(*lookAt, name), b, 0o644))
		}
	}
	for name, a := range all {
		for _, page := range []string{"letter", "a4"} {
			sheet := Sheet{Wall: "Saltreed Landing, " + name, Date: "2031-05-04", Page: page}
			b, err := SVG(a, sheet)
			write(name+"-"+page+".svg", b, err)
			b, err = JobSheet(a, sheet)
			write("job-"+name+"-"+page+".html", b, err)
			b, err = StoryPole(a, sheet)
			write("pole-"+name+"-"+page+".html", b, err)
		}
	}
	for name, c := range conflicts() {
		write("clash-"+name+".svg", ClashSVG(nil, c), nil)
	}
}
