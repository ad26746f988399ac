/**
 * Bodies whose truth is known: what a plain simulator says of a satellite, to measure others
 * against it.
 *
 * <p>Enter through {@link hark.trial.PlainBody}: a {@link hark.power.PowerModel}, an {@link
 * hark.power.Illumination} and a {@link hark.trial.PlainRequest} give a {@link
 * hark.trial.PlainHistory}. It follows {@code src/docs/power-model.md} with equal short steps and
 * shares no code with the simulation of {@code hark.power}, only the records that describe a body.
 * Slow and obvious on purpose: where the two disagree, this one is believed until the page says
 * otherwise.
 *
 * <p>How it differs on purpose: bursts are drawn as pulses while they last; thresholds are looked
 * at once a step, with the full sag of a burst that touches the step; nothing is located between
 * two steps; charge and heat move by Euler's rule; means over attitudes are taken by counting.
 *
 * <p>Pure: values in, values out; no file, no clock, no chance. The same arguments give the same
 * bits.
 *
 * <p>Not modelled: what the page does not say. A burst that ends within a step warms the battery's
 * resistance as its mean over the step; a power cycle lasts a whole number of steps; commands take
 * effect at the next step.
 */
package hark.trial;
