package hostile

import (
	"fmt"
	"strings"

	"example.org/bowlgram/energy/trend"
	"example.org/bowlgram/units"
)

// Records as they are written, each of which is read and can be used. 890 kcal of a food
// of 3560 kcal/kg are 250 g, and two biscuits of 28 kcal come on top.
const (
	storedNeed    = `{"stage":{"stage":"prescribed","animal":{"species":"dog","weight":"24.9 kg","condition":"5/9"},"daily":"946 kcal","by":"Dr Ysolde Crake"},"method":"prescription","daily":"946 kcal","low":"946 kcal","high":"946 kcal","reweigh":"1 wk"}`
	storedItem    = `{"food":{"name":"Tarnwick House Dog Dry","label":{"energy":"3560 kcal/kg"}},"amount":"rest"}`
	storedMenu    = `[` + storedItem + `,{"food":{"name":"House biscuit","role":"complementary","label":{"energy":"3500 kcal/kg","serving":{"name":"biscuit","energy":"28 kcal","mass":"8 g"}}},"amount":"2 biscuit","treat":true}]`
	storedDry     = `{"food":"Tarnwick House Dog Dry","mass":"250 g","energy":"890 kcal"}`
	storedBiscuit = `{"food":"House biscuit","mass":"16 g","energy":"56 kcal","pieces":2,"unit":"biscuit","treat":true}`
	storedFoods   = `[` + storedDry + `,` + storedBiscuit + `]`
	storedRation  = `{"need":` + storedNeed + `,"menu":` + storedMenu + `,"foods":` + storedFoods + `}`
	storedWeighed = `{"ration":` + storedRation + `,"step":"1 g","foods":` + storedFoods + `}`

	storedNursling = `{"stage":{"stage":"nursling","animal":{"species":"cat","weight":"112 g","age":"8 d"}},"weight":"112 g","basis":"current","method":"per_kilogram","daily":"25.200000000000003 kcal","low":"22.400000000000002 kcal","high":"29.120000000000005 kcal","reweigh":"1 d"}`
	storedMilk     = `{"name":"House kitten milk","energy":"1.02 kcal/mL","water":"80 %"}`
	storedBottle   = `{"need":` + storedNursling + `,"liquid":` + storedMilk + `,"feeds":8,"mark":"0.5 mL"}`

	storedSet    = `{"stage":{"stage":"prescribed","animal":{"species":"cat","weight":"4 kg","condition":"4/9"},"daily":"200 kcal","by":"Dr Ysolde Crake"},"method":"prescription","daily":"200 kcal","low":"200 kcal","high":"200 kcal","reweigh":"1 wk"}`
	storedSlurry = `{"name":"House slurry","energy":"1 kcal/mL","water":"80 %"}`
	storedAdult  = `{"stage":{"stage":"adult","animal":{"species":"cat","weight":"4 kg","condition":"5/9"},"status":"neutered"},"weight":"4 kg","basis":"current","method":"factor_on_rer","daily":"237.58787847867995 kcal","low":"118.79393923933998 kcal","high":"356.38181771801993 kcal","reweigh":"2 wk"}`
	storedTube   = `{"need":` + storedSet + `,"liquid":` + storedSlurry + `,"feeds":5,"flush":"5 mL","goal":"240 mL"}`

	storedBudget = `{"food":"Tarnwick House Dog Dry","bowl":"125 g","energy":"445 kcal","step":"1 g","bowls":2,"off":"0.4 %","day_once":true,"label":"0.1 %","density":"0 %","scale":"0.23 %","scoop":"0 %","individual":"15 %","reweigh":"1 wk"}`

	storedDay = `{"day":1,"step":1,"share":"25 %",` +
		`"foods":[{"food":"old","mass":"225 g","energy":"801 kcal"},{"food":"new","mass":"90 g","energy":"268.2 kcal"}],` +
		`"meals":[{"number":1,"food":"old","count":113,"mass":"113 g","energy":"402.28 kcal"},{"number":1,"food":"new","count":45,"mass":"45 g","energy":"134.1 kcal"},` +
		`{"number":2,"food":"old","count":112,"mass":"112 g","energy":"398.72 kcal"},{"number":2,"food":"new","count":45,"mass":"45 g","energy":"134.1 kcal"}],` +
		`"energy":"1069.2 kcal","target":"1068 kcal"}`

	storedLoss = `{"loss":{"animal":{"species":"dog","weight":"38.5 kg","condition":"8/9"}},"daily":"888 kcal","since":"2026-11-02","target":{"low":"1 %","high":"2 %"},"asked":true}`
)

// weighedTwice is the log of that loss.
var weighedTwice = trend.Weights{
	{Date: today - 7, Weight: 38.5 * units.Kilogram, Readability: 100 * units.Gram},
	{Date: today, Weight: 38.1 * units.Kilogram, Readability: 100 * units.Gram},
}

// swap is a record that has another text in the one place of it where old stands.
func swap(record, old, other string) string {
	if n := strings.Count(record, old); n != 1 {
		panic(fmt.Sprintf("%d times %s in %s", n, old, record))
	}
	return strings.Replace(record, old, other, 1)
}
