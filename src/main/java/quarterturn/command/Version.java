package quarterturn.command;

import java.lang.module.ModuleDescriptor;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import quarterturn.command.place.Places;
import quarterturn.command.place.Where;
import quarterturn.platform.Machine;
import quarterturn.unit.Printable;

/**
 * What is asked of who reports a fault: the version, what it runs on, and where its files lie.
 *
 * @param where of a user who typed nothing else
 */
record Version(CommandLine line, Where where) implements CommandLine.IVersionProvider {
  @Override
  public String[] getVersion() {
    Where typed = Where.of(line);
    Places places = new Places(typed == null ? where : typed);
    return new String[] {
      "quarterturn " + number(),
      Machine.words(),
      Printable.of("data: " + places.data()),
      Printable.of("settings: " + places.settings())
    };
  }

  /** As the image or the jar states it. */
  private static String number() {
    @Nullable String packaged = Version.class.getPackage().getImplementationVersion();
    return Optional.ofNullable(Version.class.getModule().getDescriptor())
        .flatMap(ModuleDescriptor::rawVersion)
        .orElse(packaged == null ? "unpackaged" : packaged);
  }
}
