package flankfit.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import flankfit.control.Interpretation;
import flankfit.metal.Metal;
import flankfit.metal.MetalOptions;
import flankfit.metal.MetalProgress;
import flankfit.metal.TooFineException;
import flankfit.motion.Extents;
import flankfit.setup.SetupSheet;
import flankfit.solid.Halt;
import flankfit.solid.Mesh;
import flankfit.solid.Meshing;
import flankfit.solid.SectionPlane;
import flankfit.solid.Solid;
import flankfit.unit.LengthUnit;
import flankfit.window.MetalJob;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Pictures of metal: as the command draws them, and live with planes that open it. */
class MetalPicturesTest {
  private static final int WIDTH = 640;
  private static final int HEIGHT = 480;
  private final Interpretation done = MetalJob.interpretation();
  private final SetupSheet sheet = MetalJob.sheet();
  private final Scene scene = new Scene(done.tape(), sheet, "Bracket");
  private final Extents stock = sheet.stock().orElseThrow().box();
  private final Solid solid = solid();
  private final Mesh mesh = new Meshing(1, MetalScene.OPEN_STEP, Halt.NEVER).mesh(solid);

  private Solid solid() {
    try {
      MetalOptions options = MetalOptions.usual().withCell(0.25);
      return Metal.of(done.tape(), sheet, options, MetalProgress.NONE).at(done.tape().size());
    } catch (TooFineException e) {
      throw new IllegalStateException(e);
    }
  }

  @Test
  void the_picture_of_the_command_is_as_kept() throws Exception {
    byte[] rgb;
    try (Drawing drawing = new Drawing()) {
      assumeTrue(drawing.renderer().contains("llvmpipe"), "pictures are kept for llvmpipe");
      BodyScene cut =
          new MetalScene(scene, mesh, solid, true).cut(SectionPlane.through(0, 0, 0, 0, -1, 0));
      rgb = BodyPicture.draw(cut, View.ISO, stock, WIDTH, HEIGHT, Theme.LIGHT);
    }
    KeptPicture.compare("metal-iso-light.png", rgb, WIDTH, HEIGHT);
  }

  /** The live picture fills a section by counting, the other one by its loops. */
  @Test
  void a_live_section_is_hatched_where_there_is_metal_and_open_where_there_is_none()
      throws Exception {
    try (Drawing drawing = new Drawing();
        LiveBody body = new LiveBody(1, 0);
        RenderTarget window = new RenderTarget(WIDTH, HEIGHT, 0)) {
      BodyFaces faces = new BodyFaces(scene.bounds().middle());
      MetalInk ink = new MetalInk(done.tape(), sheet);
      MeshFaces.add(faces, mesh, new CutMarks(done.tape(), sheet), ink::mirror);
      body.show(new BodyPieces(List.of(faces)));
      assertThat(body.isThere()).isFalse();
      assertThat(body.upload(Long.MAX_VALUE)).isTrue();
      assertThat(body.isComplete()).isTrue();
      Camera camera = BodyPicture.camera(View.FRONT, stock, WIDTH, HEIGHT);
      LiveBody.Cut plane = new LiveBody.Cut(0, -1, 0, 0);
      LiveBody.Look look =
          new LiveBody.Look(List.of(plane), false, Optional.of(ink.metal()), false);
      body.draw(scene, camera, Theme.LIGHT, LengthUnit.MILLIMETRE, Insets.ofPicture(1), look);
      while (!body.isSoft()) {
        body.soften();
      }
      body.copyTo(window.name(), 0, 0);
      byte[] rgb = window.readRgb();
      Theme.Palette palette = Theme.LIGHT.palette();
      int paper = Colours.mix(palette.stock(), palette.ground(), 0.45);
      int[] all = new int[2];
      int[] filled = new int[2];
      for (double x = -11.5; x < 11.6; x += 0.5) {
        for (double z = -9.6; z < -0.2; z += 0.4) {
          int seen = Drawing.pixel(rgb, WIDTH, HEIGHT, camera.column(x, 0, z), camera.row(x, 0, z));
          boolean isMetal = solid.isMetal(x, 1e-6, z);
          boolean near = solid.isMetal(x, 1e-6, z + 0.3) != solid.isMetal(x, 1e-6, z - 0.3);
          boolean warm = (seen >> 16 & 0xFF) - (seen & 0xFF) > 12;
          int of = isMetal ? 1 : 0;
          all[of] += near ? 0 : 1;
          filled[of] += !near && warm ? 1 : 0;
        }
      }
      assertThat(Drawing.difference(paper, palette.ground()))
          .as(drawing.renderer())
          .isGreaterThan(12);
      // the lines of the hatching are of ink
      assertThat(filled[1]).as("of %s of metal", all[1]).isGreaterThan(7 * all[1] / 10);
      assertThat(filled[0]).as("of %s of air", all[0]).isLessThanOrEqualTo(all[0] / 50);
    }
  }
}
