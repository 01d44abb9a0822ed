package check

// Cautions are what no check decides, with every answer.
func Cautions() []string {
	return []string{
		"A plan is an estimate, not a clearance: licensed people and local codes decide.",
		"Site safety and pollution-prevention review approves sites and depths.",
		"Gas is monitored on each core by people with authority to stop the work.",
		"Where hydrogen sulphide (H2S) may be met there is a plan for it before the first core.",
		"There is no riser and no blowout preventer: against shallow gas and water flow kill mud is ready before the spud, and the ship moves off.",
		"There is a plan for stuck pipe, and the string can be severed: charges are on board, and the winch for them works.",
		"A string that is lost costs in the order of a million US dollars (from memory); the plan stops where none is left on board.",
		"Who drifts off station with pipe in the hole has minutes: it is drilled before the first spud.",
		"Cables, pipelines, wrecks and dumped munitions are looked for before anything touches the sea floor.",
		"Radioactive sources need permits, and are fished for where they are lost.",
		"Limits of weather and ice are the master's.",
		"Ratings and make-up torque come from the makers' current tables and the last inspection; none may be exceeded.",
		"Marine mammals are protected by the rules of the place.",
	}
}
