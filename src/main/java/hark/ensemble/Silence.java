package hark.ensemble;

/** Listened and heard nothing: the chance to miss every burst, a failed sitting included. */
record Silence(int entry, SkyWindow window, Listening listening) implements ListeningClue {
  @Override
  public double likelihood(Reception reception, int node) {
    return 1 - reception.detected(node);
  }

  @Override
  public boolean readsNumber() {
    return false;
  }

  @Override
  public double outcome(Reception reception, int node) {
    return likelihood(reception, node);
  }
}
