package templates_test

// printedTexts are the keys of a definition whose texts people read, by the paths of their
// fields: each text is printed as it was written.
const printedTexts = `
	Alignments.Feet.Name Alignments.Growth.Source Alignments.Limits.Source Alignments.Note Alignments.SoftFoot.Source Alignments.Stationary Alignments.Target.Source
	Alignments.What BigParts.Keep BigParts.Support Cautions.Avoid Cautions.Hazard Cautions.Result Cautions.Rule Cautions.Signs Consumables.Count Consumables.Note
	Consumables.Size Consumables.What Containers.Keep Containers.Name Containers.Note Cranes.What Dimensions.FoundOut Dimensions.From.Face Dimensions.Load
	Dimensions.Note Dimensions.Of.Face Dimensions.Out Dimensions.Over Dimensions.Plane Dimensions.Pushed Dimensions.Says.Note Dimensions.Says.Source
	Dimensions.Says.Text Dimensions.Source Dimensions.StampedOn.Face Dimensions.To.Face Dimensions.Under Dimensions.ViewedFrom Dimensions.What Dimensions.WhyCoarse
	Dimensions.With Equipment.Location Equipment.Maker Equipment.Name Equipment.Serial Equipment.Tag Equipment.Type Gear.HeatSource Gear.LeftSource Gear.What Heats.Grip.Because
	Heats.Grip.DecidedBy Heats.Hub.Source Heats.Neighbours.KeptCool Heats.Neighbours.MeasuredWith Heats.Neighbours.Source Heats.Neighbours.What Heats.Note
	Heats.NothingNear Heats.Pull.IfStuck Heats.Pull.Puller Heats.Pull.Shield Heats.Pull.WorkableBecause Heats.What Holds.Releases Holds.What Instruments.Name
	Instruments.Number Isolations.Energy Isolations.Point Isolations.Proved Isolations.State Job.Number Job.Planner Job.Scope Job.Title Joints.Friction.Source
	Joints.Layout.Clock Joints.Layout.SeenFrom Joints.Lubricant Joints.NoValue Joints.Pattern Joints.Proof.Source Joints.Says.Note Joints.Says.Source
	Joints.Says.Text Joints.Scatter.Source Joints.Source Joints.Tensioner.Source Joints.What LayDown.Support LayDown.What Lifts.Because Lifts.Crew Lifts.DecidedBy
	Lifts.Ends.Name Lifts.Grips.Name Lifts.Legs.Name Lifts.Legs.Takes Lifts.MassSource Lifts.Note Lifts.Origin Lifts.Points.Source Lifts.Sections.What
	Lifts.SignedPlan Lifts.Stops Lifts.StopsIn Lifts.Supports Lifts.TopLegs.Name Lifts.TrialStops Lifts.What Openings.Cover Openings.What Options.What
	Parts.LeaveAlone Parts.Name Parts.Note Parts.Renew Permits.Note Permits.What Places.CountedFrom Places.Places.Name Places.Places.ViewedFrom Places.ViewedFrom
	Sections.Name Sections.Steps.After.Steps.Value Sections.Steps.Back Sections.Steps.BackCheck Sections.Steps.BackMissed Sections.Steps.BackPermit
	Sections.Steps.BackSeen Sections.Steps.Check Sections.Steps.Do Sections.Steps.EachTry Sections.Steps.Later Sections.Steps.Missed Sections.Steps.NoCaution.Value
	Sections.Steps.Note Sections.Steps.OnHook Sections.Steps.Seen Sections.Steps.StillOut Sections.Steps.UnderLoad Sections.Steps.WayRound.Faces
	Sections.Steps.WayRound.Mark Sets.What Sets.Why Spares.Count Spares.Note Spares.Size Spares.What Stacks.From Stacks.Order Stacks.What Tools.Count Tools.Note
	Tools.Size Tools.What`

// otherTexts are all other keys, by the reason why their texts are not printed as they were
// written. What most of them become is held by TestPaperSaysWhatTheJobHolds.
var otherTexts = map[string]string{
	"a mark, the name of a thing or a place: the thing is printed by what it is called, and check refuses a name of nothing": `
	Alignments.Fitted Alignments.If Alignments.Mark Alignments.Movable Alignments.Read.Face Alignments.Read.Movable Alignments.Read.Rim Alignments.Read.Stationary
	BigParts.Each BigParts.Fitted BigParts.If BigParts.Mark BigParts.Part Cautions.Key Consumables.Fitted Consumables.For Consumables.If Consumables.Key
	Consumables.Part Containers.Each Containers.Fitted Containers.If Containers.Mark Containers.Pockets Cranes.Key Dimensions.Adjust Dimensions.By Dimensions.Each
	Dimensions.Fitted Dimensions.From.Part Dimensions.If Dimensions.LostBy Dimensions.Mark Dimensions.Of.Part Dimensions.Says.Fitted Dimensions.Says.If
	Dimensions.Says.Used Dimensions.Shims Dimensions.StampedOn.Part Dimensions.To.Part Gear.Key Heats.Each Heats.Fitted Heats.Hub.Part Heats.If Heats.Mark
	Heats.Read.Bore Heats.Read.Seat Heats.Shaft.Part Holds.Mark Instruments.Key Isolations.Fitted Isolations.If Isolations.Key Joints.Each Joints.Fitted Joints.If
	Joints.Mark Joints.Parts Joints.Says.Fitted Joints.Says.If Joints.Says.Used LayDown.Mark Lifts.Bar Lifts.Crane Lifts.Fitted Lifts.If Lifts.LayDown
	Lifts.Legs.Gear Lifts.Legs.Sling Lifts.Mark Lifts.Parts Lifts.Points.Name Lifts.SecondCrane Lifts.Sections.Material Lifts.TopGear Lifts.TopLegs.Gear
	Lifts.TopLegs.Sling Lifts.TopLegs.Takes Lifts.UpendedOn Openings.Each Openings.Fitted Openings.If Openings.Key Options.Builds.Name Options.Chosen Options.Key
	Parts.Behind Parts.Each Parts.Fitted Parts.If Parts.Key Parts.Of Parts.Set Permits.Fitted Permits.If Permits.Key Places.Name Places.Places.Key Sections.Each
	Sections.Fitted Sections.If Sections.Reverse Sections.Steps.After.Steps.Name Sections.Steps.Align Sections.Steps.BackCaution Sections.Steps.BackHold
	Sections.Steps.Caution Sections.Steps.Close Sections.Steps.Each Sections.Steps.Empty Sections.Steps.Fit.Part Sections.Steps.Fitted Sections.Steps.ForNow.Part
	Sections.Steps.From Sections.Steps.HandBack Sections.Steps.Heat Sections.Steps.Hold Sections.Steps.Into.For.Name Sections.Steps.Into.For.Value
	Sections.Steps.Into.To Sections.Steps.Judge Sections.Steps.Key Sections.Steps.LeftOut Sections.Steps.Lift Sections.Steps.Lock Sections.Steps.LockAgain
	Sections.Steps.Loosen Sections.Steps.MatchMarks.On Sections.Steps.MatchMarks.Part Sections.Steps.Measure Sections.Steps.NoCaution.Name Sections.Steps.Open
	Sections.Steps.Permit Sections.Steps.Remove.Part Sections.Steps.Set Sections.Steps.SetDown Sections.Steps.Stacks Sections.Steps.TakeOut.Part
	Sections.Steps.Tighten Sections.Steps.Unlock Sections.Steps.UnlockForNow Sections.Steps.WayRound.Part Sections.Use.As Sets.Each Sets.JudgedBy Sets.Mark
	Spares.Fitted Spares.For Spares.If Spares.Key Spares.Part Stacks.Each Stacks.Mark Tools.Fitted Tools.For Tools.If Tools.Key Tools.Part`,
	"an amount, a size, a day or a designation: it is read, and printed in the units and figures of the paper": `
	Alignments.FaceBack Alignments.FaceDiameter Alignments.Feet.Is Alignments.Growth.Movable Alignments.Growth.Stationary.Is Alignments.Growth.Stationary.Rise
	Alignments.Limits.Over Alignments.Limits.Rows.Angle Alignments.Limits.Rows.Offset Alignments.Limits.Rows.UpTo Alignments.Limits.Speed Alignments.Limits.Where
	Alignments.Reads Alignments.Sag Alignments.SagOther Alignments.SoftFoot.Limit Alignments.Span Alignments.Target.Right Alignments.Target.Up Alignments.Tries
	Cranes.Block Cranes.HighHook Cranes.Rated Dimensions.At.Every Dimensions.At.Rows Dimensions.BackOff Dimensions.Nominal Dimensions.OneIs Dimensions.Spare
	Gear.Ends Gear.Flattest Gear.Heat Gear.LeftAt Gear.Length Gear.LugRise Gear.Mass Gear.MayBend Gear.MayPress Gear.Rated Gear.Rise Gear.Rope Gear.Thread Gear.TopLugs
	Heats.Air Heats.AtWork.Coldest Heats.AtWork.Hottest Heats.AtWork.HubOver Heats.AtWork.RPM Heats.AtWork.ShaftOver Heats.Diameter Heats.FireWatch Heats.Fit
	Heats.Grip.Holding Heats.Grip.HubRough Heats.Grip.Pulling Heats.Grip.ShaftRough Heats.Hub.AtMost Heats.Hub.Length Heats.Hub.Outside Heats.Hub.Strength
	Heats.Hub.Yield Heats.Interference Heats.Neighbours.AtMost Heats.Neighbours.Away Heats.Pull.Clearance Heats.Pull.Depth Heats.Pull.Longest Heats.Pull.Net
	Heats.Pull.PullsWith Heats.Pull.Rise Heats.Pull.Workable Heats.PutOn.Clearance Heats.PutOn.Coolant Heats.PutOn.HeatTo Heats.PutOn.Net Heats.PutOn.Oven
	Heats.PutOn.Rise Heats.PutOn.Room Heats.Shaft.Behind Heats.Shaft.Bore Heats.Shaft.Front Heats.Shaft.Torque Heats.Shaft.Yield Heats.Sizes.Bore Heats.Sizes.BoreAt
	Heats.Sizes.Seat Heats.Sizes.SeatAt Instruments.Count Instruments.Range Instruments.Reads Job.HoursADay Job.Issued Job.Revision Job.Starts Joints.BreaksLoose
	Joints.ForNow Joints.Friction.Bearing Joints.Friction.Face Joints.Friction.Hole Joints.Friction.NutFactor Joints.Friction.Thread Joints.Layout.Circle
	Joints.Layout.First Joints.Layout.Length Joints.Layout.Oval Joints.Layout.Places Joints.Layout.Rectangle Joints.Layout.SplitLine Joints.Layout.Width
	Joints.Preload Joints.Proof.Stress Joints.Scatter.Percent Joints.Tensioner.Area Joints.Tensioner.Retained Joints.Thread Joints.Torque LayDown.Floor Lifts.Aim
	Lifts.Bail Lifts.Centre Lifts.CentreWithin Lifts.Dynamic Lifts.Ends.Point Lifts.Footing.Length Lifts.Footing.Most Lifts.Footing.Pieces Lifts.Footing.Width
	Lifts.Grips.Pick Lifts.Heat Lifts.HookHeight Lifts.LegError Lifts.Legs.Around Lifts.Legs.Axis Lifts.Legs.Choke Lifts.Legs.Heavier Lifts.Legs.Length
	Lifts.Legs.OffLine Lifts.Legs.Pick Lifts.Legs.Spread Lifts.Mass Lifts.MassWithin Lifts.MaxTilt Lifts.MayPress Lifts.PassOver Lifts.Points.Flattest
	Lifts.Points.Rated Lifts.Sections.Bore Lifts.Sections.Count Lifts.Sections.Density Lifts.Sections.Each Lifts.Sections.From Lifts.Sections.Length
	Lifts.Sections.Outer Lifts.Sections.OuterFar Lifts.Sections.Within Lifts.SectionsFrom Lifts.Size.From Lifts.Size.To Lifts.Skew Lifts.Stack Lifts.Tackle.Mass
	Lifts.Tackle.MovingBlock Lifts.Tackle.Parts Lifts.Tackle.Rope Lifts.Tackle.Sheaves Lifts.Tackle.UpperBlock Lifts.TopLegs.Around Lifts.TopLegs.Axis
	Lifts.TopLegs.Choke Lifts.TopLegs.Heavier Lifts.TopLegs.Length Lifts.TopLegs.OffLine Lifts.TopLegs.Pick Lifts.TopLegs.Spread Lifts.Trial Parts.Count Parts.Fit
	Parts.Flats Parts.Mass Parts.Moves Parts.Shims.Leaves Parts.Shims.Most Parts.Shims.Pick Parts.Shims.Range Parts.Thread Sections.Steps.BackHours
	Sections.Steps.BackPeople Sections.Steps.Fit.N Sections.Steps.ForNow.N Sections.Steps.Hours Sections.Steps.People Sections.Steps.Remove.N
	Sections.Steps.TakeOut.N Sections.Steps.Tries Stacks.Count`,
	"one of a few fixed words: it is printed in the words of the language": `
	Alignments.DialsOn Alignments.Method Cautions.Signal Consumables.Only Containers.Kind Dimensions.Kind Dimensions.OnThe Dimensions.State Dimensions.Warm
	Gear.Fibre Gear.Kind Gear.RatedBy Gear.Seat Heats.Grip.Smoothing Heats.Hub.Kind Heats.Hub.Material Heats.Neighbours.Kind Heats.Pull.By Heats.PutOn.By
	Heats.PutOn.Chill Heats.SeatForm Heats.Shaft.Material Holds.Kind Joints.Class Joints.Layout.Order Joints.Plan Joints.Scatter.Word Lifts.FourLegs
	Lifts.Legs.Hitch Lifts.MassFrom Lifts.RatedBy Lifts.Rig Lifts.Sections.Shape Lifts.Tackle.Hauled Lifts.TopLegs.Hitch Pack Parts.Hand Parts.Holds
	Parts.Shims.Round Permits.For Sections.Steps.Where Spares.Only Tools.Only`,
	"yes or no, or a number that is added to marks: it decides what is printed": `
	Alignments.TwoFace Dimensions.Critical Dimensions.Sign Gear.Tucked Joints.Layout.Against Lifts.Legs.Turns Lifts.Points.Turns Lifts.Sections.Cut
	Lifts.TopLegs.Turns Openings.Enclosed Options.Fitted Parts.Aid Parts.Guard Sections.Steps.AsTable Sections.Steps.CountAll Sections.Steps.Photo
	Sections.Steps.ToolCount Sections.Use.Add`,
	"a limit, a formula, a condition or stages of tightening: printed in the words of the language of limits": `
	Dimensions.Formula Dimensions.Found Dimensions.Left Dimensions.Repair Dimensions.Reuse Joints.Stages Sections.Steps.If Sections.Steps.Until`,
	"a file that is read": `
	Include Sections.Use.File`,
	"positions: a word or a range stands for many, and the heads of the boxes are these": `
	Dimensions.At.Axes.Name Dimensions.At.Axes.Values`,
	"the machines that have a build: printed for the build that this machine has": `
	Options.Builds.Value`,
	"printed where a step does not apply to this machine, which no definition of its own says": `
	Sections.Steps.Otherwise`,
}
