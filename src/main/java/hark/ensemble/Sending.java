package hark.ensemble;

/** Which members send in a coming window, by what their bodies do beyond now. */
final class Sending {
  private final Population population;
  private final Body[] ahead;
  private final double[][] objectShare;

  /**
   * {@code objectShare}: share of each object in the hearings of each member, {@code
   * [member][object]}.
   */
  Sending(Population population, Body[] ahead, double[][] objectShare) {
    this.population = population;
    this.ahead = ahead;
    this.objectShare = objectShare;
  }

  double objectShare(int member, int object) {
    return objectShare[member][object];
  }

  /**
   * Share of each member's hearings in which at least one burst leaves above the mask; 0 without
   * weight.
   */
  double[] in(SkyWindow window, double[] memberWeight) {
    Boolean[][] known = new Boolean[ahead.length][window.paths().size()];
    double[] sends = new double[memberWeight.length];
    for (int m = 0; m < sends.length; m++) {
      for (int k = 0; k < window.paths().size() && memberWeight[m] > 0; k++) {
        boolean sending = sends(population.members.get(m), k, window, known);
        sends[m] += sending ? objectShare[m][k] : 0;
      }
    }
    return sends;
  }

  /** Members that share a body and are not mute before the end share the answer. */
  private boolean sends(Member member, int object, SkyWindow window, Boolean[][] known) {
    Body body = ahead[member.body()];
    PassGeometry path = window.paths().get(object);
    if (member.radio().muteFrom() <= window.from()) {
      return false;
    }
    if (member.radio().muteFrom() <= window.to()) {
      return Ear.sends(member, body, path, window.from(), window.to());
    }
    if (known[member.body()][object] == null) {
      known[member.body()][object] = Ear.sends(member, body, path, window.from(), window.to());
    }
    return known[member.body()][object];
  }
}
