package hark.trial;

/** Energy counted while a body runs, J. */
final class Ledger {
  double arrays;
  double loads;
  double chargerLoss;
  double resistanceLoss;
  double coulombicLoss;
  double selfDischarge;
  double removed;

  PlainHistory.Books close(double storedMore) {
    return new PlainHistory.Books(
        arrays,
        loads,
        chargerLoss,
        resistanceLoss,
        coulombicLoss,
        selfDischarge,
        storedMore,
        removed);
  }
}
