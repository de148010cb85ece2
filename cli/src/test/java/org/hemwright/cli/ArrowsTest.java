package org.hemwright.cli;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.plantuml.rules.PlantUmlArchCondition.Configuration.consideringOnlyDependenciesInDiagram;
import static com.tngtech.archunit.library.plantuml.rules.PlantUmlArchCondition.adhereToPlantUmlDiagram;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The command line is a door: arguments, progress and exit codes, no drafting and no drawing. */
class ArrowsTest {
  private static final JavaClasses DOOR =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("org.hemwright.cli");

  @Test
  void thePictureOfTheModulesIsTrue() {
    classes()
        .should(
            adhereToPlantUmlDiagram(
                Path.of("../docs/architecture.puml"), consideringOnlyDependenciesInDiagram()))
        .check(DOOR);
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
