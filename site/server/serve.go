// Package server hands out a finished site.
package server

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"net"
	"net/http"
	"os"
	"runtime"
	"strconv"
	"strings"
	"syscall"
	"time"

	"rsc.io/qr"
)

// A Server hands out a site on this machine.
type Server struct {
	Site   fs.FS
	Addr   string // host and port; without a host any device in the network is let in
	Opens  bool   // shows the site in this machine's browser
	Spared bool   // where the same site is handed out at that port already, is content with showing that
	Out    io.Writer
}

// Serve answers until it is stopped.
func (s *Server) Serve() error {
	listener, err := s.listen()
	if err != nil {
		return err
	}
	addr := listener.Addr().(*net.TCPAddr)
	asked := *addr
	if asked.Port = s.port(); asked.Port == 0 {
		asked.Port = addr.Port // any would do
	}
	moved := addr.Port != asked.Port
	if moved && s.Spared && s.sameAt(link(&asked)) {
		listener.Close()
		fmt.Fprintf(s.Out, "It runs already: %s\n", link(&asked))
		return open(link(&asked))
	}
	fmt.Fprintf(s.Out, "Open %s — Ctrl+C stops.\n", link(addr))
	if moved {
		fmt.Fprintf(s.Out, "Port %d is in use. A browser keeps things for each address: what it has kept for that one is not found at this.\n", asked.Port)
	}
	if addr.IP.IsUnspecified() {
		announce(s.Out, addr.Port)
	}
	if s.Opens {
		if err := open(link(addr)); err != nil {
			fmt.Fprintln(s.Out, "No browser could be started; type the address into one.")
		}
	}
	return (&http.Server{Handler: New(s.Site), ReadHeaderTimeout: 10 * time.Second}).Serve(listener)
}

// port is the one asked for; listen has told where that is no number.
func (s *Server) port() int {
	_, text, _ := net.SplitHostPort(s.Addr)
	port, _ := strconv.Atoi(text)
	return port
}

// sameAt reports whether what answers at an address is this version of the site.
func (s *Server) sameAt(address string) bool {
	own, _, err := choose(s.Site, versionFile, "")
	if err != nil {
		return false
	}
	answer, err := (&http.Client{Timeout: time.Second}).Get(address + versionFile)
	if err != nil {
		return false
	}
	defer answer.Body.Close()
	other, err := io.ReadAll(io.LimitReader(answer.Body, int64(len(own))+1))
	return err == nil && bytes.Equal(own, other)
}

// versionFile lists the hashes of all the others.
const versionFile = "sw.js"

// link is where this machine's browser finds what listens on an address.
func link(addr *net.TCPAddr) string {
	host := addr.IP.String()
	if addr.IP.IsUnspecified() || addr.IP.IsLoopback() {
		host = "localhost"
	}
	return "http://" + net.JoinHostPort(host, strconv.Itoa(addr.Port)) + "/"
}

// listen takes the port asked for, or where that is in use one of the twenty after it.
func (s *Server) listen() (net.Listener, error) {
	host, portText, err := net.SplitHostPort(s.Addr)
	if err != nil {
		return nil, err
	}
	port, err := strconv.Atoi(portText)
	if err != nil {
		return nil, err
	}
	var listener net.Listener
	for try := port; try <= port+20; try++ {
		if listener, err = net.Listen("tcp", net.JoinHostPort(host, strconv.Itoa(try))); !inUse(err) {
			break
		}
	}
	return listener, err
}

// inUse reports whether another program has the port. Windows has a number of its own for that, WSAEADDRINUSE.
func inUse(err error) bool {
	return errors.Is(err, syscall.EADDRINUSE) || errors.Is(err, syscall.Errno(10048))
}

// announce tells how to reach the site from a phone in the same network.
func announce(out io.Writer, port int) {
	addrs, _ := net.InterfaceAddrs()
	for _, a := range addrs {
		ip, ok := a.(*net.IPNet)
		if !ok || ip.IP.IsLoopback() || ip.IP.To4() == nil {
			continue
		}
		address := link(&net.TCPAddr{IP: ip.IP, Port: port})
		fmt.Fprintf(out, "\nFrom another device in this network: %s\n", address)
		if code, err := qr.Encode(address, qr.L); err == nil && drawsCodes() {
			fmt.Fprint(out, terminalCode(code))
		}
	}
	fmt.Fprintln(out, httpsNote)
}

// httpsNote names what browsers do only for a secure context (W3C Secure Contexts), of what the site uses.
const httpsNote = "Over plain http every calculator works, but for these a phone wants https (this machine, at localhost, does not):\n" +
	"keeping the site for use without a network, putting it on the home screen, copying a link, sharing, keeping the screen awake, notices from timers."

// drawsCodes reports whether the terminal knows colours: older ones of Windows show the signs for them instead.
func drawsCodes() bool { return runtime.GOOS != "windows" || os.Getenv("WT_SESSION") != "" }

// terminalCode draws a QR code with half blocks, two rows of it in one line of text, dark on light with the quiet
// zone of four modules that ISO/IEC 18004 asks for (from memory).
func terminalCode(code *qr.Code) string {
	const quiet = 4
	var b strings.Builder
	for y := -quiet; y < code.Size+quiet; y += 2 {
		b.WriteString("\x1b[30;107m")
		for x := -quiet; x < code.Size+quiet; x++ {
			b.WriteString([]string{" ", "▀", "▄", "█"}[bit(code, x, y)+2*bit(code, x, y+1)])
		}
		b.WriteString("\x1b[0m\n")
	}
	return b.String()
}

func bit(code *qr.Code, x, y int) int {
	if code.Black(x, y) {
		return 1
	}
	return 0
}
