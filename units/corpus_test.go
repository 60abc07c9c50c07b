package units_test

// goodText is text that is read. want is typed from the definitions of the units,
// in the base unit; printed is what the writer makes of it.
type goodText struct {
	quantity
	text    string
	want    float64
	printed string
}

var goodTexts = []goodText{
	// Plain, as the writer has it.
	{mass, "332 g", 332, "332 g"},
	{mass, "24.9 kg", 24900, "24.9 kg"},
	{energy, "1248 kcal", 1248, "1248 kcal"},
	{volume, "45 mL", 45, "45 mL"},
	{volume, "1.2 L", 1200, "1.2 L"},
	{energyDensity, "3560 kcal/kg", 3560, "3560 kcal/kg"},
	{energyPerVolume, "1.02 kcal/mL", 1.02, "1.02 kcal/mL"},
	{bulkDensity, "0.42 g/mL", 0.42, "0.42 g/mL"},
	{percent, "9 %", 9, "9 %"},
	{length, "800 m", 800, "800 m"},
	{length, "12 km", 12000, "12 km"},

	// The change of unit at a thousand, on both sides of it.
	{mass, "999.9999999999999 g", 999.9999999999999, "999.9999999999999 g"},
	{mass, "1000 g", 1000, "1 kg"},
	{mass, "-1000 g", -1000, "-1 kg"},
	{mass, "1000.5 g", 1000.5, "1.0005 kg"},
	{mass, "1200000 g", 1200000, "1200 kg"},
	{volume, "1000 mL", 1000, "1 L"},
	{length, "999.9999999999999 m", 999.9999999999999, "999.9999999999999 m"},
	{length, "1000 m", 1000, "1 km"},

	// A prefix moves the point. A product would miss some of these by a unit in the
	// last place: 16.1*1000, 32.3*1000, 1.001*1000, 2.3*100 and 9*0.001 in float64.
	{mass, "4.37 kg", 4370, "4.37 kg"},
	{mass, "16.1 kg", 16100, "16.1 kg"},
	{mass, "32.3 kg", 32300, "32.3 kg"},
	{mass, "1.001 kg", 1001, "1.001 kg"},
	{mass, "9 mg", 0.009, "0.009 g"},
	{volume, "4.37 L", 4370, "4.37 L"},
	{length, "4.37 km", 4370, "4.37 km"},
	{volume, "2.3 dL", 230, "230 mL"},
	{volume, "2.3 cL", 23, "23 mL"},
	{energy, "1.001 Mcal", 1001, "1001 kcal"},
	{energy, "250 cal_th", 0.25, "0.25 kcal"},
	{energyDensity, "3.56 kcal/g", 3560, "3560 kcal/kg"},
	{energyDensity, "356 kcal/100 g", 3560, "3560 kcal/kg"},
	{energyDensity, "3.56 Mcal/kg", 3560, "3560 kcal/kg"},
	{energyPerVolume, "1020 kcal/L", 1.02, "1.02 kcal/mL"},
	{energyPerVolume, "102 kcal/100 mL", 1.02, "1.02 kcal/mL"},
	{bulkDensity, "420 g/L", 0.42, "0.42 g/mL"},
	{bulkDensity, "42 g/100 mL", 0.42, "0.42 g/mL"},
	{bulkDensity, "0.42 kg/L", 0.42, "0.42 g/mL"},

	// Pounds and ounces: 453.59237 g and 28.349523125 g.
	{mass, "1 lb", 453.59237, "453.59237 g"},
	{mass, "55 lb", 24947.58035, "24.94758035 kg"},
	{mass, "1 oz", 28.349523125, "28.349523125 g"},
	{mass, "3.5 oz", 99.2233309375, "99.2233309375 g"},
	{mass, "12 lb 4 oz", 5556.5065325, "5.5565065325 kg"},
	{mass, "12 lb 4.5 oz", 5570.6812940625, "5.5706812940625 kg"},
	{mass, "12lbs4oz", 5556.5065325, "5.5565065325 kg"},
	{mass, "12 pounds  4 ounces", 5556.5065325, "5.5565065325 kg"},
	{mass, "12 LB 4 OZ", 5556.5065325, "5.5565065325 kg"},
	{mass, "12 lb. 4 oz.", 5556.5065325, "5.5565065325 kg"},
	{mass, "-1 lb 4 oz", -566.9904625, "-566.9904625 g"}, // the sign is for both
	{mass, "-0 lb 4 oz", -113.3980925, "-113.3980925 g"},
	{mass, "0 lb 15.5 oz", 439.4176084375, "439.4176084375 g"},

	// Spellings of masses.
	{mass, "24.9kg", 24900, "24.9 kg"},
	{mass, "24.9 KG", 24900, "24.9 kg"},
	{mass, "24.9 Kg", 24900, "24.9 kg"},
	{mass, "24.9 kgs", 24900, "24.9 kg"},
	{mass, "24.9 kilos", 24900, "24.9 kg"},
	{mass, "24.9 kilograms", 24900, "24.9 kg"},
	{mass, "1 Kilogramme", 1000, "1 kg"},
	{mass, "332G", 332, "332 g"},
	{mass, "332 gm", 332, "332 g"},
	{mass, "332 grams", 332, "332 g"},
	{mass, "1 gramme", 1, "1 g"},
	{mass, "5 milligrams", 0.005, "0.005 g"},
	{mass, "55 lbs", 24947.58035, "24.94758035 kg"},
	{mass, "55lbs", 24947.58035, "24.94758035 kg"},
	{mass, "55 lbs.", 24947.58035, "24.94758035 kg"},
	{mass, "55 LBS", 24947.58035, "24.94758035 kg"},
	{mass, "55 pounds", 24947.58035, "24.94758035 kg"},
	{mass, "1 pound", 453.59237, "453.59237 g"},
	{mass, "1 [lb_av]", 453.59237, "453.59237 g"},
	{mass, "1 [oz_av]", 28.349523125, "28.349523125 g"},
	{mass, "16 ounces", 453.59237, "453.59237 g"},

	// Energies. 4184 kJ are 1000 kcal.
	{energy, "4184 kJ", 1000, "1000 kcal"},
	{energy, "4184 kilojoules", 1000, "1000 kcal"},
	{energy, "4.184 MJ", 1000, "1000 kcal"},
	{energy, "41840 J", 10, "10 kcal"},
	{energy, "356 kcals", 356, "356 kcal"},
	{energy, "356 KCAL", 356, "356 kcal"},
	{energy, "356 kCal", 356, "356 kcal"},
	{energy, "356 kilocalories", 356, "356 kcal"},
	{energy, "356 kcal_th", 356, "356 kcal"},

	// Volumes. A US cup is 236.5882365 mL.
	{volume, "1 US cup", 236.5882365, "236.5882365 mL"},
	{volume, "2 us cups", 473.176473, "473.176473 mL"},
	{volume, "1 [cup_us]", 236.5882365, "236.5882365 mL"},
	{volume, "1 label cup", 240, "240 mL"},
	{volume, "1 [cup_m]", 240, "240 mL"}, // UCUM's value, though it says metric
	{volume, "2 Label Cups", 480, "480 mL"},
	{volume, "1 metric cup", 250, "250 mL"},
	{volume, "3 metric cups", 750, "750 mL"},
	{volume, "8 fl oz", 236.5882365, "236.5882365 mL"},
	{volume, "8 fl. oz.", 236.5882365, "236.5882365 mL"},
	{volume, "8 [foz_us]", 236.5882365, "236.5882365 mL"},
	{volume, "16 tbsp", 236.5882365, "236.5882365 mL"},
	{volume, "16 Tablespoons", 236.5882365, "236.5882365 mL"},
	{volume, "16 [tbs_us]", 236.5882365, "236.5882365 mL"},
	{volume, "48 tsp", 236.5882365, "236.5882365 mL"},
	{volume, "48 teaspoons", 236.5882365, "236.5882365 mL"},
	{volume, "48 [tsp_us]", 236.5882365, "236.5882365 mL"},
	{volume, "45 ml", 45, "45 mL"},
	{volume, "45 cc", 45, "45 mL"},
	{volume, "1.2 l", 1200, "1.2 L"},
	{volume, "1.2 litres", 1200, "1.2 L"},
	{volume, "1.2 liters", 1200, "1.2 L"},
	{volume, "2 DL", 200, "200 mL"}, // nothing else: the decalitre is daL

	// Ratios, in any spelling of their parts.
	{energyDensity, "3560kcal/kg", 3560, "3560 kcal/kg"},
	{energyDensity, "3560 KCAL/KG", 3560, "3560 kcal/kg"},
	{energyDensity, "3560 kcal / kg", 3560, "3560 kcal/kg"},
	{energyDensity, "3560 kcal per kg", 3560, "3560 kcal/kg"},
	{energyDensity, "3560 kilocalories per kilogram", 3560, "3560 kcal/kg"},
	{energyDensity, "356 kcal/100g", 3560, "3560 kcal/kg"},
	{energyDensity, "356 kcal per 100 grams", 3560, "3560 kcal/kg"},
	{energyDensity, "453.59237 kcal/lb", 1000, "1000 kcal/kg"},
	{energyDensity, "453.59237 kcal/pound", 1000, "1000 kcal/kg"},
	{energyDensity, "28.349523125 kcal/oz", 1000, "1000 kcal/kg"},
	{energyDensity, "1046 kJ/100 g", 2500, "2500 kcal/kg"},
	{energyDensity, "1046 kJ per 100 g", 2500, "2500 kcal/kg"},
	{energyDensity, "10460 kJ/kg", 2500, "2500 kcal/kg"},
	{energyDensity, "10.46 kJ/g", 2500, "2500 kcal/kg"},
	{energyDensity, "10.46 MJ/kg", 2500, "2500 kcal/kg"},
	{energyDensity, "10.46 MJ/KG", 2500, "2500 kcal/kg"},
	{energyPerVolume, "473.176473 kcal/US cup", 2, "2 kcal/mL"},
	{energyPerVolume, "473.176473 kcal/[cup_us]", 2, "2 kcal/mL"},
	{energyPerVolume, "360 kcal/label cup", 1.5, "1.5 kcal/mL"},
	{energyPerVolume, "360 kcal/[cup_m]", 1.5, "1.5 kcal/mL"},
	{energyPerVolume, "375 kcal per metric cup", 1.5, "1.5 kcal/mL"},
	{energyPerVolume, "4.184 kJ/ml", 1, "1 kcal/mL"},
	{bulkDensity, "118.29411825 g/US cup", 0.5, "0.5 g/mL"},
	{bulkDensity, "118.29411825 g/[cup_us]", 0.5, "0.5 g/mL"},
	{bulkDensity, "120 g/label cup", 0.5, "0.5 g/mL"},
	{bulkDensity, "125 grams per metric cup", 0.5, "0.5 g/mL"},
	{percent, "9%", 9, "9 %"},
	{percent, "9 percent", 9, "9 %"},

	// Lengths. A mile is 1609.344 m.
	{length, "12km", 12000, "12 km"},
	{length, "12 KM", 12000, "12 km"},
	{length, "12 kms", 12000, "12 km"},
	{length, "12 kilometres", 12000, "12 km"},
	{length, "12 Kilometers", 12000, "12 km"},
	{length, "800 metres", 800, "800 m"},
	{length, "800 meters", 800, "800 m"},
	{length, "1 mi", 1609.344, "1.609344 km"},
	{length, "1 [mi_i]", 1609.344, "1.609344 km"},
	{length, "1 mile", 1609.344, "1.609344 km"},
	{length, "7.5 Miles", 12070.08, "12.07008 km"},

	// White space: none, tab, non-breaking, narrow non-breaking, thin, around all.
	{mass, "24.9\tkg", 24900, "24.9 kg"},
	{mass, "24.9\u00a0kg", 24900, "24.9 kg"},
	{mass, "24.9\u202fkg", 24900, "24.9 kg"},
	{mass, "24.9 \u2009kg", 24900, "24.9 kg"},
	{mass, "  24.9   kg \r\n", 24900, "24.9 kg"},
	{mass, "12\u00a0lb\u00a04\u00a0oz", 5556.5065325, "5.5565065325 kg"},
	{volume, "1 US\u00a0cup", 236.5882365, "236.5882365 mL"},
	{energyDensity, "356 kcal/100\u00a0g", 3560, "3560 kcal/kg"},

	// Forms of the number.
	{mass, "0 g", 0, "0 g"},
	{mass, "000 kg", 0, "0 g"},
	{mass, "+5 g", 5, "5 g"},
	{mass, "-5 g", -5, "-5 g"},
	{mass, ".5 kg", 500, "500 g"},
	{mass, "5. kg", 5000, "5 kg"},
	{mass, "0.500 kg", 500, "500 g"},
	{mass, "1.5e3 g", 1500, "1.5 kg"},
	{mass, "1.5E+3 g", 1500, "1.5 kg"},
	{mass, "1.5e-3 kg", 1.5, "1.5 g"},
	{mass, "0e9999999999 g", 0, "0 g"}, // zero however large its exponent
}

// badText is text that is refused, with the whole error.
type badText struct {
	quantity
	text string
	want string
}

var badTexts = []badText{
	// No number or no unit. A number alone is refused for every quantity.
	{mass, "", `units: mass "": empty: want a number and kg, g, mg, lb or oz`},
	{mass, " \u00a0", `units: mass " \u00a0": empty: want a number and kg, g, mg, lb or oz`},
	{mass, "kg", `units: mass "kg": no number: want a number and kg, g, mg, lb or oz`},
	{mass, "- 5 kg", `units: mass "- 5 kg": no number: want a number and kg, g, mg, lb or oz`},
	{mass, ". kg", `units: mass ". kg": no number: want a number and kg, g, mg, lb or oz`},
	{mass, "24.9", `units: mass "24.9": no unit: want kg, g, mg, lb or oz`},
	{mass, "0", `units: mass "0": no unit: want kg, g, mg, lb or oz`},
	{energy, "1250", `units: energy "1250": no unit: want kcal, kJ, Mcal, MJ, cal_th or J`},
	{volume, "45 ", `units: volume "45 ": no unit: want mL, cL, dL, L, US cup, label cup, metric cup, fl oz, tbsp or tsp`},
	{energyDensity, "3560", `units: energy density "3560": no unit: want kcal/kg, kcal/g, kcal/100 g, kcal/lb, kcal/oz, Mcal/kg, kJ/100 g, kJ/g, kJ/kg or MJ/kg`},
	{energyPerVolume, "1.02", `units: energy per volume "1.02": no unit: want kcal/mL, kcal/100 mL, kcal/L, kcal/US cup, kcal/label cup, kcal/metric cup, kcal/fl oz, kcal/tbsp, kcal/tsp, kJ/mL, kJ/100 mL or kJ/L`},
	{bulkDensity, "0.42", `units: bulk density "0.42": no unit: want g/mL, g/100 mL, g/L, kg/L, g/US cup, g/label cup, g/metric cup, g/fl oz, g/tbsp or g/tsp`},
	{percent, "9", `units: percentage "9": no unit: want %`},
	{length, "12", `units: length "12": no unit: want m, km or mi`},

	// Unknown units, and units of something else.
	{mass, "5 foo", `units: mass "5 foo": unknown unit "foo": want kg, g, mg, lb or oz`},
	{mass, "5 kggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggg", `units: mass "5 kggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggg": unknown unit "kggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggggg": want kg, g, mg, lb or oz`},
	{mass, "5 stone", `units: mass "5 stone": unknown unit "stone": want kg, g, mg, lb or oz`},
	{mass, "5 \u212ag", "units: mass \"5 \u212ag\": unknown unit \"\u212ag\": want kg, g, mg, lb or oz"}, // the Kelvin sign
	{mass, "3 cups", `units: mass "3 cups": "cups" is a unit of volume: want kg, g, mg, lb or oz`},
	{mass, "3 fl oz", `units: mass "3 fl oz": "fl oz" is a unit of volume: want kg, g, mg, lb or oz`},
	{mass, "12 lb 4 kg", `units: mass "12 lb 4 kg": unknown unit "lb 4 kg": want kg, g, mg, lb or oz`},
	{mass, "12 kg 4 oz", `units: mass "12 kg 4 oz": unknown unit "kg 4 oz": want kg, g, mg, lb or oz`},
	{mass, "12 lb 4", `units: mass "12 lb 4": unknown unit "lb 4": want kg, g, mg, lb or oz`},
	{mass, "12 lb -4 oz", `units: mass "12 lb -4 oz": unknown unit "lb -4 oz": want kg, g, mg, lb or oz`},
	{mass, "12 lb.5 oz", `units: mass "12 lb.5 oz": unknown unit "lb.5 oz": want kg, g, mg, lb or oz`}, // half an ounce or five?
	{energy, "1250 kcal/day", `units: energy "1250 kcal/day": unknown unit "kcal/day": want kcal, kJ, Mcal, MJ, cal_th or J`},
	{energy, "1250 g", `units: energy "1250 g": "g" is a unit of mass: want kcal, kJ, Mcal, MJ, cal_th or J`},
	{energyDensity, "356 kcal/cup", `units: energy density "356 kcal/cup": "kcal/cup" is a unit of energy per volume: want kcal/kg, kcal/g, kcal/100 g, kcal/lb, kcal/oz, Mcal/kg, kJ/100 g, kJ/g, kJ/kg or MJ/kg`},
	{energyDensity, "3560 kcal", `units: energy density "3560 kcal": "kcal" is a unit of energy: want kcal/kg, kcal/g, kcal/100 g, kcal/lb, kcal/oz, Mcal/kg, kJ/100 g, kJ/g, kJ/kg or MJ/kg`},
	{energyDensity, "3560 kJ/lb", `units: energy density "3560 kJ/lb": unknown unit "kJ/lb": want kcal/kg, kcal/g, kcal/100 g, kcal/lb, kcal/oz, Mcal/kg, kJ/100 g, kJ/g, kJ/kg or MJ/kg`},
	{percent, "9 kg", `units: percentage "9 kg": "kg" is a unit of mass: want %`},
	{length, "12 kg", `units: length "12 kg": "kg" is a unit of mass: want m, km or mi`},
	{mass, "12 km", `units: mass "12 km": "km" is a unit of length: want kg, g, mg, lb or oz`},
	{length, "20 km/h", `units: length "20 km/h": unknown unit "km/h": want m, km or mi`},

	// Spellings with two readings.
	{energy, "350 Cal", `units: energy "350 Cal": ambiguous unit "Cal" (labels also write Calorie for kcal, a thousand calories): want kcal or cal_th`},
	{energy, "350 cal", `units: energy "350 cal": ambiguous unit "cal" (labels also write Calorie for kcal, a thousand calories): want kcal or cal_th`},
	{energy, "350 calories", `units: energy "350 calories": ambiguous unit "calories" (labels also write Calorie for kcal, a thousand calories): want kcal or cal_th`},
	{energy, "5 mJ", `units: energy "5 mJ": ambiguous unit "mJ" (millijoule or megajoule): want MJ or kJ`},
	{energy, "5 mcal", `units: energy "5 mcal": ambiguous unit "mcal" (millicalorie or megacalorie): want Mcal or kcal`},
	{mass, "5 Mg", `units: mass "5 Mg": ambiguous unit "Mg" (milligram or megagram): want mg or kg`},
	{mass, "5 MG", `units: mass "5 MG": ambiguous unit "MG" (milligram or megagram): want mg or kg`},
	{mass, "5 gr", `units: mass "5 gr": ambiguous unit "gr" (gram or grain): want g or mg`},
	{volume, "1 cup", `units: volume "1 cup": ambiguous unit "cup" (cups of 236.6, 240 and 250 mL): want US cup, label cup or metric cup`},
	{volume, "2 Cups", `units: volume "2 Cups": ambiguous unit "Cups" (cups of 236.6, 240 and 250 mL): want US cup, label cup or metric cup`},
	{volume, "3 oz", `units: volume "3 oz": ambiguous unit "oz" (the ounce of mass or the fluid ounce): want fl oz`},
	{volume, "3 ML", `units: volume "3 ML": ambiguous unit "ML" (millilitre or megalitre): want mL or L`},
	{length, "5 M", `units: length "5 M": ambiguous unit "M" (metre or mile): want m, km or mi`},
	{volume, "2 T", `units: volume "2 T": ambiguous unit "T" (teaspoon or tablespoon): want tsp or tbsp`},
	{energyDensity, "3560 Cal/kg", `units: energy density "3560 Cal/kg": ambiguous unit "Cal/kg" (labels also write Calorie for kcal, a thousand calories): want kcal/kg`},
	{energyDensity, "14 mj/kg", `units: energy density "14 mj/kg": ambiguous unit "mj/kg" (millijoule or megajoule): want MJ/kg or kJ/kg`},
	{energyDensity, "350 Cal/100 g", `units: energy density "350 Cal/100 g": ambiguous unit "Cal/100 g" (labels also write Calorie for kcal, a thousand calories): want kcal/100 g`},
	{energyPerVolume, "356 kcal/cup", `units: energy per volume "356 kcal/cup": ambiguous unit "kcal/cup" (cups of 236.6, 240 and 250 mL): want kcal/US cup, kcal/label cup or kcal/metric cup`},
	{energyPerVolume, "356 Calories per cup", `units: energy per volume "356 Calories per cup": ambiguous unit "Calories per cup" (labels also write Calorie for kcal, a thousand calories): want kcal/US cup, kcal/label cup or kcal/metric cup`},
	{bulkDensity, "100 g/cup", `units: bulk density "100 g/cup": ambiguous unit "g/cup" (cups of 236.6, 240 and 250 mL): want g/US cup, g/label cup or g/metric cup`},

	// Numbers that aren't one plain decimal.
	{mass, "24,9 kg", `units: mass "24,9 kg": comma in the number: want a decimal point and no thousands separator`},
	{energyDensity, "3,560 kcal/kg", `units: energy density "3,560 kcal/kg": comma in the number: want a decimal point and no thousands separator`},
	{mass, "1.2.3 kg", `units: mass "1.2.3 kg": not a plain decimal number: want digits with at most one point, as in "24.9"`},
	{mass, "0x1p4 kg", `units: mass "0x1p4 kg": not a plain decimal number: want digits with at most one point, as in "24.9"`},
	{mass, "1_000 g", `units: mass "1_000 g": not a plain decimal number: want digits with at most one point, as in "24.9"`},
	{mass, "1 250 g", `units: mass "1 250 g": more than one number: want one decimal number and kg, g, mg, lb or oz`},
	{mass, "1/2 lb", `units: mass "1/2 lb": more than one number: want one decimal number and kg, g, mg, lb or oz`},
	{mass, "1 1/2 lb", `units: mass "1 1/2 lb": more than one number: want one decimal number and kg, g, mg, lb or oz`},
	{mass, "12-14 kg", `units: mass "12-14 kg": more than one number: want one decimal number and kg, g, mg, lb or oz`},
	{mass, "12 - 14 kg", `units: mass "12 - 14 kg": more than one number: want one decimal number and kg, g, mg, lb or oz`},
	{mass, "NaN kg", `units: mass "NaN kg": no number: want a number and kg, g, mg, lb or oz`},
	{mass, "Inf kg", `units: mass "Inf kg": no number: want a number and kg, g, mg, lb or oz`},
	{mass, "-infinity g", `units: mass "-infinity g": no number: want a number and kg, g, mg, lb or oz`},
	{mass, "1e kg", `units: mass "1e kg": unknown unit "e kg": want kg, g, mg, lb or oz`},

	// Pounds and ounces that aren't one mass written once.
	{mass, "1.5 lb 4 oz", `units: mass "1.5 lb 4 oz": pounds with a fraction before the ounces: want whole pounds and less than 16 ounces, as in "12 lb 4 oz", or pounds alone`},
	{mass, "1e1 lb 4 oz", `units: mass "1e1 lb 4 oz": pounds with a fraction before the ounces: want whole pounds and less than 16 ounces, as in "12 lb 4 oz", or pounds alone`},
	{mass, "12 lb 16 oz", `units: mass "12 lb 16 oz": 16 ounces or more, which make a pound: want whole pounds and less than 16 ounces, as in "12 lb 4 oz", or ounces alone`},
	{mass, "12 lb 1e400 oz", `units: mass "12 lb 1e400 oz": out of range`},
	{mass, "1e400 lb 4 oz", `units: mass "1e400 lb 4 oz": out of range`},

	// Signs and slashes with no second number behind them.
	{energyDensity, "3560 /kg", `units: energy density "3560 /kg": unknown unit "/kg": want kcal/kg, kcal/g, kcal/100 g, kcal/lb, kcal/oz, Mcal/kg, kJ/100 g, kJ/g, kJ/kg or MJ/kg`},
	{mass, "24.9 -kg", `units: mass "24.9 -kg": unknown unit "-kg": want kg, g, mg, lb or oz`},
	{mass, "24.9-", `units: mass "24.9-": unknown unit "-": want kg, g, mg, lb or oz`},
	{mass, "24–26 kg", `units: mass "24–26 kg": more than one number: want one decimal number and kg, g, mg, lb or oz`},
	{mass, "24 − 26 kg", `units: mass "24 − 26 kg": more than one number: want one decimal number and kg, g, mg, lb or oz`},
	{mass, "24.9–", `units: mass "24.9–": unknown unit "–": want kg, g, mg, lb or oz`},
	{mass, "24.9+1 kg", `units: mass "24.9+1 kg": more than one number: want one decimal number and kg, g, mg, lb or oz`},
	{mass, "24.9 / 25 kg", `units: mass "24.9 / 25 kg": more than one number: want one decimal number and kg, g, mg, lb or oz`},

	// A letter that is a spoon or a cup in a recipe, and something else elsewhere.
	{mass, "1 t", `units: mass "1 t": unknown unit "t": want kg, g, mg, lb or oz`},
	{energy, "356 C", `units: energy "356 C": unknown unit "C": want kcal, kJ, Mcal, MJ, cal_th or J`},
	{energy, "356 c.", `units: energy "356 c.": unknown unit "c.": want kcal, kJ, Mcal, MJ, cal_th or J`},
	{mass, "1 m", `units: mass "1 m": "m" is a unit of length: want kg, g, mg, lb or oz`}, // in no doubt
	{mass, "2 cups", `units: mass "2 cups": "cups" is a unit of volume: want kg, g, mg, lb or oz`},
	{energy, "5 gr", `units: energy "5 gr": "gr" is a unit of mass: want kcal, kJ, Mcal, MJ, cal_th or J`},
	{energyPerVolume, "1490 kJ/cup", `units: energy per volume "1490 kJ/cup": unknown unit "kJ/cup": want kcal/mL, kcal/100 mL, kcal/L, kcal/US cup, kcal/label cup, kcal/metric cup, kcal/fl oz, kcal/tbsp, kcal/tsp, kJ/mL, kJ/100 mL or kJ/L`},

	// Out of what a float64 holds, at both ends, by the number or by the unit.
	{mass, "1e400 g", `units: mass "1e400 g": out of range`},
	{mass, "1e308 kg", `units: mass "1e308 kg": out of range`},
	{mass, "1e99999999999999999999 g", `units: mass "1e99999999999999999999 g": out of range`},
	{mass, "1e307 lb", `units: mass "1e307 lb": out of range`},
	{mass, "1e-400 g", `units: mass "1e-400 g": out of range`},
	{mass, "1e-323 mg", `units: mass "1e-323 mg": out of range`},

	// Bytes that aren't text.
	{mass, "5 \xff", `units: mass "5 \xff": unknown unit "\xff": want kg, g, mg, lb or oz`},
	{mass, "5\x00kg", `units: mass "5\x00kg": unknown unit "\x00kg": want kg, g, mg, lb or oz`},
}
