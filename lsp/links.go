package lsp

import (
	"os"
	"path/filepath"

	"go.lsp.dev/protocol"
	"go.lsp.dev/uri"

	"stitchproof/lang/phrase"
	"stitchproof/lang/source"
)

// fileName is what may be the name of a pattern or of a text beside it.
var fileName = phrase.MustCompile(`[\pL\d][\pL\d_./-]*\.(?:crochet|txt|md)\b`)

// documentLinks lead from the names of files, in prose, comments and the header, to
// those that are there beside the document.
func documentLinks(v *view, _ *protocol.DocumentLinkParams) []protocol.DocumentLink {
	out := []protocol.DocumentLink{}
	key, err := keyOf(v.uri)
	if err != nil || !key.IsFile() {
		return out
	}
	spans := append([]source.Span(nil), v.File.Prose...)
	for _, c := range v.File.Comments {
		spans = append(spans, c.Span)
	}
	for _, f := range v.File.Header {
		spans = append(spans, f.ValueSpan)
	}
	for _, s := range spans {
		for _, at := range fileName.FindAllStringIndex(v.Text.Slice(s), -1) {
			name := source.Span{Start: at[0], End: at[1]}.Shift(s.Start)
			beside := filepath.FromSlash(v.Text.Slice(name))
			if !filepath.IsLocal(beside) {
				continue // it leads out of the folder
			}
			path := filepath.Join(filepath.Dir(key.FsPath()), beside)
			if info, err := os.Stat(path); err == nil && info.Mode().IsRegular() {
				out = append(out, protocol.DocumentLink{Range: v.rangeOf(name), Target: new(uri.File(path))})
			}
		}
	}
	return out
}
