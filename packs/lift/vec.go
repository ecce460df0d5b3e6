package lift

import "math"

// vec is a Point or a direction while it is being reckoned with.
type vec struct{ x, y, z float64 }

// zUp is the load's own vertical.
var zUp = vec{0, 0, 1}

func vecOf(p Point) vec         { return vec{float64(p.X), float64(p.Y), float64(p.Z)} }
func (a vec) point() Point      { return Point{Mm(a.x), Mm(a.y), Mm(a.z)} }
func (a vec) add(b vec) vec     { return vec{a.x + b.x, a.y + b.y, a.z + b.z} }
func (a vec) sub(b vec) vec     { return vec{a.x - b.x, a.y - b.y, a.z - b.z} }
func (a vec) by(k float64) vec  { return vec{a.x * k, a.y * k, a.z * k} }
func (a vec) dot(b vec) float64 { return a.x*b.x + a.y*b.y + a.z*b.z }
func (a vec) size() float64     { return math.Sqrt(a.dot(a)) }
func (a vec) cross(b vec) vec {
	return vec{a.y*b.z - a.z*b.y, a.z*b.x - a.x*b.z, a.x*b.y - a.y*b.x}
}

// unit gives the direction of a; the caller knows that a is not zero.
func (a vec) unit() vec { return a.by(1 / a.size()) }

// across gives the part of a that is square to the unit vector e.
func (a vec) across(e vec) vec { return a.sub(e.by(a.dot(e))) }

// det is the volume spanned by three vectors, signed.
func det(a, b, c vec) float64 { return a.dot(b.cross(c)) }

// angleBetween is exact for small and large angles alike.
func angleBetween(a, b vec) Degree {
	return degrees(math.Atan2(a.cross(b).size(), a.dot(b)))
}

// stand turns the load's frame about g by the smallest rotation that makes up
// vertical, and gives where p comes to lie. It is how the hung load is drawn:
// a level load keeps its co-ordinates.
func stand(p, g, up vec) vec {
	axis := up.cross(zUp)
	s, c := axis.size(), up.z
	d := p.sub(g)
	if s < 1e-15 {
		return p
	}
	k := axis.by(1 / s)
	// Rodrigues' rotation formula.
	r := d.by(c).add(k.cross(d).by(s)).add(k.by(k.dot(d) * (1 - c)))
	return g.add(r)
}
