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
		"a\u00a0b":      true, // so is a space that isn't broken
		"a\nb":          false,
		"a\r":           false,
		"\tb":           false,
		"a\x00":         false,
		"a\x1f":         false,
		"a\x7f":         false, // delete
		"a\u0085b":      false, // next line
		"a\u2028b":      false, // line separator
		"a\u2029b":      false, // paragraph separator
		"a\u202eb":      false, // right-to-left override
		"a\u2066b":      false, // isolate
		"Bol\u00adster": true,  // soft hyphen
		"\u179f\u17d2\u179a\u17b8\u200b\u1798\u17bb\u17c6":                       true, // a Khmer word break
		"\U0001f3f4\U000e0067\U000e0062\U000e0073\U000e0063\U000e0074\U000e007f": true, // the flag of Scotland
		"a\u200eb":                      false, // left-to-right mark
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

func TestSeen(t *testing.T) {
	for text, want := range map[string]bool{
		"":                 false,
		" ":                false,
		"\u00a0\u3000":     false, // spaces
		"\u3164":           false, // fillers of Hangul, which are letters
		"\u115f\u1160":     false,
		"\uffa0":           false,
		"\u2800":           false, // a blank of Braille
		"\u200b\u00ad":     false,
		"\ufe0f":           false,
		"a":                true,
		"~":                true,
		" a":               true,
		"\u3164a":          true,
		"\u00fc":           true,
		"\u732b":           true,
		"\U0001f408\ufe0f": true,
	} {
		if got := oneline.Seen(text); got != want {
			t.Errorf("Seen(%q) = %v", text, got)
		}
		if fits := oneline.Fits(text); fits != (want || text == "") {
			t.Errorf("Fits(%q) = %v", text, fits)
		}
	}
}
