package walk

import "sort"

// A timeline is what one thing is over the events of a job: its state at the
// start, and after each event that changes it.
type timeline[T any] struct {
	start T
	at    []int // indexes of events, rising
	after []T   // the state after the event of the same place in at
}

// before is the state just before an event.
func (l *timeline[T]) before(event int) T {
	if l == nil {
		var none T
		return none
	}
	n := sort.SearchInts(l.at, event)
	if n == 0 {
		return l.start
	}
	return l.after[n-1]
}

// last is the state at the end.
func (l *timeline[T]) last() T {
	if n := len(l.after); n > 0 {
		return l.after[n-1]
	}
	return l.start
}

// change notes the state after an event. Several changes at one event leave the last.
func (l *timeline[T]) change(event int, to T) {
	if n := len(l.at); n > 0 && l.at[n-1] == event {
		l.after[n-1] = to
		return
	}
	l.at = append(l.at, event)
	l.after = append(l.after, to)
}
