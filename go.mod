module stitchproof

go 1.26.0

require (
	github.com/alecthomas/kong v1.17.0
	github.com/benbjohnson/immutable v0.4.3
	github.com/bmatcuk/doublestar/v4 v4.10.4
	github.com/invopop/jsonschema v0.14.0
	github.com/pelletier/go-toml/v2 v2.4.3
	github.com/rogpeppe/go-internal v1.16.0
	github.com/santhosh-tekuri/jsonschema/v6 v6.0.3
	github.com/stretchr/testify v1.12.1
	golang.org/x/term v0.48.0
	golang.org/x/text v0.44.0
	pgregory.net/rapid v1.3.0
)

require (
	github.com/bahlo/generic-list-go v0.2.0 // indirect
	github.com/buger/jsonparser v1.1.2 // indirect
	github.com/pb33f/ordered-map/v2 v2.3.1 // indirect
	go.yaml.in/yaml/v4 v4.0.0-rc.2 // indirect
	golang.org/x/exp v0.0.0-20260410095643-746e56fc9e2f // indirect
	golang.org/x/sys v0.50.0 // indirect
)

require (
	github.com/alecthomas/participle/v2 v2.1.4
	github.com/go-json-experiment/json v0.0.0-20260623181947-01eb4420fa68 // indirect
	go.lsp.dev/jsonrpc2 v1.0.1
	go.lsp.dev/protocol v1.0.1
	go.lsp.dev/uri v1.0.1
	go.yaml.in/yaml/v3 v3.0.5
	golang.org/x/tools v0.52.0 // indirect
)
