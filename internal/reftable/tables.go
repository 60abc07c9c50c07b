package reftable

import (
	"embed"
	"fmt"
)

//go:embed tables/*.tsv
var files embed.FS

// Tables returns the names of the tables, in the order they are shown.
func Tables() []string {
	return []string{
		"units", "ucum", "adult-energy", "growth", "reproduction", "neonates", "activity",
		"weight-loss", "body-condition", "refeeding", "thresholds", "worked-examples", "practice", "statistics", "nutrient-minima",
		"energy-density", "basis-conversion", "densities",
		"scales", "rounding", "scoop-studies", "bulk-density",
		"food-change",
		"meals", "water",
	}
}

// Load reads the named table.
func Load(name string) ([]Row, error) {
	f, err := files.Open("tables/" + name + ".tsv")
	if err != nil {
		return nil, err
	}
	defer f.Close()
	rows, err := Read(f)
	if err != nil {
		return nil, fmt.Errorf("%s: %w", name, err)
	}
	return rows, nil
}
