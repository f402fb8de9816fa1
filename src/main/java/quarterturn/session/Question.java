package quarterturn.session;

import java.util.List;
import java.util.stream.Collectors;
import quarterturn.procedure.condition.Quote;
import quarterturn.unit.NotUnderstoodException;

/** A message or question that is not a session's prompt, in words for every face. */
public sealed interface Question {
  /** The kind's word: show, hold, words, number, choose, form or rows. */
  String kind();

  /** The title, in a few words. */
  String title();

  /** The text, a paragraph for each element. */
  List<String> lines();

  /** A sentence on what the person can do. */
  String help();

  /** A message, after which the person goes on. */
  record Show(String title, List<String> lines, String help) implements Question {
    public Show {
      lines = List.copyOf(lines);
    }

    public Show(String title, List<String> lines) {
      this(title, lines, "Enter goes on.");
    }

    @Override
    public String kind() {
      return "show";
    }
  }

  /** A message during a wait for somebody else. */
  record Hold(String title, List<String> lines) implements Question {
    public Hold {
      lines = List.copyOf(lines);
    }

    @Override
    public String kind() {
      return "hold";
    }

    @Override
    public String help() {
      return "It goes on by itself.";
    }
  }

  /** A question that one line answers. */
  sealed interface Asked extends Question {
    /** The words before the place to type. */
    String asks();

    /** Whether the typed text must not be shown. */
    default boolean hidden() {
      return false;
    }

    /** Whether everybody should think for a while before anybody answers. */
    default boolean ponder() {
      return false;
    }
  }

  /** A question answered with a line of words. */
  record Words(
      String title, List<String> lines, String asks, String help, boolean hidden, boolean ponder)
      implements Asked {
    public Words {
      lines = List.copyOf(lines);
    }

    public Words(String title, List<String> lines, String asks, String help) {
      this(title, lines, asks, help, false, false);
    }

    @Override
    public String kind() {
      return "words";
    }
  }

  /**
   * A question answered with a measured value, typed as at a session's prompts.
   *
   * @param unit the unit of a value typed without one
   */
  record Number(
      String title, List<String> lines, String asks, String help, String unit, boolean hidden)
      implements Asked {
    public Number {
      lines = List.copyOf(lines);
    }

    @Override
    public String kind() {
      return "number";
    }
  }

  /**
   * A fact that a form asks for.
   *
   * @param meaning what the fact is and what may be typed, in a sentence
   * @param held the present value, or the value used where nothing is typed
   */
  record Field(String label, String meaning, String held) {}

  /**
   * A form that asks for one fact after the other.
   *
   * @param fields every field, in order
   * @param at index of the field that is asked for
   */
  record Form(List<Field> fields, int at, String help) implements Asked {
    public Form {
      fields = List.copyOf(fields);
    }

    @Override
    public String kind() {
      return "form";
    }

    @Override
    public String title() {
      return "";
    }

    @Override
    public List<String> lines() {
      String item = (at + 1) + " of " + fields.size() + ". " + fields.get(at).meaning();
      return at == 0 ? List.of(help, item) : List.of(item);
    }

    @Override
    public String asks() {
      return fields.get(at).label() + " [" + fields.get(at).held() + "]";
    }
  }

  /**
   * A row of a page on which several people answer.
   *
   * @param done whether its answer is locked
   */
  record Row(int number, String name, boolean done) {}

  /**
   * A page that wants one answer from each of several people, typed in one line or row by row, each
   * after the number of its row.
   *
   * @param unit of a number typed without one; empty where words are wanted
   */
  record Rows(
      String title,
      List<String> lines,
      String wants,
      String help,
      List<Row> rows,
      String unit,
      boolean ponder)
      implements Asked {
    public Rows {
      lines = List.copyOf(lines);
      rows = List.copyOf(rows);
    }

    @Override
    public String kind() {
      return "rows";
    }

    @Override
    public String asks() {
      return rows.stream()
          .filter(row -> !row.done())
          .map(row -> rows.size() == 1 ? row.name() : row.number() + " " + row.name())
          .collect(Collectors.joining(", ", wants + ". ", ""));
    }
  }

  /**
   * An option of a question.
   *
   * @param name the text to type for it
   * @param label its name in a list; empty where there is no list
   * @param detail more about it in a list
   * @param group the heading that it is listed under
   */
  record Option(String name, String label, String detail, String group) {
    /** An option that the question's own text names. */
    public Option(String name) {
      this(name, "", "", "");
    }
  }

  /**
   * A choice of one option, answered with the beginning of its name, or with its number in a list.
   *
   * @param lettered whether, where there are keys, an option's first letter answers without Enter
   * @param marked index of the option that is marked first
   */
  record Choose(
      String title,
      List<String> lines,
      String asks,
      String help,
      List<Option> options,
      boolean lettered,
      int marked)
      implements Asked {
    public Choose {
      lines = List.copyOf(lines);
      options = List.copyOf(options);
    }

    @Override
    public String kind() {
      return "choose";
    }

    public Choose(
        String title, List<String> lines, String asks, String help, List<Option> options) {
      this(title, lines, asks, help, options, false, 0);
    }

    /** A last question before something is done: yes or no, for which its letter is enough. */
    public static Choose sure(String title, List<String> lines, String asks, String help) {
      return new Choose(
          title, lines, asks, help, List.of(new Option("yes"), new Option("no")), true, 0);
    }

    /**
     * The name of the option that a line gives by its number or its name.
     *
     * @throws NotUnderstoodException saying what is taken, where it gives none
     */
    public String chosen(String typed) {
      List<String> names = options.stream().map(Option::name).toList();
      if (typed.matches("[1-9]\\d{0,3}") && Integer.parseInt(typed) <= names.size()) {
        return names.get(Integer.parseInt(typed) - 1);
      }
      if (!names.contains(typed)) {
        throw new NotUnderstoodException(Quote.hint(typed, names, help));
      }
      return typed;
    }

    /** Whether the options are to be shown as a list, numbered from 1. */
    public boolean listed() {
      return options.stream().noneMatch(option -> option.label().isEmpty());
    }
  }
}
