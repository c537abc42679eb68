/** Width in mm that a picture may take on every paper: A4 and US Letter both hold it within their margins. */
export const roomWide = 170;
/** Height in mm that it may take there. */
export const roomHigh = 205;

/** Room between pictures that stand side by side, in mm. */
export const BETWEEN_PICTURES = 9;

/** A picture has at least this width for its caption, however narrow it is. */
export const NARROWEST_PICTURE = 36;
