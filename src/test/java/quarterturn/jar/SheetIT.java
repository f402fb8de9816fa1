package quarterturn.jar;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import com.fasterxml.jackson.databind.json.JsonMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The set-up sheet by the command line. */
class SheetIT {
  @TempDir Path folder;
  @TempDir Path elsewhere;
  private Bench bench = new Bench(Path.of("."), Instant.EPOCH);

  @BeforeEach
  void begun() throws Exception {
    bench = new Bench(folder, Instant.now());
    bench.run("instrument", "add", "my-bass", "--kind", "bass-34", "--style", "hard");
    assertThat(bench.run("start", "relief", "--lines", "--instrument", "my-bass").status())
        .isEqualTo(0);
  }

  @Test
  void everyFormatIsPrinted() throws Exception {
    JarProcess.Ran text = bench.run("log", "export", bench.session());
    assertThat(text.status()).isEqualTo(0);
    assertThat(text.out()).startsWith("SET-UP SHEET\n");
    assertThat(text.out()).contains("Instrument: my-bass");
    assertThat(export("markdown").out()).startsWith("# Set-up sheet\n");
    assertThat(export("csv").out()).startsWith("time,quantity,string,");
    assertThat(export("csv").out()).endsWith("\r\n");
    assertThat(new JsonMapper().readTree(export("json").out()).at("/style").textValue())
        .isEqualTo("hard");
    assertThat(Jsoup.parse(export("html").out()).select("h1").text()).isEqualTo("Set-up sheet");
  }

  private JarProcess.Ran export(String format) throws Exception {
    JarProcess.Ran ran = bench.run("log", "export", bench.session(), "--format", format);
    assertThat(ran.status()).isEqualTo(0);
    assertThat(ran.err()).isEmpty();
    return ran;
  }

  @Test
  void aFileIsNotWrittenOverUnasked() throws Exception {
    Path file = elsewhere.resolve("sheet.html");
    String[] typed = {
      "log", "export", bench.session(), "--format", "html", "--out", file.toString()
    };
    JarProcess.Ran first = bench.run(typed);
    assertThat(first.status()).isEqualTo(0);
    assertThat(first.out()).isEmpty();
    assertThat(Files.readString(file)).startsWith("<!DOCTYPE html>");

    Files.writeString(file, "mine");
    JarProcess.Ran again = bench.run(typed);
    assertThat(again.status()).isEqualTo(2);
    assertThat(again.err()).contains("--force");
    assertWithMessage("what was there").that(Files.readString(file)).isEqualTo("mine");

    JarProcess.Ran forced =
        bench.run(
            "log", "export", bench.session(), "--format", "html", "--out", file + "", "--force");
    assertThat(forced.status()).isEqualTo(0);
    assertThat(Files.readString(file)).endsWith("</html>\n");
  }

  @Test
  void wrongUsageIsSaid() throws Exception {
    JarProcess.Ran format = bench.run("log", "export", bench.session(), "--format", "pdf");
    assertThat(format.status()).isEqualTo(2);
    assertThat(format.err()).contains("pdf");
    JarProcess.Ran force = bench.run("log", "export", bench.session(), "--force");
    assertThat(force.status()).isEqualTo(2);
    assertThat(force.err()).contains("--out");
    JarProcess.Ran nowhere =
        bench.run("log", "export", bench.session(), "--out", elsewhere.resolve("none/x") + "");
    assertThat(nowhere.status()).isEqualTo(2);
    assertThat(nowhere.err()).contains("no folder");
    assertThat(bench.run("log", "export", "nosuch").err()).contains("there is no session nosuch");
  }
}
