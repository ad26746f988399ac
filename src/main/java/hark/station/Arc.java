package hark.station;

/** A stay above a threshold, in seconds since the epoch of the elements. */
record Arc(double rise, double culmination, double set) {}
