package hark.console;

import hark.assessment.EnergyReport;
import hark.assessment.LongLook;
import hark.assessment.MemberTrace;
import hark.assessment.WhatIf;
import hark.assessment.WhyThere;
import hark.mission.MissionNumber;
import java.time.Instant;
import java.util.List;
import java.util.Map;

/**
 * What the page can ask about the electrical system of one assessment. Every answer may take a
 * second or so; safe for several threads. Members are those of this assessment only.
 */
public interface EnergyQuestions {
  /** Fan, balance of each orbit, a year of sunlight. */
  EnergyReport report();

  /** The numbers of the spacecraft that can be asked about with another value. */
  List<MissionNumber> numbers();

  /**
   * The same possibilities with other numbers.
   *
   * @param overrides keys of the mission file and values as they would be written there
   * @throws hark.problem.BadInput naming each key and value that is wrong
   */
  WhatIf whatIf(Map<String, String> overrides);

  /**
   * Which states the bus may be in at a time, and how it came into each.
   *
   * @throws hark.problem.BadInput outside separation and horizon
   */
  WhyThere whyAt(Instant time);

  /**
   * One member from separation to the horizon.
   *
   * @param member from 1
   * @throws hark.problem.BadInput when there is no such member
   */
  MemberTrace trace(int member);

  /**
   * When possibilities of each cause send again by themselves, beyond the horizon.
   *
   * @param days how far they are followed
   * @throws hark.problem.BadInput when that is too far
   */
  LongLook longLook(int days);
}
