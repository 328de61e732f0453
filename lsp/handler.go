package lsp

import (
	"context"
	"errors"
	"runtime/debug"
	"slices"

	"go.lsp.dev/jsonrpc2"
	"go.lsp.dev/protocol"
)

// requestFailed is LSPErrorCodes.RequestFailed of the protocol, version 3.17: the
// request was sound and the server could not answer it.
const requestFailed jsonrpc2.Code = -32803

// inline handles a message; one that changes something does so before the next one
// is read.
type inline func(context.Context, jsonrpc2.RawMessage) (any, error)

// handler sorts the messages: those that change something run inline, in order;
// requests run beside them and can be cancelled; what nobody knows is refused
// if it wants an answer and ignored if it does not.
func (s *server) handler() jsonrpc2.Handler {
	ordered := s.inlines()
	requests := s.requests()
	concurrent := protocol.CancelHandler(func(ctx context.Context, req *jsonrpc2.Request) (any, error) {
		if answer, ok := requests[req.Method()]; ok {
			jsonrpc2.Async(ctx)
			return answer(ctx, req.Params())
		}
		return s.answer(ctx, req)
	})
	return func(ctx context.Context, req *jsonrpc2.Request) (result any, err error) {
		defer s.guard(req, &result, &err)
		if err := s.admit(req); err != nil {
			return nil, err
		}
		// The library reuses the context of an inline request; nothing may keep it.
		lasting := jsonrpc2.DetachContext(ctx)
		method := req.Method()
		if handle, ok := ordered[method]; ok {
			return handle(lasting, req.Params())
		}
		_, known := features[method]
		if _, ok := requests[method]; ok {
			known = true
		}
		switch {
		case method == protocol.MethodCancelRequest:
			return concurrent(lasting, req)
		case !req.IsCall():
			return nil, nil
		case !known:
			return nil, jsonrpc2.Errorf(jsonrpc2.MethodNotFound, "the server has no %q", method)
		}
		return concurrent(ctx, req)
	}
}

// answer answers a request about a document. The document is the one of the
// moment the request was sent, so it is found before the next message is let in.
func (s *server) answer(ctx context.Context, req *jsonrpc2.Request) (any, error) {
	d, err := s.documentOf(req.Params())
	jsonrpc2.Async(ctx)
	if err != nil {
		return nil, err
	}
	var known *knowledge
	if early[req.Method()] {
		known = d.memory.known()
	}
	if known == nil {
		if known, err = d.known(ctx); err != nil {
			return nil, err
		}
	}
	answer, err := features[req.Method()](s.view(d, known), req.Params())
	if s.outdated(d) && slices.Contains(s.can.retries, req.Method()) {
		return nil, protocol.ErrContentModified // the client asks again by itself
	}
	return answer, err
}

// guard keeps the connection when a handler fails: a panic becomes an error, an
// error that nobody waits for is noted, and every other gets the code that the
// protocol has for it.
func (s *server) guard(req *jsonrpc2.Request, result *any, err *error) {
	if broken := recover(); broken != nil {
		s.log.Printf("%s broke down: %v\n%s", req.Method(), broken, debug.Stack())
		*result, *err = nil, jsonrpc2.Errorf(jsonrpc2.InternalError, "%s broke down: %v", req.Method(), broken)
	}
	var coded *jsonrpc2.Error
	switch {
	case *err == nil:
	case !req.IsCall():
		s.log.Printf("%s: %v", req.Method(), *err)
		*err = nil
	case errors.Is(*err, context.Canceled):
		*err = protocol.ErrRequestCancelled
	case !errors.As(*err, &coded):
		*err = jsonrpc2.NewError(requestFailed, (*err).Error())
	}
}

// decode reads the parameters of a message.
func decode[P any](raw jsonrpc2.RawMessage) (*P, error) {
	params := new(P)
	if len(raw) == 0 {
		return nil, jsonrpc2.NewError(jsonrpc2.InvalidParams, "the message has no parameters")
	}
	if err := protocol.Unmarshal(raw, params); err != nil {
		return nil, jsonrpc2.NewError(jsonrpc2.InvalidParams, err.Error())
	}
	return params, nil
}

// notification makes an inline handler of what takes decoded parameters.
func notification[P any](handle func(context.Context, *P) error) inline {
	return func(ctx context.Context, raw jsonrpc2.RawMessage) (any, error) {
		params, err := decode[P](raw)
		if err != nil {
			return nil, err
		}
		return nil, handle(ctx, params)
	}
}
