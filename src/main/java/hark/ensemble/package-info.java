/**
 * The diagnosis: an ensemble of complete possibilities, weighed by evidence. Entry type: {@link
 * hark.ensemble.Diagnosis}.
 *
 * <p>A member is a set of basic events with onsets, a simulated body, and what became of the radio;
 * it is weighed at every hearing node (object, along-track error, transmitter power and frequency),
 * with the health of each station summed out exactly. Everything here is pure; threads come in as
 * {@link hark.ensemble.Workers} and never change an answer.
 *
 * <p>Not modelled yet: sets of more than two events (their weight is reported), a station that is
 * wrong in other ways than deaf (clock, Doppler sign, wrong set), reports from outside, Doppler
 * curves, commands already sent, onsets later than 30 days after separation.
 */
package hark.ensemble;
