package club.yearline.uploads;

/** Decodes a picture of dots, after a look at its size. */
final class RasterCheck {

  /** The most dots: some bytes can claim a picture that fills the memory. */
  private static final long MOST_DOTS = 25_000_000;

  private RasterCheck() {}

  static void check(byte[] bytes, PictureType type) throws NotTaken {
    Raster.decode(bytes, type, MOST_DOTS, Raster.WHOLE).flush();
  }
}
