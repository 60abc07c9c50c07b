package units

// EnergyDensity is metabolizable energy per mass of food, held in kcal/kg. It
// says nothing of the basis: package diet keeps as fed and dry matter apart.
// The zero value means not given.
type EnergyDensity float64

// Units of energy density.
const (
	KilocaloriePerKilogram EnergyDensity = 1
	KilocaloriePerGram                   = 1000 * KilocaloriePerKilogram
	KilocaloriePer100Gram                = 10 * KilocaloriePerKilogram
	KilocaloriePerPound                  = KilocaloriePerKilogram / 0.45359237
	KilocaloriePerOunce                  = 16 * KilocaloriePerPound
	KilojoulePerKilogram                 = KilocaloriePerKilogram / 4.184
	KilojoulePerGram                     = KilocaloriePerGram / 4.184
	KilojoulePer100Gram                  = KilocaloriePer100Gram / 4.184
	MegajoulePerKilogram                 = 1000 * KilojoulePerKilogram
)

// KilocaloriesPerKilogram returns d as a number of kcal/kg.
func (d EnergyDensity) KilocaloriesPerKilogram() float64 { return float64(d) }

// KilocaloriesPerGram returns d as a number of kcal/g.
func (d EnergyDensity) KilocaloriesPerGram() float64 { return float64(d / KilocaloriePerGram) }

// KilocaloriesPer100Grams returns d as a number of kcal/100 g.
func (d EnergyDensity) KilocaloriesPer100Grams() float64 { return float64(d / KilocaloriePer100Gram) }

// KilocaloriesPerPound returns d as a number of kcal/lb.
func (d EnergyDensity) KilocaloriesPerPound() float64 { return float64(d) * 0.45359237 }

// KilocaloriesPerOunce returns d as a number of kcal/oz (avoirdupois).
func (d EnergyDensity) KilocaloriesPerOunce() float64 { return float64(d) * 0.028349523125 }

// KilojoulesPer100Grams returns d as a number of kJ/100 g.
func (d EnergyDensity) KilojoulesPer100Grams() float64 { return float64(d) * 4.184 / 10 }

// MegajoulesPerKilogram returns d as a number of MJ/kg.
func (d EnergyDensity) MegajoulesPerKilogram() float64 { return float64(d) * 4.184 / 1000 }

// Energy returns the energy in a mass of food of density d.
func (d EnergyDensity) Energy(m Mass) Energy { return Energy(float64(d) * float64(m) / 1000) }

// Mass returns the mass of food of density d that holds the energy e. It is
// infinite or NaN where d is zero: a caller checks d first.
func (d EnergyDensity) Mass(e Energy) Mass { return Mass(float64(e) / float64(d) * 1000) }

// EnergyPerVolume is metabolizable energy per volume of a liquid or a measure,
// held in kcal/mL. The zero value means not given.
type EnergyPerVolume float64

// Units of energy per volume.
const (
	KilocaloriePerMillilitre EnergyPerVolume = 1
	KilocaloriePerLitre                      = KilocaloriePerMillilitre / 1000
	KilocaloriePerUSCup                      = KilocaloriePerMillilitre / 236.5882365
	KilocaloriePerLabelCup                   = KilocaloriePerMillilitre / 240
	KilocaloriePerMetricCup                  = KilocaloriePerMillilitre / 250
)

// KilocaloriesPerMillilitre returns d as a number of kcal/mL.
func (d EnergyPerVolume) KilocaloriesPerMillilitre() float64 { return float64(d) }

// Energy returns the energy in a volume v of density d.
func (d EnergyPerVolume) Energy(v Volume) Energy { return Energy(float64(d) * float64(v)) }

// Volume returns the volume of density d that holds the energy e. It is
// infinite or NaN where d is zero: a caller checks d first.
func (d EnergyPerVolume) Volume(e Energy) Volume { return Volume(float64(e) / float64(d)) }

// BulkDensity is the mass of food that fills a volume, held in g/mL. The zero
// value means not given.
type BulkDensity float64

// Units of bulk density. Grams per cup needs to say which cup.
const (
	GramPerMillilitre BulkDensity = 1
	GramPerLitre                  = GramPerMillilitre / 1000
	GramPerUSCup                  = GramPerMillilitre / 236.5882365
	GramPerLabelCup               = GramPerMillilitre / 240
	GramPerMetricCup              = GramPerMillilitre / 250
)

// GramsPerMillilitre returns d as a number of g/mL.
func (d BulkDensity) GramsPerMillilitre() float64 { return float64(d) }

// GramsPerLitre returns d as a number of g/L.
func (d BulkDensity) GramsPerLitre() float64 { return float64(d) * 1000 }

// Mass returns the mass that fills the volume v.
func (d BulkDensity) Mass(v Volume) Mass { return Mass(float64(d) * float64(v)) }

// Volume returns the volume that the mass m fills. It is infinite or NaN where
// d is zero: a caller checks d first.
func (d BulkDensity) Volume(m Mass) Volume { return Volume(float64(m) / float64(d)) }
