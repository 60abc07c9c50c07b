package main

import (
	"os"
	"syscall"
)

// peak returns the most memory that a program held, in bytes. It is never less
// than what this one held when it started the other.
func peak(s *os.ProcessState) int64 {
	u, ok := s.SysUsage().(*syscall.Rusage)
	if !ok {
		return 0
	}
	return int64(u.Maxrss) << 10
}
