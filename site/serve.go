package main

import (
	"errors"
	"fmt"
	"io"
	"net"
	"net/http"
	"os"
	"path"
	"strconv"
	"strings"
	"syscall"
	"time"

	"rsc.io/qr"
)

type server struct {
	dir, addr string
	lan       bool
}

// serve answers until it is stopped. It listens on this machine alone unless lan is set.
func (s *server) serve() error {
	handler, err := newHandler(s.dir)
	if err != nil {
		return err
	}
	listener, err := s.listen()
	if err != nil {
		return err
	}
	addr := listener.Addr().(*net.TCPAddr)
	fmt.Printf("Open %s — Ctrl+C stops.\n", link(addr))
	if s.lan {
		announce(os.Stdout, addr.Port)
	}
	return (&http.Server{Handler: handler, ReadHeaderTimeout: 10 * time.Second}).Serve(listener)
}

// link is where this machine's browser finds what listens on an address.
func link(addr *net.TCPAddr) string {
	host := addr.IP.String()
	if addr.IP.IsUnspecified() || addr.IP.IsLoopback() {
		host = "localhost"
	}
	return "http://" + net.JoinHostPort(host, strconv.Itoa(addr.Port)) + "/"
}

// listen takes the port asked for, or where that is in use one of the twenty after it.
func (s *server) listen() (net.Listener, error) {
	host, portText, err := net.SplitHostPort(s.addr)
	if err != nil {
		return nil, err
	}
	port, err := strconv.Atoi(portText)
	if err != nil {
		return nil, err
	}
	if s.lan {
		host = ""
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
		if code, err := qr.Encode(address, qr.L); err == nil {
			fmt.Fprint(out, terminalCode(code))
		}
	}
	fmt.Fprintln(out, "A phone keeps the site for use without a network only when it comes over https; over plain http that works on localhost alone.")
}

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

// newHandler serves one folder and nothing outside it, not even through a link.
func newHandler(dir string) (http.Handler, error) {
	root, err := os.OpenRoot(dir)
	if err != nil {
		return nil, err
	}
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		setHeaders(w.Header(), r.URL.Path)
		if r.Method != http.MethodGet && r.Method != http.MethodHead {
			w.Header().Set("Allow", "GET, HEAD")
			http.Error(w, "only GET and HEAD are answered", http.StatusMethodNotAllowed)
			return
		}
		name := strings.TrimPrefix(r.URL.Path, "/")
		if name == "" || strings.HasSuffix(name, "/") {
			name += "index.html"
		}
		if err := sendFile(w, r, root, name); err != nil {
			http.Error(w, "no such page", http.StatusNotFound)
		}
	}), nil
}

// types are what browsers insist on; a machine's own table may lack or bend them.
var types = map[string]string{
	".html": "text/html; charset=utf-8", ".css": "text/css; charset=utf-8", ".js": "text/javascript; charset=utf-8",
	".json": "application/json", ".webmanifest": "application/manifest+json", ".wasm": "application/wasm",
	".svg": "image/svg+xml", ".png": "image/png", ".txt": "text/plain; charset=utf-8", ".words": "text/plain; charset=utf-8",
}

var errHidden = errors.New("not a file of the site")

func sendFile(w http.ResponseWriter, r *http.Request, root *os.Root, name string) error {
	kind, known := types[path.Ext(name)]
	if !known {
		return errHidden
	}
	f, err := root.Open(name)
	if err != nil {
		return err
	}
	defer f.Close()
	info, err := f.Stat()
	if err != nil || info.IsDir() {
		return errHidden
	}
	w.Header().Set("Content-Type", kind)
	http.ServeContent(w, r, name, info.ModTime(), f)
	return nil
}
