package flankfit.window;

import flankfit.control.Interpretation;
import flankfit.solid.MeshBody;
import java.util.Objects;
import java.util.Optional;

/**
 * What the metal of a program is cut from and by, besides tape and sheet.
 *
 * @param checked what the control made of the program
 * @param mesh the body of the file that the sheet names as stock; empty for other stock
 */
public record Cutting(Interpretation checked, Optional<MeshBody> mesh) {
  public Cutting {
    Objects.requireNonNull(checked, "checked");
    Objects.requireNonNull(mesh, "mesh");
  }
}
