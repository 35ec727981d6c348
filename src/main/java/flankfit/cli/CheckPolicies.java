package flankfit.cli;

import flankfit.cli.CheckedProgram.AcceptedFinding;
import flankfit.finding.Finding;
import flankfit.finding.Severity;
import flankfit.setup.CheckPolicy;
import flankfit.setup.CheckPolicy.Accepted;
import flankfit.setup.CheckPolicyReader;
import flankfit.setup.SetupReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Reads a shop's check policy and lays it on what was found. */
final class CheckPolicies {
  private final CheckPolicy policy;
  private final List<Pattern> programs = new ArrayList<>();

  CheckPolicies(CheckPolicy policy) {
    this.policy = policy;
    policy.accepted().forEach(accepted -> programs.add(pattern(accepted.program())));
  }

  /**
   * Reads a policy file.
   *
   * @throws RequestException if it cannot be read or has errors
   */
  static CheckPolicies of(Path file) throws RequestException {
    String text = InputFile.utf8(file, "check policy");
    CheckPolicyReader.Reading reading = CheckPolicyReader.read(file.toString(), text);
    return new CheckPolicies(
        reading
            .policy()
            .orElseThrow(
                () ->
                    new RequestException(
                        ExitStatus.REQUEST_WRONG, reading.findings(), SetupReader.lines(text))));
  }

  private static Pattern pattern(String words) {
    StringBuilder pattern = new StringBuilder();
    for (int i = 0; i < words.length(); i++) {
      char c = words.charAt(i);
      pattern.append(
          switch (c) {
            case '*' -> ".*";
            case '?' -> ".";
            default -> Pattern.quote(String.valueOf(c));
          });
    }
    return Pattern.compile(pattern.toString(), Pattern.DOTALL);
  }

  /** The program with its findings weighed anew, and those accepted apart. */
  CheckedProgram on(CheckedProgram program) {
    List<Finding> left = new ArrayList<>();
    List<AcceptedFinding> taken = new ArrayList<>();
    for (Finding finding : program.findings()) {
      Optional<Accepted> accepted =
          policy.accepted().stream().filter(a -> covers(a, program, finding)).findFirst();
      if (accepted.isPresent()) {
        taken.add(new AcceptedFinding(finding, accepted.get().reason()));
      } else {
        weighed(finding).ifPresent(left::add);
      }
    }
    return program.with(left, taken);
  }

  private Optional<Finding> weighed(Finding finding) {
    Optional<Severity> weight =
        policy.weights().getOrDefault(finding.code(), Optional.of(finding.severity()));
    return weight.map(
        w ->
            new Finding(
                finding.code(), w, finding.place(), finding.what(), finding.why(), finding.fix()));
  }

  private boolean covers(Accepted accepted, CheckedProgram program, Finding finding) {
    Path name = Path.of(program.file()).getFileName();
    return accepted.code() == finding.code()
        && accepted.line().map(line -> line == finding.place().line()).orElse(true)
        && programs
            .get(policy.accepted().indexOf(accepted))
            .matcher(String.valueOf(name))
            .matches();
  }

  /** What is accepted but was not found in any of these programs, a sentence each. */
  List<String> unused(List<CheckedProgram> programs) {
    List<String> unused = new ArrayList<>();
    for (Accepted accepted : policy.accepted()) {
      boolean used =
          programs.stream()
              .anyMatch(p -> p.accepted().stream().anyMatch(f -> covers(accepted, p, f.finding())));
      if (!used) {
        unused.add(
            "[[accept]] in line "
                + accepted.place()
                + " accepts nothing: no "
                + accepted.code()
                + " was found in "
                + accepted.program()
                + accepted.line().map(line -> ", line " + line).orElse(""));
      }
    }
    return unused;
  }
}
