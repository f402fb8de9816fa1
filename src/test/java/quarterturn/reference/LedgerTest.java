package quarterturn.reference;

import static com.google.common.truth.Truth.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Every reference value is held to by some test. */
class LedgerTest {
  @Test
  void everyReferenceIsHeldTo() {
    JavaClasses tests =
        new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.ONLY_INCLUDE_TESTS)
            .importPackages("quarterturn");
    assertThat(tests.size()).isAtLeast(80);
    List<String> held = new ArrayList<>();
    for (JavaClass type : tests) {
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
}
