package energy

import "example.org/bowlgram/units"

// doubtIntake returns what is to be said of a present intake that few animals
// of the weight have, with the slip that would explain it, and "" where it is
// usual. The bounds are those of Prescribed: ours.
func (a Animal) doubtIntake(intake units.Energy) string {
	usual, what, ok := a.usual()
	if !ok || usual.Contains(intake) {
		return ""
	}
	side := ", above "
	if intake < usual.Low {
		side = ", below "
	}
	text := "check the present intake, " + kcal(intake) + side + what + " (" + kcal(usual.Low) + " to " + kcal(usual.High) + ")"
	if s := slips(intake, usual); s != "" {
		text += ": " + s
	}
	return text
}
