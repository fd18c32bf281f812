module saywright

go 1.26.8

require (
	github.com/alecthomas/participle/v2 v2.1.4
	github.com/chzyer/readline v1.5.1
	github.com/stretchr/testify v1.12.1
	gonum.org/v1/gonum v0.17.0
)

require (
	go.yaml.in/yaml/v3 v3.0.5 // indirect
	golang.org/x/sys v0.0.0-20220310020820-b874c991c1a5 // indirect
)
