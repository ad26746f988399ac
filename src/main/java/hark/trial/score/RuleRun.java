package hark.trial.score;

/**
 * What became of one campaign under one rule.
 *
 * @param regained something was heard before the last day
 * @param days to the first reception; the campaign's length when there was none
 * @param hours of people's time until then
 * @param nights sittings at night
 * @param sittings windows that were listened to
 * @param commands sent
 * @param received of these, those that arrived and were accepted
 * @param harmed the same sittings without the commands would have heard it sooner
 * @param helped the same sittings without the commands would have heard it later or never
 */
public record RuleRun(
    String rule,
    boolean regained,
    double days,
    double hours,
    int nights,
    int sittings,
    int commands,
    int received,
    boolean harmed,
    boolean helped) {}
