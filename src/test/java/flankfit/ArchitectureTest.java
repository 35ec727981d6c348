package flankfit;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.library.Architectures.LayeredArchitecture;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The order of the packages: a white list, strictly downward. */
class ArchitectureTest {
  /** Every package and what it may use; a package that is not here fails the test. */
  private static final Map<String, List<String>> MAY_USE = new LinkedHashMap<>();

  static {
    MAY_USE.put("finding", List.of());
    MAY_USE.put("unit", List.of());
    MAY_USE.put("nc", List.of("unit", "finding"));
    MAY_USE.put("standard", List.of("unit"));
    MAY_USE.put("motion", List.of("unit"));
    MAY_USE.put("chance", List.of("unit"));
    MAY_USE.put("setup", List.of("standard", "motion", "unit", "finding"));
    MAY_USE.put("control", List.of("nc", "motion", "setup", "unit", "finding"));
    MAY_USE.put("trace", List.of("control", "nc", "motion", "setup", "unit", "finding"));
    MAY_USE.put("lesson", List.of("trace", "control", "nc", "motion", "setup", "unit", "finding"));
    MAY_USE.put("sweep", List.of("motion", "setup", "standard", "unit"));
    MAY_USE.put("solid", List.of("unit", "finding"));
    MAY_USE.put(
        "metal", List.of("solid", "sweep", "motion", "setup", "standard", "unit", "finding"));
    MAY_USE.put("cutting", List.of("motion", "setup", "unit"));
    MAY_USE.put(
        "gauge", List.of("sweep", "cutting", "standard", "motion", "setup", "unit", "finding"));
    MAY_USE.put(
        "odds",
        List.of("gauge", "chance", "sweep", "standard", "motion", "setup", "unit", "finding"));
    MAY_USE.put(
        "check",
        List.of(
            "metal",
            "solid",
            "gauge",
            "control",
            "sweep",
            "cutting",
            "nc",
            "standard",
            "motion",
            "setup",
            "unit",
            "finding"));
    MAY_USE.put(
        "draft",
        List.of(
            "check",
            "metal",
            "solid",
            "gauge",
            "control",
            "sweep",
            "cutting",
            "nc",
            "standard",
            "motion",
            "setup",
            "unit",
            "finding"));
    MAY_USE.put(
        "picture",
        List.of(
            "lesson",
            "solid",
            "check",
            "gauge",
            "control",
            "sweep",
            "nc",
            "standard",
            "motion",
            "setup",
            "unit",
            "finding"));
    MAY_USE.put("paper", List.of("picture"));
    MAY_USE.put(
        "window",
        List.of(
            "metal",
            "solid",
            "lesson",
            "picture",
            "trace",
            "check",
            "odds",
            "gauge",
            "control",
            "sweep",
            "cutting",
            "nc",
            "standard",
            "motion",
            "setup",
            "unit",
            "finding"));
    MAY_USE.put(
        "cli",
        List.of(
            "draft",
            "metal",
            "solid",
            "lesson",
            "window",
            "paper",
            "picture",
            "trace",
            "check",
            "odds",
            "gauge",
            "control",
            "sweep",
            "cutting",
            "nc",
            "standard",
            "motion",
            "setup",
            "unit",
            "finding"));
  }

  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("flankfit");

  @Test
  void sees_the_classes_of_the_product() {
    assertThat(CLASSES.size()).isGreaterThan(150);
  }

  @Test
  void packages_use_only_what_stands_below_them() {
    LayeredArchitecture rule = layeredArchitecture().consideringOnlyDependenciesInLayers();
    for (String name : MAY_USE.keySet()) {
      rule = rule.layer(name).definedBy("flankfit." + name + "..");
    }
    for (Map.Entry<String, List<String>> entry : MAY_USE.entrySet()) {
      List<String> below = entry.getValue();
      rule =
          below.isEmpty()
              ? rule.whereLayer(entry.getKey()).mayNotAccessAnyLayer()
              : rule.whereLayer(entry.getKey()).mayOnlyAccessLayers(below.toArray(new String[0]));
    }
    rule.ensureAllClassesAreContainedInArchitectureIgnoring("flankfit")
        .because("data flows one way, so that each part can be understood and tested alone")
        .check(CLASSES);
  }

  @Test
  void there_are_no_cycles() {
    slices()
        .matching("flankfit.(*)..")
        .should()
        .beFreeOfCycles()
        .because("a cycle makes two packages one")
        .check(CLASSES);
  }

  @Test
  void only_pictures_and_the_window_know_the_graphics_libraries() {
    noClasses()
        .that()
        .resideOutsideOfPackages("flankfit.picture..", "flankfit.window..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("org.lwjgl..", "imgui..", "org.joml..")
        .because("everything else must work where there is no OpenGL")
        .check(CLASSES);
  }

  @Test
  void only_the_command_line_knows_its_library_and_the_standard_streams() {
    noClasses()
        .that()
        .resideOutsideOfPackage("flankfit.cli..")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("picocli..")
        .because("the product is usable without a command line")
        .check(CLASSES);
    noClasses()
        .that()
        .resideOutsideOfPackage("flankfit.cli..")
        .should()
        .accessField(System.class, "out")
        .orShould()
        .accessField(System.class, "err")
        .orShould()
        .callMethod(System.class, "exit", int.class)
        .because("answers are values; one place writes them and one place ends the process")
        .check(CLASSES);
  }

  @Test
  void only_papers_and_their_drawings_know_the_library_for_pdf() {
    noClasses()
        .that()
        .resideOutsideOfPackage("flankfit.paper..")
        .and()
        .haveNameNotMatching("flankfit\\.picture\\.Pdf.*")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("org.apache.pdfbox..", "org.apache.fontbox..")
        .because("nobody who asks for no PDF shall load it")
        .check(CLASSES);
  }

  @Test
  void only_the_borders_know_json_and_toml() {
    noClasses()
        .that()
        .resideOutsideOfPackages("flankfit.setup..", "flankfit.window..", "flankfit.cli..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("com.fasterxml..", "org.tomlj..")
        .because("file formats are met where text is read or written")
        .check(CLASSES);
  }
}
