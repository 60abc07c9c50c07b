package units

// Energy is an amount of metabolizable energy, held in kilocalories. The zero
// value is no energy, 0 kcal. The energy of a day is an Energy too: everything
// in this library is per day.
type Energy float64

// Units of energy. The calorie is the thermochemical calorie, exactly 4.184 J.
// The kilocalorie is what food labels write as "kcal" and some as "Calorie".
const (
	Kilocalorie Energy = 1
	Megacalorie        = 1000 * Kilocalorie
	Kilojoule          = Kilocalorie / 4.184
	Megajoule          = 1000 * Kilojoule
)

// Kilocalories returns e as a number of kilocalories.
func (e Energy) Kilocalories() float64 { return float64(e) }

// Megacalories returns e as a number of megacalories.
func (e Energy) Megacalories() float64 { return float64(e / Megacalorie) }

// Kilojoules returns e as a number of kilojoules.
func (e Energy) Kilojoules() float64 { return float64(e) * 4.184 }

// Megajoules returns e as a number of megajoules.
func (e Energy) Megajoules() float64 { return float64(e) * 4.184 / 1000 }

var energyTable = newTable(
	table{
		quantity: "energy", base: "kcal",
		units: []unit{
			{code: "kcal", names: []string{"kcal_th", "kcals", "kilocalorie", "kilocalories"}},
			{code: "kJ", names: []string{"kjs", "kilojoule", "kilojoules"}, mul: 125, div: 523},
			{code: "Mcal", names: []string{"Mcal_th", "Mcals", "megacalorie", "megacalories"}, shift: 3},
			{code: "MJ", names: []string{"megajoule", "megajoules"}, shift: 3, mul: 125, div: 523},
			{code: "cal_th", shift: -3},
			{code: "J", names: []string{"joule", "joules"}, shift: -3, mul: 125, div: 523},
		},
	},
	doubt{
		[]string{"cal", "cals", "calorie", "calories"},
		"labels also write Calorie for kcal, a thousand calories",
		[]string{"kcal", "cal_th"},
	},
	doubt{[]string{"mcal", "mcals", "mcal_th"}, "millicalorie or megacalorie", []string{"Mcal", "kcal"}},
	doubt{[]string{"mj"}, "millijoule or megajoule", []string{"MJ", "kJ"}},
)

// ParseEnergy reads an energy, as in "1248 kcal" or "5.2 MJ". A
// bare "Cal", "cal" or "calories" is refused: it may be a kilocalorie.
//
// An error is a [*ParseError].
func ParseEnergy(s string) (Energy, error) {
	v, _, err := read(energyTable, s)
	return Energy(v), err
}

// String returns e in kilocalories, as in "1248 kcal". It is read back by
// [ParseEnergy] as the same value.
func (e Energy) String() string { return energyTable.text(float64(e)) }

// AppendText appends the text of String. It fails where e is NaN or infinite.
func (e Energy) AppendText(b []byte) ([]byte, error) { return energyTable.appendText(b, float64(e)) }

// MarshalText returns the text of String. It fails where e is NaN or infinite.
func (e Energy) MarshalText() ([]byte, error) { return e.AppendText(nil) }

// UnmarshalText sets e as [ParseEnergy] reads text. On an error e stays as it was.
func (e *Energy) UnmarshalText(text []byte) error { return unmarshal(e, energyTable, text) }
