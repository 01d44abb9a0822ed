package drillstring

import (
	"math"
	"testing"

	"coredays/model/unit"
)

// Air and Gas Drilling Field Guide 3rd ed., p. 92; its prose repeats the margin with a slip, 349,787 N.
func TestMarginIsLimitedByTheHoistAsPublished(t *testing.T) {
	got := OverpullMargin(2_381_940, 987_613, 1_334_400)
	published(t, "margin, N", got.Overpull(), 1, 346_787, 0.5)
	published(t, "pipe alone, N", got.Pipe, 1, 1_394_327, 0.5)
	published(t, "safety factor", SafetyFactor(2_381_940, 987_613), 1, 2.41, 0.005)
}

// westendchronicle.com/it/texts/10088: 10,000 ft of 25 lb/ft in 20 lb/gal, yield 450,675 lb. The page
// subtracts wrongly (276,325); 450,675 - 173,675 is 277,000.
func TestOverpullAtYieldIsThePublishedExampleCorrected(t *testing.T) {
	s := String{Pipe: []Section{{Length: ft(10_000), Mass: lbft(25), Body: inches(5, 4.276), Rating: lbf(450_675)}}}
	mud := ppg(20)
	published(t, "in air", weight(s.Mass()), unit.PoundForce, 250_000, 0.5)
	published(t, "factor", BuoyancyIn(mud, ppg(65.5)), 1, 0.6947, 5e-5)
	// The page rounds the factor to 0.6947; steel of 490 lb/ft3 moves it by 0.00002.
	published(t, "hook load", s.HookLoad(Conditions{Fluid: mud}).Total(), unit.PoundForce, 173_675, 20)
	published(t, "overpull", s.Margin(Conditions{Fluid: mud, Allowed: 1}).Overpull(), unit.PoundForce, 277_000, 20)
}

// www.drillingformulas.com/margin-of-overpull-in-drillstring/ (after Lapeyrouse 2nd ed.): variant A
// takes 270 klb of hook load as given, variant B's is recomputed.
func TestMarginOfAStringWithHeavyPipeIsPublishedOne(t *testing.T) {
	allowed := lbf(436_000) * unit.Force(AllowedShare)
	published(t, "allowed, klb", allowed, lbf(1000), 392.4, 0.05)
	published(t, "A: margin, klb", OverpullMargin(allowed, lbf(270_000), lbf(1e9)).Overpull(), lbf(1000), 122, 0.5)
	published(t, "A: factor", SafetyFactor(allowed, lbf(270_000)), 1, 1.45, 0.005)
	const one = 1.0 // the 20 klb of motor and MWD as one foot of mass
	s := String{Assembly: Assembly{
		{Length: ft(one), Mass: lbft(20_000), Body: inches(8, 3), Rating: lbf(1e6)},
		{Length: ft(900), Mass: lbft(58), Body: inches(5, 3), Rating: lbf(1e6)}},
		Pipe: []Section{{Length: ft(8000), Mass: lbft(23.5), Body: inches(5, 4.276), Rating: lbf(436_000)}}}
	c := Conditions{Fluid: ppg(9.2)}
	const half = 0.05 + 260.2*0.00005 // klb; the page rounds the factor to 0.8595
	published(t, "B: in air", weight(s.Mass()), unit.PoundForce, 260_200, 0.5)
	published(t, "B: hook load, klb", s.HookLoad(c).Total(), lbf(1000), 223.6, half)
	published(t, "B: margin, klb", s.Margin(c).Overpull(), lbf(1000), 168.8, half)
	published(t, "B: factor", SafetyFactor(allowed, s.Buoyed(c.Fluid)), 1, 1.75, 0.006) // 1.7546
}

// Recomputed check of the trade's figures, no published output: 4900 m of pipe, 100 m of collars.
func coringString(t *testing.T, c Class) String {
	pipe := kind(t, "5 in 19.50 lb/ft S-135").Section(4900, c)
	if c == Premium {
		pipe.Rating = lbf(560_764) // by geometry; the data sheet rounds to 560,800
	}
	collar, err := table(t).Collar("8-1/4 x 4-1/8 in drill collar")
	if err != nil {
		t.Fatal(err)
	}
	collars := collar.Section(1)
	collars.Length = 100
	return String{Assembly: Assembly{collars}, Pipe: []Section{pipe}}
}

func TestCoringStringWeighsAndSparesAsRecomputed(t *testing.T) {
	s, c := coringString(t, Premium), Conditions{Fluid: ppg(8.556) * Steel / ppg(65.44)} // steel of 65.44 there
	published(t, "factor", Buoyancy(c.Fluid), 1, 0.86925, 1e-5)
	parts := s.Parts(c.Fluid)
	published(t, "pipe in air", parts[1].InAir, unit.PoundForce, 378_110, 1)
	published(t, "collars in air", parts[0].InAir, unit.PoundForce, 44_718, 1)
	published(t, "collars buoyed", parts[0].Buoyed, unit.PoundForce, 38_871, 1)
	published(t, "hook load", s.HookLoad(c).Total(), unit.PoundForce, 367_545, 2)
	published(t, "margin, premium", s.Margin(c).Overpull(), unit.PoundForce, 137_142, 3)
	published(t, "margin, new", coringString(t, New).Margin(c).Overpull(), unit.PoundForce, 273_318, 3)
	published(t, "neutral point, m", s.NeutralPoint(lbf(15_000), c.Fluid), 1, 38.6, 0.05)
}

// The lower kind may be the one that limits: 1000 m of weak pipe under 10 m of strong.
func TestMarginOfATaperedStringIsThatOfItsWeakestPlace(t *testing.T) {
	weak := Section{Length: 1000, Mass: 30, Body: inches(5, 4.276), Rating: 1_000_000}
	strong := Section{Length: 10, Mass: 40, Body: inches(5.5, 4.67), Rating: 4_000_000}
	s := String{Pipe: []Section{weak, strong}}
	want := 900_000 - 1000*30*9.80665 // by hand, in air
	published(t, "pipe, N", s.Margin(Conditions{}).Pipe, 1, want, 1e-3)
	if !math.IsInf(float64(s.Margin(Conditions{}).Hoist), 1) {
		t.Error("no hoist was given, but it limits")
	}
	if got := s.Worst(Conditions{}).Section; got != weak {
		t.Errorf("worst is %+v", got)
	}
}
