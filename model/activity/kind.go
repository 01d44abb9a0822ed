package activity

// Kind is one kind of activity.
type Kind int

// The kinds, in the order in which an expedition meets them.
const (
	Pilotage Kind = iota
	Passage
	HangingPassage
	Approach
	Call
	Position
	Secure
	MakeUpBHA
	LayDownBHA
	RunPipe
	PullPipe
	RunInHole
	PullFromHole
	TopDrive
	SlipAndCut
	RigService
	OffsetMove
	Survey
	MudlineReset
	WaterCore
	FailedStart
	DrillAhead
	CentreBit
	RunBarrel
	ShootPiston
	OrientationWait
	TemperatureStop
	PullPiston
	FetchCorer
	HandleCorer
	CutCore
	DropBarrel
	FetchBarrel
	HandleBarrel
	Connection
	BenchWait
	CatwalkWait
	DrillOver
	Sweep
	FailedRetrieval
	BlownLiner
	PartedLine
	StuckPipe
	SeverPipe
	HangerTrouble
	DropFunnel
	CameraRun
	Stab
	WashDown
	WashBarrel
	MakeUpCasing
	JetCasing
	DrillInCasing
	LandCasing
	CementCasing
	WaitForCement
	DrillShoe
	ConditionHole
	ReleaseBit
	RigUpLogging
	RunString
	ChangeString
	RigDownLogging
	WaitForDaylight
	MammalWatch
	Penetrometer
	AwaitResults
	HeavyMud
	CementPlug
	OtherWork
	Task
	WholeTask
	FrailTask
	WaitForDate
	WaitOnWeather
	Breakdown
	Kinds
)

// Traits is what is true of every activity of a kind.
type Traits struct {
	Name  string
	Class Class
	Limit Limit
	Stop  Stop
	Cause Cause
}

// Of returns the traits of a kind.
func (k Kind) Of() *Traits { return &traits[k] }

func (k Kind) String() string { return traits[k].Name }

var traits = [Kinds]Traits{
	Pilotage:        {"pilotage", Port, AnySea, Pause, OfSailing},
	Passage:         {"passage", Sailing, AnySea, Pause, OfSailing},
	HangingPassage:  {"moving, pipe hanging", Sailing, Tripping, Pause, OfSailing},
	Approach:        {"survey under way", Sailing, AnySea, Pause, OfSailing},
	Call:            {"call on the way", Port, AnySea, Pause, OfSailing},
	Position:        {"positioning", Trips, Positioning, Pause, OfRigUp},
	Secure:          {"securing for sea", Trips, AnySea, Pause, OfRigUp},
	MakeUpBHA:       {"making up the BHA", Trips, PipeHandling, NextUnit, OfRigUp},
	LayDownBHA:      {"laying down the BHA", Trips, PipeHandling, NextUnit, OfRigUp},
	RunPipe:         {"running pipe", Trips, Tripping, NextUnit, OfTrips},
	PullPipe:        {"pulling pipe", Trips, Tripping, NextUnit, OfTrips},
	RunInHole:       {"running in the hole", Trips, Tripping, NextUnit, OfTrips},
	PullFromHole:    {"pulling out of hole", Trips, Tripping, NextUnit, OfTrips},
	TopDrive:        {"top drive in or out", Trips, Tripping, FinishFirst, OfRigUp},
	SlipAndCut:      {"slip and cut", Trips, AnySea, FinishFirst, OfRigUp},
	RigService:      {"rig service", Trips, AnySea, FinishFirst, OfRigUp},
	OffsetMove:      {"moving to next hole", Trips, Tripping, Pause, OfRigUp},
	Survey:          {"survey of the floor", Measuring, Logging, Pause, OfMudline},
	MudlineReset:    {"resetting for mudline", Coring, PistonCoring, Pause, OfMudline},
	FailedStart:     {"start given up", Coring, AnySea, Pause, OfMudline},
	WaterCore:       {"water core", Coring, AnySea, FinishFirst, OfMudline},
	DrillAhead:      {"drilling ahead", Coring, RotaryCoring, NextUnit, OfDrilling},
	CentreBit:       {"pulling the centre bit", Coring, AnySea, FinishFirst, OfDrilling},
	RunBarrel:       {"barrel down the wire", Coring, PistonCoring, FinishFirst, OfPiston},
	ShootPiston:     {"shooting the corer", Coring, AnySea, FinishFirst, OfPiston},
	OrientationWait: {"orientation wait", Coring, PistonCoring, Forfeit, OfPiston},
	TemperatureStop: {"temperature stop", Measuring, PistonCoring, Forfeit, OfMeasuring},
	PullPiston:      {"pulling the corer", Coring, AnySea, FinishFirst, OfPiston},
	FetchCorer:      {"fetching the corer", Coring, AnySea, FinishFirst, OfPiston},
	HandleCorer:     {"handling the corer", Coring, AnySea, FinishFirst, OfPiston},
	CutCore:         {"cutting core", Coring, RotaryCoring, Pause, OfRotating},
	DropBarrel:      {"barrel down the pipe", Coring, RotaryCoring, FinishFirst, OfRotating},
	FetchBarrel:     {"fetching the barrel", Coring, AnySea, FinishFirst, OfRotating},
	HandleBarrel:    {"handling the barrel", Coring, AnySea, FinishFirst, OfRotating},
	Connection:      {"connection", Coring, AnySea, FinishFirst, OfConnections},
	BenchWait:       {"waiting for a barrel", Coring, AnySea, Pause, OfDeck},
	CatwalkWait:     {"catwalk full", Coring, AnySea, Pause, OfDeck},
	DrillOver:       {"drilling over", Coring, AnySea, FinishFirst, OfPiston},
	Sweep:           {"mud sweep", Coring, AnySea, FinishFirst, OfRotating},
	FailedRetrieval: {"fetching barrel again", Repair, AnySea, FinishFirst, OfTrouble},
	BlownLiner:      {"liner burst, core lost", Repair, AnySea, FinishFirst, OfTrouble},
	PartedLine:      {"coring line parted", Repair, AnySea, FinishFirst, OfTrouble},
	StuckPipe:       {"freeing stuck pipe", Repair, AnySea, FinishFirst, OfTrouble},
	SeverPipe:       {"severing the string", Repair, AnySea, FinishFirst, OfTrouble},
	HangerTrouble:   {"casing hanger amiss", Repair, AnySea, FinishFirst, OfTrouble},
	DropFunnel:      {"dropping the funnel", Trips, PipeHandling, Restart, OfReentry},
	CameraRun:       {"camera down and up", Trips, Logging, Restart, OfReentry},
	Stab:            {"stabbing the hole", Trips, Logging, Restart, OfReentry},
	WashDown:        {"washing down", Coring, RotaryCoring, NextUnit, OfReentry},
	WashBarrel:      {"fetching wash barrel", Coring, AnySea, FinishFirst, OfReentry},
	MakeUpCasing:    {"making up casing", Trips, PipeHandling, NextUnit, OfReentry},
	JetCasing:       {"jetting in casing", Coring, RotaryCoring, Pause, OfReentry},
	DrillInCasing:   {"drilling in casing", Coring, RotaryCoring, Pause, OfReentry},
	LandCasing:      {"landing casing", Trips, Logging, Restart, OfReentry},
	CementCasing:    {"cementing casing", Trips, RotaryCoring, FinishFirst, OfReentry},
	WaitForCement:   {"waiting for cement", Other, AnySea, Pause, OfReentry},
	DrillShoe:       {"drilling out the shoe", Coring, RotaryCoring, Pause, OfReentry},
	ConditionHole:   {"conditioning the hole", Measuring, RotaryCoring, Pause, OfMeasuring},
	ReleaseBit:      {"releasing the bit", Measuring, RotaryCoring, FinishFirst, OfMeasuring},
	RigUpLogging:    {"rigging up for logging", Measuring, Logging, Pause, OfMeasuring},
	RunString:       {"logging run", Measuring, Logging, Restart, OfMeasuring},
	ChangeString:    {"changing tool string", Measuring, Logging, Pause, OfMeasuring},
	RigDownLogging:  {"rigging down logging", Measuring, AnySea, Pause, OfMeasuring},
	WaitForDaylight: {"waiting for daylight", Measuring, AnySea, Pause, OfMeasuring},
	MammalWatch:     {"marine mammal watch", Measuring, Logging, Restart, OfMeasuring},
	Penetrometer:    {"penetrometer run", Measuring, PistonCoring, Restart, OfMeasuring},
	AwaitResults:    {"waiting for results", Other, AnySea, Pause, OfLeaving},
	HeavyMud:        {"filling with heavy mud", Trips, AnySea, FinishFirst, OfLeaving},
	CementPlug:      {"setting a cement plug", Trips, RotaryCoring, FinishFirst, OfLeaving},
	OtherWork:       {"other work on site", Other, Tripping, Pause, OfOtherWork},
	Task:            {"task", Other, FreeTask, Pause, OfTasks},
	WholeTask:       {"task, uninterrupted", Other, FreeTask, RestartAtSea, OfTasks},
	FrailTask:       {"task, without any stop", Other, FreeTask, Restart, OfTasks},
	WaitForDate:     {"waiting for the date", Other, AnySea, Pause, OfTasks},
	WaitOnWeather:   {"waiting on weather", Waiting, AnySea, Pause, OfWeather},
	Breakdown:       {"repairing a breakdown", Repair, AnySea, Pause, OfBreakdowns},
}
