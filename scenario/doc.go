// Package scenario reads the file in which planners, drillers and reviewers say what an expedition
// is, and turns it into a plan. This page is the manual of that file.
//
// A scenario is YAML (.yaml, .yml), TOML (.toml) or JSON (.json); the extension decides. YAML is
// the form shown here and the one whose faults carry line numbers. Keys are lower case with
// underscores. A key that is not known, a key that stands twice, a key without a value, and a
// number without its unit are faults. All faults of a file are given at once, each on a line:
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
// stated) is given in the plan's warnings. Names that look like numbers go in quotes: "1208".
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
//	{shape: lognormal, median: 25 min, factor: 1.5}        factor: P90 over the median
//	{shape: uniform, lowest: 20 min, highest: 30 min}
//	{shape: triangular, lowest: 20 min, mode: 24 min, highest: 40 min}
//	{shape: weibull, scale: 25 min, shape_parameter: 1.8}
//	{shape: exponential, mean: 25 min}
//	{quantiles: [{p: 0.1, value: 20 min}, {p: 0.5, value: 24 min}, {p: 0.9, value: 40 min}]}
//
// low, mid and high are the value undercut one time in ten, the median, and the one exceeded
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
//	ports                   from and to, each with name and position; via, a list of waypoints, with the last
//	in_port_before_sailing  spread; days apart from sea_days; the ship's without it
//	ship                    "riserless drillship", which is built in, or the path of a ship file,
//	                        from the folder of the scenario
//	rates                   figures of ship and crew by key, each a spread; see below for the keys. file
//	                        is the path of a file with more of them, from the folder of the scenario,
//	                        such as coredays rates --yaml writes; what stands here goes before it
//	limits                  list of limits of sea; work named here loses all the ship's limits for it
//	storm                   clear_sea_floor, recover_pipe; the ship's without it
//	string                  pipe and collars otherwise than the ship has them, key by key; see below
//	endurance               days that she stays at sea; the ship's without it
//	least_water_depth       shallowest water in which she holds station; the ship's without it
//	position_keeping        how far off the hole she is moved in the roughest sea in which she works; the ship's without it
//	most_current            strongest current from ahead in which she holds station; the ship's without it
//	stops                   list of what stops work wherever the ship is, such as a medical evacuation: {because, every: mean
//	                        time on site between them, lasts: from leaving the work until it is gone on with}. As with unusable
//	                        below, pipe is recovered meanwhile
//	sites                   list
//	order                   names of sites in the order of the visits; every primary site must be
//	                        there but those with left_out, alternates that are not there come last.
//	                        Without it: primary sites as they stand, then alternates
//	trouble                 on, or off: nothing breaks, sticks or is lost (to see what trouble costs)
//	order_rules             list of {first: A, then: B}, which the order must keep
//
// # A site
//
//	name
//	left_out      yes: the site is not part of the plan, as if it were not in the file; it stays
//	              there to be taken in again. Its place in the order and its rules wait for it
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
//	closings      list of more of the same, where several things close a site
//	call          {port: name, position, takes: spread}: a call on the way to the site, before its waypoints; without position a boat
//	              comes to the ship. Crew change, stores, an injured person
//	places        what the built-in tables of known places are used for: check only (also without it):
//	              cautions of cyclones, ice, current, depth, land; built in: cyclones and ice close the
//	              site as well; off: neither. Closures are not drawn unless asked for: the cells are
//	              coarse, and unusable may have said it already. Swell of distant storms is not in it
//	not_before    date before which no work begins here: the ship waits for it
//	not_after     date after which nothing is begun here within the days of the expedition
//	move          pipe recovered, or pipe hanging: the way here is made with pipe hanging below
//
// A layer has a bottom and a lithology, and may state otherwise for itself: side_shear on a piston
// corer for each metre below the sea floor, drilling_rate of a rotated barrel, drilling_ahead_rate
// without coring, or in place of both rock_strength, the compressive strength from which the rates are
// worked out by specific energy with the weight that the ship's collars can put on the bit, sticking (how often pipe
// sticks in it, against mud; 0 % for never), bit_wear (hours of a bit's life that an hour of rotating in it takes) and recovery with a spread for any of APC, HLAPC, XCB and RCB (apc, hlapc, xcb,
// rcb to the program). On chert, basalt and gabbro with less than 5 m of sediment a place to spud is looked for by
// camera (bare_survey), unless a task with pipe at the sea floor did so, starts are given up more often (bare_start), and rock is
// cut more slowly until the collars stand in the hole, 50 m down. The lithologies are listed in lithologies.yaml.
//
// A refusal rule has overpull (the pull at which the corer is given up), partial_strokes (so many
// in a row), drill_over (yes or no), advance (after an incomplete stroke the next core starts by
// recovery, as if the core recovered were all that was cut, or by stroke), then (HLAPC: the half-length corer goes on; or none), source.
//
// # A hole
//
//	name            such as A
//	left_out        yes: not part of the plan, as if it were not in the file. What is left out has to
//	                be well-formed, and may ask for what can't be done
//	rank            1 is dropped last, then 2, 3 ...; 1 without it. Holes are dropped before sites
//	when            {hole: A, refused: above, depth: 150 mbsf}: only if the piston corer was refused
//	                above (or below) that depth in an earlier hole of the site
//	start_offset    how much higher the bit starts, so that core gaps fall elsewhere
//	fill            length of such a hole that has filled, washed out before it is deepened; what falls in after a trip without it
//	cased_to        how far such a hole is cased; not at all without it
//	drill_ahead_to  depth drilled without coring first
//	core            list of {with, from, to, advance}: a tool (APC, HLAPC, XCB, RCB) and a depth, or refusal for
//	                a piston corer, which then goes at most to approved_to and the lowest layer; from (a
//	                depth) where the hole is drilled without coring below the tool before, as for spot cores;
//	                advance, such as 4.8 m, where the crew is to cut cores shorter than usual; shoe, hard where a rotated tool has
//	                a cutting shoe or bit for hard ground: faster in rock, with more recovery, and slower in sediment (standard without)
//	oriented        yes: piston cores are oriented
//	temperature     {tool: shoe, on_cores: [4, 7, 10]}: a shoe that is the only tool so far
//	penetrometer    {at: [40 mbsf, 80 mbsf]}
//	logging         names of the ship's tool strings, in order, or what is measured: density (porosity, gamma), resistivity, sonic
//	                (velocity), image, seismic (check shots); standard suite is all that do not shoot
//	ends_early      {because: text, chance, from: depth, waits, plugged}: a rule that ends the hole before its target, such as gas:
//	                the chance that it is met below from, after waiting so long for results; the hole is plugged with cement unless
//	                plugged: no. All holes of a site meet it at the same depth, or none does
//	reentry         none, free-fall funnel, or cone: that of a hole that is there already
//	existing        depth of such a hole, which is found by camera and deepened; it never begins anew where it is lost
//	casing          list of {string, to, by, cemented}: strings of casing from the sea floor down; see below
//	abandon         open, heavy mud or cement; open without it
//	if_lost         retry (drill down again and go on) or give up; retry without it
//
// A rotary barrel (RCB) needs a hole of its own: the other tools run through another assembly.
// A piston corer after an extended barrel (XCB), as past a hard bed, is unusual: coredays check says so.
//
// Casing is set before anything is cored in the hole, which then is cored below the deepest shoe; what is cased is cored in
// another hole. string is its size, to the depth of its shoe, by how it comes there: jetting (in soft sediment; the first
// string of a new hole without the key) or drilling in, both together with the re-entry cone, or drilled hole (all others
// without the key): the hole is drilled, the string landed in it and cemented (cemented: no for not) and, once the
// cement has set, its shoe drilled out. Such a hole has reentry: cone, also without the word, and is given up where it is lost,
// unless if_lost: retry sets all of it again:
//
//   - name: B
//     casing: [{string: 16 in, to: 60 mbsf}, {string: 10-3/4 in, to: 400 mbsf}]
//     core: [{with: RCB, to: 900 mbsf}]
//
// # A task
//
// An entry of holes with the key task instead of name is work that is no hole: task (its name),
// takes (spread), sea_limit (significant wave height), interruptible (yes: pauses in a rough sea,
// also without the key; no: begins again, so that the crew looks at the forecast first), breakdown (pauses, also
// without the key, or ruins: begins again), pipe (as it is, also without the key; on deck; at the sea floor:
// an assembly hangs clear of it), rank, when, left_out.
//
// A task of several steps has steps, a list of step (its name) and the same keys from takes to pipe. What a step
// has done stays done: a survey, say, then an instrument set, which a storm would undo:
//
//   - task: set seismometer
//     steps:
//   - {step: camera survey, takes: {low: 4 h, mid: 6 h, high: 10 h}, sea_limit: 3 m, pipe: at the sea floor}
//   - {step: set instrument, takes: 8 h, sea_limit: 2 m, interruptible: no, breakdown: ruins, pipe: at the sea floor}
//
// # A ship file
//
// Has version, name, source, in_port_before_sailing, hull (length, beam, draught, block, source),
// rig_floor (height above sea level), heading (off the bow on station, such as 30 deg), every one
// of the rates, limits, storm, refusal, string, endurance, least_water_depth, position_keeping (how far
// off the hole she is moved in the roughest sea in which she works), most_current (may be left out), and tool_strings (name, passes of
// the open hole, seismic yes or no, source). Here every value has a source, and every spread says how it varies. The
// built-in drillship.yaml, commented, is the example and lists the keys of the rates.
//
// A limit has for (positioning, pipe_handling, tripping, piston_coring, rotary_coring, logging),
// of (significant heave, largest heave in ten minutes, wave height, which is significant, or largest wave
// in three hours, taken as 1.86 times that), from_depth of water (0 m
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
// The weight that its collars can put on the bit with all pipe in tension, and that the lesser of make_up_torque and rotating_torque
// can turn, cuts rock at its rate, or more slowly where it is less than
// the rock needs; and no stand is run or pulled faster than racker (a rate) and hoist (hoisting_speed, lowering_speed) have it.
// A string that is lost is drawn from assemblies, collars and pipe on board: where none is left, nothing more is begun.
//
// # What can be meant
//
// Figures that no planner can mean are faults, stated with what is wanted and why: slips of the unit or the
// decimal point, and what an expedition never ends with. The bounds are generous; what is only unlikely is
// taken, and coredays check gives the chance. A value has to lie within the bounds; of a spread, all but one
// draw in a hundred at either end. Reasons without a source are judgement.
//
// Dates are from 1950 to 2150. Names have at most 80 letters, the title 200 letters, sources and paths 2000; none
// has control characters. A repair takes at most half the time between breakdowns on average, a closing no longer
// than the time between closings; not_after is after sailing, not_before before the sea
// days end.
//
//	depth below the sea floor: above 0 mbsf, to 9000 mbsf; no string is longer: 8385 m with the water, ODP TN31 drillship sheet
//	depth of water: from 10 m to 11000 m; a drillship draws nearly 10 m, and the deepest trench has 10.9 km (from memory)
//	fill of an existing hole: above 0 m, to 9000 m; no hole is deeper
//	start offset: from 0 m to 9.5 m; more than a core would leave a gap
//	sea days: from 6 h to 400 d; less is no voyage, and nobody stays out for longer than a year
//	cap: from 3 h to 400 d; less is gone before a core is recovered
//	days in port: from 0 d to 100 d; longer is a refit
//	task: above 0 h, to 100 d; longer is an expedition of its own
//	time between closings: from 6 h to 10000 d; pipe that is recovered and run again takes hours, and ten thousand days are as good as never
//	closing: from 30 min to 100 d; shorter is no reason to recover pipe, and a site closed for longer is one for another season: see not_before and not_after
//	length of a core: from 0.5 m to 20 m; shorter is not worth a cycle, and longer is no barrel
//	rank: from 1 to 100; nobody distinguishes more ranks
//	partial strokes in a row: from 1 to 20; each is hours of work for little core
//	height of waves, or heave: from 0.05 m to 30 m; less is no sea, and the highest ever measured is 19 m (significant, from memory)
//	depth of water from which a limit holds: from 0 m to 11000 m; the deepest trench has 10.9 km (from memory)
//	strength of rock: from 0.1 MPa to 1000 MPa; less is sediment, and the strongest rock has some 500 MPa (from memory)
//	side shear for each metre below the sea floor: from 0.001 kPa/m to 10000 kPa/m; less is water, more is more than any rock
//	rate of drilling or coring: from 0.02 m/h to 1000 m/h; slower is half a metre a day, faster than pipe is run
//	chance of sticking against that in mud: from 0 % to 5000 %; more is a hole that no string leaves
//	wear of a bit against that in hard rock: from 1 % to 2000 %; more wears a bit in three hours
//	recovery: from 0 % to 200 %; no core expands to more than twice what was cut
//	factor of a lognormal spread: above 1, to 20; it is P90 over the median; the widest on record is 6, of what a troubled extended barrel costs
//	shape_parameter of a Weibull spread: from 0.5 to 50; below, most draws are next to nothing; above, there is no spread
//	share: from 0 % to 100 %
//	probability of a quantile: above 0 %, to 99.99 %; 100 % has no quantile
//	persistence: from 0 to 0.99
//	common: from -1 to 1
//	length of the hull: from 20 m to 500 m; the longest ship has 460 m (from memory)
//	beam of the hull: from 5 m to 100 m; the widest ship has some 70 m (from memory)
//	draught of the hull: from 1 m to 40 m; the deepest ship draws 30 m (from memory)
//	block coefficient: from 20 % to 100 %; it is the share of the box around the hull that she fills
//	height of the rig floor: from 0 m to 100 m; it is counted from sea level
//	passes of a tool string: from 0 to 20
//	pipe of one kind on board: above 0 m, to 20000 m
//	collars or assemblies: from 1 to 100
//	rating of derrick, hoist or compensator: above 0 klbf, to 4500 klbf; no hoist carries more
//	overpull kept back: from 0 klbf to 450 klbf; more is more than half of what the strongest pipe bears
//	overpull of the refusal rule: from 1 klbf to 450 klbf; less pulls out no corer, more is more than half of what the strongest pipe bears
//	radius of the guide horn: from 0 m to 1000 m
//	endurance: above 0 d, to 400 d; nobody stays out for longer than a year
//	stroke of the compensator: above 0 m, to 30 m
//	position keeping: above 0 m, to 1000 m; further off is not on station
//	current: above 0 kn, to 10 kn; no ocean current runs at half of it
//	least depth of water: from 0 m to 11000 m
//	speed of the ship: from 2 kn to 30 kn; slower, a current carries her off; faster is no drillship (sailing_speed)
//	speed with pipe hanging: from 0.1 kn to 5 kn; slower is a drift, faster bends the pipe (hanging_speed)
//	work on the rig floor, for each core, stand or station: from 0 h to 12 h; it takes no longer than a whole shift (racker, positioning, securing, strapping, filling, top_drive, rig_service, offset_move, mudline_reset, piston_handling, half_piston_handling, extended_handling, rotary_handling, shot, core_pull, orientation_wait, temperature_stop, drill_over, connection, bench, catwalk_time, sweep, centre_bit, laboratory_time, bit_release, penetrometer, mammal_watch, casing_joint)
//	operation, such as making up an assembly: from 0 d to 10 d; records have hours, at worst a few days (pilotage, approach, piston_make_up, rotary_make_up, lay_down, slip_and_cut, hole_conditioning, logging_rig_up, logging_rig_down, string_change, seismic_stations, funnel_drop, first_stab, next_stab, heavy_mud, cement_plug, severing, home_reserve, first_site_work, cone_make_up, casing_landing, casing_cement, cement_setting, shoe_drilling, bare_survey)
//	time that trouble costs, or a repair: from 0 d to 100 d; longer ends the expedition (failed_start_time, piston_trouble_time, extended_trouble_time, rotary_trouble_time, stuck_time, hanger_time, repair_time)
//	time between breakdowns: from 12 h to 10000 d; more often is no ship that sails, and ten thousand days are as good as never (breakdown_every)
//	time between rig services: from 4 h to 1000 d; more often leaves no time for work (rig_service_every)
//	life of a bit: from 60 min to 100 d; bits turn for 9 to 65 h in hard rock (ODP Legs 176 and 192) (bit_life)
//	horizon of the forecast: from 60 min to 15 d; no forecast has skill beyond two weeks (from memory) (forecast_horizon)
//	length of a stand: from 5 m to 60 m; a stand is of one joint to as many as a derrick takes (stand_length)
//	length of a joint: from 5 m to 20 m; drill pipe comes in 5.5 to 13.7 m (API ranges, from memory) (joint_length, casing_joint_length)
//	diameter of a barrel: from 1 in to 12 in; it has to run through the pipe (piston_diameter)
//	sea from which the ship slows down: from 0 m to 30 m (slowdown_from)
//	length of a core: from 0.5 m to 20 m; shorter is not worth a cycle, and longer is no barrel (piston_advance, extended_advance, rotary_advance)
//	clearance, gap or mismatch of depths: from 0 m to 50 m; more is more than five cores (mudline_clearance, core_gap, depth_mismatch)
//	speed of the hoist under load: from 0.01 m/s to 10 m/s; blocks run at some 2 m/s at most (from memory) (hoisting_speed, lowering_speed)
//	fill after a trip: from 0 m to 500 m; 118 m in 15 h are on record (IODP Exp 311) (trip_fill)
//	depth from which a rate holds: from 0 m to 20000 m; no string reaches deeper (extended_deep_from)
//	depth of pipe in the hole while logging or hung off: from 0 m to 1000 m; common practice is 50 to 100 m (hang_off_depth, logging_pipe_depth)
//	rate of tripping: from 1 stands/h to 60 stands/h; a stand takes a minute at least, and an hour at most (tripping, tripping_in_hole)
//	speed on the wire: from 5 m/min to 2000 m/min; records have 190 to 280 m/min, cameras 25 (piston_wire, extended_wire, rotary_wire, logging_wire, camera_speed)
//	speed of logging: from 20 m/h to 5000 m/h; tools are run at 100 to 1,000 m/h (from memory) (logging_speed)
//	rate of drilling or coring: from 0.02 m/h to 1000 m/h; slower is half a metre a day, faster than pipe is run (extended_least_rate, jetting, wash_down)
//	force of the stroke: from 1 kN to 1000 kN; shear pins give way at some 100 kN (stroke_force)
//	mass of pipe: from 5 kg/m to 200 kg/m; the lightest tubing has less, collars have more (pipe_mass)
//	mass of the travelling gear: from 1 t to 500 t (travelling_mass)
//	work of the drilling line between cuts: from 50 ton-mile to 100000 ton-mile; common practice is some 1,500 (line_work)
//	duration factor: from 5 % to 1000 %; beyond is twenty times as fast or ten times as slow as the records (piston_duration_factor, piston_alone, extended_deep, extended_duration_factor, rotary_duration_factor, drill_in_pace, hard_shoe_in_rock, hard_shoe_in_soft, hard_shoe_recovery)
//	other work on site, against trips and moves: from 0 % to 2000 %; more is twenty times as long as the work itself (other_work)
//	depth of layers against the survey: from 30 % to 300 %; a survey is off by some per cent (layer_depth)
//	chance or share: from 0 % to 100 % (slowdown_per_metre, heave_loss, funnel_lost, piston_trouble, extended_trouble, rotary_trouble, blown_liner, stuck_chance, lost_bha, bridge, water_core, missed_mudline, failed_start, bare_start, hanger_failure)
//	chance or share: from 0 % to 100 % (forecast_skill)
//	share of a limit below which work goes on: from 30 % to 100 %; lower, the sea hardly ever is (resume_at)
//	friction of the stroke: from 1 % to 100 % (stroke_friction)
//	resistance of the tip: from 0.1 to 100; bearing capacity of a deep foundation in clay is 9 (Skempton 1951) (tip_factor)
//	count: from 1 to 1000; nothing on board is counted in more (stands_between_fills, barrels, catwalk_room, cores_between_sweeps)
//	sites: at most 100; an expedition calls at a dozen
//	holes and tasks at a site: at most 50; records have up to a dozen
//	layers at a site: at most 100; a survey distinguishes fewer
//	stages of a hole: at most 20; there are four tools
//	waypoints to a site: at most 50; a passage has a few
//	temperatures or penetrometer runs in a hole: at most 100; each costs an hour
//	things that close a site: at most 20; a season has a few
//	limits of sea: at most 100; there are six classes of work
//	rules of order: at most 1000; a dozen sites have 66 pairs
//	quantiles of a spread: at most 100; a hundred are every per cent
//	tool strings: at most 50; a ship carries a few
//
// # Settings
//
// A setting replaces a value before anything is looked at: "sites[SB-01].cap=9 d",
// "rates.tripping={low: 18 stands/h, mid: 20 stands/h, high: 22 stands/h}". An element of a list
// is named by its name or counted from 0. A path to a key that is not known is a fault.
package scenario
