package flankfit.solid;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.io.euclidean.threed.FacetDefinition;
import org.apache.commons.geometry.io.euclidean.threed.FacetDefinitionReader;
import org.apache.commons.geometry.io.euclidean.threed.stl.BinaryStlFacetDefinitionReader;
import org.apache.commons.geometry.io.euclidean.threed.stl.TextStlFacetDefinitionReader;

/** Facets of an STL file as they stand there, nine coordinates each. */
final class StlFacets {
  private static final int HEAD = 84;
  private static final int FACET = 50;

  /** Bytes that a facet of text may take; usual are 250. */
  private static final long TEXT_FACET = 400;

  private StlFacets() {}

  static double[] read(InputStream in, String name, int most) throws MeshFileException {
    byte[] bytes = bytes(in, name, most);
    boolean isText = isText(bytes);
    if (!isText) {
      checkLength(bytes, name, most);
    }
    InputStream again = new ByteArrayInputStream(bytes);
    try (FacetDefinitionReader reader =
        isText
            ? new TextStlFacetDefinitionReader(
                new InputStreamReader(again, StandardCharsets.ISO_8859_1))
            : new BinaryStlFacetDefinitionReader(again)) {
      return facets(reader, name, most);
    } catch (IllegalStateException | UncheckedIOException e) {
      throw new MeshFileException(
          name + " is no STL: " + e.getMessage(),
          "the stock is read from its facets",
          "export the stock again as STL",
          e);
    }
  }

  private static byte[] bytes(InputStream in, String name, int most) throws MeshFileException {
    int limit = (int) Math.min(Integer.MAX_VALUE - 16, HEAD + TEXT_FACET * most);
    byte[] bytes;
    try {
      bytes = in.readNBytes(limit + 1);
    } catch (IOException e) {
      throw new MeshFileException(
          name + " cannot be read: " + e.getMessage(),
          "the stock is read from its facets",
          "make the file readable",
          e);
    }
    if (bytes.length > limit) {
      throw tooMany(name, "more than " + limit + " bytes", most);
    }
    if (bytes.length == 0) {
      throw empty(name);
    }
    return bytes;
  }

  private static MeshFileException tooMany(String name, String found, int most) {
    return new MeshFileException(
        name + " has " + found + ", " + most + " facets are allowed",
        "time and memory grow with the facets",
        "export the stock with a coarser tolerance");
  }

  private static MeshFileException empty(String name) {
    return new MeshFileException(
        name + " holds no facet", "there is no stock to cut", "export the stock again as STL");
  }

  /** Text begins with "solid"; so do some binary files, which their length gives away. */
  private static boolean isText(byte[] bytes) {
    String start = new String(bytes, 0, Math.min(5, bytes.length), StandardCharsets.ISO_8859_1);
    return "solid".equals(start) && !(bytes.length >= HEAD && fits(bytes));
  }

  private static boolean fits(byte[] bytes) {
    return HEAD + FACET * saidFacets(bytes) == bytes.length;
  }

  private static long saidFacets(byte[] bytes) {
    return ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN).getInt(HEAD - 4) & 0xFFFFFFFFL;
  }

  private static void checkLength(byte[] bytes, String name, int most) throws MeshFileException {
    if (bytes.length < HEAD) {
      throw new MeshFileException(
          name + " is no STL: it has " + bytes.length + " bytes, begins without \"solid\"",
          "binary STL has a head of " + HEAD + " bytes, text STL begins with \"solid\"",
          "export the stock again as STL");
    }
    long said = saidFacets(bytes);
    if (!fits(bytes)) {
      throw new MeshFileException(
          name
              + " is no STL or is cut off: its head says "
              + said
              + " facets, its length is that of "
              + (bytes.length - HEAD) / FACET,
          "binary STL has " + FACET + " bytes a facet",
          "export the stock again as STL");
    }
    if (said > most) {
      throw tooMany(name, said + " facets", most);
    }
  }

  private static double[] facets(FacetDefinitionReader reader, String name, int most)
      throws MeshFileException {
    DoubleColumn places = new DoubleColumn();
    for (FacetDefinition facet = reader.readFacet(); facet != null; facet = reader.readFacet()) {
      int number = places.size() / 9 + 1;
      if (number > most) {
        throw tooMany(name, "more than " + most + " facets", most);
      }
      if (facet.getVertices().size() != 3) {
        throw new MeshFileException(
            "facet " + number + " of " + name + " has " + facet.getVertices().size() + " corners",
            "facets of STL are triangles",
            "export the stock again as STL");
      }
      for (Vector3D v : facet.getVertices()) {
        if (!v.isFinite()) {
          throw new MeshFileException(
              "facet " + number + " of " + name + " has a coordinate that is no number",
              "the stock is read from its facets",
              "export the stock again as STL");
        }
        places.add(v.getX(), v.getY(), v.getZ());
      }
    }
    if (places.size() == 0) {
      throw empty(name);
    }
    return places.toArray();
  }
}
