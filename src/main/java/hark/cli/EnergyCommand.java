package hark.cli;

import hark.assessment.Assessment.EnergyPoint;
import hark.assessment.EnergyDesk;
import hark.assessment.EnergyReport;
import hark.assessment.MemberTrace;
import hark.assessment.WhatIf;
import hark.cli.TableWriter.Column;
import hark.document.EnergyJson;
import hark.document.EnergyPage;
import hark.document.MemberPage;
import hark.document.WhatIfPage;
import hark.mission.Mission;
import java.io.PrintWriter;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code hark energy MISSION}: what the electrical lead asks. */
@Command(
    name = "energy",
    description = {
      "Charge, bus states, energy of each orbit, and the Sun over a year.",
      "With --what-if: the same possibilities with another number, and the difference. With --member:"
          + " one possibility step by step. With --why: how the bus came into its state."
    },
    footer = {
      "",
      "Examples:",
      "  hark energy my-mission",
      "  hark energy my-mission --what-if spacecraft.battery.cell.capacity_Ah=2.0",
      "  hark energy my-mission --why 2026-10-14T08:56:00Z",
      "  hark energy my-mission --member 17 --format csv > trace.csv"
    },
    mixinStandardHelpOptions = true)
final class EnergyCommand implements Callable<Integer> {
  private static final TableWriter TRACE =
      new TableWriter(
          "trace",
          List.of(
              Column.text("time"),
              Column.number("sunlit", 2),
              Column.number("arrayW", 3),
              Column.number("loadW", 3),
              Column.number("batteryA", 3),
              Column.number("volts", 3),
              Column.number("soc", 4),
              Column.number("batteryC", 1),
              Column.number("structureC", 1),
              Column.text("state"),
              Column.text("change")));

  @Spec private CommandSpec spec;
  @Mixin private AssessOptions options;
  @Mixin private FormatOption format;

  @Option(
      names = "--what-if",
      paramLabel = "KEY=VALUE",
      description =
          "A key of mission.yaml by its path, and a value as it would be written there; may be given"
              + " several times. The same draws, events and weights are simulated again from"
              + " separation.")
  private Map<String, String> whatIf = new LinkedHashMap<>();

  @Option(
      names = "--member",
      paramLabel = "N",
      description =
          "Follow one member, counted from 1, with every change of state. arrayW is what would reach"
              + " the bus if it were wanted.")
  private Integer member;

  @Option(
      names = "--step",
      paramLabel = "SECONDS",
      description = "Step of a member's trace (default: ${DEFAULT-VALUE}).")
  private int step = EnergyDesk.TRACE_STEP_SECONDS;

  @Option(
      names = "--why",
      paramLabel = "T",
      description = "Tell which states the bus may be in at this time, UTC, and why.")
  private Instant why;

  @Override
  public Integer call() {
    refuseTwoQuestions();
    MissionRecord record = options.read();
    Optional<Mission> changed =
        whatIf.isEmpty() ? Optional.empty() : Optional.of(record.with(whatIf));
    EnergyDesk desk = options.energy(record);
    PrintWriter out = spec.commandLine().getOut();
    if (member != null) {
      trace(desk, changed, out);
    } else if (why != null) {
      out.print(
          format.format() == OutputFormat.JSON
              ? EnergyJson.text(EnergyJson.of(desk.whyAt(why)))
              : MemberPage.of(desk.whyAt(why)));
    } else {
      report(desk, changed.map(mission -> desk.whatIf(whatIf, mission)), out);
    }
    out.flush();
    return ExitCode.DONE;
  }

  private void refuseTwoQuestions() {
    if (why != null && (member != null || !whatIf.isEmpty())) {
      throw new ParameterException(
          spec.commandLine(), "--why stands alone; leave --member and --what-if away");
    }
    if (why != null && format.format() == OutputFormat.CSV) {
      throw new ParameterException(spec.commandLine(), "--why comes as table or json");
    }
  }

  private void trace(EnergyDesk desk, Optional<Mission> changed, PrintWriter out) {
    MemberTrace trace =
        changed.isPresent() ? desk.trace(member, step, changed.get()) : desk.trace(member, step);
    if (format.format() == OutputFormat.JSON) {
      out.print(EnergyJson.text(EnergyJson.of(trace)));
      return;
    }
    if (format.format() == OutputFormat.TABLE) {
      out.print(MemberPage.of(trace));
    }
    TRACE.write(format.format(), trace.rows().stream().map(EnergyCommand::row).toList(), out);
  }

  private static Object[] row(MemberTrace.Row row) {
    return new Object[] {
      row.time(),
      row.sunlit(),
      row.arrayWatts(),
      row.loadWatts(),
      row.batteryAmps(),
      row.volts(),
      row.soc(),
      row.batteryCelsius(),
      row.structureCelsius(),
      row.state(),
      row.change().orElse(null)
    };
  }

  private void report(EnergyDesk desk, Optional<WhatIf> changed, PrintWriter out) {
    EnergyReport report = desk.report();
    switch (format.format()) {
      case JSON -> out.print(EnergyJson.text(EnergyJson.of(report, changed)));
      case TABLE ->
          out.print(
              changed
                  .map(what -> WhatIfPage.of(report, what))
                  .orElseGet(() -> EnergyPage.of(report)));
      case CSV -> csv(report, changed, out);
    }
  }

  private static void csv(EnergyReport report, Optional<WhatIf> changed, PrintWriter out) {
    List<Column> columns =
        new ArrayList<>(List.of(Column.text("time"), Column.number("sunlit", 4)));
    List<List<EnergyPoint>> sides = new ArrayList<>();
    sides.add(changed.map(WhatIf::before).orElse(report.energy()));
    columns.addAll(fanColumns(""));
    changed.ifPresent(
        what -> {
          sides.add(what.after());
          columns.addAll(fanColumns("whatIf_"));
        });
    List<Object[]> rows = new ArrayList<>();
    for (int g = 0; g < sides.get(0).size(); g++) {
      List<Object> row = new ArrayList<>();
      row.add(sides.get(0).get(g).time());
      row.add(sides.get(0).get(g).sunlit());
      for (List<EnergyPoint> side : sides) {
        row.addAll(numbers(side.get(g)));
      }
      rows.add(row.toArray());
    }
    new TableWriter("energy", columns).write(OutputFormat.CSV, rows, out);
  }

  private static List<Column> fanColumns(String prefix) {
    List<Column> columns = new ArrayList<>();
    for (String name :
        List.of(
            "socP05",
            "socP25",
            "socP50",
            "socP75",
            "socP95",
            "off",
            "boot",
            "safe",
            "nominal",
            "transmitting")) {
      columns.add(Column.number(prefix + name, 4));
    }
    return columns;
  }

  private static List<Double> numbers(EnergyPoint point) {
    return List.of(
        point.socP05(),
        point.socP25(),
        point.socP50(),
        point.socP75(),
        point.socP95(),
        point.states().off(),
        point.states().boot(),
        point.states().safe(),
        point.states().nominal(),
        point.transmitting());
  }
}
