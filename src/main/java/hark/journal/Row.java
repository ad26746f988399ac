package hark.journal;

/**
 * One row as stored: times ISO-8601 UTC, keys as JSON with sorted names.
 *
 * @param at when it happened; for a correction, when it was made
 */
record Row(
    int number, String recordedAt, String at, String who, String note, String kind, String keys) {}
