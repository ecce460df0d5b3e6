package job

import "matchmark/packs/units"

// OneLifts reports whether one person may lift a mass alone on this site: it is no more
// than the site's heavy: (25 kg where it says nothing), which may have another unit of
// mass, as 50 lb against 22 kg. Known is false where nobody told the mass, or where one of
// the two is no mass: then it is neither light nor heavy. The bound itself may be lifted.
func (s Site) OneLifts(mass *units.Quantity) (may, known bool) {
	if mass == nil {
		return false, false
	}
	over, err := mass.Cmp(s.Heavy)
	return err == nil && over <= 0, err == nil
}
