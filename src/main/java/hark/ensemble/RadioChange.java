package hark.ensemble;

/**
 * What events do to the radio, added up.
 *
 * @param mute nothing is radiated
 * @param downlinkLossDb weaker transmission, dB
 * @param uplinkLossDb weaker reception on board, dB
 * @param frequencyShiftHz carrier off by so much
 * @param deaf the receiver hears nothing
 * @param refusesCommands commands arrive and are not accepted
 */
public record RadioChange(
    boolean mute,
    double downlinkLossDb,
    double uplinkLossDb,
    double frequencyShiftHz,
    boolean deaf,
    boolean refusesCommands) {
  /** All as it should be. */
  public static final RadioChange NONE = new RadioChange(false, 0, 0, 0, false, false);

  /** Silent, otherwise unharmed. */
  public static final RadioChange MUTE = new RadioChange(true, 0, 0, 0, false, false);

  /** Both together: losses and shifts add. */
  public RadioChange plus(RadioChange other) {
    return new RadioChange(
        mute || other.mute,
        downlinkLossDb + other.downlinkLossDb,
        uplinkLossDb + other.uplinkLossDb,
        frequencyShiftHz + other.frequencyShiftHz,
        deaf || other.deaf,
        refusesCommands || other.refusesCommands);
  }
}
