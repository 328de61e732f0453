package lsp

import (
	"bufio"
	"bytes"
	"context"
	"errors"
	"fmt"
	"io"
	"log"
	"strconv"

	"go.lsp.dev/jsonrpc2"

	"stitchproof/lang/phrase"
)

const (
	// maxMessage bounds the bytes of a message. The largest pattern that is looked
	// at (inputs.MaxSize) takes less, however its characters are escaped.
	maxMessage = 64 << 20
	// longestField is how much is kept of a header's line without end.
	longestField = 64
)

// lengthField is the header that says how long a message is, and what stands
// before it in its line, which should be nothing.
var lengthField = phrase.MustCompile(`(?is)^(.*)content-length:[ \t]*(\d*)[ \t]*$`)

// frames is a stream of messages, each behind a header that gives its length.
// What is no message, or no frame, is answered as such and passed over: the
// next frame begins where a header next gives a length.
type frames struct {
	jsonrpc2.Stream // writes
	in              *bufio.Reader
	log             *log.Logger
}

func newFrames(pipe io.ReadWriteCloser, logger *log.Logger) *frames {
	return &frames{jsonrpc2.NewStream(pipe), bufio.NewReader(pipe), logger}
}

// Read gives the next message that is one.
func (f *frames) Read(ctx context.Context) (jsonrpc2.Message, int64, error) {
	for ctx.Err() == nil {
		body, err := f.frame(ctx)
		if err != nil {
			return nil, 0, err
		}
		message, err := jsonrpc2.DecodeMessage(body)
		if err == nil {
			return message, int64(len(body)), nil
		}
		if err := f.refuse(ctx, err); err != nil {
			return nil, 0, err
		}
	}
	return nil, 0, ctx.Err()
}

// refuse answers what is no message.
func (f *frames) refuse(ctx context.Context, why error) error {
	f.log.Printf("a message was not understood: %v", why)
	_, err := f.Write(ctx, jsonrpc2.NewResponse(jsonrpc2.ID{}, nil, why))
	return err
}

// frame reads the body of the next frame. What lies before it is refused once.
func (f *frames) frame(ctx context.Context) ([]byte, error) {
	length, begun, refused := 0, false, false
	for {
		line, err := f.line()
		if err != nil {
			if errors.Is(err, io.EOF) && (begun || len(line) > 0) {
				err = io.ErrUnexpectedEOF
			}
			return nil, err
		}
		begun = true
		text := bytes.TrimRight(line, "\r\n")
		if len(text) == 0 && length > 0 {
			return f.body(length)
		}
		ok := bytes.IndexByte(text, ':') > 0
		if m := lengthField.FindStringSubmatch(string(text)); m != nil {
			if length, err = strconv.Atoi(m[2]); err != nil || length > maxMessage {
				length = 0
			}
			ok = length > 0 && len(m[1]) == 0
		}
		if !ok && !refused {
			refused = true
			why := fmt.Sprintf("a header begins with %s: 1 to %d, not with %.40q", "Content-Length", maxMessage, text)
			if err := f.refuse(ctx, jsonrpc2.NewError(jsonrpc2.ParseError, why)); err != nil {
				return nil, err
			}
		}
	}
}

// body reads as much as a header has said. What it takes grows with what comes.
func (f *frames) body(length int) ([]byte, error) {
	var b bytes.Buffer
	_, err := io.CopyN(&b, f.in, int64(length))
	if errors.Is(err, io.EOF) {
		err = io.ErrUnexpectedEOF
	}
	return b.Bytes(), err
}

// line is the next line of a header: of one that is too long to be one, its end.
func (f *frames) line() ([]byte, error) {
	var before []byte
	for {
		part, err := f.in.ReadSlice('\n')
		if !errors.Is(err, bufio.ErrBufferFull) {
			return append(before, part...), err
		}
		before = append(before[:0], part[len(part)-longestField:]...)
	}
}
