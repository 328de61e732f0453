package lsp

import (
	"context"
	"path/filepath"

	"go.lsp.dev/protocol"
	"go.lsp.dev/uri"

	"stitchproof/lint"
	"stitchproof/lint/config"
)

// settingsFor are the settings that hold for a file, as for the command line: those
// of the nearest file of settings. For what is on no disk there are none.
func (s *server) settingsFor(file uri.URI) lint.Settings {
	key, err := keyOf(file)
	if err != nil || !key.IsFile() {
		return lint.Settings{}
	}
	s.mu.Lock()
	house := s.house
	s.mu.Unlock()
	chosen, err := house.In(filepath.Dir(key.FsPath()))
	if err != nil {
		s.log.Printf("%s is checked without settings: %v", file, err)
		return lint.Settings{}
	}
	return chosen.For(key.FsPath()).Settings
}

// didChangeWatchedFiles looks again at what is open where a file of settings
// changed, and has the client ask again.
func (s *server) didChangeWatchedFiles(ctx context.Context, params *protocol.DidChangeWatchedFilesParams) error {
	for _, change := range params.Changes {
		if filepath.Base(change.URI.Path()) == config.Name {
			s.reopen()
			break
		}
	}
	s.beside(func() { s.refresh(ctx) })
	return nil
}

// reopen forgets what is known of the settings, and of every document with it.
func (s *server) reopen() {
	s.mu.Lock()
	s.house = config.NewFinder()
	s.generation++
	open := make(map[uri.URI]*document, len(s.documents))
	for key, d := range s.documents {
		open[key] = s.newDocument(d.uri, d.version, d.text, d.memory)
	}
	s.documents = open
	s.mu.Unlock()
	for key, d := range open {
		s.publisher.due(key, d.uri)
	}
}

// settingsGeneration is how often the settings may have changed.
func (s *server) settingsGeneration() int {
	s.mu.Lock()
	defer s.mu.Unlock()
	return s.generation
}
