#!/bin/sh
# Submits a study in shares, and the job that merges them when all have ended well:
#
#   SHARES=8 STUDY=study.yaml REPLICATIONS=2000 ./submit.sh
#
# Run it in the folder of the study, with coredays on the PATH of the nodes and the folder shared among them. Slurm hands
# the three variables on to the jobs.
#
# Where a share fails, the merging job waits for what never comes; squeue says DependencyNeverSatisfied. Then submit
# that share alone, here the fifth, and a merging job that depends on it:
#
#   again=$(sbatch --parsable --array=5 share.sh)
#   scancel --name=coredays-merge
#   sbatch --dependency=afterok:"$again" merge.sh
set -eu
: "${SHARES:=8}" "${STUDY:=study.yaml}" "${REPLICATIONS:=2000}"
export SHARES STUDY REPLICATIONS
here=$(dirname "$0")

array=$(sbatch --parsable --array="1-$SHARES" "$here/share.sh")
merge=$(sbatch --parsable --dependency="afterok:$array" "$here/merge.sh")
echo "shares: job $array; merge: job $merge"
