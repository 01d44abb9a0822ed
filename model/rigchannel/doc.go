// Package rigchannel finds in a recording of block height and hook load what the rig did: when the pipe hung in the
// slips, which stands were moved, how long each connection took. It is meant for a floating rig: heave moves both
// channels all the time, the weight on the hook drifts as pipe is added, samples are missing and some are spikes.
package rigchannel
