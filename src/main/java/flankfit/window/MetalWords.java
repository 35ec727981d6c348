package flankfit.window;

import flankfit.motion.Point;
import flankfit.motion.Tape;
import flankfit.picture.Figures;
import flankfit.setup.Hole;
import flankfit.solid.Crossing;
import flankfit.unit.LengthUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The metal in words and figures. */
final class MetalWords {
  /** So near to a hole's axis a place is told by its distance from it (diameters). */
  private static final double NEAR = 1.2;

  /** Steps in which progress is told: words that change draw a frame (1). */
  private static final int PERCENT = 5;

  private final LengthUnit unit;

  MetalWords(LengthUnit unit) {
    this.unit = unit;
  }

  /** What was picked. */
  List<StateWords.Row> picked(MetalPick pick, WindowInput input, double top) {
    List<StateWords.Row> rows = new ArrayList<>();
    if (pick.isCut()) {
      rows.add(new StateWords.Row("met", "the face of the section"));
    } else if (pick.maker() == Crossing.STOCK) {
      rows.add(new StateWords.Row("made by", "no move: skin of the stock"));
    } else {
      made(pick.maker(), input, rows);
    }
    Point p = pick.place();
    double depth = top - p.z();
    rows.add(
        new StateWords.Row(
            "depth",
            depth < 0
                ? Figures.lengthWithUnit(-depth, unit) + " above the top"
                : Figures.lengthWithUnit(depth, unit) + " below the top"));
    rows.add(
        new StateWords.Row(
            "place",
            "X "
                + Figures.length(p.x(), unit)
                + "  Y "
                + Figures.length(p.y(), unit)
                + "  Z "
                + Figures.length(p.z(), unit)));
    near(p, input)
        .ifPresent(
            h ->
                rows.add(
                    new StateWords.Row(
                        "from axis",
                        Figures.lengthWithUnit(Math.hypot(p.x() - h.x(), p.y() - h.y()), unit)
                            + " of "
                            + h.name())));
    return rows;
  }

  private static void made(int move, WindowInput input, List<StateWords.Row> rows) {
    Tape tape = input.tape();
    int tool = tape.state(move).tool();
    String kind = input.setup().tool(tool).map(t -> " " + t.kind().word()).orElse("");
    int line = tape.line(move);
    rows.add(new StateWords.Row("made by", "T" + tool + kind + ", " + tape.kind(move).word()));
    List<String> lines = input.programLines();
    String text = line >= 1 && line <= lines.size() ? lines.get(line - 1) : "";
    rows.add(new StateWords.Row("line " + line, text));
    rows.add(
        new StateWords.Row("block", LoadWords.number(tape.block(move)) + ", Enter goes there"));
  }

  private static Optional<Hole> near(Point p, WindowInput input) {
    return input.setup().holes().stream()
        .filter(h -> Math.hypot(p.x() - h.x(), p.y() - h.y()) < NEAR * h.diameter())
        .findFirst();
  }

  /** What the picture is of, and how fine, in parts to be read one after the other. */
  List<String> shown(MetalPicture picture, boolean exactWalls) {
    int moves = picture.of().moves();
    Tape tape = picture.of().subject().tape();
    String moment =
        moves == 0
            ? "the stock before the first move"
            : moves == tape.size() ? "after the last move" : "after line " + tape.line(moves - 1);
    String cells = "cells of " + Figures.lengthWithUnit(picture.metal().cell(), unit);
    String how = exactWalls ? ", the thread's wall exact" : picture.fine() ? "" : ", coarse";
    List<String> parts = new ArrayList<>(List.of(moment, cells + how));
    coarsened(picture).ifPresent(parts::add);
    return parts;
  }

  /** That cells are coarser than wanted, so that the metal fits; empty where they are not. */
  private Optional<String> coarsened(MetalPicture picture) {
    double cell = picture.metal().cell();
    return cell > picture.asked() * (1 + 1e-9)
        ? Optional.of(
            "instead of "
                + Figures.lengthWithUnit(picture.asked(), unit)
                + ", to fit into "
                + (MetalMaker.MEMORY >> 20)
                + " MiB")
        : Optional.empty();
  }

  /** Work under way; empty while it is short. */
  String progress(MetalBench bench) {
    if (bench.isStopped()) {
      return "stopped; a step goes on";
    }
    if (!bench.isLong()) {
      return "";
    }
    return (bench.isRefining() ? "making it finer… " : "cutting… ")
        + PERCENT * (int) (100 * bench.share() / PERCENT)
        + " %   Esc stops";
  }

  /** Where a section stands. */
  String section(Sections sections, int axis) {
    return Sections.name(axis) + " " + Figures.length(sections.at(axis), unit);
  }
}
