package hark.assessment;

import hark.assessment.Assessment.EnergyPoint;
import hark.assessment.EnergyReport.OrbitBalance;
import java.util.List;
import java.util.Map;

/**
 * The same possibilities with another number: the same draws, events and weights, simulated again
 * from separation with the changed mission file. Not a new diagnosis: what was heard is not weighed
 * again.
 *
 * @param overrides keys of the mission file and their new values, as written
 * @param simulated number of bodies on both sides, the same ones
 * @param before the fan with the mission as it is, of those bodies
 * @param after the fan with the other numbers
 * @param change what it comes to, from now to the horizon
 * @param sentence the difference in one sentence
 * @param basis in words: what was held the same, and from when the other numbers hold
 */
public record WhatIf(
    Map<String, String> overrides,
    int simulated,
    List<EnergyPoint> before,
    List<EnergyPoint> after,
    List<OrbitBalance> balanceBefore,
    List<OrbitBalance> balanceAfter,
    Change change,
    String sentence,
    String basis) {
  /** Both sides. */
  public record Change(Side before, Side after) {}

  /**
   * One side.
   *
   * @param socP50AtHorizon median state of charge at the horizon, 0…1
   * @param socP05AtHorizon the state of charge that one in twenty is below at the horizon, 0…1
   * @param states mean shares of the states from now to the horizon
   * @param transmitting mean share that runs a beacon from now to the horizon
   */
  public record Side(
      double socP50AtHorizon,
      double socP05AtHorizon,
      Assessment.States states,
      double transmitting) {}
}
