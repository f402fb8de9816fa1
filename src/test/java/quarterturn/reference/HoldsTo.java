package quarterturn.reference;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** Marks the test that holds the program to reference values; {@link LedgerTest} counts them. */
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.TYPE, ElementType.METHOD})
public @interface HoldsTo {
  /** The ids of the reference values. */
  String[] value();
}
