/** The works that the formulas are taken from. */
export const TAYLOR = "J. T. Taylor, Cotton Weaving and Designing, 6th ed., 1909";
export const BROOKS = "C. P. Brooks, Cotton Manufacturing, 1888 (the year from memory, the page not at hand)";
export const WOLFENSBERGER = "A. Wolfensberger, Theory of Silk Weaving, 2nd ed., 1921";
export const PEIRCE =
  "F. T. Peirce, The Geometry of Cloth Structure, Journal of the Textile Institute 28, 1937, pp. T45-T96 (the formula from memory, its page not at hand)";
export const D2260 = "ASTM D2260, Standard Tables of Conversion Factors and Equivalent Yarn Numbers, Table 1";
export const GATE = "Graduate Aptitude Test in Engineering, paper Textile";
export const MORINO =
  "H. Morino, M. Matsudaira and M. Furutani, Textile Research Journal 75, 2005 (from memory)";
export const ISO_CRIMP = "ISO 7211-3 (from memory)";
export const SETT_SYSTEMS = "Sett Systems, Dictionary of the English textile terms, 2014 (online)";
export const COMMON = "common practice";
export const BY_DEFINITION = "by definition";
