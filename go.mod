module example.org/bowlgram

go 1.25

require (
	github.com/google/go-cmp v0.7.0
	github.com/leanovate/gopter v0.2.11
)
