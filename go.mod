module stitchproof

go 1.26.0

require (
	github.com/alecthomas/kong v1.17.0
	github.com/benbjohnson/immutable v0.4.3
	github.com/rogpeppe/go-internal v1.16.0
	github.com/stretchr/testify v1.12.1
	golang.org/x/text v0.44.0
	pgregory.net/rapid v1.3.0
)

require (
	golang.org/x/exp v0.0.0-20220518171630-0b5c67f07fdf // indirect
	golang.org/x/sys v0.49.0 // indirect
)

require (
	github.com/alecthomas/participle/v2 v2.1.4
	github.com/go-json-experiment/json v0.0.0-20260623181947-01eb4420fa68 // indirect
	go.lsp.dev/jsonrpc2 v1.0.1
	go.lsp.dev/protocol v1.0.1
	go.lsp.dev/uri v1.0.1
	go.yaml.in/yaml/v3 v3.0.5 // indirect
	golang.org/x/tools v0.52.0 // indirect
)
