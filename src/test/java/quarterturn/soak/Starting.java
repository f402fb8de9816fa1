package quarterturn.soak;

import java.util.ArrayList;
import java.util.List;
import quarterturn.jar.Packaged;

/** How the program is started on a world's folders and clock. */
final class Starting {
  /** Without a file of figures, which would not fit on a full disk. */
  private static final List<String> OPTIONS = List.of("-XX:-UsePerfData");

  List<String> program(World world, int factor, List<String> words) {
    List<String> all = new ArrayList<>(List.of(world.now().toString(), String.valueOf(factor)));
    all.addAll(words);
    all.addAll(List.of("--data", world.data().toString()));
    return Packaged.test(ClockedMain.class, OPTIONS, all);
  }
}
