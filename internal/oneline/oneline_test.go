package oneline_test

import (
	"strings"
	"testing"

	"example.org/bowlgram/internal/oneline"
)

func TestIs(t *testing.T) {
	for text, want := range map[string]bool{
		"":                         true,
		"Tarnwick House Dog Dry":   true,
		"~ and !":                  true, // the ends of what ASCII shows
		"Trockenfutter für Welpen": true,
		"ドライフード":                   true,
		"كيبل":                     true,
		"\u0645\u06cc\u200c\u062e\u0648\u0631\u0645": true, // a zero-width non-joiner is spelling
		"a\u00a0b":                      true, // so is a space that isn't broken
		"a\nb":                          false,
		"a\r":                           false,
		"\tb":                           false,
		"a\x00":                         false,
		"a\x1f":                         false,
		"a\x7f":                         false, // delete
		"a\u0085b":                      false, // next line
		"a\u2028b":                      false, // line separator
		"a\u2029b":                      false, // paragraph separator
		"a\u202eb":                      false, // right-to-left override
		"a\u2066b":                      false, // isolate
		"Dr\u200bX":                     false, // zero-width space
		"a\ufeffb":                      false, // byte order mark
		"a\x1b[2J":                      false, // clears a terminal
		"\xff":                          false, // no UTF-8
		"für\xc3":                       false,
		strings.Repeat("a", 1000):       true,
		strings.Repeat("a", 300) + "\n": false,
	} {
		if got := oneline.Is(text); got != want {
			t.Errorf("Is(%q) = %v", text, got)
		}
		if of := oneline.Of(text); !oneline.Is(of) || want && of != text {
			t.Errorf("Of(%q) = %q", text, of)
		}
	}
}

func TestFits(t *testing.T) {
	for text, want := range map[string]bool{
		strings.Repeat("a", 256):       true,
		strings.Repeat("a", 257):       false,
		strings.Repeat("ü", 128):       true, // 256 bytes
		strings.Repeat("ü", 128) + "a": false,
		"a\nb":                         false,
	} {
		if got := oneline.Fits(text); got != want {
			t.Errorf("Fits(%d bytes %.10q) = %v", len(text), text, got)
		}
	}
}

func TestOf(t *testing.T) {
	for text, want := range map[string]string{
		"a\r\n\t b":      "a b",
		"\n":             "",
		" a\nb  c ":      "a b c",
		"x\u202ey\u2028": "x y",
		"a\xffb\n":       "a\uFFFDb",
	} {
		if got := oneline.Of(text); got != want {
			t.Errorf("Of(%q) = %q, want %q", text, got, want)
		}
	}
}
