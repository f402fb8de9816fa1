package quarterturn.procedure.check.walk;

import java.util.List;
import java.util.function.IntPredicate;

/** The place of each subject's mask in the words of an {@link AbstractState}. */
final class Layout {
  private final int[] word;
  private final int[] shift;
  private final int[] all;
  private final int words;

  Layout(List<Domain> domains) {
    this.word = new int[domains.size()];
    this.shift = new int[domains.size()];
    this.all = new int[domains.size()];
    int at = 0;
    int used = 0;
    for (int i = 0; i < word.length; i++) {
      int cells = domains.get(i).cells().size();
      if (used + cells > Long.SIZE) {
        at++;
        used = 0;
      }
      word[i] = at;
      shift[i] = used;
      all[i] = domains.get(i).all();
      used += cells;
    }
    this.words = at + 1;
  }

  /** Words of a state in which no cell is possible. */
  long[] none() {
    return new long[words];
  }

  /**
   * Words of a state in which every cell is possible of the subjects of whose place {@code so}
   * holds, and none of others.
   */
  long[] all(IntPredicate so) {
    long[] words = none();
    for (int i = 0; i < word.length; i++) {
      mask(words, i, so.test(i) ? all[i] : 0);
    }
    return words;
  }

  int mask(long[] in, int subject) {
    return (int) (in[word[subject]] >>> shift[subject]) & all[subject];
  }

  void mask(long[] in, int subject, int mask) {
    long place = (long) all[subject] << shift[subject];
    in[word[subject]] = in[word[subject]] & ~place | (long) mask << shift[subject];
  }
}
