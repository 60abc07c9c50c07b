package main

import (
	"bufio"
	"encoding/csv"
	"fmt"
	"io"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"time"
)

// writeRoster writes an animals file for the foods of examples/daysheet, whose
// rows differ in weight, status, food, meals and scale.
func writeRoster(out io.Writer, rows int) error {
	w := bufio.NewWriter(out)
	io.WriteString(w, "animal,place,species,weight,status,energy,by,condition,days unfed,food,meals,scale,hold\n")
	for i := range rows {
		row := [...]string{
			"dog,%d.%d kg,neutered,,,5/9,,Tarnwick House Dog Dry,2,1 g,",
			"cat,3.%d%d kg,intact,,,5/9,,Tarnwick House Cat Dry,3,0.1 g,",
			"dog,1%d.%d kg,,988 kcal/day,Dr Ysolde Crake,8/9,,Ostlehouse Slim Dog Dry,3,,",
			"dog,4%d.%d lb,senior,,,3/5,0,Tarnwick House Dog Dry,4,2 g,",
		}[i%4]
		fmt.Fprintf(w, "animal %d,run %d,"+row+"\n", i, i/8, 5+i/4%5, i/7%10)
	}
	return w.Flush()
}

// copyRecords is the floor of the roster: encoding/csv reading and writing.
func copyRecords(in io.Reader, out io.Writer) error {
	r, b := csv.NewReader(in), bufio.NewWriterSize(out, 64<<10)
	r.ReuseRecord = true
	w := csv.NewWriter(b)
	for {
		rec, err := r.Read()
		if err == io.EOF {
			break
		}
		if err != nil {
			return err
		}
		if err := w.Write(rec); err != nil {
			return err
		}
	}
	w.Flush()
	if err := w.Error(); err != nil {
		return err
	}
	return b.Flush()
}

// usage is what a run of a program took: the least of several.
type usage struct {
	cpu  time.Duration // of the user and of the system: what else runs matters less
	peak int64         // bytes of memory; 0: not measured
}

// roster is what a file of so many rows took.
type roster struct {
	rows        int
	sheet, copy usage
}

// runRosters runs the sheet and the copy by turns, so that what else the
// machine does weighs on both.
func runRosters(tmp string, lengths []int, times int) ([]roster, error) {
	sheet := filepath.Join(tmp, "daysheet")
	if _, err := output("", nil, "go", "build", "-o", sheet, "./examples/daysheet"); err != nil {
		return nil, err
	}
	self, err := os.Executable()
	if err != nil {
		return nil, err
	}
	var list []roster
	for _, rows := range lengths {
		file := filepath.Join(tmp, "animals.csv")
		f, err := os.Create(file)
		if err != nil {
			return nil, err
		}
		if err := writeRoster(f, rows); err != nil {
			return nil, err
		}
		if err := f.Close(); err != nil {
			return nil, err
		}
		most := usage{cpu: math.MaxInt64, peak: math.MaxInt64}
		r := roster{rows, most, most}
		for range times {
			if err := r.sheet.run(file, sheet, "-animals", "-", "-foods", "examples/daysheet/foods.csv", "-format", "csv"); err != nil {
				return nil, err
			}
			if err := r.copy.run(file, self, "-copy"); err != nil {
				return nil, err
			}
		}
		list = append(list, r)
	}
	return list, nil
}

// run runs a program on a file, its output thrown away.
func (u *usage) run(file, name string, args ...string) error {
	in, err := os.Open(file)
	if err != nil {
		return err
	}
	defer in.Close()
	cmd := exec.Command(name, args...)
	cmd.Stdin, cmd.Stderr = in, os.Stderr
	if err := cmd.Run(); err != nil {
		return fmt.Errorf("%s: %w", name, err)
	}
	u.cpu = min(u.cpu, cmd.ProcessState.UserTime()+cmd.ProcessState.SystemTime())
	u.peak = min(u.peak, peak(cmd.ProcessState))
	return nil
}

func rosterTable(list []roster) string {
	var b strings.Builder
	b.WriteString("| `daysheet -format csv`, rows | rows a second of processor time | `encoding/csv` copying the bytes | ratio | peak memory | of the copy |\n| --- | --- | --- | --- | --- | --- |\n")
	for _, r := range list {
		rate := func(u usage) string {
			return thousands(int(float64(r.rows)/max(u.cpu.Seconds(), 1e-3)/1000) * 1000)
		}
		ratio := short(float64(r.sheet.cpu) / float64(max(r.copy.cpu, time.Millisecond)))
		fmt.Fprintf(&b, "| %s | %s | %s | %s | %s | %s |\n", thousands(r.rows), rate(r.sheet), rate(r.copy), ratio, megabytes(r.sheet.peak), megabytes(r.copy.peak))
	}
	return b.String()
}

// thousands writes 1,000,000.
func thousands(n int) string {
	s := fmt.Sprint(n)
	for i := len(s) - 3; i > 0; i -= 3 {
		s = s[:i] + "," + s[i:]
	}
	return s
}

func megabytes(n int64) string {
	if n == 0 {
		return "not measured"
	}
	return short(float64(n)/1e6) + " MB"
}
