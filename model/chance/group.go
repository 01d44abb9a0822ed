package chance

// SeedOf gives a group of replications random streams of its own.
func SeedOf(seed uint64, group string) uint64 { return seed ^ uint64(KeyOf("group", group)) }
