package main

import (
	"os"
	"path/filepath"
	"testing"
)

func TestLostSharesAreThoseOfOneProgrammesLegs(t *testing.T) {
	file := filepath.Join(t.TempDir(), "legs.csv")
	text := "program,leg,on_site_days,lost_weather_repair_days\nIODP,301,40,2\nODP,100,30,3\nIODP,302,,1\nIODP,303,50,0\n"
	if err := os.WriteFile(file, []byte(text), 0o644); err != nil {
		t.Fatal(err)
	}
	shares, err := lostShares(file, "IODP")
	if err != nil || len(shares) != 2 || shares["301"] != 0.05 || shares["303"] != 0 {
		t.Errorf("shares %v, %v; want 0.05 of leg 301 and 0 of leg 303", shares, err)
	}
	if _, err := lostShares(filepath.Join(t.TempDir(), "none.csv"), "IODP"); err == nil {
		t.Error("a missing file is no error")
	}
}
