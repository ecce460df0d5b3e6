package main

import (
	"bufio"
	"encoding/json"
	"fmt"
	"io"
	"os"
	"os/exec"
	"strconv"
	"strings"
	"testing"
	"time"
)

// An editorServer is a YAML language server, talked to as an editor does: messages of
// JSON-RPC 2.0 with a Content-Length before each, over its standard streams.
type editorServer struct {
	t      *testing.T
	in     io.WriteCloser
	got    chan map[string]any
	nextID int
	marked map[string][]any // the red lines of each file, as last told
}

// serverPath finds the server: where the environment says, or by its usual name. It is
// an npm package; without it the test is skipped, but never where CI_OUTSIDE is set.
func serverPath(t *testing.T) string {
	t.Helper()
	if path := os.Getenv("YAML_LANGUAGE_SERVER"); path != "" {
		return path
	}
	path, err := exec.LookPath("yaml-language-server")
	if err != nil {
		if os.Getenv("CI_OUTSIDE") != "" {
			t.Fatal("yaml-language-server is not installed, nor named by YAML_LANGUAGE_SERVER")
		}
		t.Skip("yaml-language-server is not installed")
	}
	return path
}

func startServer(t *testing.T, folder string) *editorServer {
	t.Helper()
	cmd := exec.Command(serverPath(t), "--stdio")
	in, err := cmd.StdinPipe()
	if err != nil {
		t.Fatal(err)
	}
	out, err := cmd.StdoutPipe()
	if err != nil {
		t.Fatal(err)
	}
	if err := cmd.Start(); err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() {
		in.Close()
		_ = cmd.Process.Kill() // it may have ended with its input
		_ = cmd.Wait()
	})
	s := &editorServer{t: t, in: in, got: make(chan map[string]any, 100), marked: map[string][]any{}}
	go s.listen(out)
	s.ask("initialize", map[string]any{
		"processId": nil, "rootUri": "file://" + folder,
		"capabilities": map[string]any{
			"textDocument": map[string]any{"completion": map[string]any{"completionItem": map[string]any{"snippetSupport": true}}, "hover": map[string]any{"contentFormat": []string{"markdown"}}},
			"workspace":    map[string]any{"configuration": true},
		},
	})
	s.send(map[string]any{"method": "initialized", "params": map[string]any{}})
	return s
}

// listen takes the messages of the server apart.
func (s *editorServer) listen(out io.Reader) {
	defer close(s.got)
	r := bufio.NewReader(out)
	for {
		size := 0
		for {
			line, err := r.ReadString('\n')
			if err != nil {
				return
			}
			if line = strings.TrimSpace(line); line == "" {
				break
			}
			if n, ok := strings.CutPrefix(line, "Content-Length: "); ok {
				size, _ = strconv.Atoi(n)
			}
		}
		body := make([]byte, size)
		if _, err := io.ReadFull(r, body); err != nil {
			return
		}
		var m map[string]any
		if json.Unmarshal(body, &m) == nil {
			s.got <- m
		}
	}
}

func (s *editorServer) send(m map[string]any) {
	s.t.Helper()
	m["jsonrpc"] = "2.0"
	body, err := json.Marshal(m)
	if err != nil {
		s.t.Fatal(err)
	}
	if _, err := fmt.Fprintf(s.in, "Content-Length: %d\r\n\r\n%s", len(body), body); err != nil {
		s.t.Fatal(err)
	}
}

// editorSettings are what the server asks its editor for: no network.
var editorSettings = map[string]any{
	"yaml": map[string]any{"validate": true, "hover": true, "completion": true, "schemaStore": map[string]any{"enable": false}},
}

// take handles one message that is no answer: what the server asks, and red lines.
func (s *editorServer) take(m map[string]any) {
	params, _ := m["params"].(map[string]any)
	switch m["method"] {
	case "workspace/configuration":
		var out []any
		items, _ := params["items"].([]any)
		for _, it := range items {
			section, _ := it.(map[string]any)["section"].(string)
			out = append(out, editorSettings[section])
		}
		s.send(map[string]any{"id": m["id"], "result": out})
	case "textDocument/publishDiagnostics":
		list, _ := params["diagnostics"].([]any)
		s.marked[params["uri"].(string)] = list
	default:
		if m["id"] != nil && m["method"] != nil {
			s.send(map[string]any{"id": m["id"], "result": nil})
		}
	}
}

// ask sends a request and waits for its answer.
func (s *editorServer) ask(method string, params any) any {
	s.t.Helper()
	s.nextID++
	id := float64(s.nextID)
	s.send(map[string]any{"id": id, "method": method, "params": params})
	late := time.After(60 * time.Second)
	for {
		select {
		case m, ok := <-s.got:
			switch {
			case !ok:
				s.t.Fatalf("%s: the server has ended", method)
			case m["id"] == id && m["method"] == nil:
				if m["error"] != nil {
					s.t.Fatalf("%s: %v", method, m["error"])
				}
				return m["result"]
			}
			s.take(m)
		case <-late:
			s.t.Fatalf("%s: no answer in a minute", method)
		}
	}
}

// open shows a text to the server, under a name.
func (s *editorServer) open(uri, text string) {
	s.send(map[string]any{"method": "textDocument/didOpen", "params": map[string]any{
		"textDocument": map[string]any{"uri": uri, "languageId": "yaml", "version": 1, "text": text},
	}})
}

// redLines waits for what the server marks in a file.
func (s *editorServer) redLines(uri string) []any {
	s.t.Helper()
	late := time.After(60 * time.Second)
	for s.marked[uri] == nil {
		select {
		case m, ok := <-s.got:
			if !ok {
				s.t.Fatal("the server has ended")
			}
			s.take(m)
		case <-late:
			s.t.Fatalf("nothing is told of %s in a minute", uri)
		}
	}
	return s.marked[uri]
}
