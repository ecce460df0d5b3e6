package block

import "matchmark/packs/job"

// Why says in a few words why a step does not pass another; empty where the author
// gave no reason.
func (c *Composer) Why(b *job.Bind) string {
	switch b.Kind {
	case job.BoundHold:
		switch {
		case b.Hold.Witness: // the work goes on past a witness that does not come
			return c.W.Bind.Witness.With(b.Hold.Mark)
		case b.Before.Hold == b.Hold:
			return c.W.Bind.AfterHold.With(b.Hold.Mark)
		}
		return c.W.Bind.BeforeHold.With(b.Hold.Mark)
	case job.BoundBehind:
		return c.W.Bind.Behind.With(b.Front.Name, b.Part.Name)
	case job.BoundPart:
		return c.W.Bind.Part.With(b.Part.Name)
	case job.BoundJoint:
		return c.W.Bind.Joint.With(b.Part.Name)
	case job.BoundBack:
		return c.W.Bind.Back.With(b.Part.Name)
	case job.BoundLost:
		return c.W.Bind.Lost.With(b.Dim.Mark)
	case job.BoundReading:
		return c.W.Bind.Reading.With(b.Dim.Mark)
	case job.BoundLock:
		return c.W.Bind.Lock.With(b.Lock.Point)
	case job.BoundPermit:
		return c.W.Bind.Permit.With(b.Permit.What)
	case job.BoundOpening:
		return c.W.Bind.Opening.With(b.Opening.What)
	case job.BoundJudged:
		return c.W.Bind.Judged.With(b.Set.Mark)
	case job.BoundEmpty:
		return c.W.Bind.Empty.With(b.In.Mark)
	case job.BoundHanging:
		return c.W.Bind.Hanging
	case job.BoundTools:
		return c.W.Bind.Tools
	case job.BoundLater:
		return c.W.Bind.Later
	}
	return b.Reason
}
