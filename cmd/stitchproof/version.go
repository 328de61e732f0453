package main

import (
	"fmt"
	"runtime/debug"
)

type versionCommand struct{}

// Run writes the version, and the revision where the build knows it.
func (versionCommand) Run(s *streams) error {
	info, ok := debug.ReadBuildInfo()
	if !ok {
		return fmt.Errorf("this build holds no information about itself")
	}
	line := "stitchproof " + version()
	for _, setting := range info.Settings {
		if setting.Key == "vcs.revision" {
			line += " " + setting.Value
		}
	}
	_, err := fmt.Fprintf(s.out, "%s, built with %s\n", line, info.GoVersion)
	return err
}

// version is what the build says of itself.
func version() string {
	if info, ok := debug.ReadBuildInfo(); ok && info.Main.Version != "" {
		return info.Main.Version
	}
	return "(devel)"
}
