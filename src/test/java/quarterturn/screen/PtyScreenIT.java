package quarterturn.screen;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** The pseudo-terminal that other tests look at. */
@Timeout(90)
class PtyScreenIT {
  @Test
  void seesWhatIsPaintedAfterWhatWasMeantForALargerWindow() throws Exception {
    String late = "printf '\\033[5;130Hlate\\033[44;130H\\033[K'";
    String script = "echo wide; read a; " + late + "; printf '\\033[H\\033[2Jsmall'; read b";
    try (PtyScreen screen = PtyScreen.start(140, 45, Map.of(), "sh", "-c", script)) {
      screen.waitFor("wide").resize(50, 12).keys("\r").waitFor("small").keys("\r");
      screen.exitStatus();
    }
  }
}
