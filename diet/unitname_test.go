package diet_test

import (
	"encoding/json"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/units"
)

// A unit that is called by a mass weighs that: an ounce is 28.349523125 g, a pound
// 453.59237.
func TestAUnitCalledByAMass(t *testing.T) {
	for _, tt := range []struct {
		serving diet.Serving
		want    string // as one of the others; "" is right
		unit    string // where only Unit can tell
	}{
		{diet.Serving{Name: "oz", Mass: 100}, `diet: label.others[1].mass "100 g": want 28.3 g, what oz means`, ""},
		{diet.Serving{Name: "Ounces", Mass: 29}, `diet: label.others[1].mass "29 g": want 28.3 g, what Ounces means`, ""},
		{diet.Serving{Name: "oz", Mass: 28}, "", ""}, // as printed
		{diet.Serving{Name: "oz", Mass: 28.35, MassHalfStep: 0.005}, "", ""},
		{diet.Serving{Name: "oz", Mass: 28.3, MassHalfStep: 0.005}, `diet: label.others[1].mass "28.3 g": want 28.3 g, what oz means`, ""},
		{diet.Serving{Name: "100 g", Mass: 90}, `diet: label.others[1].mass "90 g": want 100 g, what 100 g means`, ""},
		{diet.Serving{Name: "100 g", Energy: 350}, "", ""},
		{diet.Serving{Name: "lb", Mass: 454}, "", ""},
		{diet.Serving{Name: "kg", Mass: 100}, `diet: label.others[1].mass "100 g": want 1000 g, what kg means`, ""},
		{diet.Serving{Name: "oz", Energy: 350}, "", `diet: label.others.mass "100 g": want 28.3 g, what oz means`}, // 350 / 3.5
		{diet.Serving{Name: "g of meat", Mass: 5}, "", ""},
		{diet.Serving{Name: "goose egg", Mass: 140}, "", ""},
		{diet.Serving{Name: "fl oz", Mass: 31}, "", ""},
		{diet.Serving{Name: "a name that is much too long for a measure", Mass: 31}, "", ""},
	} {
		f := food("House broth", 3500, "cup", 350, 100, 10)
		f.Label.Others[1] = tt.serving
		if _, err := f.Density(); errorText(err) != tt.want {
			t.Errorf("%+v: %v\nwant %s", tt.serving, err, tt.want)
		}
		if tt.want == "" {
			if s, err := f.Unit(tt.serving.Name); errorText(err) != tt.unit || (err != nil) != (s == diet.Serving{}) {
				t.Errorf("%+v: unit %+v, %v\nwant %s", tt.serving, s, err, tt.unit)
			}
		}
	}
	oz := food("House broth", 3500, "oz", 0, 100, 10)
	if _, err := oz.Density(); errorText(err) != `diet: label.serving.mass "100 g": want 28.3 g, what oz means` {
		t.Error(err)
	}
	oz = food("House broth", 3500, "oz", 350, 0, 10)
	if s, err := oz.Unit("oz"); errorText(err) != `diet: label.serving.mass "100 g": want 28.3 g, what oz means` || s != (diet.Serving{}) {
		t.Errorf("%+v, %v", s, err)
	}
}

// What a menu and a mix take can be stored and read back the same.
func TestCountsThatCannotBeStored(t *testing.T) {
	const want = `: want a unit whose name begins with a letter, not with x for times, and is no mass, energy or percentage, as in portion: call it that on the label`
	for _, tt := range []struct {
		serving diet.Serving
		text    string // of one; "" can be told
	}{
		{diet.Serving{Name: "100 mL", Mass: 102}, "1 100 mL"},
		{diet.Serving{Name: "oz", Mass: 28}, "1 oz"},
		{diet.Serving{Name: "Grams", Mass: 1}, "1 Grams"},
		{diet.Serving{Name: "lb 4 oz", Mass: 567}, "1 lb 4 oz"},
		{diet.Serving{Name: "kJ", Energy: 0.239}, "1 kJ"},
		{diet.Serving{Name: "percent", Mass: 5}, "1 percent"},
		{diet.Serving{Name: "per cent", Mass: 5}, "1 per cent"},
		{diet.Serving{Name: "½ can", Mass: 78}, "1 ½ can"},
		{diet.Serving{Name: "mL", Mass: 1}, ""},
		{diet.Serving{Name: "fl oz", Mass: 30}, ""},
		{diet.Serving{Name: "g of meat", Mass: 1}, ""},
		{diet.Serving{Name: "Würfel", Mass: 3}, ""},
		{diet.Serving{Name: "piece", Mass: 3}, ""},
	} {
		f := diet.Food{Name: "Broth", Label: diet.Label{Energy: 1000 * units.KilocaloriePerKilogram, Others: diet.Servings{tt.serving}}}
		a := diet.Count(1, tt.serving.Name)
		menu := diet.Menu{{Food: f, Amount: a, Treat: true}, {Food: houseDog, Amount: diet.Rest()}}
		inMenu, inMix := "", ""
		if tt.text != "" {
			inMenu = `diet: menu[0].amount "` + tt.text + `"` + want
			inMix = `diet: mix.parts[0].amount "` + tt.text + `"` + want
		}
		err := menu.Validate()
		if errorText(err) != inMenu {
			t.Errorf("%s: %v\nwant %s", tt.serving.Name, err, inMenu)
		}
		text, storing := json.Marshal(menu)
		if (storing == nil) != (err == nil) {
			t.Errorf("%s: validated %v, stored %v", tt.serving.Name, err, storing)
		}
		if storing == nil {
			var back diet.Menu
			if err := json.Unmarshal(text, &back); err != nil || back[0] != menu[0] {
				t.Errorf("%s: read back as %+v, %v", text, back, err)
			}
		}
		if _, err := (diet.Mix{Parts: []diet.Part{{Food: f, Amount: a}}}).Food(); errorText(err) != inMix {
			t.Errorf("%s: %v\nwant %s", tt.serving.Name, err, inMix)
		}
	}
}
