package hark.power;

/**
 * Where the energy of a run went since separation, J. The books close: {@code arrays = loads +
 * chargerLoss + resistanceLoss + coulombicLoss + selfDischarge + stored + removed}.
 *
 * @param offered what the arrays would have given at full power, taken or not, charger open; 0
 *     where they are cut off from the bus
 * @param arrays drawn from the arrays (what nobody could take was never drawn)
 * @param loads taken by the loads, heater and bursts included
 * @param chargerLoss lost between arrays and bus
 * @param resistanceLoss heat in the battery's resistance and by what cold locks away
 * @param coulombicLoss charge that went in and does not come out again
 * @param selfDischarge lost in the cells by themselves
 * @param stored energy in the battery now less that at separation, from its open-circuit curve, not
 *     from the flows
 * @param removed energy that left with lost strings, faded capacity, an opened battery or strings
 *     that shared their charge
 */
public record EnergyBooks(
    double offered,
    double arrays,
    double loads,
    double chargerLoss,
    double resistanceLoss,
    double coulombicLoss,
    double selfDischarge,
    double stored,
    double removed) {
  /** Nothing yet. */
  public static final EnergyBooks NONE = new EnergyBooks(0, 0, 0, 0, 0, 0, 0, 0, 0);

  /** Everything that became heat without serving a load, J. */
  public double losses() {
    return chargerLoss + resistanceLoss + coulombicLoss + selfDischarge;
  }

  /** What the arrays could have given beyond what loads and losses took, J. */
  public double margin() {
    return offered - loads - losses();
  }

  /** What the books miss, J: the error of the integration. */
  public double gap() {
    return arrays - loads - losses() - stored - removed;
  }

  /** What came on top since earlier books. */
  public EnergyBooks minus(EnergyBooks earlier) {
    return plus(earlier, -1);
  }

  /** These books and others times a weight, entry by entry. */
  public EnergyBooks plus(EnergyBooks other, double weight) {
    return new EnergyBooks(
        offered + weight * other.offered,
        arrays + weight * other.arrays,
        loads + weight * other.loads,
        chargerLoss + weight * other.chargerLoss,
        resistanceLoss + weight * other.resistanceLoss,
        coulombicLoss + weight * other.coulombicLoss,
        selfDischarge + weight * other.selfDischarge,
        stored + weight * other.stored,
        removed + weight * other.removed);
  }
}
