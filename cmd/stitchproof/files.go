package main

import (
	"bytes"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"

	"stitchproof/lang/source"
)

// stdinName is how standard input is named, on the command line and in reports.
const stdinName = "-"

// patternEnding is the ending of the files that a folder is searched for.
const patternEnding = ".crochet"

// patternFiles lists the files that paths name: files themselves, standard
// input, and every pattern in a folder and the folders within it, by name.
func patternFiles(paths []string) ([]string, error) {
	var out []string
	for _, path := range paths {
		if path == stdinName {
			out = append(out, path)
			continue
		}
		info, err := os.Stat(path)
		if err != nil {
			return nil, err
		}
		if !info.IsDir() {
			out = append(out, path)
			continue
		}
		before := len(out)
		err = filepath.WalkDir(path, func(name string, entry fs.DirEntry, err error) error {
			if err == nil && !entry.IsDir() && filepath.Ext(name) == patternEnding {
				out = append(out, name)
			}
			return err
		})
		if err != nil {
			return nil, err
		}
		if len(out) == before {
			return nil, fmt.Errorf("no %s file in %s", patternEnding, path)
		}
	}
	return out, nil
}

// read reads a file, or standard input.
func (s *streams) read(name string) (*source.Text, error) {
	var content []byte
	var err error
	if name == stdinName {
		content, err = io.ReadAll(s.in)
	} else {
		content, err = os.ReadFile(name)
	}
	if err != nil {
		return nil, err
	}
	if bytes.IndexByte(content, 0) >= 0 {
		return nil, fmt.Errorf("%s is not UTF-8 text: it holds zero bytes, as programs, pictures and UTF-16 text do", name)
	}
	return source.New(string(content)), nil
}
