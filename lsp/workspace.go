package lsp

import (
	"context"
	"maps"
	"slices"
	"strings"

	"go.lsp.dev/protocol"
	"go.lsp.dev/uri"

	"stitchproof/lang/source"
	"stitchproof/lint/config"
	"stitchproof/lint/inputs"
)

// mostPatterns bounds the files of a workspace that are looked at.
const mostPatterns = 5_000

// enter notes the folders that the client has open. One that names none has a
// root, or only single files.
func (s *server) enter(params *protocol.InitializeParams) {
	folders, _ := params.WorkspaceFolders.Get()
	for _, f := range folders {
		s.folders = append(s.folders, f.URI)
	}
	//lint:ignore SA1019 clients that know no folders have nothing else
	if root := params.RootURI; len(folders) == 0 && root != nil {
		s.folders = append(s.folders, *root)
	}
	for i, f := range s.folders {
		s.folders[i] = uri.URI(strings.Clone(string(f)))
	}
}

// didChangeWorkspaceFolders takes folders in and leaves others.
func (s *server) didChangeWorkspaceFolders(ctx context.Context, params *protocol.DidChangeWorkspaceFoldersParams) error {
	s.mu.Lock()
	for _, f := range params.Event.Removed {
		s.folders = slices.DeleteFunc(s.folders, func(u uri.URI) bool { return sameFile(u, f.URI) })
	}
	for _, f := range params.Event.Added {
		s.folders = append(s.folders, uri.URI(strings.Clone(string(f.URI))))
	}
	s.mu.Unlock()
	s.beside(func() { s.refresh(ctx) })
	return nil
}

// watch asks to be told when patterns and settings change on the disk.
func (s *server) watch(ctx context.Context) {
	if !s.can.watches {
		return
	}
	options, err := protocol.Marshal(&protocol.DidChangeWatchedFilesRegistrationOptions{
		Watchers: []protocol.FileSystemWatcher{
			{GlobPattern: protocol.Pattern("**/*" + config.Ending)}, {GlobPattern: protocol.Pattern("**/" + config.Name)},
		},
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
	folders, house := slices.Clone(s.folders), s.house
	s.mu.Unlock()
	finder := inputs.Finder{Settings: house}
	for _, folder := range folders {
		root, err := keyOf(folder)
		if err != nil || !root.IsFile() {
			continue
		}
		files, _, err := finder.Find([]string{root.FsPath()})
		if err != nil {
			s.log.Printf("%s: %v", folder, err)
		}
		if len(files) > mostPatterns {
			s.log.Printf("%s holds %d patterns: the first %d are looked at", folder, len(files), mostPatterns)
			files = files[:mostPatterns]
		}
		for _, f := range files {
			if key, err := keyOf(uri.File(f.Name)); err == nil && f.Err == nil {
				found[key] = true
			}
		}
	}
	return slices.Sorted(maps.Keys(found))
}

// open is a file's newest document: as the client has it or, where it does not, as
// it is on the disk.
func (s *server) open(key uri.URI) (*document, error) {
	if d := s.document(key); d != nil {
		return d, nil
	}
	content, err := inputs.Read(key.FsPath(), nil)
	if err != nil {
		return nil, err
	}
	d := s.newDocument(key, 0, source.New(string(content)), &memory{})
	d.shown = false
	d.used = func(*document) {} // what is known of those that are shown stays
	return d, nil
}
