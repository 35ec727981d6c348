package flankfit.picture;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.function.IntFunction;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOInvalidTreeException;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.ImageOutputStream;

/** Drawings one after the other, as a moving picture that any slide shows. */
public final class DiagramMovie {
  private static final String FORMAT = "javax_imageio_gif_image_1.0";

  /** Times that the last drawing stands longer than the others. */
  private static final int LAST = 3;

  private DiagramMovie() {}

  /**
   * The drawings as an animated GIF that begins anew after the last, which stands longer.
   *
   * @param count number of drawings, from 1
   * @param drawing gives each by its index, all of one size
   * @param seconds time that each stands (s), 0.02 to 60
   * @throws NoOpenGlException if the machine has no OpenGL 3.3
   */
  public static byte[] gif(int count, IntFunction<Diagram> drawing, double seconds)
      throws NoOpenGlException {
    try (GlContext context = GlContext.open(false)) {
      ByteArrayOutputStream file = new ByteArrayOutputStream();
      ImageWriter writer = ImageIO.getImageWritersByFormatName("gif").next();
      try (ImageOutputStream out = ImageIO.createImageOutputStream(file)) {
        writer.setOutput(out);
        writer.prepareWriteSequence(null);
        for (int i = 0; i < count; i++) {
          Diagram diagram = drawing.apply(i);
          BufferedImage image = image(diagram);
          double stands = i == count - 1 && count > 1 ? LAST * seconds : seconds;
          writer.writeToSequence(new IIOImage(image, null, timed(writer, image, stands)), null);
        }
        writer.endWriteSequence();
      } finally {
        writer.dispose();
      }
      context.requireNoError();
      return file.toByteArray();
    } catch (IOException e) {
      // Nothing is written but memory.
      throw new UncheckedIOException(e);
    }
  }

  private static BufferedImage image(Diagram diagram) {
    int width = diagram.width();
    int height = diagram.height();
    byte[] rgb = DiagramFile.draw(diagram);
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    int[] row = new int[width];
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        int at = 3 * (y * width + x);
        row[x] = ((rgb[at] & 0xFF) << 16) | ((rgb[at + 1] & 0xFF) << 8) | (rgb[at + 2] & 0xFF);
      }
      image.setRGB(0, y, width, 1, row, 0, width);
    }
    return image;
  }

  private static IIOMetadata timed(ImageWriter writer, BufferedImage image, double seconds)
      throws IIOInvalidTreeException {
    IIOMetadata data =
        writer.getDefaultImageMetadata(ImageTypeSpecifier.createFromRenderedImage(image), null);
    IIOMetadataNode root = (IIOMetadataNode) data.getAsTree(FORMAT);
    IIOMetadataNode control = child(root, "GraphicControlExtension");
    control.setAttribute("disposalMethod", "none");
    control.setAttribute("userInputFlag", "FALSE");
    control.setAttribute("transparentColorFlag", "FALSE");
    control.setAttribute("transparentColorIndex", "0");
    control.setAttribute("delayTime", Integer.toString((int) Math.round(100 * seconds)));
    IIOMetadataNode loop = new IIOMetadataNode("ApplicationExtension");
    loop.setAttribute("applicationID", "NETSCAPE");
    loop.setAttribute("authenticationCode", "2.0");
    loop.setUserObject(new byte[] {1, 0, 0});
    child(root, "ApplicationExtensions").appendChild(loop);
    data.setFromTree(FORMAT, root);
    return data;
  }

  private static IIOMetadataNode child(IIOMetadataNode root, String name) {
    for (int i = 0; i < root.getLength(); i++) {
      if (root.item(i).getNodeName().equals(name)) {
        return (IIOMetadataNode) root.item(i);
      }
    }
    IIOMetadataNode made = new IIOMetadataNode(name);
    root.appendChild(made);
    return made;
  }
}
