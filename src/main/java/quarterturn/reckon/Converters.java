package quarterturn.reckon;

import java.util.function.Function;
import picocli.CommandLine;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import quarterturn.craft.HexKey;
import quarterturn.craft.HexSocket;
import quarterturn.craft.ScrewThread;
import quarterturn.craft.SetPull;
import quarterturn.craft.StringGauge;
import quarterturn.unit.Cents;
import quarterturn.unit.Force;
import quarterturn.unit.Frequency;
import quarterturn.unit.Humidity;
import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Note;
import quarterturn.unit.Temperature;
import quarterturn.unit.Turn;
import quarterturn.unit.UnitWeight;

/** Converters from text on the command line to values of each unit. */
final class Converters {
  private Converters() {}

  static void teach(CommandLine line) {
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

  /** The diameter of a string or its core. */
  static final class Wire implements ITypeConverter<Length> {
    @Override
    public Length convert(String typed) {
      return read(StringGauge::parseWire, typed);
    }
  }
}
