package quarterturn.reference;

import static com.google.common.truth.Truth.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;

/** Every reference value is held to by some test. */
@Tag("slow")
class LedgerTest {
  private static final JavaClasses TESTS =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.ONLY_INCLUDE_TESTS)
          .importPackages("quarterturn");

  @Test
  void everyReferenceIsHeldTo() {
    assertThat(TESTS.size()).isAtLeast(80);
    List<String> held = new ArrayList<>();
    for (JavaClass type : TESTS) {
      if (type.isAnnotatedWith(HoldsTo.class)) {
        held.addAll(List.of(type.getAnnotationOfType(HoldsTo.class).value()));
      }
      for (JavaMethod method : type.getMethods()) {
        if (method.isAnnotatedWith(HoldsTo.class)) {
          held.addAll(List.of(method.getAnnotationOfType(HoldsTo.class).value()));
        }
      }
    }
    assertThat(held).containsNoDuplicates();
    assertThat(held).containsExactlyElementsIn(Reference.ids());
  }

  /** A mark on what JUnit does not run would count a value that nothing is held to. */
  @Test
  void onlyTestsAreMarked() {
    List<String> idle = new ArrayList<>();
    for (JavaClass type : TESTS) {
      if (type.isAnnotatedWith(HoldsTo.class)
          && type.getMethods().stream().noneMatch(LedgerTest::runs)) {
        idle.add(type.getName());
      }
      for (JavaMethod method : type.getMethods()) {
        if (method.isAnnotatedWith(HoldsTo.class) && !runs(method)) {
          idle.add(method.getFullName());
        }
      }
    }
    assertThat(idle).isEmpty();
  }

  private static boolean runs(JavaMethod method) {
    return method.isAnnotatedWith(Test.class)
        || method.isAnnotatedWith(ParameterizedTest.class)
        || method.isAnnotatedWith(TestFactory.class);
  }
}
