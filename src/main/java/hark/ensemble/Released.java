package hark.ensemble;

/** Somebody saw or measured that the spacecraft left its deployer whole. */
record Released(int entry, double seconds) implements BodyClue {
  /** A release that went well is confirmed so often. Judged. */
  private static final double CONFIRMED_IF_THERE = 0.9;

  /** A spacecraft lost by then is taken for a good release so often. Judged. */
  private static final double CONFIRMED_IF_LOST = 0.05;

  @Override
  public double likelihood(Member member, Body body) {
    RadioChange radio = member.radio().at(seconds);
    boolean lost = radio.mute() && radio.deaf();
    return lost ? CONFIRMED_IF_LOST : CONFIRMED_IF_THERE;
  }
}
