package main

import (
	"example.org/bowlgram/diet"
	"example.org/bowlgram/internal/csvrow"
	"example.org/bowlgram/internal/foodcsv"
	"example.org/bowlgram/units"
)

// food is a row of the foods file with what follows from it, worked out once.
type food struct {
	*foodcsv.Entry
	menu  diet.Menu // of nothing else
	alone []*food   // the same

	servingVolume units.Volume // of one serving, where that is a volume
}

// foods are the foods file, by the name that the animals file uses.
type foods struct {
	file *foodcsv.File
	byID map[string]*food
}

// readFoods reads the foods file whole. Each problem goes to report.
func readFoods(r *csvrow.Reader, report func(string)) (*foods, error) {
	file, err := foodcsv.ReadFile(r, report)
	if err != nil {
		return nil, err
	}
	fs := &foods{file, make(map[string]*food)}
	for _, e := range file.Entries() {
		f := &food{Entry: e, menu: diet.Only(e.Food)}
		f.alone = []*food{f}
		if v, err := units.ParseVolume(e.Food.Label.Serving.Name); err == nil && v > 0 {
			f.servingVolume = v
		}
		fs.byID[e.Name] = f
	}
	return fs, nil
}
