/**
 * The expressions of the formulas as mathjs reads them. Written by `npm run formulas` and held to the formulas by a test:
 * what is worked out and printed is this, and mathjs is not loaded for it.
 */
import type { FormulaTree } from "../formula/tree.js";

type Trees = Readonly<Record<string, FormulaTree>>;

export const countTrees = {
  "tex-of-indirect-count": ["/","m",["*","N","h"]],
  "tex-of-direct-count": ["/",["*","N","m"],"l"],
  "indirect-count-of-tex": ["/","m",["*","T","h"]],
  "direct-count-of-tex": ["/",["*","T","l"],"m"],
  "tex-of-like-plies": ["/",["*","n","T_1"],["-",1,"c"]],
  "tex-of-unlike-plies": ["/",["sum","T_i"],["-",1,"c"]],
  "tex-of-one-ply": ["/",["*","T_R",["-",1,"c"]],"n"],
  "tex-of-weighed-length": ["/","m","l"],
  "mass-of-length": ["*","T","l"],
  "length-of-mass": ["/","m","T"],
} as const satisfies Trees;

export const diameterTrees = {
  "diameters-by-root": ["*","k",["sqrt","Y"]],
  "diameter-by-peirce": ["/",1,["*",28,["sqrt","N"]]],
  "diameter-by-packing": ["sqrt",["/",["*",4,"T"],["*",["*","pi","phi"],"rho"]]],
  "wraps-of-diameter": ["/",1,"d"],
  "diameter-of-wraps": ["/",1,"w"],
} as const satisfies Trees;

export const settTrees = {
  "sett-of-weave": ["/",["*","D","R"],["+","R","I"]],
  "sett-by-brierley": ["*",["^","F","m"],["sqrt",["*","K","N"]]],
  "sett-in-another-weave": ["/",["*","S_1",["+",1,["/","I_1","R_1"]]],["+",1,["/","I_2","R_2"]]],
  "sett-in-another-yarn": ["*","S_1",["sqrt",["/","T_1","T_2"]]],
  "yarn-for-another-sett": ["*","T_1",["^",["/","S_1","S_2"],2]],
  "sett-at-another-weight": ["/",["*","S_1","w_1"],"w_2"],
  "yarn-at-another-weight": ["*","T_1",["^",["/","w_2","w_1"],2]],
  "working-sett": ["*","p","S_m"],
  "share-of-closest-sett": ["/","S","S_m"],
  "share-of-both-setts": ["/",["+","p_1","p_2"],2],
  "cover-factor": ["/","S",["sqrt","N"]],
  "cover-factor-in-tex": ["/",["*","S",["sqrt","T"]],10],
  "cover-of-threads": ["*","S","d"],
  "cover-of-cloth": ["-",["+","c_1","c_2"],["*","c_1","c_2"]],
  "pitch-of-jammed-plain": ["/",["*",["sqrt",3],"d"],2],
  "crimp-of-jammed-plain": ["-",["/",["*","pi","d"],["*",3,"p"]],1],
  "sett-from-width": ["/","n","W"],
} as const satisfies Trees;

export const firmnessTrees = {
  "mean-float": ["/","R","I"],
  "crossing-over-firmness": ["/","c",["*","R_1","R_2"]],
  "floating-yarn-factor": ["/","f",["*","R_1","R_2"]],
} as const satisfies Trees;

export const reedTrees = {
  "dents-of-reed-count": ["/",["*","N","d"],"l"],
  "sett-in-reed": ["*","D","e"],
  "ends-in-a-dent": ["/","S","D"],
  "width-in-reed": ["/","n","S"],
  "ends-in-width": ["round",["*","W","S"]],
  "width-of-dents": ["/","d","D"],
  "heddles-on-a-shaft": ["/","S","s"],
  "units-of-ends": ["ceil",["/","n","e"]],
  "lingos-of-units": ["*","u","g"],
} as const satisfies Trees;

export const crimpTrees = {
  "crimp": ["/",["-","L_y","L_c"],"L_c"],
  "contraction": ["/",["-","L_y","L_c"],"L_y"],
  "crimp-of-contraction": ["/","a",["-",1,"a"]],
  "contraction-of-crimp": ["/","k",["+",1,"k"]],
  "yarn-in-cloth": ["*","L_c",["+",1,"k"]],
  "cloth-of-yarn": ["/","L_y",["+",1,"k"]],
  "size-before-shrinkage": ["/","f",["-",1,"s"]],
  "size-after-shrinkage": ["*","b",["-",1,"s"]],
  "width-before-draw-in": ["/","b",["-",1,"d"]],
  "width-after-draw-in": ["*","W",["-",1,"d"]],
} as const satisfies Trees;

export const pieceTrees = {
  "cloth-of-a-piece": ["/",["+","f","h"],["-",1,"s"]],
  "picks-in-length": ["round",["*","P","c"]],
} as const satisfies Trees;

export const lengthTrees = {
  "finished-length": ["-",["*","c",["-",1,"s"]],"h"],
  "warp-of-a-piece": ["+",["*","c",["+",1,"k"]],"r"],
  "warp-length": ["+",["+",["+",["*","N","p"],["*",["-","N",1],"g"]],"q"],"w"],
  "warp-of-like-pieces": ["*","N","p"],
  "warp-of-designs": ["+",["+",["+",["sum","P_i"],["*",["-","N",1],"g"]],"q"],"w"],
  "warp-left-of-designs": ["-",["-",["-",["-","L",["sum","P_i"]],["*",["-","N",1],"g"]],"q"],"w"],
  "more-pieces": ["floor",["/","o",["+","p","g"]]],
  "pieces-of-warp": ["max",0,["floor",["/",["+",["-",["-","L","q"],"w"],"g"],["+","p","g"]]]],
  "warp-left-over": ["-",["-",["-",["-","L",["*","N","p"]],["*",["max",0,["-","N",1]],"g"]],"q"],"w"],
  "warp-yarn": ["*","n","L"],
  "yarns-together": ["sum","Y_i"],
  "cloth-of-samples": ["/","q",["+",1,"k"]],
  "length-of-picks": ["/","p","P"],
  "picks-of-a-weft": ["/",["*","P","a"],"b"],
  "weft-yarn": ["*",["*","N","p"],"W"],
} as const satisfies Trees;

export const weightTrees = {
  "yarn-with-waste": ["*","m",["+",1,"a"]],
  "length-with-waste": ["*","l",["+",1,"a"]],
  "yarn-to-buy": ["-","m",["min","m","s"]],
  "length-to-buy": ["-","l",["min","l","s"]],
  "weights-together": ["sum","m_i"],
  "packages-by-mass": ["ceil",["/","m","q"]],
  "packages-by-length": ["ceil",["/","l","q"]],
  "hanks-of-length": ["/","l","h"],
  "cloth-weight": ["+",["*",["*","S_1","T_1"],["+",1,"k_1"]],["*",["*","S_2","T_2"],["+",1,"k_2"]]],
  "cloth-weight-of-piece": ["/",["+","m_1",["sum","m_2"]],["*","w","l"]],
} as const satisfies Trees;

export const sampleTrees = {
  "draw-in-of-sample": ["/",["-","W","b"],"W"],
  "take-up-of-sample": ["/",["-","L_y","L_c"],"L_c"],
  "shrinkage-of-sample": ["/",["-","b","f"],"b"],
  "picks-of-sample": ["/","n","l"],
  "weight-of-sample": ["/","m",["^","a",2]],
} as const satisfies Trees;

export const warpingTrees = {
  "passes-of-warp": ["ceil",["/","n","t"]],
  "double-passes-of-passes": ["ceil",["/","p",2]],
  "chains-of-double-passes": ["ceil",["/","P","b"]],
} as const satisfies Trees;
