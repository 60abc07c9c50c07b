package diet

import (
	"slices"
	"strings"

	"example.org/bowlgram/units"
)

// The text of a basis is that of the quantity it is measured by, with what
// makes it another: "36 % DM", "4480 kcal/kg DM", "66.8 g/1000 kcal",
// "14.94 g/MJ", "24.75 % ME". An empty text is no figure, as in package units.

var (
	ofDryMatter = []string{"DM", "dry matter"}
	ofEnergy    = []string{"ME", "of energy"}
	forMcal     = []string{"/1000 kcal", "/1000kcal", "/Mcal"}
	forMJ       = []string{"/MJ"}
)

// basis is what a type of this file is measured by.
type basis[Q units.Quantity] struct {
	field    string
	endings  []string // the first is written
	accepted string
	parse    func(string) (Q, error)
}

var (
	dryMatterBasis   = basis[units.Percent]{"content of dry matter", ofDryMatter, `percent and DM, as in "36 % DM"`, units.ParsePercent}
	dryEnergyBasis   = basis[units.EnergyDensity]{"energy of dry matter", ofDryMatter, `an energy density and DM, as in "4480 kcal/kg DM"`, units.ParseEnergyDensity}
	perMcalBasis     = basis[units.Mass]{"content per 1000 kcal", forMcal, `a mass for 1000 kcal, as in "66.8 g/1000 kcal"`, units.ParseMass}
	perMJBasis       = basis[units.Mass]{"content per MJ", forMJ, `a mass for a megajoule, as in "14.94 g/MJ"`, units.ParseMass}
	energyShareBasis = basis[units.Percent]{"share of energy", ofEnergy, `percent and ME, as in "24.75 % ME"`, units.ParsePercent}
)

// read reads s. Case is folded in the ending only, as elsewhere.
func (b *basis[Q]) read(s string) (float64, error) {
	t := strings.TrimSpace(s)
	i := slices.IndexFunc(b.endings, func(e string) bool {
		return len(t) >= len(e) && strings.EqualFold(t[len(t)-len(e):], e)
	})
	if i < 0 {
		return 0, refuse(b.field, s, b.accepted)
	}
	q, err := b.parse(t[:len(t)-len(b.endings[i])])
	return float64(q), err
}

// readAmount reads s as read does, and refuses what is less than nothing.
func (b *basis[Q]) readAmount(s string) (float64, error) {
	v, err := b.read(s)
	if err == nil && v < 0 {
		return 0, refuse(b.field, s, "0 or more")
	}
	return v, err
}

// append writes the quantity, which refuses NaN and infinity, and the ending.
func (b *basis[Q]) append(dst []byte, q interface {
	AppendText(b []byte) ([]byte, error)
},
) ([]byte, error) {
	dst, err := q.AppendText(dst)
	if err != nil {
		return nil, err
	}
	return append(dst, b.ending()...), nil
}

func (b *basis[Q]) ending() string {
	if e := b.endings[0]; e[0] == '/' {
		return e
	}
	return " " + b.endings[0]
}

// ParseDryMatter reads a content of the dry matter: "36 % DM". A negative one is
// refused. An error is a [*units.FieldError] or a [*units.ParseError], as in the
// others.
func ParseDryMatter(s string) (DryMatter, error) {
	v, err := dryMatterBasis.readAmount(s)
	return DryMatter(v), err
}

// String returns the text of d, as in "36 % DM".
func (d DryMatter) String() string { return units.Percent(d).String() + dryMatterBasis.ending() }

// AppendText appends the text of d. It fails where d is NaN or infinite.
func (d DryMatter) AppendText(b []byte) ([]byte, error) {
	return dryMatterBasis.append(b, units.Percent(d))
}

// MarshalText returns the text of d, as [DryMatter.AppendText] does.
func (d DryMatter) MarshalText() ([]byte, error) { return d.AppendText(nil) }

// UnmarshalText sets d as [ParseDryMatter] reads text. On error d is left as it
// was.
func (d *DryMatter) UnmarshalText(text []byte) error { return set(d, text, ParseDryMatter) }

// ParseDryEnergy reads an energy density of dry matter: "4480 kcal/kg DM".
func ParseDryEnergy(s string) (DryEnergy, error) {
	v, err := dryEnergyBasis.readAmount(s)
	return DryEnergy(v), err
}

// String returns the text of e, as in "4480 kcal/kg DM".
func (e DryEnergy) String() string { return units.EnergyDensity(e).String() + dryEnergyBasis.ending() }

// AppendText appends the text of e. It fails where e is NaN or infinite.
func (e DryEnergy) AppendText(b []byte) ([]byte, error) {
	return dryEnergyBasis.append(b, units.EnergyDensity(e))
}

// MarshalText returns the text of e, as [DryEnergy.AppendText] does.
func (e DryEnergy) MarshalText() ([]byte, error) { return e.AppendText(nil) }

// UnmarshalText sets e as [ParseDryEnergy] reads text. On error e is left as it
// was.
func (e *DryEnergy) UnmarshalText(text []byte) error { return set(e, text, ParseDryEnergy) }

// ParsePerMcal reads a content for 1000 kcal: "66.8 g/1000 kcal".
func ParsePerMcal(s string) (PerMcal, error) {
	v, err := perMcalBasis.readAmount(s)
	return PerMcal(v), err
}

// String returns the text of p, as in "66.8 g/1000 kcal".
func (p PerMcal) String() string { return units.Mass(p).String() + perMcalBasis.ending() }

// AppendText appends the text of p. It fails where p is NaN or infinite.
func (p PerMcal) AppendText(b []byte) ([]byte, error) { return perMcalBasis.append(b, units.Mass(p)) }

// MarshalText returns the text of p, as [PerMcal.AppendText] does.
func (p PerMcal) MarshalText() ([]byte, error) { return p.AppendText(nil) }

// UnmarshalText sets p as [ParsePerMcal] reads text, and also where it is below
// zero, as the Margin of a [Finding] is that is short. On error p is left as it
// was.
func (p *PerMcal) UnmarshalText(text []byte) error { return set(p, text, parseSigned) }

func parseSigned(s string) (PerMcal, error) {
	v, err := perMcalBasis.read(s)
	return PerMcal(v), err
}

// ParsePerMJ reads a content for a megajoule: "14.94 g/MJ".
func ParsePerMJ(s string) (PerMJ, error) {
	v, err := perMJBasis.readAmount(s)
	return PerMJ(v), err
}

// String returns the text of p, as in "14.94 g/MJ".
func (p PerMJ) String() string { return units.Mass(p).String() + perMJBasis.ending() }

// AppendText appends the text of p. It fails where p is NaN or infinite.
func (p PerMJ) AppendText(b []byte) ([]byte, error) { return perMJBasis.append(b, units.Mass(p)) }

// MarshalText returns the text of p, as [PerMJ.AppendText] does.
func (p PerMJ) MarshalText() ([]byte, error) { return p.AppendText(nil) }

// UnmarshalText sets p as [ParsePerMJ] reads text. On error p is left as it was.
func (p *PerMJ) UnmarshalText(text []byte) error { return set(p, text, ParsePerMJ) }

// ParseEnergyShare reads a part of the metabolizable energy: "24.75 % ME".
func ParseEnergyShare(s string) (EnergyShare, error) {
	v, err := energyShareBasis.readAmount(s)
	return EnergyShare(v), err
}

// String returns the text of s, as in "24.75 % ME".
func (s EnergyShare) String() string { return units.Percent(s).String() + energyShareBasis.ending() }

// AppendText appends the text of s. It fails where s is NaN or infinite.
func (s EnergyShare) AppendText(b []byte) ([]byte, error) {
	return energyShareBasis.append(b, units.Percent(s))
}

// MarshalText returns the text of s, as [EnergyShare.AppendText] does.
func (s EnergyShare) MarshalText() ([]byte, error) { return s.AppendText(nil) }

// UnmarshalText sets s as [ParseEnergyShare] reads text. On error s is left as
// it was.
func (s *EnergyShare) UnmarshalText(text []byte) error { return set(s, text, ParseEnergyShare) }

// set leaves v as it was where text can't be read.
func set[T any](v *T, text []byte, parse func(string) (T, error)) error {
	x, err := parse(string(text))
	if err == nil {
		*v = x
	}
	return err
}
