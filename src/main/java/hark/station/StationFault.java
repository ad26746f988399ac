package hark.station;

/**
 * A way in which a station persistently differs from its description without anybody knowing. A
 * closed set; a station is as believed or has one of them, all the time. Shares are judged: no
 * statistics of amateur and university stations is known to us. Each is a share of the probability
 * that the station does not work as believed.
 */
public enum StationFault {
  /** Hears nothing: a plug not seated, a dead receiver or power supply. The commonest. */
  DEAF("deaf", "hears nothing", 0.25),
  /** Hears weakly: preamplifier without power, water in the cable. */
  INSENSITIVE("insensitive", "hears too weakly", 0.20),
  /** Tuned beside the carrier: a wrong preset, a cheap reference some 20 ppm off. */
  FREQUENCY("frequency", "wrong frequency", 0.15),
  /** Nobody corrects for Doppler: the receiver stands on the nominal frequency. */
  DOPPLER_OFF("doppler_off", "Doppler correction off", 0.07),
  /** Doppler is corrected with the wrong sign: receive and transmit exchanged. */
  DOPPLER_SIGN("doppler_sign", "Doppler correction with the wrong sign", 0.05),
  /** Azimuth off by a large angle: a slipped mast, a stop set wrong. */
  POINTING("pointing", "pointing", 0.12),
  /** The station's clock is grossly wrong: no time server reached. */
  CLOCK("clock", "clock", 0.05),
  /** Another object's element set is loaded: its neighbour of the same launch. */
  WRONG_SET("wrong_set", "wrong element set loaded", 0.06),
  /** The other hand of circular polarisation: a switch, a phasing cable. */
  WRONG_HAND("wrong_hand", "wrong hand of polarisation", 0.05);

  private final String key;
  private final String title;
  private final double usualShare;

  StationFault(String key, String title, double usualShare) {
    this.key = key;
    this.title = title;
    this.usualShare = usualShare;
  }

  /** Its key in {@code mission.yaml} and in JSON. */
  public String key() {
    return key;
  }

  /** A few words for people, to follow <i>most likely</i>. */
  public String title() {
    return title;
  }

  /** Share among the faults when the mission says nothing, 0…1; judged; they sum to 1. */
  public double usualShare() {
    return usualShare;
  }
}
