package transition

import (
	"slices"
	"strconv"

	"example.org/bowlgram/internal/errlist"
	"example.org/bowlgram/units"
)

// missed stands in a course for a day on which the plan was not followed.
const missed = -1

// course is the step of each day, the first day's first. 0 is the old food
// alone.
type course []int

// courseFrom returns the days of a step and of those after it.
func (s *Steps) courseFrom(step int) course {
	var c course
	for i := step; i <= s.Len(); i++ {
		c = append(c, slices.Repeat([]int{i}, int(s.days[i-1]))...)
	}
	return c
}

// course returns the steps of the days after the events.
func (s *Steps) course(events []Event) (course, error) {
	var errs units.ErrorList
	for i, e := range events {
		errs = errlist.Add(errs, e.check(i))
	}
	if err := errs.Err(); err != nil {
		return nil, err
	}
	c := s.courseFrom(1)
	for i, e := range events {
		field := "events[" + strconv.Itoa(i) + "].day"
		switch {
		case i > 0 && e.Day <= events[i-1].Day:
			return nil, refuse(field, strconv.Itoa(e.Day), "a day after the "+events[i-1].text()+", one event a day", "")
		case i > 0 && events[i-1].Kind == Stop:
			return nil, refuse(field, strconv.Itoa(e.Day), "nothing after the "+events[i-1].text(), "to try again is a new plan")
		case e.Day > len(c)+1:
			return nil, refuse(field, strconv.Itoa(e.Day), "a day of the plan, up to "+strconv.Itoa(len(c)+1), "")
		}
		if c = s.after(c, e); len(c) > maxDays {
			return nil, refuse("events", strconv.Itoa(len(c))+" days", "a plan of at most "+strconv.Itoa(maxDays)+" days", "")
		}
	}
	return c, nil
}

// after returns the course with an event in it. What was done stays. With it the
// plan is followed again, where more days were to be missed.
func (s *Steps) after(c course, e Event) course {
	done := slices.Clone(c[:e.Day-1])
	rest := slices.DeleteFunc(slices.Clone(c[e.Day-1:]), func(step int) bool { return step == missed })
	now := done.now()
	switch e.Kind {
	case Hold:
		done = append(done, slices.Repeat([]int{now}, e.count())...)
	case StepBack:
		done = append(done, slices.Repeat([]int{max(now-1, 0)}, e.count())...)
		rest = s.courseFrom(max(now, 1))
	case Missed:
		done = append(done, slices.Repeat([]int{missed}, e.count())...)
		if len(rest) == 0 {
			rest = course{s.Len()} // after the last day come more like it
		}
	case Stop:
		return append(done, 0)
	}
	return append(done, rest...)
}

// now returns the step that the days of c have come to.
func (c course) now() int {
	for _, step := range slices.Backward(c) {
		if step != missed {
			return step
		}
	}
	return 0
}
