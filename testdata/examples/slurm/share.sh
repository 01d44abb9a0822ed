#!/bin/sh
# One share of a study: a task of an array job. Slurm runs it as often as --array says, each time with another
# SLURM_ARRAY_TASK_ID. submit.sh submits it together with the job that merges the shares.
#
# What it costs: a share reads all scenarios of the study (some milliseconds each) and simulates its part of the plans.
# Memory is that of one plan's rows: 100 MB with 10,000 replications of a plan with several sites. Take as many shares as
# there are cores, not more: each keeps one core busy, and beyond a second of work for each there is nothing to gain.
#
#SBATCH --job-name=coredays-share
#SBATCH --ntasks=1
#SBATCH --cpus-per-task=1
#SBATCH --mem=300M
#SBATCH --time=01:00:00
#SBATCH --output=share-%a.log
set -eu

# How many shares there are. SLURM_ARRAY_TASK_COUNT would tell it too, but not when one share is submitted again.
: "${SHARES:=8}"
: "${STUDY:=study.yaml}"
: "${REPLICATIONS:=2000}"

# The part is written when the share is done, whole or not at all. A share that is killed leaves none; when it runs a
# second time it takes the place of the first, with the same bytes.
exec coredays study "$STUDY" --replications "$REPLICATIONS" --workers "${SLURM_CPUS_PER_TASK:-1}" \
	--shard "$SLURM_ARRAY_TASK_ID/$SHARES" --part "share-$SLURM_ARRAY_TASK_ID.part"
