package hark.ensemble;

/** A station check: chance of this outcome when the station works and when it is deaf. */
record Check(int entry, int station, double ifWorks, double ifDeaf) implements StationClue {}
