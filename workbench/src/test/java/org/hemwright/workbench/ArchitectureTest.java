package org.hemwright.workbench;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.Random;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Holds the code to what docs/architecture.md and CONTRIBUTING.md say of it. */
class ArchitectureTest {
  private static final JavaClasses PRODUCT =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("org.hemwright");

  private static final Set<String> STRICT =
      Set.of(
          "sin", "cos", "tan", "asin", "acos", "atan", "atan2", "exp", "log", "log10", "pow",
          "cbrt", "sinh", "cosh", "tanh", "hypot", "expm1", "log1p");

  @Test
  void noTwoPackagesNeedEachOther() {
    slices().matching("org.hemwright.(**)").should().beFreeOfCycles().check(PRODUCT);
  }

  @Test
  void nothingAsksTheClock() {
    noClasses()
        .should()
        .callMethodWhere(named("now", "currentTimeMillis", "nanoTime").as("asks what time it is"))
        .orShould()
        .dependOnClassesThat()
        .belongToAnyOf(java.time.Clock.class, java.util.Date.class)
        .check(PRODUCT);
  }

  @Test
  void sinesAndTheirLikeAreTheSameOnEveryMachine() {
    noClasses()
        .should()
        .callMethodWhere(
            new DescribedPredicate<JavaAccess<?>>(
                "calls Math where StrictMath is exact everywhere") {
              @Override
              public boolean test(JavaAccess<?> access) {
                return access.getTargetOwner().isEquivalentTo(Math.class)
                    && STRICT.contains(access.getName());
              }
            })
        .check(PRODUCT);
  }

  @Test
  void chanceIsSeeded() {
    noClasses()
        .should()
        .callConstructor(Random.class)
        .orShould()
        .callConstructor(SplittableRandom.class)
        .orShould()
        .callMethodWhere(
            new DescribedPredicate<JavaAccess<?>>("draws unseeded numbers") {
              @Override
              public boolean test(JavaAccess<?> access) {
                return (access.getTargetOwner().isEquivalentTo(Math.class)
                        && access.getName().equals("random"))
                    || access
                        .getTargetOwner()
                        .getName()
                        .equals("java.util.concurrent.ThreadLocalRandom");
              }
            })
        .check(PRODUCT);
  }

  @Test
  void onlyTheDoorsTouchFiles() {
    noClasses()
        .that(
            not(
                resideInAnyPackage(
                    "org.hemwright.workbench.folder",
                    "org.hemwright.workbench.out",
                    "org.hemwright.workbench.again")))
        .should()
        .dependOnClassesThat()
        .belongToAnyOf(
            java.nio.file.Files.class, java.io.File.class, java.io.FileOutputStream.class)
        .orShould()
        .dependOnClassesThat()
        .resideInAnyPackage("java.net..", "javax.net..")
        .check(PRODUCT);
  }

  @Test
  void drawingsKnowNothingOfFormatsNorFormatsOfSewing() {
    noClasses()
        .that()
        .resideInAnyPackage(
            "org.hemwright.paper.pdf", "org.hemwright.paper.svg", "org.hemwright.paper.png")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("org.hemwright.pattern..")
        .check(PRODUCT);
    noClasses()
        .that(resideInAnyPackage("org.hemwright.draft.syntax.."))
        .should()
        .dependOnClassesThat()
        .resideInAPackage("org.hemwright.draft.plan..")
        .check(PRODUCT);
  }

  private static DescribedPredicate<JavaAccess<?>> named(String... names) {
    Set<String> wanted = Set.of(names);
    return new DescribedPredicate<>("is called one of " + wanted) {
      @Override
      public boolean test(JavaAccess<?> access) {
        return wanted.contains(access.getName())
            && access.getTargetOwner().getPackageName().startsWith("java.");
      }
    };
  }
}
