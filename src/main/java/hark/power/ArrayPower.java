package hark.power;

import java.util.List;

/** Power of the solar cells in full sunlight, for balances; the simulation follows the Sun. */
public final class ArrayPower {
  private ArrayPower() {}

  /**
   * Cell area seen from the Sun, m², with panels unfolded: the best attitude when it points there,
   * else the mean over all directions, which a spin or nadir pointing reaches only now and then.
   */
  public static double areaTowardsSun(PowerModel.Attitude attitude, List<Face> faces) {
    ArrayGeometry geometry = new ArrayGeometry(faces, 0, true);
    boolean points = attitude.mode() == PowerModel.AttitudeMode.SUN_POINTING;
    return points ? geometry.bestArea() : geometry.meanArea();
  }

  /**
   * Electrical power of the arrays in full sunlight when new and at 28 °C, after losses in wiring
   * and diodes, before the charger, W.
   *
   * @param irradiance W/m²
   */
  public static double fullSunWatts(PowerModel model, double irradiance) {
    PowerModel.Arrays arrays = model.arrays();
    return irradiance
        * areaTowardsSun(model.attitude(), arrays.faces())
        * arrays.cellEfficiency()
        * (1 - arrays.losses());
  }
}
