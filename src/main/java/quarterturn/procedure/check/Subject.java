package quarterturn.procedure.check;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import quarterturn.procedure.Condition;
import quarterturn.procedure.Quantity;

/** What a condition speaks about: a reading, a choice, a count. */
sealed interface Subject {
  /** How the last reading of a quantity stands, and its value. */
  record Reading(Quantity quantity) implements Subject {}

  /** How far the lowest and the highest string are apart. */
  record Differing(Quantity quantity) implements Subject {}

  /** How far the last two readings on a string are apart. */
  record Repeating(Quantity quantity) implements Subject {}

  /** How the strings stand, all of them together. */
  record Each(Quantity quantity) implements Subject {}

  /** What was chosen at a step, or how the procedure it calls ended. */
  record Choice(String step) implements Subject {}

  /** How often a step was reached. */
  record Count(String step) implements Subject {}

  /** Who is at the bench. */
  record Person() implements Subject {}

  /** How far the rod was turned. */
  record Turning(Condition.Span span) implements Subject {}

  /** What the neck did after the last turn. */
  record Neck() implements Subject {}

  /** What the readings say of the rod. */
  record Rod() implements Subject {}

  /** How the rod felt at the last turn. */
  record Feeling() implements Subject {}

  /** Which larger jobs this runs within. */
  record Callers() implements Subject {}

  /** What it is, in words. */
  default String words() {
    if (this instanceof Reading r) {
      return r.quantity().word();
    } else if (this instanceof Differing d) {
      return "how " + d.quantity().word() + " differs";
    } else if (this instanceof Repeating r) {
      return "how " + r.quantity().word() + " repeats";
    } else if (this instanceof Each each) {
      return "every " + each.quantity().word();
    } else if (this instanceof Choice choice) {
      return "the answer to " + choice.step();
    } else if (this instanceof Count count) {
      return "how often " + count.step() + " was reached";
    } else if (this instanceof Person) {
      return "the role";
    } else if (this instanceof Turning turning) {
      return "what was turned " + turning.span().words();
    } else if (this instanceof Neck) {
      return "what the neck did";
    } else if (this instanceof Rod) {
      return "what the rod seems";
    }
    return this instanceof Feeling ? "how the rod felt" : "the larger job";
  }

  /** What an atom, a condition without parts, speaks about. */
  static Subject of(Condition atom) {
    if (atom instanceof Condition.Against a) {
      return new Reading(a.quantity());
    } else if (atom instanceof Condition.Leans a) {
      return new Reading(a.quantity());
    } else if (atom instanceof Condition.Below a) {
      return new Reading(a.quantity());
    } else if (atom instanceof Condition.AtLeast a) {
      return new Reading(a.quantity());
    } else if (atom instanceof Condition.Differs a) {
      return new Differing(a.quantity());
    } else if (atom instanceof Condition.Repeats a) {
      return new Repeating(a.quantity());
    } else if (atom instanceof Condition.Strings a) {
      return new Each(a.quantity());
    } else if (atom instanceof Condition.Chosen a) {
      return new Choice(a.step());
    } else if (atom instanceof Condition.Reached a) {
      return new Count(a.step());
    } else if (atom instanceof Condition.Is) {
      return new Person();
    } else if (atom instanceof Condition.Turned a) {
      return new Turning(a.span());
    } else if (atom instanceof Condition.Answered) {
      return new Neck();
    } else if (atom instanceof Condition.Seems) {
      return new Rod();
    } else if (atom instanceof Condition.Felt) {
      return new Feeling();
    } else if (atom instanceof Condition.Called) {
      return new Callers();
    }
    throw new IllegalArgumentException("a condition with parts has no one subject: " + atom);
  }

  /**
   * The largest pieces of a condition that each speak about one subject. Things that differ in none
   * of them need not be told apart.
   */
  static Map<Condition, Subject> pieces(Condition condition) {
    Map<Condition, Subject> pieces = new LinkedHashMap<>();
    Set<Subject> subjects = subjects(condition);
    if (subjects.size() == 1) {
      pieces.put(condition, subjects.iterator().next());
    } else {
      parts(condition).forEach(part -> pieces.putAll(pieces(part)));
    }
    return pieces;
  }

  /** Everything a condition speaks about. */
  static Set<Subject> subjects(Condition condition) {
    Set<Subject> subjects = new LinkedHashSet<>();
    atoms(condition).forEach(atom -> subjects.add(of(atom)));
    return subjects;
  }

  /** The atoms of a condition. */
  static Set<Condition> atoms(Condition condition) {
    Set<Condition> atoms = new LinkedHashSet<>();
    List<Condition> parts = parts(condition);
    if (parts.isEmpty()) {
      atoms.add(condition);
    }
    parts.forEach(part -> atoms.addAll(atoms(part)));
    return atoms;
  }

  private static List<Condition> parts(Condition condition) {
    if (condition instanceof Condition.All all) {
      return all.parts();
    } else if (condition instanceof Condition.Any any) {
      return any.parts();
    } else if (condition instanceof Condition.Not not) {
      return List.of(not.part());
    }
    return List.of();
  }
}
