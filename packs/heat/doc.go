// Package heat computes how a hub that is shrunk on a shaft is freed by heat,
// and how hot it must be to go back on.
//
// It answers, in this order:
//
//   - Rise: the temperature of the hub over the shaft that opens the fit by the
//     interference and a chosen clearance.
//   - Pull.Plan: the heating in time. Hub and shaft are cut along the radius and
//     along the axis; heat crosses the joint while the parts touch, runs away along
//     the shaft and is lost to the air. The plan holds the moment it comes free where
//     the opening lags, how long it stays free once the heat is off, the temperatures
//     on the way, and the band of net power that works, told as skin temperatures at
//     two times. What does not open is told with what would have to change.
//   - Refit: the temperature for putting the hub back, and the seconds until it
//     grips. Soak: how long an oven or a heater needs for a hub off its shaft.
//   - ColdFit and RoomAfter: a shaft cooled by dry ice or liquid nitrogen, how
//     long until it grips, and what the gas does to the air of a room.
//   - Materials, Ceilings, TemperColours: tables, each entry with its source.
//
// Units are in the type of each quantity: millimetres for lengths, degrees
// Celsius for temperatures, kelvin for rises. A rise and a temperature are two
// types, because mixing them up by the 20 degrees of the shop has been printed
// in manuals. Interference, opening and clearance are on the diameter.
//
// What cannot be computed is refused by a *Refusal, which names the field, says
// why, and says what to do instead. Nothing is clamped, and nothing is assumed
// that is not listed in the assumptions of the result. Refusals, warnings and
// assumptions are written in metric units, and by their method In in those of the job.
//
// The figures are planning figures for a competent person to judge. They do not
// cover hubs with webs or spokes, fits with oil pressure, and heat that a flame sends
// past its shield; tapered seats, shrink discs and a flame on grey iron are refused.
package heat
