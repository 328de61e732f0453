package lsp

import (
	"encoding/json"
	"fmt"
	"strconv"
	"sync"
)

// ear holds what a server sends against the shapes of the protocol.
type ear struct {
	model *metaModel

	mu     sync.Mutex
	open   map[string]question // requests that have no answer yet, by id
	faults []string
}

// question is what an answer, and what is told before it, has to fit to.
type question struct {
	method        string
	WorkDoneToken any
	// PartialResultToken is that of parts of the answer.
	PartialResultToken any
}

func newEar(model *metaModel) *ear { return &ear{model: model, open: map[string]question{}} }

// said notes what the client sends, which may be anything.
func (e *ear) said(body string) {
	var m message
	if json.Unmarshal([]byte(body), &m) != nil || m.Method == "" || len(m.ID) == 0 {
		return
	}
	q := question{method: m.Method}
	_ = json.Unmarshal(m.Params, &q) // what is no object holds no token
	e.mu.Lock()
	defer e.mu.Unlock()
	e.open[string(m.ID)] = q
}

// heard holds a message of the server against its shape.
func (e *ear) heard(body []byte) {
	e.mu.Lock()
	defer e.mu.Unlock()
	if fault := e.fault(body); fault != nil {
		e.faults = append(e.faults, fmt.Sprintf("%v\n%.2000s", fault, body))
	}
}

// fault says what is wrong with a message, nil for nothing.
func (e *ear) fault(body []byte) *misfit {
	value, err := decoded(body)
	members, ok := value.(object)
	if err != nil || !ok {
		return unfit("", "it is no message")
	}
	method, spoken := members["method"].(string)
	if !spoken {
		return e.faultOfAnswer(members)
	}
	_, request := members["id"]
	kind := "notification"
	if request {
		kind = "request"
	}
	s := e.model.spoken(method, toClient, request)
	if s == nil {
		return unfit("", "the protocol has no %s %q to a client", kind, method)
	}
	if found := e.model.misfit(s, value, ""); found != nil {
		return found
	}
	switch method {
	case "$/progress":
		return e.faultOfProgress(members["params"].(object))
	case "client/registerCapability":
		return e.faultOfRegistrations(members["params"].(object)["registrations"].([]any))
	}
	return nil
}

// faultOfAnswer holds an answer against the request that waits for it. What could not
// be read as a request is answered to nobody, with an error.
func (e *ear) faultOfAnswer(members object) *misfit {
	id, there := members["id"]
	if there && id == nil {
		return e.model.misfit(refusing(base("null"), nil), members, "")
	}
	key, _ := json.Marshal(id) // it was JSON
	q, asked := e.open[string(key)]
	if !asked {
		return unfit("/id", "nobody waits for an answer to %s", key)
	}
	delete(e.open, string(key))
	return e.model.misfit(e.model.answered(q.method), members, "")
}

// workDone is how far a work is.
var workDone = either(reference("WorkDoneProgressBegin"), reference("WorkDoneProgressReport"), reference("WorkDoneProgressEnd"))

// faultOfProgress holds what is told before an answer against the request whose token
// it has.
func (e *ear) faultOfProgress(params object) *misfit {
	token := fmt.Sprint(params["token"])
	for _, q := range e.open {
		if q.WorkDoneToken != nil && fmt.Sprint(q.WorkDoneToken) == token {
			return e.model.misfit(workDone, params["value"], "/params/value")
		}
		if q.PartialResultToken != nil && fmt.Sprint(q.PartialResultToken) == token {
			part := e.model.requests[q.method].PartialResult
			if part == nil {
				return unfit("/params/token", "%s is not answered in parts", q.method)
			}
			return e.model.misfit(part, params["value"], "/params/value")
		}
	}
	return unfit("/params/token", "nobody waits for progress under %s", token)
}

// faultOfRegistrations holds what the client is to do against what can be asked of it.
func (e *ear) faultOfRegistrations(list []any) *misfit {
	for i, r := range list {
		at := "/params/registrations/" + strconv.Itoa(i)
		method := r.(object)["method"].(string)
		kind, known := e.model.requests[method]
		if !known {
			kind, known = e.model.notifications[method]
		}
		options, given := r.(object)["registerOptions"]
		if !known || given && kind.RegistrationOptions == nil {
			return unfit(at, "%q is not registered so", method)
		}
		if !given {
			continue
		}
		if found := e.model.misfit(kind.RegistrationOptions, options, at+"/registerOptions"); found != nil {
			return found
		}
	}
	return nil
}
