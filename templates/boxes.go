package templates

// Boxes gives the page of every box that is filled by hand for a dimension, by its key
// (job.Blank).
func (p *Pack) Boxes() map[string]int {
	out := map[string]int{}
	for i, f := range p.Pages.Pages {
		for _, it := range f.Items {
			if it.Key == "" {
				continue
			}
			if out[it.Key] = f.Number; f.Number == 0 {
				out[it.Key] = i + 1
			}
		}
	}
	return out
}
