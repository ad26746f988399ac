package hark.power;

/**
 * Where the energy of a run went, J. The books close: {@code arrays = loads + chargerLoss +
 * resistanceLoss + stored + removed}.
 *
 * @param arrays drawn from the arrays (what nobody could take was never drawn)
 * @param loads taken by the loads, heater and bursts included
 * @param chargerLoss lost between arrays and bus
 * @param resistanceLoss heat in the battery's resistance
 * @param stored energy in the battery at the end less that at the start, from its open-circuit
 *     curve, not from the flows
 * @param removed energy that left with lost strings, faded capacity or an opened battery
 */
public record EnergyBooks(
    double arrays,
    double loads,
    double chargerLoss,
    double resistanceLoss,
    double stored,
    double removed) {
  /** What the books miss, J: the error of the integration. */
  public double gap() {
    return arrays - loads - chargerLoss - resistanceLoss - stored - removed;
  }
}
