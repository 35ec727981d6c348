package flankfit.setup;

import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Place;
import flankfit.finding.Severity;
import flankfit.setup.CheckPolicy.Accepted;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** Reads a check policy: TOML text to records, or every error in it with line and column. */
public final class CheckPolicyReader {
  private static final List<Choice<Optional<Severity>>> WEIGHTS =
      List.of(
          Choice.of("error", Optional.of(Severity.ERROR)),
          Choice.of("warning", Optional.of(Severity.WARNING)),
          Choice.of("note", Optional.of(Severity.NOTE)),
          Choice.of("off", Optional.empty()));

  private final SheetLog log;

  private CheckPolicyReader(String file) {
    this.log = new SheetLog(file);
  }

  /**
   * What reading gave.
   *
   * @param policy the policy; empty when any finding is an error
   * @param findings everything found, by line and column
   */
  public record Reading(Optional<CheckPolicy> policy, List<Finding> findings) {
    public Reading {
      Objects.requireNonNull(policy, "policy");
      findings = List.copyOf(findings);
    }
  }

  /**
   * Reads a policy.
   *
   * @param file its name as the user gave it, for the findings
   * @param text the whole text
   */
  public static Reading read(String file, String text) {
    return new CheckPolicyReader(file).read(text);
  }

  private Reading read(String text) {
    Keys keys =
        Keys.none().and("severity", "the table [severity]").and("accept", "tables [[accept]]");
    Optional<CheckPolicy> policy =
        new TomlText(log, "a check policy")
            .parse(text)
            .map(t -> new SheetTable(log, t, "the policy", Place.file(log.file()), keys))
            .map(top -> new CheckPolicy(weights(top), accepted(top)));
    return new Reading(policy.filter(p -> !log.hasErrors()), log.findings());
  }

  private Map<Code, Optional<Severity>> weights(SheetTable top) {
    Map<Code, Optional<Severity>> weights = new EnumMap<>(Code.class);
    Keys codes = Keys.none();
    Arrays.stream(Code.values()).forEach(c -> codes.and(c.name(), "error, warning, note or off"));
    Optional<SheetTable> table = top.table("severity", codes);
    for (Code code : Code.values()) {
      table
          .flatMap(t -> t.item(code.name()))
          .ifPresent(item -> weight(code, item).ifPresent(w -> weights.put(code, w)));
    }
    return weights;
  }

  private static Optional<Optional<Severity>> weight(Code code, SheetItem item) {
    return item.choice(WEIGHTS)
        .flatMap(
            weight ->
                code.stops() && !weight.equals(Optional.of(Severity.ERROR))
                    ? item.impossible(
                        code + " stops what is read or run there, so it stays an error")
                    : Optional.of(weight));
  }

  private List<Accepted> accepted(SheetTable top) {
    Keys keys =
        Keys.none()
            .and("code", "a code such as HZ02")
            .and("program", "name of a file, * and ? standing for any characters")
            .and("line", "a line number")
            .and("reason", "text: why it is accepted");
    List<Accepted> all = new ArrayList<>();
    for (SheetTable table : top.tables("accept", keys)) {
      Optional<Code> code = table.needed("code").flatMap(CheckPolicyReader::code);
      Optional<String> program =
          table.has("program") ? table.item("program").flatMap(SheetItem::text) : Optional.of("*");
      Optional<Integer> line = table.item("line").flatMap(i -> i.whole(1, Integer.MAX_VALUE));
      Optional<String> reason = table.needed("reason").flatMap(CheckPolicyReader::reason);
      if (code.isPresent() && program.isPresent() && reason.isPresent()) {
        all.add(new Accepted(code.get(), program.get(), line, reason.get(), table.place().line()));
      }
    }
    return all;
  }

  private static Optional<Code> code(SheetItem item) {
    List<Choice<Code>> codes = Choice.each(Code.values(), Code::name);
    return item.choice(codes)
        .flatMap(
            code ->
                code.stops()
                    ? item.impossible(code + " stops what is read or run there; mend it instead")
                    : Optional.of(code));
  }

  private static Optional<String> reason(SheetItem item) {
    return item.text()
        .flatMap(text -> text.isBlank() ? item.impossible("it must say why") : Optional.of(text));
  }
}
