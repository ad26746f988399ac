package hark.orbit;

import java.time.Instant;

/** Mean elements of one object at one epoch. (Signature agreed; the orbit room owns the rest.) */
public final class ElementSet {
  private final String objectId;
  private final Instant epoch;

  ElementSet(String objectId, Instant epoch) {
    this.objectId = objectId;
    this.epoch = epoch;
  }

  /** Catalogue number. */
  public String objectId() {
    return objectId;
  }

  /** Time the elements hold for. */
  public Instant epoch() {
    return epoch;
  }
}
