package org.hemwright.workroom;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;

/** The workroom is a door: what is drafted and drawn comes from the workbench. */
class ArrowsTest {
  private static final JavaClasses DOOR =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("org.hemwright.workroom");

  @Test
  void noTwoPackagesNeedEachOther() {
    slices().matching("org.hemwright.workroom.(*)..").should().beFreeOfCycles().check(DOOR);
  }

  @Test
  void onlyTheKeeperTouchesFiles() {
    noClasses()
        .that(not(resideInAnyPackage("org.hemwright.workroom.keep", "org.hemwright.workroom")))
        .should()
        .dependOnClassesThat()
        .belongToAnyOf(java.nio.file.Files.class, java.io.File.class)
        .check(DOOR);
  }

  @Test
  void onlyTheServerKnowsHowItIsServed() {
    noClasses()
        .that(not(resideInAnyPackage("org.hemwright.workroom.serve")))
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("org.eclipse.jetty..", "java.net..")
        .check(DOOR);
  }

  @Test
  void nothingAsksTheClock() {
    noClasses()
        .should()
        .callMethod(System.class, "nanoTime")
        .orShould()
        .callMethod(System.class, "currentTimeMillis")
        .orShould()
        .dependOnClassesThat()
        .belongToAnyOf(java.time.Clock.class, java.time.Instant.class)
        .check(DOOR);
  }
}
