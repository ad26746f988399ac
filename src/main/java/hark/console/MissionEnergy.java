package hark.console;

import hark.assessment.EnergyDesk;
import hark.assessment.EnergyReport;
import hark.assessment.LongLook;
import hark.assessment.MemberTrace;
import hark.assessment.WhatIf;
import hark.assessment.WhyThere;
import hark.mission.FolderSource;
import hark.mission.MissionNumber;
import hark.mission.MissionNumbers;
import hark.mission.Missions;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Asks the desk of one assessment. The report is worked out once, when it is first asked for. */
final class MissionEnergy implements EnergyQuestions {
  private final EnergyDesk desk;
  private final FolderSource folder;
  private final List<MissionNumber> numbers;
  private final Map<Integer, LongLook> looks = new HashMap<>();
  private EnergyReport report;

  MissionEnergy(EnergyDesk desk, FolderSource folder) {
    this.desk = desk;
    this.folder = folder;
    this.numbers = MissionNumbers.list(folder);
  }

  @Override
  public synchronized EnergyReport report() {
    if (report == null) {
      report = desk.report();
    }
    return report;
  }

  @Override
  public List<MissionNumber> numbers() {
    return numbers;
  }

  @Override
  public WhatIf whatIf(Map<String, String> overrides) {
    return desk.whatIf(overrides, Missions.read(folder, overrides));
  }

  @Override
  public WhyThere whyAt(Instant time) {
    return desk.whyAt(time);
  }

  @Override
  public MemberTrace trace(int member) {
    return desk.trace(member, EnergyDesk.TRACE_STEP_SECONDS);
  }

  /** Worked out once; everybody who has the page open may ask. */
  @Override
  public synchronized LongLook longLook(int days) {
    return looks.computeIfAbsent(days, desk::longLook);
  }
}
