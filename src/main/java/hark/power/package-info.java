/**
 * What the battery, the temperatures, the bus and the beacon of one body do from separation on.
 *
 * <p>Enter through {@link hark.power.Simulation}: a {@link hark.power.PowerModel} (every number of
 * the body), an {@link hark.power.Illumination} (sunlight along its orbit) and a {@link
 * hark.power.SimulationRequest} give a {@link hark.power.BodyHistory}. Everything is pure and
 * single-threaded; the same arguments give the same bits.
 *
 * <p>How it is modelled:
 *
 * <ul>
 *   <li>Battery, charger, arrays and loads meet at one point, the bus. Loads are constant powers. A
 *       burst's draw is spread evenly over the beacon's interval while the beacon runs.
 *   <li>The first burst comes one interval after a beacon may run, and the train of bursts begins
 *       anew when the beacon was stopped, so at every boot.
 *   <li>An off bus restarts when its voltage has stayed above recovery for the hold-off, or, when
 *       no current can leave the battery, when the arrays have given what the dead start needs for
 *       so long. The charger works from the arrays whether the bus is on or off.
 *   <li>A hung computer keeps state and load: it does not shed load, does not leave boot, sends
 *       nothing. Under-voltage, the command-loss timer if it resets, the watchdog and a reset
 *       command are hardware and reach it.
 *   <li>A hang or loop that a power cycle clears cannot begin while the bus is off.
 *   <li>Charging schemes: {@code CC_CV} and {@code MPPT} give the array's power up to the current
 *       and voltage limits and differ only in the efficiency they are given; {@code DIRECT} clamps
 *       the array to the battery, so its power falls with V over the charge voltage, and only a
 *       shunt at the charge voltage limits it.
 * </ul>
 *
 * <p>Not modelled: spin about a fixed axis and nadir pointing, panels still stowed or shading each
 * other, cell temperature and ageing of the arrays, capacity in the cold and with age,
 * self-discharge, the spread about the tumbling mean, loads that follow voltage, the pulse of a
 * single burst.
 */
package hark.power;
