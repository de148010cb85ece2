package org.hemwright.cli;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.plantuml.rules.PlantUmlArchCondition.Configuration.consideringOnlyDependenciesInDiagram;
import static com.tngtech.archunit.library.plantuml.rules.PlantUmlArchCondition.adhereToPlantUmlDiagram;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/**
 * The arrows between all modules, asked here since only the command line has all of them beside it;
 * and what the command line is: a door, with arguments, progress and exit codes.
 */
class ArrowsTest {
  private static final ClassFileImporter IMPORTER =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .withImportOption(place -> !place.contains("/bench/"));

  private static final JavaClasses PROGRAM = IMPORTER.importPackages("org.hemwright");
  private static final JavaClasses DOOR = IMPORTER.importPackages("org.hemwright.cli");

  @Test
  void everyModuleIsLookedAt() {
    Set<String> modules = new TreeSet<>();
    for (JavaClass each : PROGRAM) {
      modules.add(each.getPackageName().replaceFirst("org\\.hemwright\\.(\\w+).*", "$1"));
    }
    assertThat(modules)
        .containsExactly(
            "booklet",
            "checks",
            "cli",
            "cloth",
            "draft",
            "exchange",
            "geometry",
            "paper",
            "pattern",
            "workbench",
            "workroom");
  }

  @Test
  void thePictureOfTheModulesIsTrue() {
    classes()
        .should(
            adhereToPlantUmlDiagram(
                Path.of("../docs/architecture.puml"), consideringOnlyDependenciesInDiagram()))
        .check(PROGRAM);
  }

  @Test
  void noClassIsNamedForWantOfAName() {
    noClasses()
        .should()
        .haveNameMatching(".*(Util|Utils|Manager|Impl|Helper|Helpers)")
        .check(PROGRAM);
  }

  @Test
  void everyPackageSaysWhatItIs() {
    Set<String> packages = new TreeSet<>();
    Set<String> described = new TreeSet<>();
    for (JavaClass each : PROGRAM) {
      if (each.getSimpleName().equals("package-info")) {
        described.add(each.getPackageName());
        assertThat(each.isAnnotatedWith("org.jspecify.annotations.NullMarked"))
            .as(each.getPackageName() + " is @NullMarked")
            .isTrue();
      } else {
        packages.add(each.getPackageName());
      }
    }
    assertThat(described).containsAll(packages);
  }

  @Test
  void filesAreWrittenByTheWorkbenchAlone() {
    noClasses()
        .should()
        .dependOnClassesThat()
        .belongToAnyOf(java.nio.file.Files.class, java.io.File.class)
        .check(DOOR);
  }
}
