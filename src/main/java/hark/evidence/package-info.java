/**
 * What was done and heard: sealed records, the words they are written in, and corrections.
 *
 * <p>Entry type: {@link hark.evidence.EvidenceBook} — {@code draft} checks a new entry, {@code
 * effective} gives the record as it stands. Everything here is pure: no storage (that is the
 * journal), no clock, no predictions (a function argument finds passes), no likelihoods (that is
 * the ensemble).
 *
 * <p>Not modelled in this edition, refused by name: outside reports, objects confirmed or excluded,
 * commands sent, motion, separation reports, Doppler curves, search results; of telemetry only the
 * battery voltage is read.
 */
package hark.evidence;
