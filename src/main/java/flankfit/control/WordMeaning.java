package flankfit.control;

/** What a word is to its block, and what its value counts. */
public enum WordMeaning {
  PREPARATORY(Quantity.FUNCTION),
  MISCELLANEOUS(Quantity.FUNCTION),
  END_POINT(Quantity.LENGTH),
  DISTANCE(Quantity.LENGTH),
  MACHINE_POINT(Quantity.LENGTH),
  INTERMEDIATE_POINT(Quantity.LENGTH),
  INTERMEDIATE_DISTANCE(Quantity.LENGTH),
  HOLE_POSITION(Quantity.LENGTH),
  HOLE_DISTANCE(Quantity.LENGTH),
  DEPTH(Quantity.LENGTH),
  DEPTH_FROM_CLEARANCE(Quantity.LENGTH),
  CLEARANCE_LEVEL(Quantity.LENGTH),
  CLEARANCE_DISTANCE(Quantity.LENGTH),
  PECK(Quantity.LENGTH),
  BORE_SHIFT(Quantity.LENGTH),
  BACK_BORE_TOP(Quantity.LENGTH),
  HOLES(Quantity.NUMBER),
  CENTRE_DISTANCE(Quantity.LENGTH),
  CENTRE_POINT(Quantity.LENGTH),
  ARC_RADIUS(Quantity.LENGTH),
  TURNS(Quantity.NUMBER),
  LOCAL_SHIFT(Quantity.LENGTH),
  PRESENT_POINT(Quantity.LENGTH),
  MIRROR_POSITION(Quantity.LENGTH),
  MIRROR_END(Quantity.NUMBER),
  SCALE_CENTRE(Quantity.LENGTH),
  SCALE_FACTOR(Quantity.NUMBER),
  ROTATION_CENTRE(Quantity.LENGTH),
  ROTATION_ANGLE(Quantity.ANGLE),
  OFFSET_VALUE(Quantity.LENGTH),
  REGISTER_VALUE(Quantity.LENGTH),
  DATA_KIND(Quantity.NUMBER),
  DATA_NUMBER(Quantity.NUMBER),
  WORK_OFFSET_NUMBER(Quantity.NUMBER),
  REFERENCE_NUMBER(Quantity.NUMBER),
  DWELL(Quantity.TIME),
  FEED_PER_MINUTE(Quantity.FEED_PER_MINUTE),
  FEED_PER_REVOLUTION(Quantity.LENGTH),
  FEED_INVERSE_TIME(Quantity.PER_MINUTE),
  SPINDLE_SPEED(Quantity.PER_MINUTE),
  TOOL(Quantity.NUMBER),
  RADIUS_REGISTER(Quantity.NUMBER),
  LENGTH_REGISTER(Quantity.NUMBER),
  CALLED_PROGRAM(Quantity.NUMBER),
  CALL_COUNT(Quantity.NUMBER),
  RETURN_BLOCK(Quantity.NUMBER),
  ARGUMENT(Quantity.NUMBER),
  /** Its variable was vacant, so the word counts as not written. */
  LEFT_OUT(Quantity.NUMBER),
  /** The run ended before it was understood. */
  NOT_EXECUTED(Quantity.NUMBER),
  /** No function of the block reads it. */
  NONE(Quantity.NUMBER);

  /** What a value counts, and so its unit. */
  public enum Quantity {
    /** A number of G or M, such as 54.1. */
    FUNCTION,
    /** Millimetres. */
    LENGTH,
    /** Degrees. */
    ANGLE,
    /** Seconds. */
    TIME,
    /** Millimetres a minute. */
    FEED_PER_MINUTE,
    /** 1/min. */
    PER_MINUTE,
    /** A count, the number of something, or a factor. */
    NUMBER
  }

  private final Quantity quantity;

  WordMeaning(Quantity quantity) {
    this.quantity = quantity;
  }

  /** What its value counts. */
  public Quantity quantity() {
    return quantity;
  }
}
