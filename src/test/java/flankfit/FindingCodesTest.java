package flankfit;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaFieldAccess;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import flankfit.check.MetalCheck;
import flankfit.check.ProgramCheck;
import flankfit.control.Interpretation;
import flankfit.control.Interpreter;
import flankfit.finding.Code;
import flankfit.finding.CodePage;
import flankfit.finding.CodePages;
import flankfit.finding.Finding;
import flankfit.finding.Severity;
import flankfit.gauge.GaugeAnswer;
import flankfit.gauge.GaugeRequest;
import flankfit.gauge.ThreadGauging;
import flankfit.metal.Metal;
import flankfit.metal.MetalOptions;
import flankfit.metal.MetalProgress;
import flankfit.metal.TooFineException;
import flankfit.nc.SourceText;
import flankfit.odds.Observation;
import flankfit.odds.OddsAnswers;
import flankfit.odds.OddsRequest;
import flankfit.odds.PartObserved;
import flankfit.setup.SetupReader;
import flankfit.setup.SetupSheet;
import flankfit.setup.SheetReading;
import flankfit.setup.Tool;
import flankfit.unit.LengthUnit;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
    List<Finding> findings = run(code, CodePages.of(code).guilty());
    assertThat(findings).as("%s", findings).extracting(Finding::code).contains(code);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("codesOfPrograms")
  void mended_case_does_not_raise_it_and_has_no_error(Code code) {
    if (!NOTHING_TO_MEND.contains(code)) {
      List<Finding> findings = run(code, CodePages.of(code).mended());
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

  /** What is found in a case: by the sheet's reader, else by the control, the rules and gauging. */
  private static List<Finding> run(Code code, CodePage.Case shown) {
    SetupSheet sheet = SetupSheet.empty();
    List<Finding> findings = new ArrayList<>();
    if (shown.sheet().isPresent()) {
      SheetReading reading = SetupReader.read("page.setup.toml", shown.sheet().get());
      findings.addAll(reading.findings());
      sheet = reading.sheet().orElse(sheet);
    }
    if (shown.program().isPresent()) {
      Interpretation done =
          Interpreter.interpret(SourceText.of("page.nc", shown.programBytes()), sheet);
      findings.addAll(done.findings());
      findings.addAll(ProgramCheck.findings(done, sheet));
      // Only hazards are found in the metal, and cutting it takes longest.
      if (sheet.stock().isPresent() && code.name().startsWith("HZ")) {
        findings.addAll(ofMetal(done, sheet));
      }
      if (isAboutThreads(sheet)) {
        findings.addAll(gauged(shown, done, sheet));
      }
    }
    return findings;
  }

  private static List<Finding> ofMetal(Interpretation done, SetupSheet sheet) {
    MetalOptions coarse = MetalOptions.usual().withCell(2);
    try {
      Metal metal = Metal.of(done.tape(), sheet, coarse, MetalProgress.NONE);
      return MetalCheck.of(done, sheet, metal, done.tape().size()).findings();
    } catch (TooFineException e) {
      throw new IllegalStateException(e);
    }
  }

  private static List<Finding> gauged(CodePage.Case shown, Interpretation done, SetupSheet sheet) {
    SourceText text = SourceText.of("page.nc", shown.programBytes());
    GaugeRequest request =
        new GaugeRequest(
            "page.nc",
            done.tape(),
            sheet,
            offsets ->
                Optional.of(
                    Interpreter.replay(text, sheet.withOffsets(offsets), List.of()).tape()));
    GaugeAnswer answer = ThreadGauging.gauge(request);
    List<Finding> findings = new ArrayList<>(answer.findings());
    List<Observation> seen = observed(shown.request().orElse(""));
    if (!seen.isEmpty()) {
      String hole = answer.threads().get(0).hole();
      List<PartObserved> part = List.of(new PartObserved(1, -0.045, seen));
      OddsRequest odds = OddsRequest.of(Map.of(hole, part));
      findings.addAll(OddsAnswers.of("page.nc", answer, sheet, odds).findings());
    }
    return findings;
  }

  /** The words after --observed of a page's request. */
  private static List<Observation> observed(String request) {
    List<String> words = List.of(request.strip().split("\\s+"));
    List<Observation> seen = new ArrayList<>();
    for (int i = 1; i < words.size(); i++) {
      if (words.get(i - 1).equals("--observed")) {
        seen.add(Observation.of(words.get(i), LengthUnit.MILLIMETRE));
      }
    }
    return seen;
  }

  private static boolean isAboutThreads(SetupSheet sheet) {
    return sheet.holes().stream().anyMatch(hole -> hole.thread().isPresent())
        || sheet.tools().stream().anyMatch(tool -> tool.kind() == Tool.Kind.THREAD_MILL);
  }
}
