package quarterturn.jar;

/** The least that a Java program can do: it prints one word. */
public final class Word {
  static final String WORD = "painted";

  private Word() {}

  public static void main(String[] args) {
    System.out.println(WORD);
  }
}
