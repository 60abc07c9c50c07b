/*
Package units holds the quantities of feeding, each in a type of its own: mass,
energy, volume, energy density, energy per volume, bulk density, percentage and
the length of a run.

	weight := 24.9 * units.Kilogram
	food := 3560 * units.KilocaloriePerKilogram
	fmt.Println(food.Energy(332*units.Gram), weight.Pounds())

# What it isn't

It isn't a general system of units: there is no dimensional analysis, and units
that no label, scale or chart in the trade uses are left out. Go multiplies two
values of one type without a word, and the product is no quantity, so that the
products and quotients that mean something are methods: [EnergyDensity.Energy],
[EnergyDensity.Mass], [BulkDensity.Volume] and so on.

# Units and representation

A quantity is a float64 in one base unit:

	Mass             g
	Energy           kcal (thermochemical, exactly 4.184 kJ)
	Volume           mL
	EnergyDensity    kcal/kg
	EnergyPerVolume  kcal/mL
	BulkDensity      g/mL
	Percent          %
	Length           m

A number becomes a quantity by multiplication with a constant, as in
12 * units.Kilogram, and a quantity becomes a number by a method that names the
unit, as in m.Kilograms(). The zero value is zero of the base unit; the type says
whether that means nothing or not given. Values are compared with ==.

No unit is called cup. A US customary cup holds 236.5882365 mL, the cup of US
nutrition labels 240 mL and a metric cup 250 mL, so that they are [USCup],
[LabelCup] and [MetricCup]. Beware of the UCUM code [cup_m]: the standard names it
metric cup, but gives it the 240 mL of the label cup, and so does this package.

# Exactness

Constants are exact by definition, so that 12 * units.Pound is the float64
nearest to 5443.10844 g. Nothing is rounded to fewer digits. A text in metric
units is the float64 nearest to what it says, because a prefix moves the decimal
point and multiplies nothing: "4.37 kg" is 4370 g, and equal to 4370 * units.Gram.
Any other unit costs a multiplication and a division by whole numbers: "55 lb" is
the nearest float64 too, and where there are digits after the point the result is
within three units in the last place of it. The getters other than those of the base
unit round once or twice.

# Text forms

Every quantity is written as the shortest decimal that is read back as the same
value, a space and the unit, without an exponent: "24.9 kg", "3560 kcal/kg". Mass
changes from g to kg at 1000 g, Volume from mL to L at 1000 mL, Length from m to km
at 1000 m; the others always use the base unit. All finite values survive the way to
text and back bit for bit.
The text is for files and logs; a page for people rounds first.

A text that is read must have a unit: "24.9" is refused everywhere. Besides the
codes that errors list, the UCUM codes, the usual abbreviations, words and
plurals are known, with or without a space before them, and a ratio may be
written with "/" or "per". An exact spelling is tried first; then case is ignored,
where only one reading is left. Spellings with two readings are refused, with the
choices: a bare "cup"; an "oz" of volume; "Cal", "cal" and "calories", which
labels write for kcal (write "kcal", or "cal_th" for the small calorie); "Mg", "mJ"
and the "M" of a distance. A comma is refused in any place, for "3,560" is one number in one country
and another in the next. Mass also takes "12 lb 4 oz". Exponents ("1.5e3 g") are
read; NaN, infinities, hexadecimals, underscores and fractions are not, nor is a
number that a float64 can't hold. White space of any kind around the number and
around the unit is skipped. A text may have 400 bytes.

A sign is read, and negative values are written: a change of weight has one.
Whether a quantity must be above zero is for the package that takes it to say.

In JSON a quantity is a string with its unit. A bare number is an error, and null
leaves the value as it was, as encoding/json has it for every type that reads
itself from text. The types also work as map keys, in XML, with [flag.TextVar] and
in log/slog.

# Errors

A text that can't be read gives a [*ParseError]: what was wanted, the text, what is
wrong with it and what would be accepted. The value returned is then zero, and
UnmarshalText leaves its receiver as it was. NaN and the infinities can be printed
with String, but not marshalled: that gives a [*FieldError]. FieldError and
[ErrorList] are also how the packages above this one report bad input. No
text and no number makes this package panic.

# Sources

  - Pound, exactly 0.45359237 kg, and ounce, a sixteenth of it: Weights and Measures
    Act 1985 (UK), schedule 1, part V.
  - Mile, exactly 1.609344 km: 5280 feet of 12 inches of 2.54 cm, from memory; UCUM 2.2
    has the inch in its cubic inch of 16.387064 mL.
  - Thermochemical calorie, exactly 4.184 J; US cup, fluid ounce, tablespoon and
    teaspoon, from the gallon of 231 cubic inches; the 240 mL of [cup_m]; and every
    code in brackets: UCUM 2.2 (2024), ucum-essence.xml.
  - Label cup, 240 mL: 21 CFR 101.9(b)(5)(viii), as quoted in UCUM ticket 120.
  - Metric cup, 250 mL: NSW Health (Australia), conversion chart for metric cup and
    spoon sets, whose half cup is 125 mL.
*/
package units
