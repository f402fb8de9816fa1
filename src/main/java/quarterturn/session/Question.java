package quarterturn.session;

import java.util.List;

/** What is told or asked beside a session's prompts, in words for every face. */
public sealed interface Question {
  /** In one word: show, hold, words, number, choose or form. */
  String kind();

  /** What it is, in a few words. */
  String title();

  /** Its text, a paragraph each. */
  List<String> lines();

  /** One sentence on what can be done. */
  String help();

  /** Told; the person goes on. */
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

  /** Told while somebody else is waited for. */
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

  /** Answered with one line. */
  sealed interface Asked extends Question {
    /** What stands before the place to type. */
    String asks();

    /** Whether what is typed is not to be seen. */
    default boolean hidden() {
      return false;
    }

    /** Whether everybody is to think for a while before anybody answers. */
    default boolean ponder() {
      return false;
    }
  }

  /** A line of words. */
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
   * A measured value, as it is typed at a session's prompts too.
   *
   * @param unit of a value typed without one
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
   * A fact that a form has a place for.
   *
   * @param meaning what it is and what is taken, a sentence
   * @param held what stands there, or what is taken where nothing is typed
   */
  record Field(String label, String meaning, String held) {}

  /**
   * Facts that are asked for one after the other.
   *
   * @param fields all of them, in order
   * @param at index of the one that is asked for
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
   * Something that can be chosen.
   *
   * @param name what may be typed for it
   * @param label what it is called in a list; empty where there is no list
   * @param detail what more there is to say of it in a list
   * @param group what it is listed under
   */
  record Option(String name, String label, String detail, String group) {
    /** One that the question itself names. */
    public Option(String name) {
      this(name, "", "", "");
    }
  }

  /** One of several; the beginning of its name will do, or its number where they are listed. */
  record Choose(String title, List<String> lines, String asks, String help, List<Option> options)
      implements Asked {
    public Choose {
      lines = List.copyOf(lines);
      options = List.copyOf(options);
    }

    @Override
    public String kind() {
      return "choose";
    }

    /** Whether the options are to be shown as a list, numbered from 1. */
    public boolean listed() {
      return options.stream().noneMatch(option -> option.label().isEmpty());
    }
  }
}
