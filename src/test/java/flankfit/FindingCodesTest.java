package flankfit;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaFieldAccess;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import flankfit.finding.Code;
import flankfit.finding.CodePage;
import flankfit.finding.CodePages;
import flankfit.finding.Finding;
import flankfit.finding.Severity;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Every code is listed once, explained, raised by the case of its page, and emitted by a class. */
class FindingCodesTest {
  private static final Path PAGES = Path.of("src/main/resources/flankfit/finding/pages");

  /** Notes that say how something is read or cut: there is nothing to mend. */
  private static final Set<Code> NOTHING_TO_MEND =
      EnumSet.of(Code.TH03, Code.TH12, Code.GA05, Code.AS02, Code.AS04);

  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("flankfit");

  /** Requests are tried as processes. */
  static Stream<Code> codesOfPrograms() {
    return Arrays.stream(Code.values()).filter(code -> !code.name().startsWith("RQ"));
  }

  @Test
  void every_code_and_every_name_in_words_is_listed_once() {
    assertThat(Code.values()).extracting(Code::inWords).doesNotHaveDuplicates();
    assertThat(Code.values())
        .allSatisfy(
            code -> {
              assertThat(code.name()).matches("[A-Z]{2}[0-9]{2}");
              assertThat(code.inWords()).matches("[a-z0-9]+(-[a-z0-9]+)*");
            });
    List<String> families = new ArrayList<>();
    for (Code code : Code.values()) {
      String family = code.name().substring(0, 2);
      if (families.isEmpty() || !families.get(families.size() - 1).equals(family)) {
        families.add(family);
      }
    }
    assertThat(families).as("families stand together").doesNotHaveDuplicates();
  }

  @Test
  void every_page_belongs_to_a_code() throws Exception {
    try (Stream<Path> pages = Files.list(PAGES)) {
      List<String> names = pages.map(page -> page.getFileName().toString()).sorted().toList();
      assertThat(names)
          .containsExactlyInAnyOrderElementsOf(
              Arrays.stream(Code.values()).map(code -> code.name() + ".md").toList());
    }
  }

  @ParameterizedTest(name = "{0}")
  @EnumSource(Code.class)
  void page_says_what_it_means_and_how_to_mend_it(Code code) {
    CodePage page = CodePages.of(code);
    assertThat(page.meaning()).isNotBlank().endsWith(".").doesNotContain("illegal", "TODO");
    assertThat(page.mending()).isNotBlank().endsWith(".").doesNotContain("illegal", "TODO");
    boolean same = page.guilty().equals(page.mended());
    assertThat(same).as("mended").isEqualTo(NOTHING_TO_MEND.contains(code));
  }

  @Test
  void only_notes_need_no_mending() {
    assertThat(NOTHING_TO_MEND).extracting(Code::severity).containsOnly(Severity.NOTE);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("codesOfPrograms")
  void case_of_the_page_raises_its_code(Code code) {
    List<Finding> findings = CaseRun.of(code, CodePages.of(code).guilty());
    assertThat(findings).as("%s", findings).extracting(Finding::code).contains(code);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("codesOfPrograms")
  void mended_case_does_not_raise_it_and_has_no_error(Code code) {
    if (!NOTHING_TO_MEND.contains(code)) {
      List<Finding> findings = CaseRun.of(code, CodePages.of(code).mended());
      assertThat(findings).extracting(Finding::code).doesNotContain(code);
      assertThat(findings)
          .as("%s", findings)
          .extracting(Finding::severity)
          .doesNotContain(Severity.ERROR);
    }
  }

  @ParameterizedTest(name = "{0}")
  @EnumSource(Code.class)
  void code_is_emitted_by_a_class(Code code) {
    Set<JavaFieldAccess> accesses =
        CLASSES.get(Code.class).getField(code.name()).getAccessesToSelf();
    assertThat(accesses)
        .as("code that uses %s", code)
        .anyMatch(access -> isEmitter(access.getOriginOwner().getName()));
  }

  /** The list of codes itself, and tables that the compiler makes for switches, emit nothing. */
  private static boolean isEmitter(String name) {
    return !name.equals(Code.class.getName()) && !name.matches(".*\\$[0-9]+");
  }
}
