package quarterturn.reckon;

import java.io.File;
import java.io.IOException;
import java.util.function.Function;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import quarterturn.craft.HexKey;
import quarterturn.craft.HexSocket;
import quarterturn.craft.Pluck;
import quarterturn.craft.Radius;
import quarterturn.craft.ScrewThread;
import quarterturn.craft.SetPull;
import quarterturn.craft.StringGauge;
import quarterturn.procedure.UnreadableException;
import quarterturn.session.Instrument;
import quarterturn.session.store.Sessions;
import quarterturn.session.store.Store;
import quarterturn.unit.Cents;
import quarterturn.unit.Digits;
import quarterturn.unit.Force;
import quarterturn.unit.Frequency;
import quarterturn.unit.Humidity;
import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Note;
import quarterturn.unit.Printable;
import quarterturn.unit.Temperature;
import quarterturn.unit.Turn;
import quarterturn.unit.UnitWeight;
import quarterturn.unit.Worded;

/** Converters from text on the command line to values of each unit. */
final class Converters {
  private Converters() {}

  /** Teaches a command line every unit; an instrument is a file, or a name in the user's folder. */
  static void teach(CommandLine line, Sessions sessions) {
    teach(line, int.class, typed -> (int) Digits.whole(typed, 9));
    teach(line, Integer.class, typed -> (int) Digits.whole(typed, 9));
    teach(line, double.class, Digits::number);
    teach(line, Length.class, Length::parse);
    teach(line, Note.class, Note::parse);
    teach(line, Frequency.class, Frequency::parse);
    teach(line, Cents.class, Cents::parse);
    teach(line, Force.class, Force::parse);
    teach(line, UnitWeight.class, UnitWeight::parse);
    teach(line, Temperature.class, Temperature::parse);
    teach(line, Humidity.class, Humidity::parse);
    teach(line, Turn.class, Turn::parse);
    teach(line, ScrewThread.class, ScrewThread::parse);
    teach(line, HexKey.class, HexKey::parse);
    teach(line, HexSocket.class, HexSocket::parse);
    teach(line, SetPull.TunedString.class, SetPull.TunedString::parse);
    teach(line, Radius.class, Radius::parse);
    teach(line, Pluck.Way.class, Converters::way);
    line.registerConverter(PullTopic.Strung.class, typed -> strung(sessions, typed));
  }

  private static <T> void teach(CommandLine line, Class<T> type, Function<String, T> parser) {
    line.registerConverter(type, typed -> read(parser, typed));
  }

  private static <T> T read(Function<String, T> parser, String typed) {
    try {
      return parser.apply(typed);
    } catch (NotUnderstoodException e) {
      throw new TypeConversionException(e.getMessage());
    }
  }

  private static Pluck.Way way(String typed) {
    return Stream.of(Pluck.Way.values())
        .filter(way -> way.word().equals(Digits.plain(typed)))
        .findFirst()
        .orElseThrow(
            () ->
                new NotUnderstoodException(
                    "there is no stroke \"%s\"; type %s"
                        .formatted(
                            Printable.of(typed),
                            String.join(" or ", Worded.words(Pluck.Way.values())))));
  }

  private static PullTopic.Strung strung(Sessions sessions, String typed) {
    try {
      Instrument found = instrument(sessions.store(), typed);
      return new PullTopic.Strung(found, sessions.rules().kinds().get(found.kind()));
    } catch (NotUnderstoodException | UnreadableException | IOException e) {
      throw new TypeConversionException(String.valueOf(e.getMessage()));
    }
  }

  private static Instrument instrument(Store store, String typed) throws IOException {
    File file = new File(typed);
    if (file.isFile()) {
      return Store.instrumentIn(file.toPath());
    }
    if (typed.endsWith(".yaml") || file.getParent() != null) {
      throw new NotUnderstoodException("there is no file " + Printable.of(typed));
    }
    return store.instrument(typed);
  }

  /** The diameter of a string or its core. */
  static final class Wire implements ITypeConverter<Length> {
    @Override
    public Length convert(String typed) {
      return read(StringGauge::parseWire, typed);
    }
  }
}
