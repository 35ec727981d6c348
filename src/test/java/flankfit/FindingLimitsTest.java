package flankfit;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.finding.Code;
import flankfit.finding.CodePage;
import flankfit.finding.CodePages;
import flankfit.finding.Finding;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every code has a program that just does not raise it: on the other side of its limit where it has
 * one, else its mended case, which differs from the guilty one in little.
 */
class FindingLimitsTest {
  /** Lines in which a mended case may differ where no limit shows how near it comes. */
  private static final int LITTLE = 4;

  /** Cases that are mended by a tool more or less in the sheet. */
  private static final Set<Code> BY_A_TOOL = EnumSet.of(Code.RC16, Code.GA04);

  /** Words of a page that tell a limit. */
  private static final Pattern TELLS_LIMIT =
      Pattern.compile(
          "(from|than|below|above|within) ((half|a) a? ?)?[0-9][0-9.]* (mm|mm/min|degrees)");

  /**
   * One limit.
   *
   * @param code the code
   * @param inSheet whether the place is in the sheet
   * @param place what is written otherwise
   * @param raises what just raises the code
   * @param silent what just does not
   * @param limit the limit, in words
   */
  record Limit(
      Code code, boolean inSheet, String place, String raises, String silent, String limit) {
    CodePage.Case with(String words) {
      CodePage.Case shown = CodePages.of(code).guilty();
      Optional<String> text = inSheet ? shown.sheet() : shown.program();
      String changed = Pattern.compile(place).matcher(text.orElseThrow()).replaceAll(words);
      assertThat(changed)
          .as("%s is in the case of %s", place, code)
          .matches(t -> Pattern.compile(place).matcher(text.orElseThrow()).find());
      return new CodePage.Case(
          shown.request(),
          inSheet ? Optional.of(changed) : shown.sheet(),
          inSheet ? shown.program() : Optional.of(changed));
    }
  }

  static Stream<Limit> limits() {
    try (InputStream in =
        FindingLimitsTest.class.getResourceAsStream("/flankfit/finding/limits.txt")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
              .lines()
              .filter(line -> !line.startsWith("#"))
              .map(FindingLimitsTest::limit)
              .toList()
              .stream();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Limit limit(String line) {
    List<String> cells = Arrays.stream(line.split("\\|", -1)).map(String::strip).toList();
    return new Limit(
        Code.valueOf(cells.get(0)),
        cells.get(1).equals("S"),
        cells.get(2),
        words(cells.get(3)),
        words(cells.get(4)),
        cells.get(5));
  }

  /** A line break is written \n, and x{20} stands for twenty of them. */
  private static String words(String cell) {
    String broken = cell.replace("\\n", "\n");
    int brace = broken.indexOf('{');
    return brace < 0
        ? broken
        : broken
            .substring(0, brace)
            .repeat(Integer.parseInt(broken.substring(brace + 1, broken.length() - 1)));
  }

  @ParameterizedTest
  @MethodSource("limits")
  void both_sides_of_a_limit(Limit limit) {
    assertThat(codes(limit.code(), limit.with(limit.raises())))
        .as("%s: %s", limit.raises(), limit.limit())
        .contains(limit.code());
    assertThat(codes(limit.code(), limit.with(limit.silent())))
        .as("%s: %s", limit.silent(), limit.limit())
        .doesNotContain(limit.code());
  }

  private static Set<Code> codes(Code code, CodePage.Case shown) {
    // What a shank meets is looked for on the path as moved only.
    List<Finding> findings =
        code == Code.TH17 ? CaseRun.of(code, shown) : CaseRun.endless(code, shown);
    return findings.stream()
        .map(Finding::code)
        .collect(Collectors.toCollection(() -> EnumSet.noneOf(Code.class)));
  }

  @Test
  void page_that_tells_a_limit_has_both_sides_of_it_here() {
    Set<Code> here = limits().map(Limit::code).collect(Collectors.toSet());
    for (Code code : Code.values()) {
      String meaning = CodePages.of(code).meaning().replace('\n', ' ');
      if (TELLS_LIMIT.matcher(meaning).find()) {
        assertThat(here).as("%s: %s", code, meaning).contains(code);
      }
    }
  }

  @ParameterizedTest
  @EnumSource(Code.class)
  void mended_case_without_a_limit_differs_in_little(Code code) {
    if (limits().noneMatch(limit -> limit.code() == code) && !BY_A_TOOL.contains(code)) {
      CodePage page = CodePages.of(code);
      int apart =
          apart(page.guilty().sheet(), page.mended().sheet())
              + apart(page.guilty().program(), page.mended().program());
      assertThat(apart).isLessThanOrEqualTo(LITTLE);
    }
  }

  /** Lines of two texts that do not stand in both, the longer count. */
  private static int apart(Optional<String> a, Optional<String> b) {
    List<String> one = a.orElse("").lines().toList();
    List<String> two = b.orElse("").lines().toList();
    int[][] common = new int[one.size() + 1][two.size() + 1];
    for (int i = one.size() - 1; i >= 0; i--) {
      for (int j = two.size() - 1; j >= 0; j--) {
        common[i][j] =
            one.get(i).equals(two.get(j))
                ? 1 + common[i + 1][j + 1]
                : Math.max(common[i + 1][j], common[i][j + 1]);
      }
    }
    return IntStream.of(one.size(), two.size()).max().orElseThrow() - common[0][0];
  }
}
