package lsp

import (
	"context"
	"encoding/json"

	"go.lsp.dev/protocol"
)

// section is the name that an editor keeps the settings under.
const section = "stitchproof"

// settings are what a person can choose in the editor.
type settings struct {
	hints  hintKinds
	lenses bool // the totals over headings
}

// hintKinds are the kinds of inlay hint, each on or off.
type hintKinds struct {
	running  bool // the count after each clause
	branches bool // where the stem and its branches stand after each clause
	totals   bool // the count at a row's end
}

// defaults are the settings of a client that says nothing of them.
var defaults = settings{hints: hintKinds{running: true, branches: true, totals: true}, lenses: true}

// writtenSettings is how settings are written. What is not written stays as it is.
type writtenSettings struct {
	Hints struct {
		Running  *bool `json:"running"`
		Branches *bool `json:"branches"`
		Totals   *bool `json:"totals"`
	} `json:"hints"`
	Lenses *bool `json:"lenses"`
}

// configure changes the settings to what raw says. It takes the section itself and
// an object that holds it: clients send either.
func (s *server) configure(raw []byte) error {
	if len(raw) == 0 {
		return nil
	}
	var written struct {
		writtenSettings
		Section *writtenSettings `json:"stitchproof"`
	}
	if err := json.Unmarshal(raw, &written); err != nil {
		return err
	}
	if written.Section == nil {
		written.Section = &written.writtenSettings
	}
	s.mu.Lock()
	defer s.mu.Unlock()
	set(&s.settings.hints.running, written.Section.Hints.Running)
	set(&s.settings.hints.branches, written.Section.Hints.Branches)
	set(&s.settings.hints.totals, written.Section.Hints.Totals)
	set(&s.settings.lenses, written.Section.Lenses)
	return nil
}

func set(to, from *bool) {
	if from != nil {
		*to = *from
	}
}

// followSettings asks for the settings and to be told of changes. It waits for the
// client's answers, so it never runs inline.
func (s *server) followSettings(ctx context.Context) {
	if s.can.announces {
		err := s.client.RegisterCapability(ctx, &protocol.RegistrationParams{Registrations: []protocol.Registration{{
			ID:              section,
			Method:          protocol.MethodWorkspaceDidChangeConfiguration,
			RegisterOptions: protocol.LSPAny(`{"section":"` + section + `"}`),
		}}})
		if err != nil {
			s.log.Printf("changed settings will not be noticed: %v", err)
		}
	}
	s.pullSettings(ctx)
	s.refresh(ctx)
}

// pullSettings asks the client for the settings, where it can be asked.
func (s *server) pullSettings(ctx context.Context) {
	if !s.can.asked {
		return
	}
	answers, err := s.client.Configuration(ctx, &protocol.ConfigurationParams{
		Items: []protocol.ConfigurationItem{{Section: new(section)}},
	})
	if err == nil && len(answers) > 0 {
		err = s.configure(answers[0])
	}
	if err != nil {
		s.log.Printf("the editor's settings: %v", err)
	}
}

// didChangeConfiguration takes the settings that come with the message and asks for
// those that do not: some clients send them, some only say that they changed.
func (s *server) didChangeConfiguration(ctx context.Context, params *protocol.DidChangeConfigurationParams) error {
	err := s.configure(params.Settings)
	s.beside(func() {
		s.pullSettings(ctx)
		s.refresh(ctx)
	})
	return err
}

// refresh has the client ask again for what settings change, where it can be
// told to.
func (s *server) refresh(ctx context.Context) {
	for _, again := range []struct {
		can bool
		ask func(context.Context) error
	}{
		{s.can.refreshes.hints, s.client.InlayHintRefresh},
		{s.can.refreshes.tokens, s.client.SemanticTokensRefresh},
		{s.can.refreshes.lenses, s.client.CodeLensRefresh},
		{s.can.refreshes.diagnostics, s.client.DiagnosticRefresh},
	} {
		if !again.can {
			continue
		}
		if err := again.ask(ctx); err != nil {
			s.log.Printf("what is shown may be out of date: %v", err)
		}
	}
}
