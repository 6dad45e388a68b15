package main

import (
	"syscall/js"
	"time"
)

// processor is the time that the program has had of processors so far.
func processor() time.Duration {
	used := js.Global().Get("process").Call("cpuUsage")
	return time.Duration(used.Get("user").Int()+used.Get("system").Int()) * time.Microsecond
}
