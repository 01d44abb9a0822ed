#!/bin/sh
# Merges the shares of a study into its answer: the same bytes as one machine would have given. It runs in the folder in
# which the shares ran, reads the scenarios again, and refuses shares that are missing, there twice, damaged, or of other
# scenarios than there are now.
#
# What it costs: reading the scenarios and the rows, a second for each million of them; memory is that of one plan's rows.
#
#SBATCH --job-name=coredays-merge
#SBATCH --ntasks=1
#SBATCH --mem=500M
#SBATCH --time=00:10:00
#SBATCH --output=merge.log
set -eu

# A list of its own of the parts, so that one left over from another study is not taken by its name.
: "${SHARES:=8}"
parts=$(seq -f 'share-%g.part' "$SHARES")

# shellcheck disable=SC2086 # one word for each part
coredays merge $parts --csv table --report study.html --json study.json >study.txt
