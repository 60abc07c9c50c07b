module example.org/bowlgram

go 1.25
