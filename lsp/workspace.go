package lsp

import (
	"context"
	"io/fs"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"go.lsp.dev/protocol"
	"go.lsp.dev/uri"

	"stitchproof/lang/source"
)

const (
	// extension is that of a pattern's file.
	extension = ".crochet"
	// mostPatterns bounds the files of a workspace that are looked at, and
	// largestPattern their size in bytes: what is more is no folder of patterns.
	mostPatterns   = 5_000
	largestPattern = 10 << 20
)

// enter notes the folders that the client has open. One that names none has a
// root, or only single files.
func (s *server) enter(params *protocol.InitializeParams) {
	folders, _ := params.WorkspaceFolders.Get()
	for _, f := range folders {
		s.folders = append(s.folders, f.URI)
	}
	if len(folders) == 0 && params.RootURI != nil {
		s.folders = append(s.folders, *params.RootURI)
	}
	for i, f := range s.folders {
		s.folders[i] = uri.URI(strings.Clone(string(f)))
	}
}

// didChangeWorkspaceFolders takes folders in and leaves others.
func (s *server) didChangeWorkspaceFolders(ctx context.Context, params *protocol.DidChangeWorkspaceFoldersParams) error {
	s.mu.Lock()
	for _, f := range params.Event.Removed {
		s.folders = slices.DeleteFunc(s.folders, func(u uri.URI) bool { return u == f.URI })
	}
	for _, f := range params.Event.Added {
		s.folders = append(s.folders, uri.URI(strings.Clone(string(f.URI))))
	}
	s.mu.Unlock()
	go s.refresh(ctx)
	return nil
}

// didChangeWatchedFiles has the client ask again where files changed on the disk.
func (s *server) didChangeWatchedFiles(ctx context.Context, _ *protocol.DidChangeWatchedFilesParams) error {
	go s.refresh(ctx)
	return nil
}

// watch asks to be told when patterns change on the disk.
func (s *server) watch(ctx context.Context) {
	if !s.can.watches {
		return
	}
	options, err := protocol.Marshal(&protocol.DidChangeWatchedFilesRegistrationOptions{
		Watchers: []protocol.FileSystemWatcher{{GlobPattern: protocol.Pattern("**/*" + extension)}},
	})
	if err == nil {
		err = s.client.RegisterCapability(ctx, &protocol.RegistrationParams{Registrations: []protocol.Registration{{
			ID: "patterns", Method: protocol.MethodWorkspaceDidChangeWatchedFiles, RegisterOptions: protocol.LSPAny(options),
		}}})
	}
	if err != nil {
		s.log.Printf("changed files will not be noticed: %v", err)
	}
}

// patterns lists the addresses of the patterns in all folders and of those that
// are open, in order.
func (s *server) patterns() []uri.URI {
	s.mu.Lock()
	found := map[uri.URI]bool{}
	for key := range s.documents {
		found[key] = true
	}
	folders := slices.Clone(s.folders)
	s.mu.Unlock()
	for _, folder := range folders {
		root, err := keyOf(folder)
		if err != nil || !root.IsFile() {
			continue
		}
		if err := filepath.WalkDir(root.FsPath(), collecting(found)); err != nil {
			s.log.Printf("%s: %v", folder, err)
		}
	}
	return slices.Sorted(maps.Keys(found))
}

// collecting collects the patterns of a folder, hidden folders left out.
func collecting(found map[uri.URI]bool) fs.WalkDirFunc {
	return func(path string, entry fs.DirEntry, err error) error {
		switch {
		case err != nil:
			return nil // what cannot be read is not shown
		case len(found) >= mostPatterns:
			return fs.SkipAll
		case entry.IsDir() && len(entry.Name()) > 1 && (strings.HasPrefix(entry.Name(), ".") || entry.Name() == "node_modules"):
			return fs.SkipDir
		case entry.Type().IsRegular() && filepath.Ext(path) == extension:
			if key, err := keyOf(uri.File(path)); err == nil {
				found[key] = true
			}
		}
		return nil
	}
}

// open is a file's newest document: as the client has it or, where it does not, as
// it is on the disk.
func (s *server) open(key uri.URI) (*document, error) {
	if d := s.document(key); d != nil {
		return d, nil
	}
	info, err := os.Stat(key.FsPath())
	if err == nil && info.Size() > largestPattern {
		err = fs.ErrInvalid
	}
	if err != nil {
		return nil, err
	}
	content, err := os.ReadFile(key.FsPath())
	if err != nil {
		return nil, err
	}
	d := s.newDocument(key, 0, source.New(string(content)), &memory{})
	d.shown = false
	return d, nil
}
