package hark.cli;

import picocli.CommandLine.Option;

/** How far returns are followed beyond the horizon; use as a mixin. */
final class RecoveryOption {
  @Option(
      names = "--recovery-days",
      paramLabel = "D",
      description = {
        "Also follow some cases of each cause that counts for D days without any command, up to 730,"
            + " and tell when they send again by themselves; a second or two for 365.",
        "Satellites have come back after months: CSSWE after about three, STRaND-1 after less than"
            + " four, CIRBE after five weeks, SwissCube after about a year. Those that did are written"
            + " about more often than those that did not."
      })
  private Integer days;

  /** The days asked for, or the usual ones of a command; 0 follows none. */
  int daysOr(int usual) {
    return days == null ? usual : days;
  }
}
