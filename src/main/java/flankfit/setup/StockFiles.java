package flankfit.setup;

import flankfit.motion.Point;

/** Looks at the mesh files that sheets name as stock. */
@FunctionalInterface
public interface StockFiles {
  /** Has no file at all, as where a sheet is no file. */
  StockFiles NONE =
      name -> {
        throw new StockFileException(
            "stock file " + name + " does not exist",
            "it is looked for beside the sheet",
            "check the name");
      };

  /**
   * Size of the box of a mesh, along X, Y and Z (mm).
   *
   * @param name name of the file beside the sheet
   * @throws StockFileException if the file cannot be stock
   */
  Point size(String name) throws StockFileException;
}
