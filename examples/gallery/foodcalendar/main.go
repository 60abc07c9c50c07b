// Foodcalendar writes a change of food into a calendar file for the owner's phone:
// what goes into the bowl each day, in grams, and when to call.
//
//	foodcalendar                                         a demo dog, to the standard output
//	foodcalendar -start 2026-11-02 -o change.ics change.json
//	foodcalendar -start 2026-11-02 -times "07:00,18:00" -o change.ics change.json
//
// The record is JSON, "-" is the standard input: the animal's name, its need as any
// stage of package energy, and the plan of package transition. The demo's is
//
//	{
//	  "animal": "Oakum",
//	  "need": {
//	    "stage": "observed",
//	    "animal": {"species": "dog", "weight": "18 kg", "condition": "5/9"},
//	    "intake": "1068 kcal", "over": "28 d", "before": "18 kg"
//	  },
//	  "plan": {
//	    "from": [{
//	      "food": {"name": "Tarnwick House Dog Dry", "for": {"species": "dog"}, "label": {"energy": "3560 kcal/kg"}},
//	      "amount": "rest"
//	    }],
//	    "to": [{
//	      "food": {"name": "Ostlehouse Slim Dog Dry", "for": {"species": "dog"}, "label": {"energy": "2980 kcal/kg"}},
//	      "amount": "rest"
//	    }],
//	    "steps": "four_stages", "meals": 2, "scale": "1 g"
//	  }
//	}
//
// Start is the first day of the change; the program never reads the clock. There
// is one entry a day, or with -times one for each meal, with a reminder, at the
// time of day wherever the phone is.
//
// The file is an iCalendar (RFC 5545). The same animal, start and new food give
// the same identifiers, so that a phone replaces the entries of an earlier file;
// count -revision up for each file that replaces one. Entries that a shorter plan
// no longer has stay on the phone and must be deleted there.
//
// The exit status is 0, or 2 if there is no file: bad usage, a record that can't
// be read or that the library refuses, output that can't be written.
package main

import "os"

func main() { os.Exit(run(os.Args[1:], os.Stdin, os.Stdout, os.Stderr)) }
