/**
 * Every tolerance of the project, with its unit and its reason, next to the grid it belongs to.
 * Lengths are millimetres, angles degrees; inches exist only at the edges (input fields, printed notes).
 * No other file may invent an epsilon: a lint rule sees to it. Weights and counts stay where they are used, by name.
 */

/** One integer step of the clipping grid. 0.1 micrometre: far below any cut, and 4.7 m still fits the library's fast range. */
export const GRID_MM = 0.0001;

/** Greatest distance between a true curve and the points that stand for it. A quarter of what the cut file may err in all. */
export const FLATTEN_ERROR_MM = 0.005;

/** Greatest distance between those points and the arcs written to the cut file: with flattening it stays under 0.02 mm. */
export const ARC_FIT_ERROR_MM = 0.01;

/** Greatest distance between a true round corner and the points an offset gives it. */
export const ROUND_JOIN_ERROR_MM = 0.002;

/**
 * Share of half the least bridge width by which metal is shrunk to find necks that are too thin.
 * Just under one, so that a bridge of exactly the least width passes in spite of grid and flattening.
 */
export const SHRINK_SHARE = 0.98;

/** A shrunk piece of metal smaller than this is a rounding speck of the offset, not a piece (0.02 mm square). */
export const SPECK_MM2 = 0.0004;

/** Openings nearer to each other than twice this touch, as far as any cut is concerned. */
export const PINCH_MM = 0.001;

/** Well above what the grid and long shared edges can be off by: metal that hangs on less than two hangs on nothing. */
export const HAIR_MM = 10 * PINCH_MM;

/** Decimal places written to files: 0.1 micrometre, the clipping grid. */
export const FILE_DECIMALS = 4;

/** How wide lines are in an SVG to cut by: thin enough that drivers take them for cutting lines. */
export const HAIRLINE_MM = 0.05;

/** Exact by definition (international inch, 1959). */
export const MM_PER_INCH = 25.4;
/** The US gallon, 231 cubic inches. */
export const LITRES_PER_GALLON = (231 * MM_PER_INCH ** 3) / 1e6;

/** Plates outside these diameters are refused: smaller than a coin, or larger than any sheet a shop can lay down. */
export const LEAST_PLATE_MM = 40;
export const GREATEST_PLATE_MM = 1500;

/**
 * Letters and border pieces are set this much farther apart than the least web asks,
 * so that flattening (on both sides) and the grid never bring the metal between them under it.
 */
export const WEB_SPARE_MM = 0.02;

/** Cubic metres in a cubic millimetre. */
export const M3_PER_MM3 = 1e-9;

// What arithmetic in doubles leaves.

/** Figures of a plate's size (mm, shares, counts) nearer than this are the same: a million roundings of the largest. */
export const ROUNDING = 1e-9;

/** A share or a number of seconds is taken as no less than this where something is divided by it. */
export const LEAST_DIVISOR = 1e-9;

/** A length in mm or pixels is taken as no less than this where something is divided by it: a hundredth of the grid. */
export const LEAST_DIVISOR_MM = 1e-6;

/** A count of steps this little short of a whole one is whole: 522 mm may arrive as 521.9999999. */
export const WHOLE_STEP = 1e-6;

/** A tour of cuts that is shorter by less than this is not shorter: sums of thousands of ways err by so much (mm). */
export const LEAST_GAIN_MM = 1e-7;

/** A second difference of a curve's coordinates (mm) under this makes its derivative a line: the root would be lost. */
export const NO_BEND = 1e-12;

/** A pivot below this share of its diagonal entry means that nothing holds that freedom: far above rounding. */
export const UNHELD_SHARE = 1e-11;

/** A slope of the packing's energy (mm²) that is under this leads nowhere: squares of roundings. */
export const NO_SLOPE = 1e-30;

/** The packing's relaxation rests where a step gains less than this share of its energy. */
export const STALLED_SHARE = 1e-12;

/** Third moments nearer to none than this (of a box 2 wide, 1 high) may be rounding: then the points decide. */
export const LEANING_MOMENT = 1e-7;

/** Two parts of a path that meet at a smaller angle run on as one: what is left of an angle after its arithmetic. */
export const SAME_WAY_RAD = 1e-6;

/**
 * What is thinner than this between two outlines is no difference that an eye or a cutter sees: a tenth of the
 * narrowest kerf that shops cut with (fibre laser, 0.1 mm: common practice).
 */
export const DIFFERENCE_SEEN_MM = 0.01;

// How nearly curves are followed where no cut depends on it to the micrometre.

/** An extent, or what the kerf frees, is measured on points that miss the arcs by no more: a tenth of a kerf. */
export const EXTENT_ERROR_MM = 0.01;

/** Which of two things is nearer, or inside, is told on outlines this near to the true ones: half a narrow kerf. */
export const NEARNESS_ERROR_MM = 0.05;

/** Heat, waste that tips and ways over a sheet are reckoned on outlines this near: cells there are 0.5 mm and more. */
export const COARSE_ERROR_MM = 0.1;

/** A way around an opening may cut the corners of the ring it keeps to by this: half of what that ring stands off. */
export const DETOUR_ERROR_MM = 0.15;

/** Edges of the plate in the picture miss those that are cut by no more: an eighth of a pixel on a large screen. */
export const PICTURE_ERROR_MM = 0.05;

/** The beam's path: flattening, round joins and fitting stay under 0.02 mm, of which the plan's own fit has had half. */
export const KERF_FLATTEN_MM = 0.003;
export const KERF_FIT_MM = 0.01;

/** More than the tip of a sharp corner that is too narrow for the beam's path. */
export const KERF_CRUMB_MM2 = 0.01;

/** So fine that a lead-in that meets the path without a kink is not taken for one that crosses it. */
export const LEAD_ROOM_FLATTEN_MM = 0.002;

/** A lead-in is tested in pieces no shorter than this: a fifth of the narrowest kerf. */
export const LEAD_PIECE_MM = 0.02;

/** A drawing is worked on as if it were 600 mm high; there its curves are followed this nearly. */
export const ARTWORK_FLATTEN_MM = 0.01;

/** A drawing's outlines are fitted within the first of these whose path is short enough to carry in a design. */
export const ARTWORK_FIT_MM = [0.02, 0.06, 0.2];

/** What is smaller than 0.2 mm square on a drawing 600 mm high is left out: no cut would show it. */
export const ARTWORK_SPECK_MM2 = 0.04;

/** A drawing's own curves stand for its rings when no area differs by more than this for each mm of its side. */
export const SAME_AREA_MM = 0.001;

/** Motifs are followed and fitted within these hundredths of their height: 0.01 and 0.03 mm on one 100 mm high. */
export const MOTIF_FLATTEN = 0.01;
export const MOTIF_FIT = 0.03;

/** A handle shorter than this share of its chord has vanished, and the curve would make a loop. */
export const NO_HANDLE_SHARE = 1e-6;

/** The point farthest inside an opening is found this nearly: it places a number or a pierce, nothing finer. */
export const DEEPEST_ERROR_MM = 0.01;

// Where bridges meet metal.

/** A ray starts on the edge it leaves: crossings nearer than this are that edge. */
export const OWN_EDGE_MM = 0.002;

/** A tip may be cut off by rounding into two corners this near to each other. */
export const SAME_TIP_MM = 0.02;

/** A further pass shrinks the metal by this much more or less: past what round joins of the offset can hide. */
export const NEXT_PASS_MM = 1.5 * ROUND_JOIN_ERROR_MM;

/** Metal this near to a bar's end or side belongs to the bar. */
export const ON_BAR_MM = 0.05;

/** Two ways to try a bar whose cosine is greater are one: 1.8 degrees. */
export const SAME_WAY_COS = 0.9995;

/** A bar whose sine with an axis is smaller lies along it: 1.7 degrees, which no eye sees in a bar so short. */
export const ON_AXIS_SIN = 0.03;

/** Turns of two alike letters that differ by less are the same turn: 0.01 micrometre on a letter 100 mm long. */
export const SAME_TURN_DEG = 1e-5;

// What is worth a word, a mend or a mark on the screen.

/** Less is not worth a sentence: a hundredth of a millimetre cannot be seen. */
export const LEAST_SAID_MM = 0.01;

/** A mend goes this share of the radius farther than it must, so that rounding does not bring the finding back. */
export const MEND_SPARE_SHARE = 0.001;

/** Sheets whose thicknesses differ by less are one: tables give them to a hundredth. */
export const SAME_THICKNESS_MM = 0.005;

/** Advice is followed when the sheet is this near to it: a gauge and its metric neighbour (common practice, no source). */
export const SAME_GAUGE_MM = 0.03;

/** A calliper with a vernier of a twentieth reads so surely: common practice, no source. */
export const CALLIPER_NOISE_MM = 0.02;

/** What stands nearer to a middle line than this is said to stand on it. */
export const ON_CENTRE_MM = 0.05;

/** What stands nearer to the centre than this share of the radius has no direction from it. */
export const ON_CENTRE_SHARE = 1e-6;

/** A thousandth of a millimetre or degree: the same place on any screen. */
export const SAME_PLACE = 0.001;
