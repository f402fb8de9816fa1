package quarterturn.fault;

import static com.google.common.truth.Truth.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.Draws;

/**
 * A data folder goes into an archive and comes out of it, with a fault at each call to the disk.
 */
class ArchivePointsTest {
  private static final int CUT = Draws.of(80);
  private static final int FAILED = Draws.of(40);

  @TempDir Path folder;

  @Test
  void whatIsUnpackedOrPackedIsWholeOrNotThere() throws Exception {
    ArchiveScenario.Source source = ArchiveScenario.Source.in(folder);
    Points points = new Points(() -> new ArchiveScenario(source));
    assertThat(points.sweep(CUT)).isAtLeast(CUT / 2);
    assertThat(points.each(FAILED, 0)).isAtLeast(FAILED / 2);
  }
}
