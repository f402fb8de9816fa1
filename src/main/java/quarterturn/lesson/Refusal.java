package quarterturn.lesson;

import quarterturn.unit.Worded;

/** Why a bench did not take an order. */
public enum Refusal implements Worded {
  ALREADY_RELEASED("already released"),
  VALUE_DIFFERS("the value read back is not the bench's; read it again"),
  NO_SUCH_HOLD("this bench is not kept by that"),
  NO_SUCH_STUDENT("no student of that name is at this bench"),
  OVER("the lesson is over at this bench");

  private final String words;

  Refusal(String words) {
    this.words = words;
  }

  /** The refusal in words for people. */
  public String words() {
    return words;
  }
}
