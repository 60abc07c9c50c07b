package hostile

import (
	"strconv"
	"strings"
	"testing"
)

// times is a text so many times, with a separator between.
func times(n int, text, separator string) string {
	return strings.TrimSuffix(strings.Repeat(text+separator, n), separator)
}

// TestLimits holds how much a reader takes: the most, and one more.
func TestLimits(t *testing.T) {
	const (
		food = `{"name":"a","label":{"energy":"3560 kcal/kg"}}`
		unit = `{"name":"scoop","mass":"8 g"}`
		pack = `{"net":"2 kg"}`
	)
	labelled := func(member string) string {
		return `{"name":"a","label":{"energy":"3560 kcal/kg","serving":{"name":"cup","energy":"356 kcal","mass":"100 g"},` + member + `}}`
	}
	names := func(n int) string { // of units and foods, which must differ
		var list []string
		for i := range n {
			list = append(list, strings.Replace(unit, "scoop", "scoop "+string(rune('a'+i)), 1))
		}
		return strings.Join(list, ",")
	}
	foods := func(n int) string {
		var list []string
		for i := range n {
			list = append(list, `{"food":`+strings.Replace(food, `"a"`, `"`+string(rune('a'+i))+`"`, 1)+`,"amount":"12.5 %"}`)
		}
		return `[` + strings.Join(list, ",") + `]`
	}
	packs := func(n int) string {
		var list []string
		for i := range n {
			list = append(list, strings.Replace(pack, "2", string(rune('1'+i)), 1))
		}
		return strings.Join(list, ",")
	}
	rising := func(n int) string { // shares of a change, up to the whole
		list := []string{"100 %"}
		for i := range n - 1 {
			list = append([]string{strconv.Itoa(99-i) + " %"}, list...)
		}
		return strings.Join(list, ", ")
	}
	line := func(n int) string { // of so many bytes, its end among them
		const rest = ",3560 kcal/kg,,,,,dog,,,,,,,,\n"
		return "a" + strings.Repeat(" ", n-1-len(rest)) + rest
	}
	for _, limit := range []struct {
		into       reader
		most, more string
		kind       kind
		want       string
	}{
		{massText, "5 kg" + strings.Repeat(" ", 396), "5 kg" + strings.Repeat(" ", 397), parse, `units: mass "5 kg                                    …": too long: want at most 400 bytes`},
		{ladderText, times(14, "100", "/") + " %", times(15, "100", "/") + " %", field, `energy: ladder "100/100/100/100/100/100/100/100/100/100/100/100/100/100/100 %": want three_day, four_day, full, or 1 to 14 steps in percent of resting energy, each above 1 % and at most 100 % and none below the one before, as in "25/50/75/100 %" (15 steps)`},
		{stepsText, rising(20), rising(21), field, `transition: steps "80 %, 81 %, 82 %, 83 %, 84 %, 85 %, 86 %, 87 %, 88 %, 89 %, 90 %, 91 %, 92 %, 93 %, 94 %, 95 %, 96 %, 97 %, 98 %, 99 %, 100 %": want four_stages, four_days, ten_steps, slow or immediate, or 1 to 20 steps of 1 to 60 days, each share above 1 % and above the one before, the last 100 %, as in "25 % 2 d, 50 % 2 d, 75 % 2 d, 100 %" (21 steps)`},
		{amountText, "2 " + strings.Repeat("x", 64), "2 " + strings.Repeat("x", 65), field, `diet: amount "2 xxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxx": want a share as in 50 %, a mass as in 45 g, a count as in 2 biscuit, or rest`},
		{amountText, "1000 x", "1001 x", field, `diet: amount "1001 x": want a share as in 50 %, a mass as in 45 g, a count as in 2 biscuit, or rest`},
		{menuRecord, foods(8), foods(9), field, `diet: menu "9 foods": want at most 8`},
		{foodRecord, labelled(`"others":[` + names(4) + `]`), labelled(`"others":[` + names(5) + `]`), field, `diet: label.others "5 units": want at most 4`},
		{foodRecord, labelled(`"packs":[` + packs(4) + `]`), labelled(`"packs":[` + packs(5) + `]`), field, `diet: label.packs "5 packs": want at most 4`},
		{cupRecord, `{"n":1000000,"mean":"100 g","sd":"2 g"}`, `{"n":1000001,"mean":"100 g","sd":"2 g"}`, field, `scoop: weighings "1000001": want 3 to 1000000`},
		{planRecord, changeOf(`"meals":24,"scale":"1 g"`), changeOf(`"meals":25,"scale":"1 g"`), field, `portion: meals "25": want 1 to 24 a day`},
		{bottleRecord, swap(storedBottle, `"feeds":8`, `"feeds":24`), swap(storedBottle, `"feeds":8`, `"feeds":25`), field, `portion: feeds "25": want 1 to 24 a day`},
		{dayRecord, swap(storedDay, `"day":1`, `"day":366`), swap(storedDay, `"day":1`, `"day":367`), field, `transition: day record "day 367": want 1 to 366`},
		{foodsRow, strings.Repeat("x", 64) + ",3560 kcal/kg,,,,,dog,,,,,,,,", strings.Repeat("x", 65) + ",3560 kcal/kg,,,,,dog,,,,,,,,", cell, `line 2: food "xxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxx…": 65 bytes, want at most 64`},
		{foodsRow, line(1 << 16), line(1<<16 + 1), cell, `line 2: "a                                                           …": a line of more than 65536 bytes`},
	} {
		if err := limit.into.read(limit.most); err != nil {
			t.Errorf("%s: the most is refused: %v", limit.into.name, err)
		}
		err := limit.into.read(limit.more)
		if err == nil || err.Error() != limit.want || kindOf(err) != limit.kind {
			t.Errorf("%s: one more\ngot  %v\nwant %s %s", limit.into.name, err, limit.kind, limit.want)
		}
	}
}
