package hark.signal;

import hark.station.Site;

/**
 * A station as far as its curves are concerned.
 *
 * @param clockSdSeconds spread of its clock's error, s; one error for all its curves
 */
public record Listener(Site site, double clockSdSeconds) {
  /** Refuses spreads below zero. */
  public Listener {
    if (!(clockSdSeconds >= 0)) {
      throw new IllegalArgumentException("clock spread " + clockSdSeconds + " s");
    }
  }

  String name() {
    return site.name();
  }
}
