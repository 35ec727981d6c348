package flankfit.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Place;
import flankfit.finding.Severity;
import flankfit.gauge.GaugeAnswer;
import flankfit.gauge.OffsetAdvice;
import flankfit.gauge.ThreadAnswer;
import flankfit.odds.Estimate;
import flankfit.odds.GaugingAdvice;
import flankfit.odds.Observation;
import flankfit.odds.PartObserved;
import flankfit.unit.LengthUnit;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The log of a batch: one JSON line {@code flankfit/part/1} for each thread of a part, lengths in
 * millimetres. Lines are only ever added, whole and under a lock; nothing is rewritten or deleted.
 */
final class PartLog {
  private static final String SCHEMA = "flankfit/part/1";
  private static final int DECIMALS = 9;

  private final Path file;
  private final String program;
  private final Map<String, List<PartObserved>> parts = new LinkedHashMap<>();
  private final List<Finding> findings = new ArrayList<>();
  private final List<String> assumptions = new ArrayList<>();
  private int last;

  private PartLog(Path file, String program) {
    this.file = file;
    this.program = program;
  }

  /**
   * One line to be written.
   *
   * @param thread the thread
   * @param part what was seen
   * @param date date of the part, as given
   * @param advice what is believed after it
   */
  record Line(
      ThreadAnswer thread, PartObserved part, Optional<String> date, GaugingAdvice advice) {}

  /**
   * Reads a log; one that does not exist yet holds nothing.
   *
   * @throws RequestException if it cannot be read, or belongs to another program or thread
   */
  static PartLog read(Path file, String program, GaugeAnswer gauged) throws RequestException {
    Path name = Path.of(program).getFileName();
    PartLog log = new PartLog(file, name == null ? program : name.toString());
    if (!Files.exists(file)) {
      return log;
    }
    String text;
    try {
      text = Files.readString(file);
    } catch (IOException e) {
      throw RequestException.wrong(
          Finding.of(
              Code.RQ02,
              Place.file(file.toString()),
              "log " + file + " cannot be read",
              e.toString(),
              "check the file's rights; it is UTF-8 text"));
    }
    List<String> lines = List.of(text.split("\n", -1));
    for (int i = 0; i < lines.size(); i++) {
      boolean torn = i == lines.size() - 1 && !text.endsWith("\n");
      if (!lines.get(i).isBlank()) {
        log.line(lines.get(i), i + 1, torn, gauged);
      }
    }
    return log;
  }

  private void line(String text, int number, boolean torn, GaugeAnswer gauged)
      throws RequestException {
    try {
      entry(new ObjectMapper().readTree(text), number, gauged);
    } catch (JsonProcessingException e) {
      unreadable(number, torn, "it is no JSON");
    } catch (IllegalArgumentException e) {
      unreadable(number, torn, String.valueOf(e.getMessage()));
    }
  }

  private void unreadable(int number, boolean torn, String why) {
    if (torn) {
      assumptions.add(
          "the last line of the log, " + number + ", is torn: it is left as it is, and skipped");
      return;
    }
    findings.add(
        new Finding(
            Code.RQ07,
            Severity.WARNING,
            new Place(file.toString(), number, 0, 0),
            "line " + number + " of the log is skipped",
            why,
            "mend the line by hand, or leave it so"));
  }

  private void entry(JsonNode node, int number, GaugeAnswer gauged) throws RequestException {
    String schema = text(node, "schema");
    if (!schema.equals(SCHEMA)) {
      throw new IllegalArgumentException("it is of the shape \"" + schema + "\"");
    }
    JsonNode part = node.path("part");
    JsonNode wear = node.path("wear");
    if (!part.isInt() || part.asInt() < 1 || !wear.isNumber()) {
      throw new IllegalArgumentException("it lacks a part from 1 or a wear");
    }
    List<Observation> observed = new ArrayList<>();
    for (JsonNode seen : node.path("observed")) {
      observed.add(Observation.of(seen.asText(), LengthUnit.MILLIMETRE));
    }
    String hole = text(node, "hole");
    fits(number, "program", text(node, "program"), program);
    ThreadAnswer thread = thread(number, hole, gauged);
    fits(number, "thread", text(node, "thread"), thread.designation());
    fits(number, "register", text(node, "register"), register(thread));
    last = Math.max(last, part.asInt());
    parts
        .computeIfAbsent(hole, h -> new ArrayList<>())
        .add(new PartObserved(part.asInt(), wear.asDouble(), observed));
  }

  private static String text(JsonNode node, String key) {
    JsonNode value = node.path(key);
    if (!value.isTextual()) {
      throw new IllegalArgumentException("it lacks \"" + key + "\"");
    }
    return value.asText();
  }

  private ThreadAnswer thread(int number, String hole, GaugeAnswer gauged) throws RequestException {
    List<String> holes = gauged.threads().stream().map(ThreadAnswer::hole).toList();
    if (!holes.contains(hole)) {
      throw other(number, "hole", hole, String.join(", ", holes));
    }
    return gauged.threads().get(holes.indexOf(hole));
  }

  private void fits(int number, String what, String there, String here) throws RequestException {
    if (!there.equals(here)) {
      throw other(number, what, there, here);
    }
  }

  private RequestException other(int number, String what, String there, String here) {
    return RequestException.wrong(
        Finding.of(
            Code.RQ07,
            new Place(file.toString(), number, 0, 0),
            "the log holds parts of another " + what + ": " + there,
            "this one is " + (here.isEmpty() ? "none" : here) + "; nothing is written",
            "name the log of this program, or a file that does not exist yet"));
  }

  private static String register(ThreadAnswer thread) {
    return thread.offset().map(OffsetAdvice::register).orElse("none");
  }

  /** What was seen in a hole, in the order of the log. */
  List<PartObserved> of(String hole) {
    return parts.getOrDefault(hole, List.of());
  }

  /** Number of the part after the last. */
  int next() {
    return last + 1;
  }

  List<Finding> findings() {
    return findings;
  }

  List<String> assumptions() {
    return assumptions;
  }

  /**
   * Adds lines at the end: all of them in one write under a lock, safe on the disk before this
   * returns. After a torn line they begin on a line of their own.
   */
  void add(List<Line> lines) throws RequestException {
    if (lines.isEmpty()) {
      return;
    }
    StringBuilder text = new StringBuilder();
    for (Line line : lines) {
      text.append(json(line)).append('\n');
    }
    try (FileChannel channel =
            FileChannel.open(
                file,
                StandardOpenOption.CREATE,
                StandardOpenOption.READ,
                StandardOpenOption.WRITE);
        FileLock lock = channel.lock()) {
      if (!lock.isValid()) {
        throw new IOException("the lock was lost");
      }
      long end = channel.size();
      String whole = (endsLine(channel, end) ? "" : "\n") + text;
      ByteBuffer bytes = ByteBuffer.wrap(whole.getBytes(StandardCharsets.UTF_8));
      channel.position(end);
      while (bytes.hasRemaining()) {
        channel.write(bytes);
      }
      channel.force(true);
    } catch (IOException e) {
      throw RequestException.wrong(
          Finding.of(
              Code.RQ03,
              Place.file(file.toString()),
              "log " + file + " cannot be written",
              e.toString(),
              "check the folder's rights and the space left"));
    }
  }

  private static boolean endsLine(FileChannel channel, long end) throws IOException {
    if (end == 0) {
      return true;
    }
    ByteBuffer one = ByteBuffer.allocate(1);
    return channel.read(one, end - 1) == 1 && one.get(0) == '\n';
  }

  private String json(Line line) {
    ObjectNode node = new ObjectMapper().createObjectNode();
    node.put("schema", SCHEMA);
    node.put("part", line.part().part());
    line.date().ifPresent(date -> node.put("date", date));
    node.put("program", program);
    node.put("hole", line.thread().hole());
    node.put("thread", line.thread().designation());
    node.put("register", register(line.thread()));
    node.put("wear", plain(line.part().wear()));
    ArrayNode observed = node.putArray("observed");
    line.part().observations().forEach(seen -> observed.add(seen.text()));
    ObjectNode believed = node.putObject("believed");
    Estimate pitch = line.advice().pitch();
    believed.put("pitch", plain(pitch.value()));
    believed.put("pitchDeviation", plain(pitch.deviation()));
    believed.put("good", plain(line.advice().asItIs().good()));
    return node.toString();
  }

  /** A number to 1e-9 without an exponent. */
  private static BigDecimal plain(double value) {
    BigDecimal rounded =
        BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_EVEN).stripTrailingZeros();
    return rounded.scale() < 0 ? rounded.setScale(0, RoundingMode.UNNECESSARY) : rounded;
  }
}
