package quarterturn.procedure;

/** Who is at the bench. */
public enum Role {
  BEGINNER("beginner"),
  TECHNICIAN("technician");

  private final String word;

  Role(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }
}
