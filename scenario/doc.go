// Package scenario reads the file in which planners, drillers and reviewers say what an expedition
// is, and turns it into a plan. This page is the manual of that file.
//
// A scenario is YAML (.yaml, .yml), TOML (.toml) or JSON (.json); the extension decides. YAML is
// the form shown here and the one whose faults carry line numbers. Keys are lower case with
// underscores. A key that is not known, a key that stands twice, a key without a value, and a
// number without its unit are faults. All faults of a file are told at once, each on a line:
//
//	plan.yaml:12: sites[0].water_depth: "3420": a length with its unit, such as "3420 m" (this has no unit)
//
// The shortest useful scenario:
//
//	version: 1
//	sails: 2027-01-14T08:00Z
//	sea_days: 30 d
//	ports: {from: {name: Port Aldous, position: 42.9S 147.6E}, to: {name: Port Merrin, position: 46.1S 171.2E}}
//	sites:
//	  - name: SB-01
//	    position: 48 37.2S 158 06.0E
//	    water_depth: 3420 m
//	    approved_to: 200 mbsf
//	    holes: [{name: A, core: [{with: APC, to: refusal}]}]
//
// What matters and was filled in (the ship, the sea, the ground, an approved depth that is not
// stated) is told in the plan's warnings. Names that look like numbers go in quotes: "1208".
//
// # Values
//
//	length      3420 m   3.4 km   11200 ft   9.5 in   324 nmi   fathoms
//	depth       250 mbsf (metres below the sea floor)
//	time        30 min   6 h   12 d   90 s
//	speed       10.4 kn   28 m/h   250 m/min   0.5 m/s
//	rate        22 stands/h
//	force       80 klbf   356 kN
//	torque      60 klbf ft   81 kN m
//	strength    0.6 kPa/m (side shear for each metre below the sea floor)
//	share       65 %   0.65
//	number      3
//	date        2027-01-14T08:00Z, or with seconds; another zone as +11:00
//	position    48 37.2S 158 06.0E   42.9S 147.3E   -48.62 158.1   (latitude first)
//	yes or no   also true and false
//
// # Spreads
//
// Where a quantity may have a spread it is written in one of these forms. None can go below zero,
// and chances can't go above 100 %.
//
//	22 stands/h                                            one value, no spread
//	{value: 22 stands/h, source: the driller}              the same with its source
//	{low: 18 stands/h, mid: 22 stands/h, high: 25 stands/h}
//	{shape: lognormal, median: 25 min, factor: 1.5}        factor: the 9-in-10 value over the median
//	{shape: uniform, lowest: 20 min, highest: 30 min}
//	{shape: triangular, lowest: 20 min, mode: 24 min, highest: 40 min}
//	{shape: weibull, scale: 25 min, shape_parameter: 1.8}
//	{shape: exponential, mean: 25 min}
//	{quantiles: [{p: 0.1, value: 20 min}, {p: 0.5, value: 24 min}, {p: 0.9, value: 40 min}]}
//
// low, mid and high are the value undercut one time in ten, the even value, and the one exceeded
// one time in ten; they are honoured exactly. lowest and highest beside them are bounds that no
// draw passes; a wide spread (high over low of about 9 and more) needs both. Quantiles hold
// straight lines between them (in the normal score) and the end values outside.
//
// Each of the forms with keys may have as well:
//
//	varies       the level at which the spread lives: expedition (one draw for all), site, hole, or
//	             run (one draw each time); or shares of the variance that add up to 1, such as
//	             {expedition: 0.3, site: 0.1, hole: 0.3, run: 0.3}
//	persistence  correlation of a run with the run before it, 0 to 0.99; 0 without it
//	common       loading of the expedition's share on a factor that all quantities share, -1 to 1;
//	             meant for ship files
//	source       where the value comes from; without it the file and line are given as source
//
// A typed rate replaces the ship's spread, it is never added to it. Without varies, the levels,
// persistence and common loading of the ship (for a layer: of the lithology) are kept; with
// varies, persistence is 0 unless stated.
//
// # Top level
//
//	version                 1
//	title                   of the expedition; the name of the file without it
//	sails                   when she leaves the first port
//	sea_days                from leaving the first port to reaching the last, at most 400 d
//	ports                   from and to, each with name and position
//	in_port_before_sailing  spread; days apart from sea_days; the ship's without it
//	ship                    "riserless drillship", which is built in, or the path of a ship file,
//	                        from the folder of the scenario
//	rates                   figures of ship and crew by key, each a spread; see below for the keys
//	limits                  list of limits of sea; work named here loses all the ship's limits for it
//	storm                   clear_sea_floor, recover_pipe; the ship's without it
//	string                  pipe and collars otherwise than the ship has them, key by key; see below
//	endurance               days that she stays at sea; the ship's without it
//	least_water_depth       shallowest water in which she holds station; the ship's without it
//	position_keeping        how far off the hole she is moved in the roughest sea in which she works; the ship's without it
//	sites                   list
//	order                   names of sites in the order of the visits; every primary site must be
//	                        there, alternates left out come last. Without it: primary sites as they
//	                        stand, then alternates
//	trouble                 on, or off: nothing breaks, sticks or is lost (to see what trouble costs)
//	order_rules             list of {first: A, then: B}, which the order must keep
//
// # A site
//
//	name
//	position
//	via           list of waypoints on the way to it, where a great circle would cross land
//	water_depth   below the datum
//	datum         sea level, which is also meant without it, or rig floor
//	priority      primary, or alternate: visited when time is left
//	approved_to   approved depth; no target may be deeper
//	layers        list from the sea floor down, to the deepest target at least
//	holes         list of holes and tasks, in the order in which they are done
//	refusal       rule by which a piston corer is given up; what is left out is the ship's
//	cap           most time on site
//	weather       climate: built in; or months, a list of twelve {hs, sd} from January on: mean and
//	              standard deviation of the significant wave height; or record, a file of times and
//	              significant wave heights of a year and more beside the scenario; source
//	unusable      what closes the site for a while, such as ice, current or cyclones: {because: text,
//	              every: mean time between closings, lasts: time}. Pipe is recovered meanwhile.
//	not_before    date before which no work begins here: the ship waits for it
//	not_after     date after which nothing is begun here within the days of the expedition
//	move          pipe recovered, or pipe hanging: the way here is made with pipe hanging below
//
// A layer has a bottom and a lithology, and may state otherwise for itself: side_shear on a piston
// corer for each metre below the sea floor, drilling_rate of a rotated barrel, drilling_ahead_rate
// without coring, or in place of both rock_strength, the compressive strength from which the rates are
// worked out by specific energy with the weight that the ship's collars can put on the bit, and recovery with a spread for any of APC, HLAPC, XCB and RCB (apc, hlapc, xcb,
// rcb to the program). The lithologies are listed in lithologies.yaml.
//
// A refusal rule has overpull (the pull at which the corer is given up), partial_strokes (so many
// in a row), drill_over (yes or no), advance (after an incomplete stroke the next core starts by
// recovery, as if the core that came up were all that was cut, or by stroke), then (HLAPC: the half-length corer goes on; or none), source.
//
// # A hole
//
//	name            such as A
//	rank            1 is dropped last, then 2, 3 ...; 1 without it. Holes are dropped before sites
//	when            {hole: A, refused: above, depth: 150 mbsf}: only if the piston corer was refused
//	                above (or below) that depth in an earlier hole of the site
//	start_offset    how much higher the bit starts, so that core gaps fall elsewhere
//	drill_ahead_to  depth drilled without coring first
//	core            list of {with, to}: a tool (APC, HLAPC, XCB, RCB) and a depth, or refusal for a
//	                piston corer, which then goes at most to approved_to and the lowest layer
//	oriented        yes: piston cores are oriented
//	temperature     {tool: shoe, on_cores: [4, 7, 10]}: a shoe that is the only tool so far
//	penetrometer    {at: [40 mbsf, 80 mbsf]}
//	logging         names of the ship's tool strings, in order
//	reentry         none, or free-fall funnel
//	abandon         open, heavy mud or cement; open without it
//	if_lost         retry (drill down again and go on) or give up; retry without it
//
// A rotary barrel (RCB) needs a hole of its own: the other tools run through another assembly.
// After an extended barrel (XCB) there is no going back to a piston.
//
// # A task
//
// An entry of holes with the key task instead of name is work that is no hole: task (its name),
// takes (spread), sea_limit (significant wave height), interruptible (yes: pauses in a rough sea,
// also without the key; no: begins again), rank, when.
//
// # A ship file
//
// Has version, name, source, in_port_before_sailing, hull (length, beam, draught, block, source),
// rig_floor (height above sea level), heading (off the bow on station, such as 30 deg), every one
// of the rates, limits, storm, refusal, string, endurance, least_water_depth, position_keeping (how far
// off the hole she is moved in the roughest sea in which she works), and tool_strings (name, passes of
// the open hole, seismic yes or no, source). Here every value has a source, and every spread says how it varies. The
// built-in drillship.yaml, commented, is the example and lists the keys of the rates.
//
// A limit has for (positioning, pipe_handling, tripping, piston_coring, rotary_coring, logging),
// of (significant heave, largest heave in ten minutes, wave height), from_depth of water (0 m
// without it), most, source. For each kind of work the limit from the deepest depth holds. A storm
// has clear_sea_floor and recover_pipe, significant wave heights at which the bit leaves the sea
// floor and at which all pipe is recovered.
//
// A string is what she can hang in the water, and from what: pipe, a list from the bit up with name,
// class (new or premium), length and source; collars, the weight collars of an assembly;
// collars_on_board; assemblies, complete ones on board, that in use included; derrick and hoist, the
// forces that they carry; overpull, the pull kept back for freeing the string; roll, such as 6 deg,
// and guide_horn, its radius, for the bending of the pipe at the top; compensator_load, rated, and
// compensator_stroke; make_up_torque, the most that tongs or iron roughneck give, and rotating_torque, the
// most with which the string is rotated, which may be left out. Each of these but pipe is one
// value, or {value, source}. The names of pipe are those of the built-in table, such as
// "5 in 19.50 lb/ft S-140". The blocks are the rate travelling_mass.
//
// # Settings
//
// A setting replaces a value before anything is looked at: "sites[SB-01].cap=9 d",
// "rates.tripping={low: 18 stands/h, mid: 20 stands/h, high: 22 stands/h}". An element of a list
// is named by its name or counted from 0. A path to a key that is not known is a fault.
package scenario
