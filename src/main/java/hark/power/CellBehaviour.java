package hark.power;

/**
 * What cold, time and misuse do to the cells.
 *
 * @param coulombicEfficiency charge that can be taken out again over charge put in, 0…1
 * @param selfDischargePerMonth lost share of the capacity in 30 days at 20 °C; doubles every 10 K
 * @param coldLockPerKelvin growth of the share of charge that a discharge cannot reach for each
 *     kelvin below 15 °C, 1/K
 * @param fadePerYear lost share of the capacity a year, 0…1
 * @param resistanceGrowthPerYear relative growth of the resistance a year
 * @param damageVoltsPerCell below this voltage without load the cell is being damaged, V
 * @param damagePerDay share of the capacity lost for good in each day spent there, 0…1
 */
public record CellBehaviour(
    double coulombicEfficiency,
    double selfDischargePerMonth,
    double coldLockPerKelvin,
    double fadePerYear,
    double resistanceGrowthPerYear,
    double damageVoltsPerCell,
    double damagePerDay) {
  /** Cells that nothing harms. */
  public static final CellBehaviour IDEAL = new CellBehaviour(1, 0, 0, 0, 0, 0, 0);

  /**
   * An ordinary lithium-ion cell, all <i>common practice</i>: 99.8 % of the charge comes back, 2 %
   * a month is lost at room temperature, about a sixth of the charge is out of reach at −20 °C, 3 %
   * of the capacity and 5 % more resistance a year, copper dissolves below 2 V.
   */
  public static final CellBehaviour LITHIUM_ION =
      new CellBehaviour(0.998, 0.02, 0.006, 0.03, 0.05, 2.0, 0.02);

  /** Refuses shares outside 0…1, negative rates and an efficiency of 0. */
  public CellBehaviour {
    Check.share("coulombic efficiency", coulombicEfficiency);
    Check.positive("coulombic efficiency", coulombicEfficiency);
    Check.share("self-discharge a month", selfDischargePerMonth);
    Check.notNegative("charge out of reach in the cold", coldLockPerKelvin);
    Check.share("capacity lost a year", fadePerYear);
    Check.notNegative("growth of the resistance", resistanceGrowthPerYear);
    Check.notNegative("voltage of damage", damageVoltsPerCell);
    Check.share("capacity lost in a day of damage", damagePerDay);
  }
}
