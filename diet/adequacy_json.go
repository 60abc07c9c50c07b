package diet

// UnmarshalJSON reads what is checked, as [Food.UnmarshalJSON] does a food.
func (a *Adequacy) UnmarshalJSON(data []byte) error {
	type plain Adequacy
	return decode[plain](data, "adequacy", func(p plain) { *a = Adequacy(p) })
}
