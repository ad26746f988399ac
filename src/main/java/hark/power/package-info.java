/**
 * What the battery, the temperatures, the bus and the beacon of one body do from separation on.
 *
 * <p>Enter through {@link hark.power.Simulation}: {@link hark.power.PowerModel}s (every number of a
 * body), an {@link hark.power.Illumination} (sunlight along their orbit) and {@link
 * hark.power.SimulationRequest}s give {@link hark.power.BodyHistory}s. Everything is pure and
 * single-threaded; the same arguments give the same bits, whatever bodies are simulated together.
 *
 * <p>What is computed stands in {@code src/docs/power-model.md}; how it is made fast in {@code
 * DEVELOPERS.md}. {@code Machine} takes one body through anything; {@code Fleet} takes many through
 * time together and lets those to which nothing can happen glide in {@code Lanes}.
 *
 * <p>Not modelled: the turning of a fast tumbler within an orbit and within a burst (its mean power
 * counts), the true edges of shadows between panels, panels warmer than the structure, cells of a
 * string that differ, strings that differ in anything but the voltage at which they open, the extra
 * heat of a burst's current over its mean, loads that follow voltage.
 */
package hark.power;
