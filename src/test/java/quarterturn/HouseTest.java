package quarterturn;

import static com.google.common.truth.Truth.assertThat;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.syntax.ArchRuleDefinition;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The floors of the house: a package may use those below it, never those above. */
class HouseTest {
  /** So that the rules can't pass on nothing. */
  private static final int AT_LEAST = 80;

  private static final JavaClasses HOUSE =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("quarterturn");

  @Test
  void everyFloorUsesOnlyFloorsBelow() {
    assertThat(HOUSE.size()).isAtLeast(AT_LEAST);
    layeredArchitecture()
        .consideringOnlyDependenciesInLayers()
        .layer("unit")
        .definedBy("quarterturn.unit..")
        .layer("craft")
        .definedBy("quarterturn.craft..")
        .layer("procedure")
        .definedBy("quarterturn.procedure..")
        .layer("session")
        .definedBy("quarterturn.session..")
        .layer("rehearsal")
        .definedBy("quarterturn.rehearsal..")
        .layer("report")
        .definedBy("quarterturn.report..")
        .layer("quick")
        .definedBy("quarterturn.quick..")
        .layer("screen")
        .definedBy("quarterturn.screen..")
        .layer("line")
        .definedBy("quarterturn.line..")
        .layer("script")
        .definedBy("quarterturn.script..")
        .layer("reckon")
        .definedBy("quarterturn.reckon..")
        .layer("lesson")
        .definedBy("quarterturn.lesson..")
        .layer("command")
        .definedBy("quarterturn.command..")
        .layer("main")
        .definedBy("quarterturn")
        .whereLayer("main")
        .mayNotBeAccessedByAnyLayer()
        .whereLayer("command")
        .mayOnlyBeAccessedByLayers("main")
        .whereLayer("screen")
        .mayOnlyBeAccessedByLayers("command")
        .whereLayer("line")
        .mayOnlyBeAccessedByLayers("command")
        .whereLayer("script")
        .mayOnlyBeAccessedByLayers("command")
        .whereLayer("reckon")
        .mayOnlyBeAccessedByLayers("command")
        .whereLayer("lesson")
        .mayOnlyBeAccessedByLayers("command", "screen", "line", "script", "report")
        .whereLayer("report")
        .mayOnlyBeAccessedByLayers("command", "reckon", "screen", "line", "script")
        .whereLayer("quick")
        .mayOnlyBeAccessedByLayers("command", "screen", "line")
        .whereLayer("rehearsal")
        .mayOnlyBeAccessedByLayers(
            "command", "reckon", "screen", "line", "script", "report", "lesson")
        .whereLayer("session")
        .mayOnlyBeAccessedByLayers(
            "command",
            "reckon",
            "screen",
            "line",
            "script",
            "report",
            "quick",
            "lesson",
            "rehearsal")
        .whereLayer("procedure")
        .mayOnlyBeAccessedByLayers(
            "command",
            "reckon",
            "screen",
            "line",
            "script",
            "report",
            "quick",
            "lesson",
            "rehearsal",
            "session")
        .whereLayer("craft")
        .mayOnlyBeAccessedByLayers(
            "command",
            "reckon",
            "screen",
            "line",
            "script",
            "report",
            "lesson",
            "rehearsal",
            "session",
            "procedure")
        .check(HOUSE);
  }

  @Test
  void everyClassLivesOnAFloor() {
    Set<String> floors =
        Set.of(
            "quarterturn",
            "quarterturn.unit",
            "quarterturn.craft",
            "quarterturn.procedure",
            "quarterturn.procedure.bench",
            "quarterturn.procedure.check",
            "quarterturn.session",
            "quarterturn.rehearsal",
            "quarterturn.screen",
            "quarterturn.line",
            "quarterturn.script",
            "quarterturn.report",
            "quarterturn.quick",
            "quarterturn.reckon",
            "quarterturn.lesson",
            "quarterturn.command");
    for (JavaClass type : HOUSE) {
      assertThat(floors).contains(type.getPackageName());
    }
  }

  @Test
  void onlyFacesAndCommandsKnowATerminal() {
    ArchRuleDefinition.noClasses()
        .that()
        .resideInAnyPackage(
            "quarterturn.unit..",
            "quarterturn.craft..",
            "quarterturn.procedure..",
            "quarterturn.session..",
            "quarterturn.rehearsal..",
            "quarterturn.lesson..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("com.googlecode.lanterna..", "org.jline..", "picocli..")
        .check(HOUSE);
  }

  @Test
  void craftTouchesNoFileAndNoClock() {
    ArchRuleDefinition.noClasses()
        .that()
        .resideInAPackage("quarterturn.craft..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("java.io..", "java.nio..", "java.time..")
        .check(HOUSE);
  }
}
