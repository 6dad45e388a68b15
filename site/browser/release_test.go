package browser

import (
	"archive/tar"
	"archive/zip"
	"bufio"
	"bytes"
	"compress/gzip"
	"crypto/sha256"
	"debug/elf"
	"debug/macho"
	"debug/pe"
	"encoding/hex"
	"encoding/json"
	"io"
	"net/http"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// These open what make release-check has made and run what is in it; the environment variable RELEASE names its folder.

// released finds the one file of a release whose name ends so.
func released(t *testing.T, end string) string {
	t.Helper()
	dir := os.Getenv("RELEASE")
	if dir == "" {
		t.Skip("make release-check makes a release and runs this")
	}
	found, err := filepath.Glob(filepath.Join(dir, "spraywright_*"+end))
	require.NoError(t, err)
	require.Len(t, found, 1, "files ending in %s", end)
	return found[0]
}

// unpacked is where a file or folder of an archive lies once that has been opened.
func unpacked(t *testing.T, end, name string) string {
	t.Helper()
	archive, dir := released(t, end), t.TempDir()
	if strings.HasSuffix(end, ".zip") {
		r, err := zip.OpenReader(archive)
		require.NoError(t, err)
		defer r.Close()
		require.NoError(t, os.CopyFS(dir, r)) // refuses names that lead out of the folder
	} else {
		untar(t, archive, dir)
	}
	for _, pattern := range []string{name, "*/" + name} { // with or without a folder around all
		if found, _ := filepath.Glob(filepath.Join(dir, pattern)); len(found) == 1 {
			return found[0]
		}
	}
	require.Fail(t, "not in the archive", "%s in %s", name, archive)
	return ""
}

func untar(t *testing.T, archive, dir string) {
	t.Helper()
	f, err := os.Open(archive)
	require.NoError(t, err)
	defer f.Close()
	packed, err := gzip.NewReader(f)
	require.NoError(t, err)
	for r := tar.NewReader(packed); ; {
		h, err := r.Next()
		if err == io.EOF {
			return
		}
		require.NoError(t, err)
		require.True(t, filepath.IsLocal(h.Name), h.Name)
		if h.Typeflag != tar.TypeReg {
			continue
		}
		to := filepath.Join(dir, h.Name)
		require.NoError(t, os.MkdirAll(filepath.Dir(to), 0o755))
		text, err := io.ReadAll(r)
		require.NoError(t, err)
		require.NoError(t, os.WriteFile(to, text, os.FileMode(h.Mode).Perm()))
	}
}

// serveFolder serves a folder as it is, with the site's own program.
func serveFolder(t *testing.T, dir string) *server {
	t.Helper()
	s := serve(t)
	s.stop()
	s.build.dist, s.address = dir, "127.0.0.1:0"
	s.start()
	return s
}

func TestTheChecksumsOfARelease(t *testing.T) {
	list, err := os.ReadFile(released(t, "_checksums.txt"))
	require.NoError(t, err)
	listed := 0
	for line := range strings.Lines(string(list)) {
		sum, name, found := strings.Cut(strings.TrimSpace(line), "  ")
		require.True(t, found, line)
		text, err := os.ReadFile(filepath.Join(os.Getenv("RELEASE"), name))
		require.NoError(t, err)
		got := sha256.Sum256(text)
		assert.Equal(t, sum, hex.EncodeToString(got[:]), name)
		listed++
	}
	archives, err := filepath.Glob(filepath.Join(os.Getenv("RELEASE"), "spraywright_*.[tz]*"))
	require.NoError(t, err)
	assert.GreaterOrEqual(t, listed, len(archives)-1, "all but the list itself stand in it")
}

// CycloneDX 1.6 (ECMA-424): a bill of materials says so, and names its components.
func TestTheMaterialsOfARelease(t *testing.T) {
	text, err := os.ReadFile(released(t, ".cdx.json"))
	require.NoError(t, err)
	var bill struct {
		BomFormat, SpecVersion string
		Components             []struct{ Name, Scope string }
	}
	require.NoError(t, json.Unmarshal(text, &bill))
	assert.Equal(t, []string{"CycloneDX", "1.6"}, []string{bill.BomFormat, bill.SpecVersion})
	assert.Contains(t, bill.Components, struct{ Name, Scope string }{"rsc.io/qr", "required"})
	list, err := os.ReadFile(released(t, "_checksums.txt"))
	require.NoError(t, err)
	assert.Contains(t, string(list), ".cdx.json")
}

func TestTheSiteOutOfItsArchives(t *testing.T) {
	for _, end := range []string{"_site.tar.gz", "_site.zip"} {
		s := serveFolder(t, unpacked(t, end, "site"))
		p := open(t, s, "wet-film.html", phone)
		wetFilm(p)
		res := fetch(t, s.address, "job.wasm")
		assert.Equal(t, "gzip", res.Header.Get("Content-Encoding"), "%s holds no packed files", end)
	}
}

func TestTheOneFileOutOfItsArchive(t *testing.T) {
	p := open(t, &server{t: t, file: unpacked(t, "_one_file.zip", "spraywright.html")}, "wet-film.html", phone)
	wetFilm(p)
}

// The program for this machine is started and asked, as it comes out of the archive.
func TestTheServerOutOfItsArchive(t *testing.T) {
	end := "_server_" + runtime.GOOS + "_" + runtime.GOARCH + ".tar.gz"
	program := unpacked(t, end, "spraywright")
	dir := t.TempDir()
	note := filepath.Join(dir, "note")
	require.NoError(t, os.WriteFile(filepath.Join(dir, "xdg-open"), []byte("#!/bin/sh\nprintf %s \"$1\" > '"+note+"'\n"), 0o755))
	cmd := exec.Command(program, "-addr", ":0", "-open")
	cmd.Env = append(os.Environ(), "PATH="+dir+":/bin:/usr/bin")
	out, err := cmd.StdoutPipe()
	require.NoError(t, err)
	require.NoError(t, cmd.Start())
	t.Cleanup(func() { cmd.Process.Kill(); cmd.Wait() })
	var said strings.Builder
	var address string
	for lines := bufio.NewScanner(out); lines.Scan(); {
		said.WriteString(lines.Text() + "\n")
		if found := announced.FindStringSubmatch(lines.Text()); found != nil && address == "" {
			address = "127.0.0.1:" + found[1]
		}
		if strings.HasPrefix(lines.Text(), "keeping the site") {
			break
		}
	}
	assert.Contains(t, said.String(), "https", "what wants it is not told")
	require.Eventually(t, func() bool { text, _ := os.ReadFile(note); return strings.HasPrefix(string(text), "http://localhost:") }, patience, 20*time.Millisecond)
	wetFilm(open(t, &server{t: t, address: address}, "wet-film.html", phone))
	res := fetch(t, address, "job.wasm")
	assert.Equal(t, []string{"application/wasm", "gzip"}, []string{res.Header.Get("Content-Type"), res.Header.Get("Content-Encoding")})
	for _, name := range []string{"../held/.gitignore", "..%2f.gitignore", ".gitignore", "job.wasm.gz", `..\.gitignore`} {
		assert.Equal(t, http.StatusNotFound, fetch(t, address, name).StatusCode, name)
	}
}

// Programs for other machines cannot be run here: their headers say what they are for, and all hold the same site.
func TestTheServersForOtherMachines(t *testing.T) {
	for end, is := range map[string]func(io.ReaderAt) (any, error){
		"linux_amd64.tar.gz": func(r io.ReaderAt) (any, error) { f, err := elf.NewFile(r); return f.Machine == elf.EM_X86_64, err },
		"linux_arm64.tar.gz": func(r io.ReaderAt) (any, error) { f, err := elf.NewFile(r); return f.Machine == elf.EM_AARCH64, err },
		"macos_amd64.tar.gz": func(r io.ReaderAt) (any, error) { f, err := macho.NewFile(r); return f.Cpu == macho.CpuAmd64, err },
		"macos_arm64.tar.gz": func(r io.ReaderAt) (any, error) { f, err := macho.NewFile(r); return f.Cpu == macho.CpuArm64, err },
		"windows_amd64.zip": func(r io.ReaderAt) (any, error) {
			f, err := pe.NewFile(r)
			return f.Machine == pe.IMAGE_FILE_MACHINE_AMD64, err
		},
		"windows_arm64.zip": func(r io.ReaderAt) (any, error) {
			f, err := pe.NewFile(r)
			return f.Machine == pe.IMAGE_FILE_MACHINE_ARM64, err
		},
	} {
		name := "spraywright"
		if strings.HasPrefix(end, "windows") {
			name += ".exe"
		}
		program, err := os.ReadFile(unpacked(t, "_server_"+end, name))
		require.NoError(t, err)
		right, err := is(bytes.NewReader(program))
		require.NoError(t, err, end)
		assert.Equal(t, true, right, "%s is for another processor", end)
		core, err := os.ReadFile(filepath.Join(unpacked(t, "_site.tar.gz", "site"), "job.wasm.gz"))
		require.NoError(t, err)
		assert.True(t, bytes.Contains(program, core), "%s does not hold the site", end)
		require.NotEmpty(t, unpacked(t, "_server_"+end, "CHANGES.md"))
	}
}
