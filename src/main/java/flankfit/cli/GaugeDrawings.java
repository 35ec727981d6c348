package flankfit.cli;

import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Place;
import flankfit.gauge.RealAnswer;
import flankfit.gauge.RegisterSweep;
import flankfit.gauge.ThreadAnswer;
import flankfit.odds.OddsAnswer;
import flankfit.picture.Diagram;
import flankfit.picture.DiagramFile;
import flankfit.picture.LadderPicture;
import flankfit.picture.NoOpenGlException;
import flankfit.picture.SectionPicture;
import flankfit.picture.SweepPicture;
import flankfit.picture.WallPicture;
import flankfit.sweep.RegularThread;
import flankfit.unit.LengthUnit;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Which drawings of one thread are made, and where to. */
final class GaugeDrawings {
  @Option(
      names = "--ladder",
      paramLabel = "FILE.png|svg",
      description =
          "draws the tolerance ladder: limits, gauges, each pass as a rung; with --odds the spread"
              + " of a batch")
  private Optional<Path> ladder = Optional.empty();

  @Option(
      names = "--section",
      paramLabel = "FILE.png|svg",
      description =
          "draws the section through the thread's axis with limits and GO gauge, its flanks"
              + " magnified beside it")
  private Optional<Path> section = Optional.empty();

  @Option(
      names = "--wall",
      paramLabel = "FILE.png|svg",
      description =
          "draws the wall unrolled: its depth, and where it departs from the endless helix")
  private Optional<Path> wall = Optional.empty();

  @Option(names = "--chart", paramLabel = "FILE.png|svg", description = "draws what --sweep finds")
  private Optional<Path> chart = Optional.empty();

  @Option(
      names = "--hole",
      paramLabel = "NAME",
      description = "the hole or boss that is drawn (default: the first thread)")
  private Optional<String> hole = Optional.empty();

  @Mixin private PictureOptions picture = new PictureOptions();

  private Stream<Path> files() {
    return Stream.of(ladder, section, wall, chart).flatMap(Optional::stream);
  }

  boolean asked() {
    return files().findAny().isPresent();
  }

  /**
   * Refuses what cannot be written, before any work is done.
   *
   * @throws RequestException if a file's ending or folder is wrong, or a chart has nothing to show
   */
  void check(boolean sweeps, Path... inputs) throws RequestException {
    for (Path file : files().toList()) {
      if (!isSvg(file) && !hasEnding(file, ".png")) {
        throw wrong(
            "picture " + file + " has neither ending .png nor .svg",
            "the ending says how it is written",
            "name it " + file + ".png");
      }
      OutputFile.check(file, inputs);
    }
    if (chart.isPresent() && !sweeps) {
      throw wrong(
          "--chart has nothing to draw",
          "it draws what --sweep finds",
          "add --sweep, such as --sweep D4=-0.05:0.05:0.005");
    }
    picture.ofDiagram();
  }

  private static boolean isSvg(Path file) {
    return hasEnding(file, ".svg");
  }

  private static boolean hasEnding(Path file, String ending) {
    return file.toString().toLowerCase(Locale.ROOT).endsWith(ending);
  }

  /**
   * Draws what is asked for.
   *
   * @return the files written
   * @throws RequestException if there is no such thread, or a picture cannot be made
   */
  List<Path> draw(
      List<ThreadAnswer> threads,
      Optional<OddsAnswer> odds,
      Optional<RegisterSweep> sweep,
      LengthUnit unit)
      throws RequestException {
    List<Path> written = new ArrayList<>();
    if (!asked()) {
      return written;
    }
    ThreadAnswer thread = thread(threads);
    PictureOptions.Pixels size = PictureOptions.layout(picture.ofDiagram());
    if (ladder.isPresent()) {
      Optional<LadderPicture.Scatter> scatter =
          odds.flatMap(o -> o.odds(thread.hole()))
              .map(o -> new LadderPicture.Scatter(o.pitchLow(), o.pitchHigh()));
      write(
          ladder.get(),
          LadderPicture.of(thread, scatter, unit, size.width(), size.height(), picture.theme()),
          written);
    }
    if (section.isPresent()) {
      RegularThread surface = thread.surface().orElseThrow(() -> nothingCut(thread));
      write(
          section.get(),
          SectionPicture.of(thread, surface, unit, size.width(), size.height(), picture.theme()),
          written);
    }
    if (wall.isPresent()) {
      RegularThread surface = thread.surface().orElseThrow(() -> nothingCut(thread));
      RealAnswer real = thread.real().orElseThrow(() -> nothingCut(thread));
      write(
          wall.get(),
          WallPicture.of(thread, real, surface, unit, size.width(), size.height(), picture.theme()),
          written);
    }
    if (chart.isPresent() && sweep.isPresent()) {
      write(
          chart.get(),
          SweepPicture.of(sweep.get(), thread, unit, size.width(), size.height(), picture.theme()),
          written);
    }
    return written;
  }

  private ThreadAnswer thread(List<ThreadAnswer> threads) throws RequestException {
    Optional<ThreadAnswer> found =
        threads.stream().filter(t -> hole.map(t.hole()::equals).orElse(true)).findFirst();
    if (found.isPresent()) {
      return found.get();
    }
    String known = threads.stream().map(ThreadAnswer::hole).collect(Collectors.joining(", "));
    throw wrong(
        hole.map(name -> "no thread is cut in " + name).orElse("there is no thread to draw"),
        known.isEmpty()
            ? "the program cuts none that the sheet wants"
            : "threads are cut in " + known,
        known.isEmpty() ? "see the findings" : "name one of them with --hole");
  }

  private static RequestException nothingCut(ThreadAnswer thread) {
    return wrong(
        "there is nothing of " + thread.hole() + " to draw",
        thread.reason(),
        "mend that first, or leave the picture out");
  }

  private void write(Path file, Diagram diagram, List<Path> written) throws RequestException {
    PictureOptions.Pixels size = picture.ofDiagram();
    try {
      OutputFile.write(
          file,
          isSvg(file)
              ? DiagramFile.svg(diagram, size.width(), size.height())
              : DiagramFile.png(diagram, size.width(), size.height()));
    } catch (NoOpenGlException e) {
      throw PictureOptions.refused(e);
    }
    written.add(file);
  }

  private static RequestException wrong(String what, String why, String fix) {
    return RequestException.wrong(Finding.of(Code.RQ04, Place.file(""), what, why, fix));
  }
}
