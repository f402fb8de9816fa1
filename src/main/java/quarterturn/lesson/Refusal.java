package quarterturn.lesson;

/** Why a bench did not take an order. */
public enum Refusal {
  ALREADY_RELEASED("already-released", "already released"),
  VALUE_DIFFERS("value-differs", "the value read back is not the bench's; read it again"),
  NO_SUCH_HOLD("no-such-hold", "this bench is not kept by that"),
  NO_SUCH_STUDENT("no-such-student", "no student of that name is at this bench"),
  OVER("over", "the lesson is over at this bench");

  private final String word;
  private final String words;

  Refusal(String word, String words) {
    this.word = word;
    this.words = words;
  }

  /** As the journal has it. */
  public String word() {
    return word;
  }

  /** For people. */
  public String words() {
    return words;
  }
}
