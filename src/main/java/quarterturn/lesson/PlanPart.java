package quarterturn.lesson;

/** The parts of a lesson's plan that a teacher gives, in the order they are asked. */
public enum PlanPart {
  TITLE("Title", "What the lesson is called.", "The first turn"),
  PROCEDURES("Procedures", "What is done, in this order, with commas between.", ""),
  KIND("Instrument", "The kind of instrument.", "bass-34"),
  NECKS(
      "Necks",
      "real, or one simulated neck for all, or one for each bench: left=dead, right=jammed.",
      "too-much"),
  LEVEL(
      "Level",
      "How much is shown to begin with: worked, last-missing, two-missing or own. Hazards always.",
      "worked"),
  HOLDS(
      "Hold points",
      "What waits for you: every turn, none, or ids of steps, with commas between.",
      Plan.EVERY_TURN),
  BLIND(
      "Blind", "Whether each student reads a gap alone, and the spread is shown: yes or no.", "no"),
  STUDENTS("Students", "Who is expected, with commas between; others may come too.", "anybody"),
  QUESTIONS(
      "Questions",
      "How many of the procedures' questions are asked: few, some or all.",
      Questioning.SOME.word());

  private final String label;
  private final String meaning;
  private final String usual;

  PlanPart(String label, String meaning, String usual) {
    this.label = label;
    this.meaning = meaning;
    this.usual = usual;
  }

  public String label() {
    return label;
  }

  public String meaning() {
    return meaning;
  }

  /** The value of this part where nothing is typed; empty where the procedures decide it. */
  public String usual() {
    return usual;
  }
}
