// Tests read formula texts of their own, and texts just written whose trees are not made yet.
import { makeTreesWith } from "../../src/algebra";
import { mathjsMaker } from "../../src/algebra/make";

makeTreesWith(mathjsMaker);
