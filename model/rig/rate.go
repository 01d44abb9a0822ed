package rig

import (
	"math"
	"strings"

	"coredays/model/unit"
)

// Rate is one of the figures of a ship and its crew: a time, a rate, a chance or a fixed size.
// Each is a quantity with spread; a scenario may state any of them in place of the ship's.
type Rate int

// The rates, in the order of a ship file.
const (
	SailingSpeed Rate = iota
	SlowdownFrom
	SlowdownPerMetre
	HangingSpeed
	Pilotage
	Approach

	Positioning
	Securing
	PistonMakeUp
	RotaryMakeUp
	LayDown
	Racker
	HoistingSpeed
	LoweringSpeed
	StandLength
	JointLength
	Tripping
	TrippingInHole
	Strapping
	Filling
	StandsBetweenFills
	TopDrive
	SlipAndCut
	LineWork
	PipeMass
	TravellingMass
	RigService
	RigServiceEvery
	OffsetMove
	OtherWork
	FirstSiteWork

	MudlineClearance
	WaterCore
	MissedMudline
	MudlineReset
	FailedStart
	FailedStartTime
	BareStart
	BareSurvey

	PistonDurationFactor
	PistonAlone
	ExtendedDurationFactor
	RotaryDurationFactor
	PistonWire
	ExtendedWire
	RotaryWire
	PistonHandling
	HalfPistonHandling
	ExtendedHandling
	RotaryHandling
	PistonAdvance
	ExtendedAdvance
	RotaryAdvance
	Shot
	CorePull
	OrientationWait
	TemperatureStop
	DrillOver
	Connection
	Bench
	Barrels
	CatwalkTime
	CatwalkRoom
	Sweep
	CoresBetweenSweeps
	CentreBit
	BitLife
	HardShoeInRock
	HardShoeInSoft
	HardShoeRecovery
	ExtendedLeastRate
	ExtendedDeepFrom
	ExtendedDeep

	LayerDepth
	HeaveLoss
	CoreGap
	DepthMismatch
	LaboratoryTime

	PistonDiameter
	StrokeForce
	StrokeFriction
	TipFactor

	HoleConditioning
	BitRelease
	LoggingRigUp
	LoggingRigDown
	StringChange
	LoggingSpeed
	LoggingWire
	LoggingPipeDepth
	SeismicStations
	MammalWatch
	Penetrometer

	FunnelDrop
	FunnelLost
	CameraSpeed
	FirstStab
	NextStab
	TripFill
	WashDown

	ConeMakeUp
	CasingJoint
	CasingJointLength
	Jetting
	DrillInPace
	CasingLanding
	CasingCement
	CementSetting
	ShoeDrilling
	HangerFailure
	HangerTime

	HeavyMud
	CementPlug

	PistonTrouble
	PistonTroubleTime
	ExtendedTrouble
	ExtendedTroubleTime
	RotaryTrouble
	RotaryTroubleTime
	BlownLiner
	StuckChance
	StuckTime
	LostBHA
	Severing
	Bridge
	BreakdownEvery
	RepairTime

	ForecastHorizon
	ForecastSkill
	HangOffDepth
	HomeReserve
	ResumeAt

	Rates
)

// Meaning is what a rate is, for files and printouts.
type Meaning struct {
	Key  string         // its name in files
	Of   unit.Dimension // its dimension
	What string         // what it means, in words
	Unit string         // the unit in which people write it
}

// Of returns what the rate means.
func (r Rate) Of() Meaning { return meanings[r] }

// InUnit is a value of a rate in the unit in which people write it.
func (r Rate) InUnit(si float64) float64 {
	m := r.Of()
	one, err := m.Of.Parse(strings.TrimSpace("1 " + m.Unit))
	if err != nil {
		return math.NaN() // no such unit, which a test would find
	}
	return si / one
}

// ParseRate finds the rate with a key.
func ParseRate(key string) (Rate, bool) {
	for r := range meanings {
		if meanings[r].Key == key {
			return Rate(r), true
		}
	}
	return 0, false
}

var meanings = [Rates]Meaning{
	SailingSpeed:     {"sailing_speed", unit.OfSpeed, "speed through calm water", "kn"},
	SlowdownFrom:     {"slowdown_from", unit.OfLength, "significant wave height above which the ship sails slower", "m"},
	SlowdownPerMetre: {"slowdown_per_metre", unit.OfShare, "share of the speed lost for each metre of wave above that", "%"},
	HangingSpeed:     {"hanging_speed", unit.OfSpeed, "speed of a move with pipe hanging", "kn"},
	Pilotage:         {"pilotage", unit.OfDuration, "from berth to open sea, and back", "h"},
	Approach:         {"approach", unit.OfDuration, "survey and search on the way to a site, and what else comes between leaving one and standing over the next", "h"},

	Positioning:        {"positioning", unit.OfDuration, "from arrival to holding station", "min"},
	Securing:           {"securing", unit.OfDuration, "from bit on deck to under way", "min"},
	PistonMakeUp:       {"piston_make_up", unit.OfDuration, "making up the APC/XCB assembly", "h"},
	RotaryMakeUp:       {"rotary_make_up", unit.OfDuration, "making up the rotary assembly", "h"},
	LayDown:            {"lay_down", unit.OfDuration, "laying down or standing back an assembly", "h"},
	Racker:             {"racker", unit.OfDuration, "least time of a stand apart from its way: racked or fetched, made up or broken", "min"},
	HoistingSpeed:      {"hoisting_speed", unit.OfSpeed, "speed at which the hoist lifts 320 t; lighter loads in proportion faster", "m/s"},
	LoweringSpeed:      {"lowering_speed", unit.OfSpeed, "speed at which 320 t are lowered so that they can be stopped; lighter loads in proportion faster", "m/s"},
	StandLength:        {"stand_length", unit.OfLength, "a stand of pipe", "m"},
	JointLength:        {"joint_length", unit.OfLength, "a joint of pipe", "m"},
	Tripping:           {"tripping", unit.OfStandRate, "running or pulling pipe above the sea floor, without the BHA", "stands/h"},
	TrippingInHole:     {"tripping_in_hole", unit.OfStandRate, "running or pulling pipe in the hole", "stands/h"},
	Strapping:          {"strapping", unit.OfDuration, "extra for each stand strapped and drifted for the first time", "min"},
	Filling:            {"filling", unit.OfDuration, "filling the pipe on the way down, each time", "min"},
	StandsBetweenFills: {"stands_between_fills", unit.OfCount, "stands run between fillings", ""},
	TopDrive:           {"top_drive", unit.OfDuration, "picking up or racking back the top drive, and spacing out", "min"},
	SlipAndCut:         {"slip_and_cut", unit.OfDuration, "slipping and cutting the drilling line", "h"},
	LineWork:           {"line_work", unit.OfEnergy, "work of the drilling line between cuts", "ton-mile"},
	PipeMass:           {"pipe_mass", unit.OfLinearMass, "mass of pipe in air", "kg/m"},
	TravellingMass:     {"travelling_mass", unit.OfMass, "blocks, hook and top drive", "t"},
	RigService:         {"rig_service", unit.OfDuration, "rig service", "min"},
	RigServiceEvery:    {"rig_service_every", unit.OfDuration, "time between rig services", "h"},
	OffsetMove:         {"offset_move", unit.OfDuration, "from clear of the sea floor to ready at the next hole of a site", "min"},
	OtherWork:          {"other_work", unit.OfShare, "other work on site, for each hour of trips, assemblies, moves and drilling ahead", "%"},
	FirstSiteWork:      {"first_site_work", unit.OfDuration, "other work at the first site of an expedition: rig and tools are tried out", "h"},

	MudlineClearance: {"mudline_clearance", unit.OfLength, "bit above the expected sea floor for the first shot", "m"},
	WaterCore:        {"water_core", unit.OfShare, "chance that the first shot comes up with water only", "%"},
	MissedMudline:    {"missed_mudline", unit.OfShare, "chance that the first core is full, so that the mudline was missed", "%"},
	MudlineReset:     {"mudline_reset", unit.OfDuration, "setting the bit anew for another mudline shot", "min"},
	FailedStart:      {"failed_start", unit.OfShare, "chance that a hole is given up near the sea floor and begun again", "%"},
	FailedStartTime:  {"failed_start_time", unit.OfDuration, "time that it costs", "h"},

	BareStart:  {"bare_start", unit.OfShare, "the same on rock with less than 5 m of sediment", "%"},
	BareSurvey: {"bare_survey", unit.OfDuration, "survey by camera for a place to spud on such rock", "h"},

	PistonDurationFactor:   {"piston_duration_factor", unit.OfShare, "duration of the piston cycle over its median; above 100 % is slower", "%"},
	PistonAlone:            {"piston_alone", unit.OfShare, "duration factor of the piston cycle at sites where no other tool is used, against that of other sites", "%"},
	ExtendedDurationFactor: {"extended_duration_factor", unit.OfShare, "duration factor of the extended-barrel cycle, cutting left out", "%"},
	RotaryDurationFactor:   {"rotary_duration_factor", unit.OfShare, "duration factor of the rotary cycle, cutting left out", "%"},
	PistonWire:             {"piston_wire", unit.OfSpeed, "barrel on the wire, piston tools, mean of down and up", "m/min"},
	ExtendedWire:           {"extended_wire", unit.OfSpeed, "barrel and overshot in the pipe, extended barrel, mean of three ways", "m/min"},
	RotaryWire:             {"rotary_wire", unit.OfSpeed, "barrel and overshot in the pipe, rotary barrel, mean of three ways", "m/min"},
	PistonHandling:         {"piston_handling", unit.OfDuration, "rig floor work for each piston core", "min"},
	HalfPistonHandling:     {"half_piston_handling", unit.OfDuration, "rig floor work for each half-length piston core", "min"},
	ExtendedHandling:       {"extended_handling", unit.OfDuration, "rig floor work for each extended-barrel core", "min"},
	RotaryHandling:         {"rotary_handling", unit.OfDuration, "rig floor work for each rotary core", "min"},
	PistonAdvance:          {"piston_advance", unit.OfLength, "length that one core of the piston corer cuts, unless the sediment stops it sooner", "m"},
	ExtendedAdvance:        {"extended_advance", unit.OfLength, "length that one core of the extended barrel cuts", "m"},
	RotaryAdvance:          {"rotary_advance", unit.OfLength, "length that one core of the rotary barrel cuts", "m"},
	Shot:                   {"shot", unit.OfDuration, "landing, pressuring up, shearing the pins", "min"},
	CorePull:               {"core_pull", unit.OfDuration, "pulling the piston corer out of the sediment", "min"},
	OrientationWait:        {"orientation_wait", unit.OfDuration, "barrel held still for the orientation tool", "min"},
	TemperatureStop:        {"temperature_stop", unit.OfDuration, "temperature shoe held still in the sediment", "min"},
	DrillOver:              {"drill_over", unit.OfDuration, "drilling over a stuck piston corer", "min"},
	Connection:             {"connection", unit.OfDuration, "adding a joint, pins to pins", "min"},
	Bench:                  {"bench", unit.OfDuration, "a barrel on the bench: laid out, new liner, loaded", "min"},
	Barrels:                {"barrels", unit.OfCount, "inner barrels in use", ""},
	CatwalkTime:            {"catwalk_time", unit.OfDuration, "a core on the catwalk: measured, cut, carried off", "min"},
	CatwalkRoom:            {"catwalk_room", unit.OfCount, "cores that find room on the catwalk", ""},
	Sweep:                  {"sweep", unit.OfDuration, "a mud sweep while rotating", "min"},
	CoresBetweenSweeps:     {"cores_between_sweeps", unit.OfCount, "rotary cores between mud sweeps", ""},
	CentreBit:              {"centre_bit", unit.OfDuration, "handling the centre bit after drilling ahead", "min"},
	BitLife:                {"bit_life", unit.OfDuration, "rotating hours of a rotary bit", "h"},
	HardShoeInRock:         {"hard_shoe_in_rock", unit.OfShare, "cutting rate of a shoe or bit for hard ground in rock, against the standard one", "%"},
	HardShoeInSoft:         {"hard_shoe_in_soft", unit.OfShare, "the same in sediment", "%"},
	HardShoeRecovery:       {"hard_shoe_recovery", unit.OfShare, "recovery with such a shoe or bit in rock, against the standard one", "%"},
	ExtendedLeastRate:      {"extended_least_rate", unit.OfSpeed, "slower than this the extended barrel is given up", "m/h"},
	ExtendedDeepFrom:       {"extended_deep_from", unit.OfLength, "depth below the sea floor from which the extended barrel cuts slower, where no drilling rate is stated", "m"},
	ExtendedDeep:           {"extended_deep", unit.OfShare, "cutting rate of the extended barrel from that depth on, against that of the lithology", "%"},

	LayerDepth:     {"layer_depth", unit.OfShare, "depth of the layers found, against the survey", "%"},
	HeaveLoss:      {"heave_loss", unit.OfShare, "share of the recovery lost in the roughest sea in which a tool still cores", "%"},
	CoreGap:        {"core_gap", unit.OfLength, "section missing between two piston cores of a hole, whatever their recovery", "m"},
	DepthMismatch:  {"depth_mismatch", unit.OfLength, "how far the depths of a hole are off those of its neighbours", "m"},
	LaboratoryTime: {"laboratory_time", unit.OfDuration, "the laboratory's time for a core", "min"},

	PistonDiameter: {"piston_diameter", unit.OfLength, "outside of the piston corer's barrel", "in"},
	StrokeForce:    {"stroke_force", unit.OfForce, "force of the stroke: shear pressure on the piston", "kN"},
	StrokeFriction: {"stroke_friction", unit.OfShare, "side friction during the quick stroke, of that when pulling", "%"},
	TipFactor:      {"tip_factor", unit.OfCount, "resistance of the tip in units of the side shear", ""},

	HoleConditioning: {"hole_conditioning", unit.OfDuration, "sweep and displacement with logging mud", "h"},
	BitRelease:       {"bit_release", unit.OfDuration, "releasing the rotary bit", "min"},
	LoggingRigUp:     {"logging_rig_up", unit.OfDuration, "rigging up for logging", "h"},
	LoggingRigDown:   {"logging_rig_down", unit.OfDuration, "rigging down from logging", "h"},
	StringChange:     {"string_change", unit.OfDuration, "from one tool string to the next", "h"},
	LoggingSpeed:     {"logging_speed", unit.OfSpeed, "logging up the open hole", "m/h"},
	LoggingWire:      {"logging_wire", unit.OfSpeed, "tool string in the pipe, and down the hole", "m/min"},
	LoggingPipeDepth: {"logging_pipe_depth", unit.OfLength, "end of pipe below the sea floor while logging", "m"},
	SeismicStations:  {"seismic_stations", unit.OfDuration, "shooting at stations of a seismic string", "h"},
	MammalWatch:      {"mammal_watch", unit.OfDuration, "watch for marine mammals before shooting", "h"},
	Penetrometer:     {"penetrometer", unit.OfDuration, "penetrometer run apart from its way on the wire", "min"},

	FunnelDrop:  {"funnel_drop", unit.OfDuration, "assembling and dropping a free-fall funnel", "h"},
	FunnelLost:  {"funnel_lost", unit.OfShare, "chance that a funnel is not found again", "%"},
	CameraSpeed: {"camera_speed", unit.OfSpeed, "camera down and up along the pipe", "m/min"},
	FirstStab:   {"first_stab", unit.OfDuration, "searching and stabbing for the first time", "h"},
	NextStab:    {"next_stab", unit.OfDuration, "searching and stabbing from then on", "h"},

	TripFill: {"trip_fill", unit.OfLength, "fill at the bottom of a hole that the string comes back to, in mud; elsewhere with what sticks or falls in", "m"},
	WashDown: {"wash_down", unit.OfSpeed, "washing down through fill", "m/h"},

	ConeMakeUp:        {"cone_make_up", unit.OfDuration, "putting a re-entry cone together below the rig floor", "h"},
	CasingJoint:       {"casing_joint", unit.OfDuration, "making up a joint of casing", "min"},
	CasingJointLength: {"casing_joint_length", unit.OfLength, "a joint of casing", "m"},
	Jetting:           {"jetting", unit.OfSpeed, "jetting in casing", "m/h"},
	DrillInPace:       {"drill_in_pace", unit.OfShare, "rate of drilling in casing, against drilling ahead without coring", "%"},
	CasingLanding:     {"casing_landing", unit.OfDuration, "landing and releasing casing", "h"},
	CasingCement:      {"casing_cement", unit.OfDuration, "mixing and pumping the cement of a casing string", "h"},
	CementSetting:     {"cement_setting", unit.OfDuration, "from pumping until cement bears being drilled out", "h"},
	ShoeDrilling:      {"shoe_drilling", unit.OfDuration, "drilling out cement and shoe of a casing string", "h"},
	HangerFailure:     {"hanger_failure", unit.OfShare, "chance that a casing hanger does not land or let go at once", "%"},
	HangerTime:        {"hanger_time", unit.OfDuration, "time that it costs", "h"},

	HeavyMud:   {"heavy_mud", unit.OfDuration, "filling a hole with heavy mud", "h"},
	CementPlug: {"cement_plug", unit.OfDuration, "setting a cement plug", "h"},

	PistonTrouble:       {"piston_trouble", unit.OfShare, "chance of trouble with barrel or wire, each piston core", "%"},
	PistonTroubleTime:   {"piston_trouble_time", unit.OfDuration, "time that it costs", "h"},
	ExtendedTrouble:     {"extended_trouble", unit.OfShare, "chance of trouble with barrel or wire, each extended-barrel core", "%"},
	ExtendedTroubleTime: {"extended_trouble_time", unit.OfDuration, "time that it costs", "h"},
	RotaryTrouble:       {"rotary_trouble", unit.OfShare, "chance of trouble with barrel or wire, each rotary core", "%"},
	RotaryTroubleTime:   {"rotary_trouble_time", unit.OfDuration, "time that it costs", "h"},
	BlownLiner:          {"blown_liner", unit.OfShare, "share of the piston corer's troubles in which the liner bursts and the core is lost", "%"},
	StuckChance:         {"stuck_chance", unit.OfShare, "chance of stuck pipe, each rotated core", "%"},
	StuckTime:           {"stuck_time", unit.OfDuration, "time to free it", "h"},
	LostBHA:             {"lost_bha", unit.OfShare, "chance that it can't be freed and the string is severed", "%"},
	Severing:            {"severing", unit.OfDuration, "severing the string", "h"},
	Bridge:              {"bridge", unit.OfShare, "chance of a bridge that a logging run can't pass", "%"},
	BreakdownEvery:      {"breakdown_every", unit.OfDuration, "mean time on site between breakdowns", "d"},
	RepairTime:          {"repair_time", unit.OfDuration, "time to repair one", "h"},

	ForecastHorizon: {"forecast_horizon", unit.OfDuration, "how far ahead the crew's forecast has skill", "h"},
	ForecastSkill:   {"forecast_skill", unit.OfShare, "skill of the forecast at the horizon", "%"},
	HomeReserve:     {"home_reserve", unit.OfDuration, "kept in hand for a storm on leaving or on the way home", "h"},
	ResumeAt:        {"resume_at", unit.OfShare, "work stopped by the sea goes on below this share of its limit", "%"},
	HangOffDepth:    {"hang_off_depth", unit.OfLength, "bit below the sea floor while a storm is waited out", "m"},
}
