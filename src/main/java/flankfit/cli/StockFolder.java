package flankfit.cli;

import flankfit.finding.Finding;
import flankfit.motion.Point;
import flankfit.setup.StockFileException;
import flankfit.setup.StockFiles;
import flankfit.solid.MeshBody;
import flankfit.solid.MeshFileException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** The mesh files beside a sheet; keeps the body of the one that was asked for last. */
final class StockFolder implements StockFiles {
  /** Facets of a stock: reading and checking so many takes seconds. */
  private static final int MOST_FACETS = 500_000;

  private final Path sheet;
  private Optional<MeshBody> body = Optional.empty();

  StockFolder(Path sheet) {
    this.sheet = sheet;
  }

  /** The body that was read; empty when no file was asked for. */
  Optional<MeshBody> body() {
    return body;
  }

  @Override
  public Point size(String name) throws StockFileException {
    Path file = sheet.resolveSibling(name);
    if (!Files.isRegularFile(file)) {
      throw Files.exists(file)
          ? new StockFileException(
              "stock file " + file + " is no file", "a folder is no stock", "name an STL file")
          : missing(file);
    }
    try (InputStream in = Files.newInputStream(file)) {
      MeshBody read = MeshBody.read(in, name, MOST_FACETS);
      body = Optional.of(read);
      return new Point(
          read.high(0) - read.low(0), read.high(1) - read.low(1), read.high(2) - read.low(2));
    } catch (MeshFileException e) {
      throw new StockFileException(e.what(), e.why(), e.fix());
    } catch (IOException e) {
      throw new StockFileException(
          "stock file " + file + " cannot be read", e.toString(), "check the file's rights");
    } catch (OutOfMemoryError e) {
      throw new StockFileException(
          "stock file " + file + " is too large for the memory given",
          "all of it is kept",
          "export the stock with a coarser tolerance, or raise the memory: java -Xmx8g");
    }
  }

  private static StockFileException missing(Path file) {
    Finding finding = InputFile.missing(file, "stock file").findings().get(0);
    return new StockFileException(finding.what(), finding.why(), finding.fix());
  }
}
