export { analyseSparse, SparseFactor, type SparseAnalysis } from './sparse-ldl.ts'
export { solveDense } from './dense-solve.ts'
export { findRoot, findRootNear, type Near, type Root } from './find-root.ts'
export { UnionFind } from './union-find.ts'
