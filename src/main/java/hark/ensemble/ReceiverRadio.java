package hark.ensemble;

/**
 * The spacecraft's receiver as a command meets it.
 *
 * @param sensitivityDbm at 50 % acceptance
 */
public record ReceiverRadio(
    double frequencyHz,
    double sensitivityDbm,
    double antennaGainDbi,
    boolean halfDuplex,
    Authentication authentication,
    boolean counterLostOnReset) {
  /** What a command must carry. */
  public enum Authentication {
    NONE,
    COUNTER,
    KEYED
  }
}
