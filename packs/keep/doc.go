// Package keep is the storekeeper's side of a job: the tags of all that comes off,
// which containers must be empty where, what is fetched before the work, and the
// register of tags.
package keep
