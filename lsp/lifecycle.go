package lsp

import (
	"context"
	"runtime/debug"

	"go.lsp.dev/jsonrpc2"
	"go.lsp.dev/protocol"
)

// phase is how far a session has come.
type phase uint8

const (
	beginning phase = iota // nothing but initialize is allowed
	serving
	shutDown // nothing but exit is allowed
)

// inlines are the messages that are handled in order.
func (s *server) inlines() map[string]inline {
	return map[string]inline{
		protocol.MethodInitialize:                      s.initialize,
		protocol.MethodInitialized:                     s.initialized,
		protocol.MethodShutdown:                        s.shutdown,
		protocol.MethodExit:                            s.exit,
		protocol.MethodTextDocumentDidOpen:             notification(s.didOpen),
		protocol.MethodTextDocumentDidChange:           s.didChange,
		protocol.MethodTextDocumentDidClose:            notification(s.didClose),
		protocol.MethodWorkspaceDidChangeConfiguration: notification(s.didChangeConfiguration),

		protocol.MethodWorkspaceDidChangeWatchedFiles:     notification(s.didChangeWatchedFiles),
		protocol.MethodWorkspaceDidChangeWorkspaceFolders: notification(s.didChangeWorkspaceFolders),
	}
}

// admit says whether a message is allowed now. A notification that is not is
// noted and ignored; exit is always allowed.
func (s *server) admit(req *jsonrpc2.Request) error {
	method := req.Method()
	switch {
	case method == protocol.MethodExit:
		return nil
	case method == protocol.MethodInitialize && s.phase != beginning:
		return jsonrpc2.NewError(jsonrpc2.InvalidRequest, "the server is initialized already")
	case (method == protocol.MethodInitialize || method == protocol.MethodShutdown) && !req.IsCall():
		return jsonrpc2.Errorf(jsonrpc2.InvalidRequest, "%s is a request and has no id", method)
	case s.phase == beginning && method != protocol.MethodInitialize:
		return jsonrpc2.Errorf(jsonrpc2.ServerNotInitialized, "%s came before initialize", method)
	case s.phase == shutDown:
		return jsonrpc2.Errorf(jsonrpc2.InvalidRequest, "%s came after shutdown", method)
	}
	return nil
}

func (s *server) initialize(ctx context.Context, raw jsonrpc2.RawMessage) (any, error) {
	params, err := decode[protocol.InitializeParams](raw)
	if err != nil {
		return nil, err
	}
	if err := s.welcome(params.InitializationOptions); err != nil {
		return nil, err
	}
	s.followParent(ctx, params.ProcessID)
	s.can = abilitiesOf(&params.Capabilities)
	s.enter(params)
	if err := s.configure(params.InitializationOptions); err != nil {
		s.log.Printf("initializationOptions: %v", err)
	}
	s.phase = serving
	return &protocol.InitializeResult{
		Capabilities: s.capabilities(),
		ServerInfo:   protocol.ServerInfo{Name: "stitchproof", Version: version()},
	}, nil
}

// version is that of the module, where the build knows it.
func version() protocol.Optional[string] {
	info, ok := debug.ReadBuildInfo()
	if !ok || info.Main.Version == "" {
		return protocol.Optional[string]{}
	}
	return protocol.NewOptional(info.Main.Version)
}

func (s *server) initialized(ctx context.Context, _ jsonrpc2.RawMessage) (any, error) {
	s.beside(func() {
		s.watch(ctx)
		s.followSettings(ctx)
	})
	return nil, nil
}

func (s *server) shutdown(context.Context, jsonrpc2.RawMessage) (any, error) {
	s.phase = shutDown
	return nil, nil
}

func (s *server) exit(context.Context, jsonrpc2.RawMessage) (any, error) {
	s.leave()
	return nil, nil
}

// leave ends the session.
func (s *server) leave() { s.once.Do(func() { close(s.left) }) }
