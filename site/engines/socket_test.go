package engines

import (
	"bufio"
	"encoding/binary"
	"errors"
	"fmt"
	"io"
	"net"
	"net/http"
	"time"
)

// A socket is the client's end of a WebSocket, with as much of RFC 6455 as a conversation in texts needs.
type socket struct {
	net.Conn
	in *bufio.Reader
}

func dial(host, path string) (*socket, error) {
	conn, err := net.Dial("tcp", host)
	if err != nil {
		return nil, err
	}
	s := &socket{conn, bufio.NewReader(conn)}
	fmt.Fprintf(conn, "GET %s HTTP/1.1\r\nHost: %s\r\nUpgrade: websocket\r\nConnection: Upgrade\r\nSec-WebSocket-Version: 13\r\nSec-WebSocket-Key: AAAAAAAAAAAAAAAAAAAAAA==\r\n\r\n", path, host)
	answer, err := http.ReadResponse(s.in, nil)
	if err != nil {
		return nil, err
	}
	if answer.StatusCode != http.StatusSwitchingProtocols {
		return nil, fmt.Errorf("no WebSocket: %s", answer.Status)
	}
	return s, nil
}

const (
	lastFrame = 0x80
	masked    = 0x80
	textFrame = 1
	closing   = 8
	ping      = 9
	pong      = 10
)

// mask is what a client has to mix into all it sends (RFC 6455, 5.3). Firefox takes one of zeros for none.
var mask = [4]byte{1, 2, 3, 4}

func (s *socket) send(text []byte) error { return s.frame(textFrame, text) }

func (s *socket) frame(kind byte, text []byte) error {
	head := []byte{lastFrame | kind}
	switch n := len(text); {
	case n < 126:
		head = append(head, masked|byte(n))
	case n < 1<<16:
		head = binary.BigEndian.AppendUint16(append(head, masked|126), uint16(n))
	default:
		head = binary.BigEndian.AppendUint64(append(head, masked|127), uint64(n))
	}
	head = append(head, mask[:]...)
	for i, c := range text {
		head = append(head, c^mask[i%4])
	}
	_, err := s.Write(head)
	return err
}

// receive waits for a text.
func (s *socket) receive() ([]byte, error) {
	s.SetReadDeadline(time.Now().Add(2 * patience))
	var text []byte
	for {
		var head [2]byte
		if _, err := io.ReadFull(s.in, head[:]); err != nil {
			return nil, err
		}
		size, err := s.size(head[1] & 0x7f)
		if err != nil {
			return nil, err
		}
		part := make([]byte, size)
		if _, err := io.ReadFull(s.in, part); err != nil {
			return nil, err
		}
		switch head[0] & 0xf {
		case ping:
			s.frame(pong, part)
			continue
		case closing:
			return nil, errors.New("the browser has closed the line")
		}
		text = append(text, part...)
		if head[0]&lastFrame != 0 {
			return text, nil
		}
	}
}

func (s *socket) size(n byte) (uint64, error) {
	switch n {
	case 126:
		var x [2]byte
		_, err := io.ReadFull(s.in, x[:])
		return uint64(binary.BigEndian.Uint16(x[:])), err
	case 127:
		var x [8]byte
		_, err := io.ReadFull(s.in, x[:])
		return binary.BigEndian.Uint64(x[:]), err
	}
	return uint64(n), nil
}
