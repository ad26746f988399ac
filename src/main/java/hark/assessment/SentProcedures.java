package hark.assessment;

import hark.evidence.CommandSent;
import hark.evidence.Entry;
import hark.plan.Procedure;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** A crew writes down which procedure it sent; the diagnosis must know which command that is. */
final class SentProcedures {
  private SentProcedures() {}

  /**
   * The same entries, where a command that is a procedure's ID has become that procedure's command.
   */
  static List<Entry> asCommands(List<Entry> evidence, List<Procedure> procedures) {
    return evidence.stream().map(entry -> asCommand(entry, procedures)).toList();
  }

  private static Entry asCommand(Entry entry, List<Procedure> procedures) {
    if (!(entry.evidence() instanceof CommandSent sent)) {
      return entry;
    }
    Optional<Procedure.Command> command =
        procedures.stream()
            .filter(procedure -> procedure.id().equals(sent.command().strip()))
            .map(Procedure::change)
            .filter(Procedure.Command.class::isInstance)
            .map(Procedure.Command.class::cast)
            .findFirst();
    return command.map(found -> with(entry, sent, found)).orElse(entry);
  }

  /** Sent as often as the record says, else as the procedure says. */
  private static Entry with(Entry entry, CommandSent sent, Procedure.Command command) {
    OptionalInt repeats =
        sent.repeats().isPresent() ? sent.repeats() : OptionalInt.of(command.repeats());
    CommandSent known =
        new CommandSent(
            sent.station(),
            sent.at(),
            command.command().name() + (command.anyCounter() ? " any counter" : ""),
            sent.powerWatts(),
            repeats,
            sent.acknowledged());
    return new Entry(
        entry.number(), entry.recordedAt(), entry.who(), entry.note(), entry.keys(), known);
  }
}
