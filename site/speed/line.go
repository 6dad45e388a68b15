package main

import (
	"net/http"
	"sync"
	"time"
)

// A line is a slow network in front of a site: every request waits for a round trip, and all answers share its speed.
type line struct {
	site      http.Handler
	roundTrip time.Duration
	speed     float64 // bytes a second
	turn      sync.Mutex
	free      time.Time // when what is under way will be through
}

func (l *line) ServeHTTP(w http.ResponseWriter, r *http.Request) {
	time.Sleep(l.roundTrip)
	l.site.ServeHTTP(&slowly{w, l}, r)
}

// slowly hands on what is written at the line's speed.
type slowly struct {
	http.ResponseWriter
	line *line
}

const packet = 4096 // bytes

func (s *slowly) Write(text []byte) (n int, err error) {
	for len(text) > 0 && err == nil {
		some := text[:min(packet, len(text))]
		s.line.wait(len(some))
		var k int
		k, err = s.ResponseWriter.Write(some)
		n, text = n+k, text[len(some):]
		if f, ok := s.ResponseWriter.(http.Flusher); ok {
			f.Flush()
		}
	}
	return n, err
}

// wait is until so many bytes have gone through.
func (l *line) wait(bytes int) {
	l.turn.Lock()
	now := time.Now()
	if l.free.Before(now) {
		l.free = now
	}
	l.free = l.free.Add(time.Duration(float64(bytes) / l.speed * float64(time.Second)))
	until := l.free
	l.turn.Unlock()
	time.Sleep(time.Until(until))
}
