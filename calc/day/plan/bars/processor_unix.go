//go:build unix

package main

import (
	"syscall"
	"time"
)

// processor is the time that the program has had of processors so far.
func processor() time.Duration {
	var used syscall.Rusage
	if syscall.Getrusage(syscall.RUSAGE_SELF, &used) != nil {
		return 0
	}
	return time.Duration(used.Utime.Nano() + used.Stime.Nano())
}
