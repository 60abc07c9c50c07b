package energy

// equations are the rows of Methods, stage by stage, the default first. The
// figures in the formulas are those of the stages' own tables; a test holds each
// row against an estimate of its stage.
var equations = []Equation{
	{RERPower, "resting", Dog, true, "70 × kg^0.75", "", sourceRER},
	{RERLinear, "resting", Dog, false, "30 × kg + 70", "2 to 45 kg", sourceRER},
	{RERPower, "resting", Cat, true, "70 × kg^0.75", "", sourceRER},
	{RERLinear, "resting", Cat, false, "30 × kg + 70", "2 to 45 kg", sourceRER},

	{FactorOnRER, "adult", Dog, true, "1.6 (intact 1.8, inactive 1.2, senior 1.4) × RER", "", sacn33},
	{NRC2006, "adult", Dog, false, "130 (inactive 95, senior 105) × kg^0.75", "", nrcSeen},
	{FEDIAF, "adult", Dog, false, "110 (inactive, senior, unknown 95) × kg^0.75", "", fediafSeen},
	{Bermingham, "adult", Dog, false, "81.5 × kg^0.93", "", sourceBerminghamDog},
	{Thes, "adult", Dog, false, "98 (69 to 127) × kg^0.75", "", sourceThes},
	{FactorOnRER, "adult", Cat, true, "1.2 (intact 1.4, inactive 1.0, senior 1.25) × RER", "", catFactor},
	{NRC2006, "adult", Cat, false, "100 × kg^0.67; from 7/9 130 × kg^0.40 (from memory)", "", nrcSeen},
	{FEDIAF, "adult", Cat, false, "75 (intact 100) × kg^0.67", "", fediafSeen},
	{Bermingham, "adult", Cat, false, "46.8 × kg^1.115; to 3/9 53.7 × kg^1.061; from 7/9 131.8 × kg^0.366", "", sourceBerminghamCat},
	{PerKilogram, "adult", Ferret, true, "250 (200 to 300) × kg", "", sourceFerret},

	{FEDIAF, "growth", Dog, true, "210, 175, 140 × kg^0.75 to 50, 80, 100 % of adult weight", "adult weight given", fediafGrowth},
	{NRC2006, "growth", Dog, false, "130 × kg^0.75 × 3.2 × (e^(-0.87p) - 0.1), p the part of adult weight", "adult weight given", nrcPuppy},
	{Klein2019, "growth", Dog, false, "(1.063 - 0.565p) MJ × kg^0.75", "adult weight given", klein},
	{FactorOnRER, "growth", Dog, false, "3.0 under 4 months, then 2.0 × RER", "age given; default where adult weight is not", sacn33},
	{NRC2006, "growth", Cat, true, "100 × kg^0.67 × 6.7 × (e^(-0.189p) - 0.66)", "adult weight given", nrcKitten},
	{FEDIAF, "growth", Cat, false, "2.25, 1.875, 1.5 × 87.5 × kg^0.67 to 50, 70, 100 % of adult weight, or to 4, 9, 12 months", "adult weight given, or age to 1 year", fediafGrowth},
	{FactorOnRER, "growth", Cat, false, "3.0, 2.5, 2.0 × RER to 50, 70, 100 % of adult weight; 2.5 where that is not given", "adult weight or age given", sacn24},
	{PerKilogram, "growth", Cat, false, "250 down to 85 × kg by month of age", "age given, to 1 year; default where adult weight is not", sacn24},

	{NRC2006, "gestation", Dog, true, "130 × kg^0.75, from week 5 + 26 × kg", "weeks 1 to 9", nrcMemory},
	{FactorOnRER, "gestation", Dog, false, "1.9 (1.8 to 2.0) in weeks 1 to 4, then 2.85 (2.2 to 3.5) × RER", "weeks 1 to 9", sacnBitch},
	{NRC2006, "gestation", Cat, true, "140 × kg^0.67", "weeks 1 to 9", nrcMemory},
	{FactorOnRER, "gestation", Cat, false, "1.6 in week 1 rising to 2.0 in week 9 × RER", "weeks 1 to 9", sacnQueen},
	{PerKilogram, "gestation", Ferret, true, "500 (400 to 600) × kg", "weeks 1 to 6", sacnJill},

	{NRC2006, "lactation", Dog, true, "145 × kg^0.75 + kg × (24 × puppies 1 to 4 + 12 × puppies 5 to 8) × L, L 0.75, 0.95, 1.1, 1.2 by week", "to 8 puppies, weeks 1 to 4; beyond, at least that", nrcMemory},
	{FactorOnRER, "lactation", Dog, false, "3.0, 3.5, 4.0, 4.0, 5.0, 5.0, 5.5, 5.5, 6.0 × RER by litter (from 5 on from memory)", "", sacnLitter},
	{NRC2006, "lactation", Cat, true, "100 × kg^0.67 + kg × 18, 60 or 70 (1, 3, 5 kittens and more) × L, L 0.9, 0.9, 1.2, 1.2, 1.1, 1.0, 0.8 by week", "weeks 1 to 7; beyond, at least that", nrcMemory},
	{FactorOnRER, "lactation", Cat, false, "4 (2 to 6) × RER", "", queenLactating.source},
	{PerKilogram, "lactation", Ferret, true, "875 (600 to 1200) × kg", "", sacnJill},

	{PerKilogram, "nursling", Dog, true, "13.2, 15.4, 17.6, 19.8 kcal per 100 g in weeks 1 to 4 (60 to 90 kcal/lb)", "to 4 weeks", sourceOrphanPuppy},
	{NRC2006, "nursling", Dog, false, "25 kcal per 100 g", "to 4 weeks", sourceUnweanedPuppy},
	{PerKilogram, "nursling", Cat, true, "15 to day 3, 20 to day 6, then 22.5 (20 to 25) kcal per 100 g", "to 4 weeks", sourceOrphanKitten},
	{NRC2006, "nursling", Cat, false, "22.5 (20 to 25) kcal per 100 g", "to 4 weeks", sourceUnweanedKitten},

	{FactorOnRER, "work", Dog, true, "light 2, moderate 3, heavy 6 (4 to 8) × RER", "exercise given", sourceExercise},
	{PerDistance, "work", Dog, false, "adult factor × RER + 1 (0.7 to 1.1) × kg × km", "distance given; default where the exercise is not", sourceRunning},
	{TwoTerm, "work", Dog, false, "adult factor × RER + kg × (1.77 × km × kg^-0.40 + 1.25 × hours × kg^-0.25)", "distance and minutes given", sourceTwoTerm},

	{FactorOnRER, "weight_loss", Dog, true, "1.0 × RER at ideal weight", "", sourceLossFactor},
	{RERPower, "weight_loss", Dog, false, "RER at ideal weight", "", sourceLossRER},
	{RERLinear, "weight_loss", Dog, false, "30 × kg + 70 at ideal weight", "2 to 45 kg", sourceHandout},
	{ShareOfMaintenance, "weight_loss", Dog, false, "60 % of adult factor × RER at ideal weight", "status given", sourceLossShare},
	{ShareOfIntake, "weight_loss", Dog, false, "80 %, or the share given, of the present intake", "intake given", sourceIntakeShare},
	{Deficit, "weight_loss", Dog, false, "adult factor × RER at current weight - 7920 × kg lost a week / 7", "status given", sourceDeficit},
	{FactorOnRER, "weight_loss", Cat, true, "0.8 × RER at ideal weight", "", sourceLossFactor},
	{RERPower, "weight_loss", Cat, false, "RER at ideal weight", "", sourceLossRER},
	{RERLinear, "weight_loss", Cat, false, "0.8 × (30 × kg + 70) at ideal weight", "2 to 45 kg", sourceHandout},
	{ShareOfIntake, "weight_loss", Cat, false, "80 %, or the share given, of the present intake", "intake given", sourceIntakeShare},
	{Deficit, "weight_loss", Cat, false, "adult factor × RER at current weight - 7920 × kg lost a week / 7", "status given", sourceDeficit},

	{FactorOnRER, "weight_gain", Dog, true, "1.5 (1.2 to 1.8) × RER at ideal weight", "ideal weight recorded", sourceGain},
	{ShareOfIntake, "weight_gain", Dog, false, "110 %, or the share given, of the present intake", "intake given; default where no ideal weight is recorded", ours},
	{FactorOnRER, "weight_gain", Cat, true, "1.5 (1.2 to 1.8) × RER at ideal weight", "ideal weight recorded", sourceGain},
	{ShareOfIntake, "weight_gain", Cat, false, "110 %, or the share given, of the present intake", "intake given; default where no ideal weight is recorded", ours},

	{PercentOfRER, "refeeding", Dog, true, "the day's percent of RER at current weight", "a ladder and a veterinarian's name given", sourceAssisted},
	{PercentOfRER, "refeeding", Cat, true, "the day's percent of RER at current weight", "a ladder and a veterinarian's name given", sourceAssisted},

	{MeasuredIntake, "observed", 0, true, "the measured intake that keeps the weight steady", "", ours},
	{Prescription, "prescribed", 0, true, "the figure that a veterinarian has set", "", ours},

	{RecordedIdeal, "ideal_weight", Dog, true, "the ideal weight on record", "an ideal weight recorded", sourceIdealOrder},
	{PerPoint, "ideal_weight", Dog, false, "kg / (1 + 0.10 × points above 5/9)", "5/9 to 9/9; default where none is recorded", sourcePerPoint},
	{BodyFat, "ideal_weight", Dog, false, "kg × (100 % - fat) / 80 %, fat 20, 25, 30, 35, 40 % at 5 to 9/9", "5/9 to 9/9", sourceBodyFat},
	{RecordedIdeal, "ideal_weight", Cat, true, "the ideal weight on record", "an ideal weight recorded", sourceIdealOrder},
	{PerPoint, "ideal_weight", Cat, false, "kg / (1 + 0.10 × points above 5/9)", "5/9 to 9/9; default where none is recorded", sourcePerPoint},
	{BodyFat, "ideal_weight", Cat, false, "kg × (100 % - fat) / 80 %, fat 20, 25, 30, 35, 40 % at 5 to 9/9", "5/9 to 9/9", sourceBodyFat},
	{RecordedIdeal, "ideal_weight", Ferret, true, "the ideal weight on record", "an ideal weight recorded", sourceIdealOrder},
	{PerPoint, "ideal_weight", Ferret, false, "kg / (1 + 0.20 × points above 3/5)", "3/5 to 5/5, as dogs and cats; default where none is recorded", sourcePerPoint},
}
