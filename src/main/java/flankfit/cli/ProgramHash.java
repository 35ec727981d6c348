package flankfit.cli;

import flankfit.nc.SourceText;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;

/** What tells one text of a program from every other. */
final class ProgramHash {
  private ProgramHash() {}

  /** SHA-256 of the program and the files with its subprograms, one after the other. */
  static String of(ProgramOptions.Job job) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      List<SourceText> texts = new ArrayList<>(List.of(job.text()));
      texts.addAll(job.subprograms());
      texts.forEach(text -> digest.update(text.toBytes()));
      String of = texts.size() == 1 ? "" : " (program and " + (texts.size() - 1) + " more)";
      return HexFormat.of().formatHex(digest.digest()) + of;
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }

  /** The line below each page of a paper about a program. */
  static String footer(ProgramOptions.Job job) {
    return "Flankfit "
        + Version.packaged().orElse("(not packaged)")
        + ", "
        + job.interpretation().file().replaceFirst(".*[/\\\\]", "")
        + ", SHA-256 "
        + of(job);
  }
}
