package hark.link;

/** A way of listening. */
public enum Way {
  /** A demodulator that must read the frame or the Morse call sign. */
  DECODER,
  /** A person with headphones. */
  EAR,
  /** A person watching a spectrum over time. */
  WATERFALL,
  /** A recording searched afterwards along the predicted Doppler curve. */
  RECORDING
}
