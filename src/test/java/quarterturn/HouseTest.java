package quarterturn;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.syntax.ArchRuleDefinition;
import java.io.Console;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The house: floors that use only what lies below, and rooms that can be overlooked. */
@Tag("slow")
class HouseTest {
  private static final String ROOT = "quarterturn";

  /** The floors from the ground up; rooms on one floor do not know each other. */
  private static final List<Set<String>> FLOORS =
      List.of(
          Set.of("unit"),
          Set.of("craft", "platform"),
          Set.of("procedure"),
          Set.of("session"),
          Set.of("rehearsal"),
          Set.of("lesson"),
          Set.of("report"),
          Set.of("quick"),
          Set.of("screen", "line", "script", "reckon"),
          Set.of("command"));

  /** Rooms with walls, whose parts have their own folders. */
  private static final Set<String> PARTS =
      Set.of(
          "craft.rod",
          "procedure.kind",
          "procedure.bench",
          "procedure.condition",
          "procedure.read.clause",
          "procedure.read.form",
          "procedure.read",
          "procedure.read.yaml",
          "procedure.check",
          "procedure.check.rule",
          "procedure.check.rule.text",
          "procedure.check.rule.turn",
          "procedure.check.walk",
          "procedure.check.words",
          "session.clock",
          "session.engine",
          "session.engine.figures",
          "session.journal",
          "session.listing",
          "session.store",
          "session.store.archive",
          "rehearsal.simulated",
          "rehearsal.fleet",
          "rehearsal.cover",
          "rehearsal.life",
          "lesson.store",
          "lesson.student",
          "lesson.teacher",
          "report.sheet",
          "report.lesson",
          "report.graph",
          "screen.terminal",
          "screen.state",
          "screen.page",
          "command.place",
          "command.face",
          "command.lesson",
          "command.data");

  /** The most files in a room, its package-info included. */
  private static final int MOST = 35;

  /** The fewest classes that the rules are held to, so that they can't pass on nothing. */
  private static final int AT_LEAST = 80;

  private static final JavaClasses HOUSE =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages(ROOT);

  private static int floor(JavaClass type) {
    String room =
        type.getPackageName().substring(ROOT.length()).replaceAll("^\\.|(?<=\\w)\\..*", "");
    for (int floor = 0; floor < FLOORS.size(); floor++) {
      if (FLOORS.get(floor).contains(room)) {
        return floor;
      }
    }
    assertWithMessage("%s lives on no floor", type.getName()).that(room).isEmpty();
    return FLOORS.size();
  }

  @Test
  void everyFloorUsesOnlyFloorsBelow() {
    assertThat(HOUSE.size()).isAtLeast(AT_LEAST);
    Set<String> wrong = new TreeSet<>();
    for (JavaClass type : HOUSE) {
      for (Dependency use : type.getDirectDependenciesFromSelf()) {
        JavaClass used = use.getTargetClass();
        boolean within = used.getPackageName().startsWith(ROOT);
        if (within && !room(used).equals(room(type)) && floor(used) >= floor(type)) {
          wrong.add(type.getName() + " uses " + used.getName());
        }
      }
    }
    assertThat(wrong).isEmpty();
  }

  private static String room(JavaClass type) {
    return type.getPackageName().replaceAll("^(\\w+(\\.\\w+)?).*", "$1");
  }

  @Test
  void noRoomLeadsBackToItself() {
    slices().matching("(" + ROOT + "..)").should().beFreeOfCycles().check(HOUSE);
  }

  @Test
  void everyRoomIsKnownSaysWhatBelongsThereAndCanBeOverlooked() throws IOException {
    Path main = Path.of("src", "main", "java");
    Set<String> rooms = new TreeSet<>(PARTS);
    FLOORS.forEach(rooms::addAll);
    try (Stream<Path> walked = Files.walk(main.resolve(ROOT))) {
      for (Path folder : walked.filter(Files::isDirectory).toList()) {
        String room = main.resolve(ROOT).relativize(folder).toString().replace('/', '.');
        try (Stream<Path> files = Files.list(folder).filter(Files::isRegularFile)) {
          List<String> names = files.map(file -> String.valueOf(file.getFileName())).toList();
          assertWithMessage(room).that(names).contains("package-info.java");
          assertWithMessage(room).that(names.size()).isAtMost(MOST);
        }
        assertWithMessage("%s is on no list", room)
            .that(room.isEmpty() || rooms.remove(room))
            .isTrue();
      }
    }
    assertThat(rooms).isEmpty();
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

  @Test
  void onlyThePlatformKnowsTheSystemAndTypedFacesNeedNothingOfIt() {
    ArchRuleDefinition.noClasses()
        .that()
        .resideOutsideOfPackage("quarterturn.platform")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("sun..", "jdk..", "org.jline.terminal.impl..", "org.jline.nativ..")
        .orShould()
        .dependOnClassesThat()
        .belongToAnyOf(Console.class, PosixFilePermission.class, PosixFilePermissions.class)
        .check(HOUSE);
    ArchRuleDefinition.noClasses()
        .that()
        .resideInAnyPackage("quarterturn.line..", "quarterturn.script..")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("quarterturn.platform")
        .check(HOUSE);
  }
}
