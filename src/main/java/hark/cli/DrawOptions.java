package hark.cli;

import hark.assessment.AssessmentRequest;
import picocli.CommandLine.Option;

/** How much is drawn and from where; use as a mixin. */
final class DrawOptions {
  @Option(
      names = "--members",
      paramLabel = "N",
      description =
          "Bodies wanted for each event set of order ≤ 1: for no cause at work and for each one"
              + " alone, 1 to 6000. Taken as at least 60 and rounded up to a multiple of 6; pairs of"
              + " causes take fewer. More is finer and slower (default: ${DEFAULT-VALUE}).")
  private int members = AssessmentRequest.USUAL_MEMBERS;

  @Option(
      names = "--seed",
      paramLabel = "N",
      description = "Seed of all draws (default: ${DEFAULT-VALUE}).")
  private long seed = 1;

  int members() {
    return members;
  }

  long seed() {
    return seed;
  }
}
