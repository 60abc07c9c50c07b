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
