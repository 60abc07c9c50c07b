package diet_test

import (
	"testing"

	"example.org/bowlgram/diet"
)

func TestTextOfClaims(t *testing.T) {
	checkText(t, diet.Calculated, "calculated", diet.ParseClaim)
	checkText(t, diet.Fed, "fed", diet.ParseClaim)
	if _, err := diet.ParseClaim("measured"); errorText(err) != `diet: claim "measured": want calculated or fed` {
		t.Error(err)
	}
	if _, err := diet.Claim(3).MarshalText(); errorText(err) != `diet: claim "out of range": want calculated or fed` {
		t.Error(err)
	}
}
