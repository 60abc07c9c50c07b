module example.org/bowlgram

go 1.25

require (
	github.com/google/go-cmp v0.7.0
	github.com/leanovate/gopter v0.2.11
	gonum.org/v1/gonum v0.17.0
)
